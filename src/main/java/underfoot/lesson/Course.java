package underfoot.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.LessonBook;
import underfoot.quantity.Nearest;
import underfoot.scenario.FactBook;
import underfoot.scenario.Fault;
import underfoot.scenario.Node;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.YamlTree;

/**
 * A course as its file states it.
 *
 * @param name what it is called
 * @param sheets its sheets, the first one first
 */
public record Course(String name, List<Sheet> sheets) {
  private static final int USUAL = 9;

  /** Copies the list. */
  public Course {
    sheets = List.copyOf(sheets);
  }

  /**
   * One sheet.
   *
   * @param title its title
   * @param topics what it asks about, by the names of topics
   * @param floors the files of its floors
   * @param questions how many questions it has at the most
   */
  public record Sheet(String title, List<String> topics, List<String> floors, int questions) {
    /** Copies the lists. */
    public Sheet {
      topics = List.copyOf(topics);
      floors = List.copyOf(floors);
    }
  }

  /**
   * Reads a course.
   *
   * @param file its name, for messages
   * @param content its bytes
   * @param book where topics are looked up
   * @param limits how much it may hold
   * @throws ScenarioFaults with everything that is wrong with it
   */
  public static Course read(String file, byte[] content, LessonBook book, FactBook limits)
      throws ScenarioFaults {
    List<Fault> faults = new ArrayList<>();
    Node tree = YamlTree.read(file, content, (int) limits.limit("largest-course"));
    int most = (int) limits.limit("most-questions");
    List<String> topics = book.topics().stream().map(LessonBook.Item::id).toList();
    List<Sheet> sheets = new ArrayList<>();
    String name = "";
    if (tree instanceof Node.Keys keys) {
      name = text(keys.get("course")).orElse("");
      if (keys.get("sheets") instanceof Node.Items items) {
        int sheetsAtMost = (int) limits.limit("most-sheets");
        if (items.items().size() > sheetsAtMost) {
          faults.add(
              fault(
                  file,
                  items.items().get(sheetsAtMost),
                  "a course has at most " + sheetsAtMost + " sheets",
                  "the others into a course of their own"));
        }
        for (Node one : items.items().subList(0, Math.min(items.items().size(), sheetsAtMost))) {
          sheet(file, one, topics, most, faults).ifPresent(sheets::add);
        }
      }
    }
    if (name.isBlank()) {
      faults.add(fault(file, tree, "the course has no name", "course: Under the tiles"));
    }
    if (sheets.isEmpty() && faults.isEmpty()) {
      faults.add(
          fault(
              file,
              tree,
              "the course has no sheets",
              "sheets: [{sheet: The first, topics: [bases], floors: [my-floor.yaml]}]"));
    }
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(faults);
    }
    return new Course(name, sheets);
  }

  private static Optional<Sheet> sheet(
      String file, Node node, List<String> topics, int most, List<Fault> faults) {
    int before = faults.size();
    if (!(node instanceof Node.Keys keys)) {
      faults.add(
          fault(file, node, "a sheet has a name, topics and floors", "- {sheet: …, topics: […]}"));
      return Optional.empty();
    }
    String title = text(keys.get("sheet")).orElse("");
    if (title.isBlank()) {
      faults.add(fault(file, node, "the sheet has no name", "sheet: What lies below"));
    }
    List<String> asked = texts(keys.get("topics"));
    if (asked.isEmpty()) {
      faults.add(fault(file, node, "the sheet has no topics", "topics: [" + topics.get(0) + "]"));
    }
    for (String one : asked) {
      if (!topics.contains(one)) {
        String near = Nearest.to(one, topics);
        faults.add(
            fault(
                file,
                keys.get("topics"),
                "there is no topic '" + one + "'",
                near.isEmpty() ? "one of: " + String.join(", ", topics) : near));
      }
    }
    List<String> floors = texts(keys.get("floors"));
    if (floors.isEmpty()) {
      faults.add(fault(file, node, "the sheet has no floors", "floors: [my-floor.yaml]"));
    }
    String many = text(keys.get("questions")).orElse(Integer.toString(USUAL));
    boolean whole = many.matches("[1-9][0-9]?") && Integer.parseInt(many) <= most;
    if (!whole) {
      faults.add(
          fault(
              file,
              keys.get("questions"),
              "a sheet has from 1 to " + most + " questions",
              "questions: " + USUAL));
    }
    return faults.size() > before
        ? Optional.empty()
        : Optional.of(new Sheet(title, asked, floors, Integer.parseInt(many)));
  }

  private static Fault fault(String file, Node node, String what, String write) {
    return new Fault(file, node.line(), node.column(), what, "write: " + write);
  }

  private static Optional<String> text(Node node) {
    return node instanceof Node.Scalar scalar ? Optional.of(scalar.text()) : Optional.empty();
  }

  private static List<String> texts(Node node) {
    if (node instanceof Node.Items items) {
      return items.items().stream().flatMap(one -> text(one).stream()).toList();
    }
    return text(node).map(List::of).orElse(List.of());
  }
}
