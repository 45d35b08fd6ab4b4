package underfoot.knowledge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.Node;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/**
 * What lessons are made of: topics in the order in which they build up, kinds of question, and what
 * is varied between what bounds.
 *
 * @param topics the topics, what comes first in a course first
 * @param kinds the kinds of question, in the order of their files and lines
 * @param variations what is varied
 */
public record LessonBook(List<Item> topics, List<Item> kinds, List<Item> variations) {
  private static final String FOLDER = "lessons/";

  /** Largest file that is read; it cannot be a limit of the rules, of which it is a file. */
  private static final int MOST_BYTES = 1 << 20;

  private static final Set<String> SORTS = Set.of("choice", "sum", "what-if", "order", "faults");

  /** Copies the lists. */
  public LessonBook {
    topics = List.copyOf(topics);
    kinds = List.copyOf(kinds);
    variations = List.copyOf(variations);
  }

  /**
   * One entry of a lesson file, or one thing listed in it.
   *
   * @param id its name; of what is listed, its place
   * @param file where it stands
   * @param line where it stands
   * @param fields its texts
   * @param lists its lists of texts; a text alone is a list of one
   * @param tables its lists of things that have texts of their own
   */
  public record Item(
      String id,
      String file,
      int line,
      Map<String, String> fields,
      Map<String, List<String>> lists,
      Map<String, List<Item>> tables) {
    /** Keeps the maps as they are, in their order. */
    public Item {
      fields = Collections.unmodifiableMap(fields);
      lists = Collections.unmodifiableMap(lists);
      tables = Collections.unmodifiableMap(tables);
    }

    /** A text; empty if the entry has none of that name. */
    public String field(String name) {
      return fields.getOrDefault(name, "");
    }

    /** A list; empty if the entry has none of that name. */
    public List<String> list(String name) {
      return lists.getOrDefault(name, List.of());
    }

    /** What is listed under a name; empty if nothing is. */
    public List<Item> table(String name) {
      return tables.getOrDefault(name, List.of());
    }

    /** The names and texts under a name, in their order; empty if there are none. */
    public Map<String, String> named(String name) {
      List<Item> all = table(name);
      return all.isEmpty() ? Map.of() : all.get(0).fields();
    }

    /** A whole number. */
    public int whole(String name, int otherwise) {
      return fields.containsKey(name) ? Integer.parseInt(field(name)) : otherwise;
    }
  }

  /**
   * Reads the lesson files.
   *
   * @throws KnowledgeFault if a file cannot be used as it stands
   */
  public static LessonBook load(RuleFiles files) throws KnowledgeFault {
    List<Item> topics = read(files, FOLDER + "topics.yaml");
    List<Item> kinds = new ArrayList<>();
    for (String path : files.list(FOLDER + "questions", ".yaml")) {
      kinds.addAll(read(files, path));
    }
    LessonBook book = new LessonBook(topics, kinds, read(files, FOLDER + "variations.yaml"));
    List<KnowledgeFault> faults = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (Item kind : kinds) {
      book.check(kind, faults);
      if (!ids.add(kind.id())) {
        faults.add(fault(kind, "'" + kind.id() + "' stands twice"));
      }
    }
    for (Item one : book.variations()) {
      needs(one, faults, "fact", "step");
    }
    for (Item one : topics) {
      needs(one, faults, "title", "aim");
    }
    if (!faults.isEmpty()) {
      throw KnowledgeFault.all(faults);
    }
    return book;
  }

  private void check(Item kind, List<KnowledgeFault> faults) {
    needs(kind, faults, "topic", "level", "aim", "sort", "ask");
    if (!SORTS.contains(kind.field("sort"))) {
      faults.add(fault(kind, "write sort: choice, sum, what-if, order or faults"));
    }
    if (!kind.field("level").matches("[123]")) {
      faults.add(fault(kind, "'" + kind.id() + "' needs level: 1, 2 or 3"));
    }
    if (topics.stream().noneMatch(topic -> topic.id().equals(kind.field("topic")))) {
      faults.add(fault(kind, "there is no topic '" + kind.field("topic") + "' in topics.yaml"));
    }
    for (Item option : kind.table("options")) {
      needs(option, faults, "says");
      if (option.field("shows").isBlank() && option.field("right").isBlank()) {
        faults.add(fault(option, "an option that may be wrong needs shows: what is misunderstood"));
      }
    }
    if (kind.field("sort").equals("sum")) {
      needs(kind, faults, "is", "unit", "within");
    }
  }

  private static void needs(Item item, List<KnowledgeFault> faults, String... fields) {
    for (String field : fields) {
      if (item.field(field).isBlank()) {
        faults.add(fault(item, "'" + item.id() + "' has no " + field + "; write " + field + ": …"));
      }
    }
  }

  private static KnowledgeFault fault(Item item, String what) {
    return new KnowledgeFault(item.file(), item.line(), what);
  }

  private static List<Item> read(RuleFiles files, String path) throws KnowledgeFault {
    try {
      Node tree = files.tree(path, MOST_BYTES);
      List<Item> items = new ArrayList<>();
      for (Node.Entry entry : keys(path, tree).entries()) {
        items.add(item(path, entry.key(), keys(path, entry.value())));
      }
      return items;
    } catch (ScenarioFaults e) {
      throw new KnowledgeFault(path, e.faults().get(0).line(), e.faults().get(0).what());
    }
  }

  private static Node.Keys keys(String path, Node node) throws KnowledgeFault {
    if (node instanceof Node.Keys keys) {
      return keys;
    }
    throw new KnowledgeFault(path, node.line(), "names belong here, each with what is said of it");
  }

  private static Item item(String path, String id, Node.Keys keys) throws KnowledgeFault {
    Map<String, String> fields = new LinkedHashMap<>();
    Map<String, List<String>> lists = new LinkedHashMap<>();
    Map<String, List<Item>> tables = new LinkedHashMap<>();
    for (Node.Entry entry : keys.entries()) {
      String name = entry.key();
      if (entry.value() instanceof Node.Scalar text) {
        fields.put(name, text.text().strip());
        lists.put(name, List.of(text.text().strip()));
      } else if (entry.value() instanceof Node.Keys inner) {
        tables.put(name, List.of(item(path, name, inner)));
      } else if (entry.value() instanceof Node.Items items) {
        List<String> texts = new ArrayList<>();
        List<Item> things = new ArrayList<>();
        for (Node one : items.items()) {
          if (one instanceof Node.Scalar text) {
            texts.add(text.text().strip());
          } else {
            things.add(item(path, id + "/" + name, keys(path, one)));
          }
        }
        lists.put(name, List.copyOf(texts));
        tables.put(name, List.copyOf(things));
      }
    }
    return new Item(id, path, keys.line(), fields, lists, tables);
  }

  /** The topic of that name. */
  public Item topic(String id) {
    return named(topics, "topic", id);
  }

  /** The kind of question of that name. */
  public Item kind(String id) {
    return named(kinds, "kind of question", id);
  }

  private static Item named(List<Item> items, String what, String id) {
    for (Item item : items) {
      if (item.id().equals(id)) {
        return item;
      }
    }
    throw new MissingKnowledge(what, id);
  }
}
