package underfoot.language;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sentence with places to be filled: {@code The {name} is {value}}. A place may name the words it
 * takes, {@code {kind:bending|shear}}, or {@code {order:number}}.
 *
 * @param text how it is written
 * @param parts literals and places in turn, beginning with a literal, which may be empty
 */
record Template(String text, List<Part> parts) {

  /** A literal, and the place that follows it, if any. */
  private record Part(String literal, String slot, List<String> takes) {
    boolean accepts(String value) {
      return takes.isEmpty()
          || takes.contains(value)
          || (takes.get(0).equals("number")
              && !value.isEmpty()
              && value.chars().allMatch(Character::isDigit));
    }
  }

  /**
   * Reads a sentence.
   *
   * @throws IllegalArgumentException with what is wrong
   */
  static Template of(String text) {
    List<Part> parts = new ArrayList<>();
    int at = 0;
    while (true) {
      int open = text.indexOf('{', at);
      if (open < 0) {
        parts.add(new Part(text.substring(at), "", List.of()));
        break;
      }
      int close = text.indexOf('}', open);
      if (close < 0 || text.substring(open + 1, close).indexOf('{') >= 0) {
        throw new IllegalArgumentException("a brace is not closed; write {name}");
      }
      String[] slot = text.substring(open + 1, close).split(":", 2);
      if (slot[0].isEmpty() || !slot[0].chars().allMatch(Character::isLetter)) {
        throw new IllegalArgumentException("a place is named by letters, as in {figure}");
      }
      List<String> takes = slot.length < 2 ? List.of() : List.of(slot[1].split("\\|"));
      if (!takes.stream().allMatch(word -> word.chars().allMatch(Template::isPlain))) {
        throw new IllegalArgumentException(
            "a place takes plain words, as in {kind:bending|shear}, or {order:number}");
      }
      parts.add(new Part(text.substring(at, open), slot[0], takes));
      at = close + 1;
    }
    if (parts.stream()
        .skip(1)
        .limit(Math.max(0, parts.size() - 2))
        .anyMatch(p -> p.literal.isEmpty())) {
      throw new IllegalArgumentException("two places stand side by side; put a word between them");
    }
    return new Template(text, List.copyOf(parts));
  }

  private static boolean isPlain(int c) {
    return Character.isLetterOrDigit(c) || c == ' ' || c == '-';
  }

  /** The names of its places. */
  List<String> slots() {
    return parts.stream().map(Part::slot).filter(slot -> !slot.isEmpty()).toList();
  }

  /** The word it begins with; empty if a place stands there. */
  String firstWord() {
    String literal = parts.get(0).literal();
    int space = literal.indexOf(' ');
    return space < 0 ? (parts.size() == 1 ? literal : "") : literal.substring(0, space);
  }

  /** How many characters it says of its own; of two that take a line the longer is meant. */
  int ownLength() {
    return parts.stream().mapToInt(part -> part.literal().length()).sum();
  }

  /** Its text with all places alike, to tell whether two say the same. */
  String shape() {
    StringBuilder shape = new StringBuilder();
    parts.forEach(part -> shape.append(part.literal()).append(part.takes()).append('\n'));
    return shape.toString();
  }

  /** What stands in its places if it takes the whole line. */
  Optional<Map<String, String>> match(String line) {
    if (!line.startsWith(parts.get(0).literal())) {
      return Optional.empty();
    }
    Map<String, String> slots = new LinkedHashMap<>();
    return fill(line, parts.get(0).literal().length(), 0, slots)
        ? Optional.of(slots)
        : Optional.empty();
  }

  /** Fills the place after a part, taking as little as may be. */
  private boolean fill(String line, int at, int place, Map<String, String> slots) {
    Part part = parts.get(place);
    if (part.slot().isEmpty()) {
      return at == line.length();
    }
    String next = parts.get(place + 1).literal();
    boolean last = place + 2 == parts.size();
    int end = last ? line.length() - next.length() : line.indexOf(next, at + 1);
    while (end > at) {
      String value = line.substring(at, end);
      if (line.startsWith(next, end)
          && part.accepts(value)
          && fill(line, end + next.length(), place + 1, slots)) {
        slots.put(part.slot(), value);
        return true;
      }
      end = last ? -1 : line.indexOf(next, end + 1);
    }
    return false;
  }
}
