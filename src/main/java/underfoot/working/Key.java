package underfoot.working;

import java.util.List;
import java.util.Optional;

/**
 * A key of a working: what may be typed after its equals sign.
 *
 * @param name its name, as typed
 * @param shape whether it is one value, a list, a grid and so on
 * @param dimension the kind of quantity; empty for a choice of words
 * @param unit the unit its range is told in, and a bare number is taken in
 * @param least the least value, in {@code unit}
 * @param most the greatest value, in {@code unit}
 * @param aboveLeast whether the least value itself is left out
 * @param bare whether a bare number is taken
 * @param needed whether it must be given (alternatives are settled by the working)
 * @param choices the words it may be, for a choice
 * @param explanation what it is, in a few words
 */
public record Key(
    String name,
    Shape shape,
    Optional<Dimension> dimension,
    String unit,
    double least,
    double most,
    boolean aboveLeast,
    boolean bare,
    boolean needed,
    List<String> choices,
    String explanation) {

  /** The shapes a value may have. */
  public enum Shape {
    /** One value. */
    ONE,
    /** Values separated by commas. */
    LIST,
    /** Rows separated by semicolons, cells by commas. */
    GRID,
    /** Points x,y,z separated by semicolons. */
    POINTS,
    /** Hours@temperature, separated by commas. */
    HISTORY,
    /** One word of a few. */
    CHOICE
  }

  /**
   * Most values in a list, cells in a grid or points: enough for a big survey, small enough to be
   * quick.
   */
  static final int MOST_CELLS = 10_000;

  static Key of(
      String name, Dimension dimension, String unit, double least, double most, String words) {
    return new Key(
        name,
        Shape.ONE,
        Optional.of(dimension),
        unit,
        least,
        most,
        false,
        false,
        true,
        List.of(),
        words);
  }

  static Key choice(String name, String words, List<String> choices) {
    return new Key(
        name, Shape.CHOICE, Optional.empty(), "", 0, 0, false, false, true, choices, words);
  }

  Key as(Shape other) {
    return new Key(
        name, other, dimension, unit, least, most, aboveLeast, bare, needed, choices, explanation);
  }

  Key optional() {
    return new Key(
        name, shape, dimension, unit, least, most, aboveLeast, bare, false, choices, explanation);
  }

  Key above() {
    return new Key(
        name, shape, dimension, unit, least, most, true, bare, needed, choices, explanation);
  }

  Key takesBare() {
    return new Key(
        name, shape, dimension, unit, least, most, aboveLeast, true, needed, choices, explanation);
  }

  /**
   * Its unit and range in one phrase: {@code a length in mm, cm, m, in or ft, 10 mm to 1000 mm}.
   */
  public String range() {
    return switch (shape) {
      case CHOICE -> Show.either(choices);
      case ONE -> kind() + ", " + span(unit, least, most, aboveLeast);
      case LIST ->
          "a list with commas, each "
              + kind()
              + (bare ? " or a bare number of " + unit : "")
              + ", "
              + span(unit, least, most, aboveLeast);
      case GRID ->
          "rows separated by ; of heights separated by , in mm, "
              + span(unit, least, most, aboveLeast);
      case POINTS ->
          "points x,y,z separated by ; with x and y in m (-10000 m to 10000 m), z in mm ("
              + span(unit, least, most, aboveLeast)
              + ")";
      case HISTORY ->
          "a list with commas of hours@temperature, h (more than 0 h, at most 100000 h) and C ("
              + span(unit, least, most, aboveLeast)
              + ")";
    };
  }

  private String kind() {
    Dimension held = dimension.orElseThrow();
    if (held.units().isEmpty()) {
      return held.words();
    }
    return held.words()
        + (bare && shape == Shape.ONE ? ", a bare number or in " : " in ")
        + Show.either(held.units());
  }

  private static String span(String unit, double least, double most, boolean open) {
    String suffix = unit.isEmpty() ? "" : " " + unit;
    return open
        ? "more than " + Show.number(least) + suffix + ", at most " + Show.number(most) + suffix
        : Show.number(least) + suffix + " to " + Show.number(most) + suffix;
  }

  /** A refusal of this key: its name, the reason, its unit and range, on one line. */
  Refused refuse(String reason) {
    return new Refused(name + ": " + reason + "; it is " + range());
  }
}
