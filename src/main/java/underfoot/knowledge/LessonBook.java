package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/** What lessons are made of: kinds of question, what is varied, and known faults. */
public final class LessonBook {
  private static final String FOLDER = "lessons/";

  private final List<Item> questions;
  private final List<Item> workings;
  private final List<Item> sums;
  private final List<Item> variations;
  private final List<Item> faults;
  private final List<Item> otherwise;

  /**
   * One entry of a lesson file.
   *
   * @param id its name
   * @param fields its texts
   * @param lists its lists
   */
  public record Item(String id, Map<String, String> fields, Map<String, List<String>> lists) {
    /** Copies the maps. */
    public Item {
      fields = Map.copyOf(fields);
      lists = Map.copyOf(lists);
    }

    /** A text; empty if the entry has none of that name. */
    public String field(String name) {
      return fields.getOrDefault(name, "");
    }

    /** A list; empty if the entry has none of that name. */
    public List<String> list(String name) {
      return lists.getOrDefault(name, List.of());
    }

    /** A whole number. */
    public int whole(String name, int otherwise) {
      return fields.containsKey(name) ? Integer.parseInt(field(name)) : otherwise;
    }
  }

  private LessonBook(
      List<Item> questions,
      List<Item> workings,
      List<Item> sums,
      List<Item> variations,
      List<Item> faults,
      List<Item> otherwise) {
    this.questions = questions;
    this.workings = workings;
    this.sums = sums;
    this.variations = variations;
    this.faults = faults;
    this.otherwise = otherwise;
  }

  /**
   * Reads the lesson files.
   *
   * @throws KnowledgeFault if a file cannot be used as it stands
   */
  public static LessonBook load(RuleFiles files) throws KnowledgeFault {
    return new LessonBook(
        read(files, "questions", "ask", "level"),
        read(files, "workings", "ask", "level", "working", "result", "unit", "within"),
        read(files, "sums", "ask", "level", "unit", "within"),
        read(files, "variations", "fact", "step"),
        read(files, "faults", "kind"),
        read(files, "otherwise"));
  }

  private static List<Item> read(RuleFiles files, String name, String... needed)
      throws KnowledgeFault {
    List<Item> items = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, FOLDER + name + ".yaml")) {
      for (String field : needed) {
        entry.required(field);
      }
      for (String number : List.of("level", "count")) {
        if (!entry.field(number).isEmpty() && !entry.field(number).matches("[1-9][0-9]?")) {
          throw new KnowledgeFault(
              entry.file(),
              entry.line(),
              "'" + entry.name() + "' needs a whole number as " + number);
        }
      }
      items.add(new Item(entry.name(), entry.fields(), entry.lists()));
    }
    return List.copyOf(items);
  }

  /** The kinds of question that are asked from the trace. */
  public List<Item> questions() {
    return questions;
  }

  /** The questions that run a working. */
  public List<Item> workings() {
    return workings;
  }

  /** The questions that are plain multiplications. */
  public List<Item> sums() {
    return sums;
  }

  /** What is varied, and between what bounds. */
  public List<Item> variations() {
    return variations;
  }

  /** The faults a proposal can be given. */
  public List<Item> faults() {
    return faults;
  }

  /**
   * Which other values of a fact make a good question.
   *
   * @param fact the scenario key
   * @param now the value it has
   * @return empty if the lesson files say nothing of it
   */
  public List<String> otherwise(String fact, String now) {
    for (Item item : otherwise) {
      if (item.id().equals(fact)) {
        return item.list(now);
      }
    }
    return List.of();
  }

  /** The kind of question of that name. */
  public Item question(String id) {
    for (Item item : questions) {
      if (item.id().equals(id)) {
        return item;
      }
    }
    throw new MissingKnowledge("kind of question", id);
  }

  /** A sum of that name. */
  public Item sum(String id) {
    for (Item item : sums) {
      if (item.id().equals(id)) {
        return item;
      }
    }
    throw new MissingKnowledge("sum", id);
  }
}
