package underfoot.working;

import java.util.List;
import java.util.Set;
import underfoot.quantity.Dimension;
import underfoot.quantity.Unit;

/**
 * A key of a working: what may be typed after its equals sign.
 *
 * @param name its name, as typed
 * @param shape whether it is one value, a list, a grid and so on
 * @param dimension the kind of quantity; null for a choice of words
 * @param unit the unit its range is told in, and a bare number is taken in
 * @param least the least value, in {@code unit}
 * @param most the greatest value, in {@code unit}
 * @param traits what else holds of it
 * @param choices the words it may be, for a choice
 * @param explanation what it is, in a few words
 */
public record Key(
    String name,
    Shape shape,
    Dimension dimension,
    String unit,
    double least,
    double most,
    Set<Trait> traits,
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

  /** What may hold of a key. */
  public enum Trait {
    /** It may be left out, or is one way of several. */
    OPTIONAL,
    /** The least value itself is left out. */
    ABOVE,
    /** A bare number is taken. */
    BARE
  }

  /** Most values in a list, cells in a grid or points: enough for a big survey, and quick. */
  static final int MOST_CELLS = 10_000;

  /** One quantity; its least and greatest value are in the unit. */
  static Key of(
      String name,
      Dimension dimension,
      String unit,
      double least,
      double most,
      String words,
      Trait... traits) {
    return new Key(name, Shape.ONE, dimension, unit, least, most, Set.of(traits), List.of(), words);
  }

  static Key choice(String name, String words, List<String> choices, Trait... traits) {
    return new Key(name, Shape.CHOICE, null, "", 0, 0, Set.of(traits), choices, words);
  }

  Key as(Shape other) {
    return new Key(name, other, dimension, unit, least, most, traits, choices, explanation);
  }

  /** Whether it must be given (alternatives are settled by the working). */
  public boolean needed() {
    return !traits.contains(Trait.OPTIONAL);
  }

  boolean bare() {
    return traits.contains(Trait.BARE);
  }

  /** How many base units its unit is. */
  double factor() {
    return unit.isEmpty() ? 1 : dimension.unit(unit).factor();
  }

  /** Whether a value in the base unit lies within its range. */
  boolean takes(double value) {
    double low = least * factor();
    return (traits.contains(Trait.ABOVE) ? value > low : value >= low) && value <= most * factor();
  }

  /** A value in the base unit, told in the unit of the key. */
  Measure measure(double value) {
    return new Measure(value / factor(), unit);
  }

  /**
   * Its unit and range in one phrase: {@code a length in mm, cm, m, in, ft or yd, 10 mm to 1000
   * mm}.
   */
  public String range() {
    return switch (shape) {
      case CHOICE -> Show.either(choices);
      case ONE -> kind() + ", " + span();
      case LIST ->
          "a list with commas, each "
              + kind()
              + (bare() ? " or a bare number of " + unit : "")
              + ", "
              + span();
      case GRID -> "rows separated by ; of heights separated by , in mm, " + span();
      case POINTS ->
          "points x,y,z separated by ; with x and y in m (-10000 m to 10000 m), z in mm ("
              + span()
              + ")";
      case HISTORY ->
          "a list with commas of hours@temperature, h (more than 0 h, at most 100000 h) and C ("
              + span()
              + ")";
    };
  }

  private String kind() {
    List<String> units = dimension.units().stream().map(Unit::symbol).toList();
    boolean orBare = bare() && shape == Shape.ONE;
    return units.isEmpty()
        ? dimension.phrase()
        : dimension.phrase() + (orBare ? ", a bare number or in " : " in ") + Show.either(units);
  }

  private String span() {
    String suffix = unit.isEmpty() ? "" : " " + unit;
    String low = Show.number(least) + suffix;
    String high = Show.number(most) + suffix;
    return traits.contains(Trait.ABOVE)
        ? "more than " + low + ", at most " + high
        : low + " to " + high;
  }

  /** A refusal of this key: its name, the reason, its unit and range, on one line. */
  Refused refuse(String reason) {
    return new Refused(name + ": " + reason + "; it is " + range());
  }
}
