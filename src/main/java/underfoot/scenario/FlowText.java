package underfoot.scenario;

import java.util.stream.Collectors;

/** A part of a scenario file as YAML in brackets, which reads back to the same. */
final class FlowText {
  /** What parts one entry of a list from the next: a line each, further in than any key. */
  private static final String NEXT_ENTRY = ",\n    ";

  private FlowText() {}

  /** A list with its entries on lines of their own. */
  static String of(Node.Items list) {
    return list.items().stream()
        .map(FlowText::inLine)
        .collect(Collectors.joining(NEXT_ENTRY, "[", "]"));
  }

  private static String inLine(Node node) {
    if (node instanceof Node.Items list) {
      return list.items().stream()
          .map(FlowText::inLine)
          .collect(Collectors.joining(", ", "[", "]"));
    } else if (node instanceof Node.Keys keys) {
      return keys.entries().stream()
          .map(entry -> AnswersYaml.quoted(entry.key()) + ": " + inLine(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return AnswersYaml.quoted(((Node.Scalar) node).text());
  }
}
