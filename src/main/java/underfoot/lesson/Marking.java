package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Unit;

/** Marks what somebody answered. */
public final class Marking {
  private static final Pattern NUMBER = Pattern.compile("([-+]?[0-9]+(?:[.,][0-9]+)?)\\s*(.*)");
  private static final double HALVES = 2;
  private static final double HAIR = 1e-9;

  private Marking() {}

  /**
   * What an answer is worth.
   *
   * @param read whether it could be read as an answer at all
   * @param got the marks it gets, in halves
   */
  public record Marked(boolean read, double got) {}

  /**
   * Marks an answer.
   *
   * @param question what was asked
   * @param reply what was answered, as typed
   */
  public static Marked of(Question question, String reply) {
    return switch (question.reply()) {
      case NUMBER -> number(question, reply.strip());
      case ONE, SOME -> some(question, letters(question, reply));
      case LINES -> some(question, lines(question, reply));
      case ORDER -> order(question, letters(question, reply));
    };
  }

  private static Marked marked(Question question, double share) {
    double got = Math.round(Math.max(0, share) * question.level() * HALVES) / HALVES;
    return new Marked(true, got);
  }

  /** The letters of a reply; null if it says anything else. */
  private static List<String> letters(Question question, String reply) {
    List<String> found = new ArrayList<>();
    String text = reply.toLowerCase(Locale.ROOT).replaceAll("\\band\\b", " ");
    for (char c : text.toCharArray()) {
      String letter = String.valueOf(c);
      if (question.options().stream().anyMatch(option -> option.label().equals(letter))) {
        found.add(letter);
      } else if (!Character.isWhitespace(c) && ",;.+)(".indexOf(c) < 0) {
        return null;
      }
    }
    return found.isEmpty() ? null : found;
  }

  private static List<String> lines(Question question, String reply) {
    List<String> found = new ArrayList<>();
    for (String word : reply.replaceAll("(?i)\\b(and|lines?)\\b", " ").split("[\\s,;.+]+")) {
      if (word.isEmpty()) {
        continue;
      }
      if (question.options().stream().noneMatch(option -> option.label().equals(word))) {
        return null;
      }
      found.add(word);
    }
    return found.isEmpty() ? null : found;
  }

  private static Marked some(Question question, List<String> said) {
    if (said == null) {
      return new Marked(false, 0);
    }
    int hits = 0;
    Set<String> left = new LinkedHashSet<>(said);
    for (Set<String> group : question.right()) {
      if (left.stream().anyMatch(group::contains)) {
        hits++;
        left.removeAll(group);
      }
    }
    double share = (hits - left.size()) / (double) question.right().size();
    if (question.reply() == Question.Reply.ONE) {
      share = said.size() == 1 && hits == 1 ? 1 : 0;
    }
    return marked(question, share);
  }

  /** Marks by the pairs that stand in the right order. */
  private static Marked order(Question question, List<String> said) {
    if (said == null) {
      return new Marked(false, 0);
    }
    List<String> right = question.right().stream().map(group -> group.iterator().next()).toList();
    if (said.size() != right.size() || !Set.copyOf(said).equals(Set.copyOf(right))) {
      return new Marked(said.size() == new LinkedHashSet<>(said).size(), 0);
    }
    int pairs = 0;
    int good = 0;
    for (int i = 0; i < said.size(); i++) {
      for (int j = i + 1; j < said.size(); j++) {
        pairs++;
        good += right.indexOf(said.get(i)) < right.indexOf(said.get(j)) ? 1 : -1;
      }
    }
    return marked(question, good / (double) pairs);
  }

  private static Marked number(Question question, String reply) {
    OptionalDouble number = read(reply, question.unit());
    if (number.isEmpty()) {
      return new Marked(false, 0);
    }
    double off = Math.abs(number.getAsDouble() - question.number());
    return marked(question, off <= question.within() * Math.abs(question.number()) + HAIR ? 1 : 0);
  }

  /** A number in the unit asked for; another unit of the same kind is turned into it. */
  static OptionalDouble read(String reply, String unit) {
    Matcher match = NUMBER.matcher(reply.strip());
    if (!match.matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(match.group(1).replace(',', '.'));
    String written = match.group(2).strip();
    String first = unit.split(" ")[0];
    if (written.isEmpty()
        || written.equalsIgnoreCase(unit)
        || written.equalsIgnoreCase(first)
        || (written + "s").equalsIgnoreCase(first)) {
      return OptionalDouble.of(number);
    }
    for (Dimension dimension : Dimension.values()) {
      boolean ours =
          dimension.units().stream().map(Unit::symbol).anyMatch(symbol -> symbol.equals(unit));
      if (ours) {
        try {
          double factor = Quantity.parse("1 " + unit, dimension).value();
          double value = Quantity.parse(match.group(1) + " " + written, dimension).value();
          return OptionalDouble.of(unit.equals("C") ? value : value / factor);
        } catch (NotAQuantity other) {
          return OptionalDouble.empty();
        }
      }
    }
    return OptionalDouble.empty();
  }
}
