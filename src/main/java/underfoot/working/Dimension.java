package underfoot.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of quantity with the units it may be written in. The first unit is the one values are held
 * in.
 */
public enum Dimension {
  /** Length, held in mm. */
  LENGTH(
      "a length",
      unit("mm", 1),
      unit("cm", 10),
      unit("m", 1000),
      unit("in", 25.4),
      unit("ft", 304.8)),
  /** Area, held in m2. */
  AREA("an area", unit("m2", 1)),
  /** Stress or elastic modulus, held in N/mm2. */
  STRESS("a stress", unit("N/mm2", 1), unit("GPa", 1000), unit("psi", 6894.757293168361e-6)),
  /** Load on an area, held in kN/m2. */
  AREA_LOAD("a load on an area", unit("kN/m2", 1), unit("psf", 47.88025898033584e-3)),
  /** Mass on an area, held in kg/m2. */
  AREA_MASS("a mass on an area", unit("kg/m2", 1)),
  /** Mass on an area for each mm of depth, held in kg/m2 per mm. */
  MASS_PER_DEPTH(
      "a mass on an area per mm of depth",
      unit("kg/m2", 1),
      also("kg/m2 per mm", 1),
      also("kg/m2 per mm of depth", 1),
      also("kg/m2/mm", 1),
      also("kg/m2.mm", 1),
      also("kg/m2mm", 1)),
  /** Mass of a volume, held in kg/L. */
  DENSITY("a density", unit("kg/L", 1)),
  /** Temperature, held in C. */
  TEMPERATURE("a temperature", unit("C", 1)),
  /** Temperature difference, held in K. */
  TEMPERATURE_STEP(
      "a temperature step per day",
      unit("K", 1),
      also("K/day", 1),
      also("K per day", 1),
      also("K/d", 1)),
  /** Per cent. */
  PERCENT("a percentage", unit("%", 1)),
  /** Speed, held in km/h. */
  SPEED("a speed", unit("km/h", 1)),
  /** Time, held in h. */
  TIME("a time", unit("h", 1)),
  /** Heat flow through an area, held in W/m2. */
  HEAT_FLOW("a heat flow", unit("W/m2", 1)),
  /** Thermal conductivity, held in W/mK. */
  CONDUCTIVITY(
      "a conductivity", unit("W/mK", 1), also("W/m.K", 1), also("W/(mK)", 1), also("W/(m.K)", 1)),
  /** Thermal resistance, held in m2K/W. */
  RESISTANCE("a thermal resistance", unit("m2K/W", 1), also("m2.K/W", 1)),
  /** Bending stiffness of a strip one metre wide, held in N.m2. */
  STIFFNESS(
      "a bending stiffness per m of width",
      unit("N.m2", 1),
      also("Nm2", 1),
      also("N.m2/m", 1),
      also("Nm2/m", 1),
      also("N.m2 per m", 1),
      also("N.m2 per m of width", 1)),
  /** Frequency, held in Hz. */
  FREQUENCY("a frequency", unit("Hz", 1)),
  /** Angle, held in degrees. */
  ANGLE("an angle", unit("degrees", 1), also("deg", 1), also("degree", 1), also("°", 1)),
  /** Whole days. */
  DAYS("whole days", unit("days", 1), also("day", 1), also("d", 1)),
  /** Time for each mm of depth, held in days/mm. */
  DAYS_PER_DEPTH("a time per mm of depth", unit("days/mm", 1), also("day/mm", 1)),
  /** Water leaving a surface, held in kg/m2h. */
  EVAPORATION("an evaporation rate", unit("kg/m2h", 1)),
  /** The n of span/n, a pure number. */
  SPAN_SHARE("the n of span/n"),
  /** The n of a fall of 1:n, a pure number. */
  GRADIENT("the n of a fall of 1:n");

  private static final String DECIMAL =
      "[0-9]+(?:\\.[0-9]*)?(?:[eE][+-]?[0-9]+)?|\\.[0-9]+(?:[eE][+-]?[0-9]+)?";
  private static final String NUMBER =
      "(?:(?<whole>[0-9]{1,9})(?:\\s+|-))?(?<top>[0-9]{1,9})\\s*/\\s*(?<bottom>[0-9]{1,9})"
          + "|(?<decimal>"
          + DECIMAL
          + ")";
  private static final Pattern QUANTITY =
      Pattern.compile("(?<sign>[+-]?)\\s*(?:" + NUMBER + ")(?<unit>.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(?<sign>[+-]?)\\s*(?<feet>" + DECIMAL + ")\\s*ft\\s+(?:" + NUMBER + ")\\s*in");
  private static final Pattern SHARE =
      Pattern.compile("(?:(?:1|L|l|span)\\s*/\\s*)?(?<n>" + DECIMAL + ")");
  private static final Pattern FALL =
      Pattern.compile("(?:1\\s*:\\s*|1\\s+in\\s+)?(?<n>" + DECIMAL + ")");
  private static final Pattern FALL_PERCENT = Pattern.compile("(?<n>" + DECIMAL + ")\\s*%");

  private final String words;
  private final Map<String, Double> factors = new LinkedHashMap<>();
  private final List<String> listed = new ArrayList<>();

  Dimension(String words, Spelling... spellings) {
    this.words = words;
    for (Spelling spelling : spellings) {
      factors.put(spelling.text(), spelling.factor());
      if (spelling.listed()) {
        listed.add(spelling.text());
      }
    }
  }

  /** What it is, in words: {@code a length}. */
  public String words() {
    return words;
  }

  /** The units it may be written in; empty for a pure number. */
  public List<String> units() {
    return List.copyOf(listed);
  }

  /**
   * The value of one of a unit in the unit values are held in.
   *
   * @param unit a unit of this dimension, or the empty text for a pure number
   */
  double factor(String unit) {
    return factors.getOrDefault(unit, 1.0);
  }

  /** Whether a number in that unit is one of this kind; a pure number has the empty text for it. */
  boolean takes(String unit) {
    return factors.isEmpty() ? unit.isEmpty() : factors.containsKey(unit);
  }

  /**
   * Reads a quantity: {@code 47 mm}, {@code 1 1/2 in}, {@code 9 ft 4 in}, {@code 1.6e6 psi}.
   *
   * @param text what was typed
   * @param bareUnit the unit of a bare number, or empty where a bare number is not taken
   * @return the value in the unit values are held in
   * @throws Refused with the reason only; the caller adds key, unit and range
   */
  public double read(String text, Optional<String> bareUnit) {
    String typed = normal(text);
    if (typed.isEmpty()) {
      throw new Refused("has no value");
    }
    if (this == SPAN_SHARE || this == GRADIENT) {
      return readShare(text, typed);
    }
    Matcher mixed = FEET_AND_INCHES.matcher(typed);
    if (this == LENGTH && mixed.matches()) {
      double size = number(mixed.group("feet")) * 304.8 + amount(mixed, text) * 25.4;
      return finite("-".equals(mixed.group("sign")) ? -size : size, text);
    }
    Matcher matcher = QUANTITY.matcher(typed);
    if (!matcher.matches()) {
      throw new Refused(Show.quote(text) + " is not a number with a unit");
    }
    String unit = matcher.group("unit").strip();
    if (unit.isEmpty()) {
      unit = bareUnit.orElseThrow(() -> new Refused(Show.quote(text) + " has no unit"));
    }
    Double factor = factors.get(unit);
    if (factor == null) {
      throw new Refused(
          unit.startsWith(",")
              ? Show.quote(text) + " is not one number (a decimal is written with a point)"
              : Show.quote(text) + " is not in a unit known here");
    }
    double size = amount(matcher, text) * factor;
    return finite("-".equals(matcher.group("sign")) ? -size : size, text);
  }

  private double readShare(String text, String typed) {
    Matcher plain = (this == SPAN_SHARE ? SHARE : FALL).matcher(typed);
    if (plain.matches()) {
      return finite(number(plain.group("n")), text);
    }
    Matcher percent = FALL_PERCENT.matcher(typed);
    if (this == GRADIENT && percent.matches() && number(percent.group("n")) > 0) {
      return finite(100 / number(percent.group("n")), text);
    }
    throw new Refused(Show.quote(text) + " is not a number of that kind");
  }

  private static double amount(Matcher matcher, String text) {
    if (matcher.group("decimal") != null) {
      return number(matcher.group("decimal"));
    }
    double bottom = number(matcher.group("bottom"));
    if (bottom == 0) {
      throw new Refused(Show.quote(text) + " divides by nought");
    }
    double whole = matcher.group("whole") == null ? 0 : number(matcher.group("whole"));
    return whole + number(matcher.group("top")) / bottom;
  }

  private static double number(String digits) {
    return Double.parseDouble(digits);
  }

  private static double finite(double value, String text) {
    if (!Double.isFinite(value)) {
      throw new Refused(Show.quote(text) + " is too large a number");
    }
    return value;
  }

  /** One spelling for each sign: superscripts, dots, degrees and odd spaces become plain ones. */
  private static String normal(String text) {
    return text.replace('\u00a0', ' ')
        .replace('\u2009', ' ')
        .replace('\u202f', ' ')
        .replace('\u2212', '-')
        .replace('\u00b2', '2')
        .replace('\u00b3', '3')
        .replace('\u00b7', '.')
        .replace('\u22c5', '.')
        .replace("\u00b0C", "C")
        .strip();
  }

  private record Spelling(String text, double factor, boolean listed) {}

  private static Spelling unit(String text, double factor) {
    return new Spelling(text, factor, true);
  }

  private static Spelling also(String text, double factor) {
    return new Spelling(text, factor, false);
  }
}
