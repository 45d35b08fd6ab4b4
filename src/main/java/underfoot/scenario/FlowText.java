package underfoot.scenario;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A part of a scenario file as YAML in brackets, which reads back to the same. */
final class FlowText {
  /** What needs no quotation marks between brackets. */
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ./%_+-]*");

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
          .map(entry -> quoted(entry.key()) + ": " + inLine(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return quoted(((Node.Scalar) node).text());
  }

  private static String quoted(String text) {
    return PLAIN.matcher(text).matches() && text.equals(text.strip())
        ? text
        : "'" + text.replace("'", "''") + "'";
  }
}
