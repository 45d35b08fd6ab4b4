package underfoot.scenario;

import java.util.stream.Collectors;

/** A part of a scenario file on one line of YAML, in brackets, which reads back to the same. */
final class FlowText {
  private FlowText() {}

  static String of(Node node) {
    if (node instanceof Node.Items list) {
      return list.items().stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
    } else if (node instanceof Node.Keys keys) {
      return keys.entries().stream()
          .map(entry -> AnswersYaml.quoted(entry.key()) + ": " + of(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return AnswersYaml.quoted(((Node.Scalar) node).text());
  }
}
