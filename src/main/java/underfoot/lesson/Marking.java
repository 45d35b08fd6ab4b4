package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Unit;

/**
 * Marks what somebody answered. What can only be a slip of the pen - a letter that is not there,
 * two letters where one is asked for, a line given twice, another sort of unit, a point in the
 * wrong place - costs no mark: it is given back to be written again.
 */
public final class Marking {
  private static final Pattern NUMBER =
      Pattern.compile(
          "([-+]?[0-9]+(?:[.,][0-9]+)*(?:[eE][-+]?[0-9]{1,2})?)\\s*(.*)", Pattern.DOTALL);
  private static final double HALVES = 2;
  private static final double HAIR = 1e-9;
  private static final int TENS = 6;

  private Marking() {}

  /** What became of an answer. */
  public enum State {
    /** All of it is right. */
    RIGHT,
    /** Part of it is right. */
    PARTLY,
    /** None of it is right. */
    WRONG,
    /** It cannot be meant so, and is to be written again. */
    AGAIN,
    /** Nothing was written. */
    NONE
  }

  /**
   * What an answer is worth.
   *
   * @param state what became of it
   * @param got the marks it gets, in halves
   * @param shows what was misunderstood, as far as the answer shows it
   * @param say the phrase that says why it is given back; empty if it is not
   */
  public record Marked(State state, double got, List<String> shows, String say) {
    /** Copies the list. */
    public Marked {
      shows = List.copyOf(shows);
    }

    /** Whether it could be read as an answer. */
    public boolean read() {
      return state != State.AGAIN && state != State.NONE;
    }
  }

  /**
   * Marks an answer.
   *
   * @param question what was asked
   * @param reply what was answered, as typed
   */
  public static Marked of(Question question, String reply) {
    String said = reply.strip();
    if (said.isEmpty()) {
      return new Marked(State.NONE, 0, List.of(), "lesson-no-answer");
    }
    return switch (question.reply()) {
      case NUMBER -> number(question, said);
      case ORDER -> order(question, named(question, said));
      default -> some(question, named(question, said));
    };
  }

  private static Marked again(String why) {
    return new Marked(State.AGAIN, 0, List.of(), why);
  }

  private static Marked marked(Question question, double share, List<String> shows) {
    double got = Math.round(Math.max(0, share) * question.level() * HALVES) / HALVES;
    State state = got >= question.level() ? State.RIGHT : got > 0 ? State.PARTLY : State.WRONG;
    return new Marked(state, got, state == State.RIGHT ? List.of() : shows, "");
  }

  /** The letters or lines of a reply; null if it says anything else, or one of them twice. */
  private static List<String> named(Question question, String reply) {
    for (Question.Option option : question.options()) {
      if (option.text().equalsIgnoreCase(reply)) {
        return List.of(option.label());
      }
    }
    String plain =
        reply
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\b(and|then|lines?|answers?|letters?)\\b", " ")
            .replaceAll("[,;.:+>/&()\\[\\]\\-]+", " ")
            .strip();
    List<String> found = new ArrayList<>();
    for (String word : plain.split("\\s+")) {
      boolean letters = word.length() > 1 && !word.matches("[0-9]+");
      for (String one : letters ? word.split("") : new String[] {word}) {
        if (question.options().stream().noneMatch(option -> option.label().equals(one))
            || found.contains(one)) {
          return null;
        }
        found.add(one);
      }
    }
    return found;
  }

  private static Marked some(Question question, List<String> said) {
    int wanted = question.right().size();
    if (said == null) {
      return again("lesson-not-an-option");
    }
    if (said.size() > wanted) {
      return again(wanted == 1 ? "lesson-only-one" : "lesson-too-many");
    }
    Set<String> left = new LinkedHashSet<>(said);
    int hits = 0;
    List<String> shows = new ArrayList<>();
    for (Set<String> group : question.right()) {
      if (left.stream().anyMatch(group::contains)) {
        hits++;
        left.removeAll(group);
      } else if (question.reply() == Question.Reply.LINES) {
        shown(question, group::contains, shows);
      }
    }
    shown(question, left::contains, shows);
    return marked(question, hits / (double) wanted, shows);
  }

  private static void shown(Question question, Predicate<String> labels, List<String> shows) {
    for (Question.Option one : question.options()) {
      if (labels.test(one.label()) && !one.shows().isEmpty()) {
        shows.add(one.shows());
      }
    }
  }

  /** Marks by the pairs that stand in the right order. */
  private static Marked order(Question question, List<String> said) {
    List<String> right = question.right().stream().map(group -> group.iterator().next()).toList();
    if (said == null) {
      return again("lesson-not-an-option");
    }
    if (said.size() != right.size()) {
      return again("lesson-all-in-order");
    }
    int pairs = 0;
    int good = 0;
    List<String> shows = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      for (int j = i + 1; j < said.size(); j++) {
        boolean inOrder = right.indexOf(said.get(i)) < right.indexOf(said.get(j));
        pairs++;
        good += inOrder ? 1 : -1;
        if (!inOrder && j == i + 1) {
          shows.add(text(question, said.get(j)) + " < " + text(question, said.get(i)));
        }
      }
    }
    return marked(question, good / (double) pairs, shows);
  }

  private static String text(Question question, String label) {
    return question.options().stream()
        .filter(option -> option.label().equals(label))
        .findFirst()
        .map(Question.Option::text)
        .orElse("");
  }

  private static boolean near(double number, double other, double within) {
    return Math.abs(number - other) <= within * Math.abs(other) + HAIR;
  }

  private static Marked number(Question question, String reply) {
    List<Double> readings = read(reply, question.unit());
    if (readings.isEmpty()) {
      return again("lesson-not-a-number");
    }
    for (double number : readings) {
      if (near(number, question.number(), question.within())) {
        return marked(question, 1, List.of());
      }
    }
    double number = readings.get(0);
    for (Question.Slip slip : question.slips()) {
      if (near(number, slip.number(), Math.max(question.within(), HAIR))) {
        return marked(question, 0, List.of(slip.shows()));
      }
    }
    for (int tens = -TENS; tens <= TENS; tens++) {
      boolean figures = near(number * Math.pow(10, tens), question.number(), question.within());
      if (figures && tens != 0 && question.within() > 0) {
        return again("lesson-look-at-the-point");
      }
    }
    return marked(question, 0, List.of());
  }

  /**
   * What a number may mean, in the unit asked for: another unit of the same kind is turned into it,
   * and a comma may be a point or part thousands. Empty if it is none.
   */
  static List<Double> read(String reply, String unit) {
    String plain =
        reply
            .strip()
            .replaceAll("(?<=[0-9])[ \u00a0](?=[0-9]{3}\\b)", "")
            .replaceAll("(?<=[0-9])\\s*[*x×]\\s*10\\^?(?=[0-9])", "e");
    Matcher match = NUMBER.matcher(plain);
    if (!match.matches()) {
      return List.of();
    }
    List<Double> meant = new ArrayList<>();
    String digits = match.group(1);
    if (digits.indexOf(',') == digits.lastIndexOf(',') && !digits.contains(".")) {
      add(digits.replace(',', '.'), match.group(2).strip(), unit, meant);
    }
    if (digits.matches(
        "[-+]?[0-9]{1,3}(,[0-9]{3})*(\\.[0-9]+)?(?:[eE].*)?|[-+]?[0-9]+(\\.[0-9]+)?(?:[eE].*)?")) {
      add(digits.replace(",", ""), match.group(2).strip(), unit, meant);
    }
    return meant;
  }

  private static void add(String digits, String written, String unit, List<Double> meant) {
    String first = unit.split(" ")[0];
    if (written.isEmpty()
        || written.equalsIgnoreCase(unit)
        || written.equalsIgnoreCase(first)
        || (written + "s").equalsIgnoreCase(first)) {
      meant.add(Double.parseDouble(digits));
      return;
    }
    for (Dimension dimension : Dimension.values()) {
      boolean ours =
          dimension.units().stream().map(Unit::symbol).anyMatch(symbol -> symbol.equals(unit));
      if (ours) {
        try {
          double factor = Quantity.parse("1 " + unit, dimension).value();
          double value = Quantity.parse(digits + " " + written, dimension).value();
          meant.add(unit.equals("C") ? value : value / factor);
        } catch (NotAQuantity other) {
          return; // another sort of unit: it is given back
        }
      }
    }
  }
}
