package underfoot.knowledge;

import java.util.List;
import java.util.Objects;

/**
 * One thing held to be true of this floor.
 *
 * @param key the scenario key, such as {@code subfloor.deck}, or the name for facts that are not in
 *     scenario files
 * @param name what rules call it, such as {@code deck}
 * @param about which of several things it is about, such as a door's name; empty for the room
 * @param text the value in words, such as {@code square-edged boards} or {@code 21 mm}
 * @param number the value in the base unit of its dimension; NaN where it is not a number
 * @param from where it comes from
 * @param how for measured facts the formula with its numbers, otherwise empty
 * @param uses what a measured fact was worked out from; empty for the others
 * @param because why a rule assumed or concluded it; null for the others
 * @param says name and value as one text, which rules match in a single comparison
 */
public record Fact(
    String key,
    String name,
    String about,
    String text,
    double number,
    From from,
    String how,
    List<Object> uses,
    Derivation because,
    String says) {

  private static final double FINEST = 1e9;
  private static final double LARGE = 1e6;

  /** Copies the list. */
  public Fact {
    Objects.requireNonNull(key);
    Objects.requireNonNull(name);
    Objects.requireNonNull(about);
    Objects.requireNonNull(text);
    uses = List.copyOf(uses);
  }

  /** A fact whose {@code says} follows from its name and value. */
  public Fact(
      String key,
      String name,
      String about,
      String text,
      double number,
      From from,
      String how,
      List<Object> uses,
      Derivation because) {
    this(key, name, about, text, number, from, how, uses, because, name + ": " + text);
  }

  /** A fact that the scenario states. */
  public static Fact stated(String key, String name, String about, String text, double number) {
    return new Fact(key, name, about, text, number, From.SCENARIO, "", List.of(), null);
  }

  /** A fact worked out from others. */
  public static Fact measured(
      String name, String about, String text, double number, String how, List<Object> uses) {
    // Sums of decimal fractions miss their limit by a hair; nothing here is known to a billionth.
    double fine = Math.abs(number) < LARGE ? Math.rint(number * FINEST) / FINEST : number;
    return new Fact(name, name, about, text, fine, From.MEASURED, how, uses, null);
  }

  /**
   * Two facts are the same if they say the same of the same thing and one rule stands behind both.
   * What that rule matched does not count: otherwise rules that rest on each other would conclude
   * ever longer chains.
   */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Fact that
            && from == that.from
            && says.equals(that.says)
            && about.equals(that.about)
            && rule().equals(that.rule()));
  }

  @Override
  public int hashCode() {
    return 31 * says.hashCode() + about.hashCode();
  }

  private String rule() {
    return because == null ? "" : because.rule().id();
  }

  /** Whether the value is a number. */
  public boolean hasNumber() {
    return !Double.isNaN(number);
  }
}
