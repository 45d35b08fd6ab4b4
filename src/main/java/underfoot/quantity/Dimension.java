package underfoot.quantity;

import static underfoot.quantity.Unit.of;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a quantity measures, its base unit and the units it may be written in.
 *
 * <p>Conversion factors are those of NIST Special Publication 811, Appendix B.8 (inch, foot, yard,
 * pound, ounce and mile exact by definition). A month is a twelfth of 365.25 days, 30.4375 days.
 */
public enum Dimension {
  /** Length; base mm. */
  LENGTH(
      "length",
      "a length",
      of("mm", 1, "millimetre", "millimetres", "millimeter", "millimeters"),
      of("um", 0.001, "\u00b5m", "\u03bcm", "micron", "microns", "micrometre", "micrometres"),
      of("cm", 10, "centimetre", "centimetres", "centimeter", "centimeters"),
      of("m", 1000, "metre", "metres", "meter", "meters"),
      of("in", 25.4, "\"", "''", "inch", "inches", "ins"),
      of("ft", 304.8, "'", "foot", "feet"),
      of("yd", 914.4, "yard", "yards")),
  /** Area; base m2. */
  AREA(
      "area",
      "an area",
      of("m2", 1, "m²", "m^2", "sq m", "sqm", "sq metres", "square metre", "square metres"),
      of("cm2", 1e-4, "cm²", "cm^2", "sq cm", "square centimetres"),
      of("mm2", 1e-6, "mm²", "mm^2", "sq mm", "square millimetres"),
      of("ft2", 0.09290304, "ft²", "ft^2", "sq ft", "sqft", "square foot", "square feet"),
      of("in2", 6.4516e-4, "in²", "in^2", "sq in", "square inch", "square inches"),
      of("yd2", 0.83612736, "yd²", "yd^2", "sq yd", "square yard", "square yards")),
  /** Volume; base litre. */
  VOLUME(
      "volume",
      "a volume",
      of("L", 1, "l", "litre", "litres", "liter", "liters"),
      of("mL", 1e-3, "ml", "millilitre", "millilitres"),
      of("m3", 1000, "m³", "m^3", "cubic metre", "cubic metres"),
      of("ft3", 28.316846592, "ft³", "ft^3", "cu ft", "cubic foot", "cubic feet"),
      of("UK gal", 4.54609, "imperial gallon", "imperial gallons"),
      of("US gal", 3.785411784, "us gallon", "us gallons")),
  /** Temperature; base degree Celsius. */
  TEMPERATURE(
      "temperature",
      "a temperature",
      of("C", 1, "°c", "º c", "ºc", "° c", "deg c", "degc", "celsius", "degrees c", "degrees"),
      new Unit(
          "F", 5.0 / 9.0, -32, List.of("°f", "° f", "deg f", "degf", "fahrenheit", "degrees f")),
      new Unit("K", 1, -273.15, List.of("kelvin"))),
  /** A share of a whole; base per cent. */
  RATIO(
      "ratio",
      "a percentage",
      of("%", 1, "percent", "per cent", "pc", "% rh", "%rh", "rh", "% cm", "%cm", "cm %", "cm-%")),
  /** Speed; base km/h. */
  SPEED(
      "speed",
      "a speed",
      of("km/h", 1, "kph", "kmh", "km per hour"),
      of("m/s", 3.6, "mps", "metres per second"),
      of("mph", 1.609344, "miles per hour"),
      of("ft/min", 0.018288, "fpm")),
  /** Time; base hour. */
  TIME(
      "time",
      "a time",
      of("h", 1, "hr", "hrs", "hour", "hours"),
      of("min", 1.0 / 60, "mins", "minute", "minutes"),
      of("s", 1.0 / 3600, "sec", "secs", "second", "seconds"),
      of("days", 24, "day", "d"),
      of("weeks", 168, "week", "wk", "wks"),
      of("months", 730.5, "month"),
      of("years", 8766, "year", "yr", "yrs")),
  /** Mass; base kg. */
  MASS(
      "mass",
      "a mass",
      of("kg", 1, "kilo", "kilos", "kilogram", "kilograms", "kgs"),
      of("g", 1e-3, "gram", "grams"),
      of("t", 1000, "tonne", "tonnes"),
      of("lb", 0.45359237, "lbs", "pound", "pounds"),
      of("oz", 0.028349523125, "ounce", "ounces"),
      of("stone", 6.35029318, "st")),
  /** Load on an area; base kN/m2. */
  PRESSURE(
      "pressure",
      "a load on an area",
      of("kN/m2", 1, "kn/m²", "kn/m^2", "kpa", "kn per square metre"),
      of("N/m2", 1e-3, "n/m²", "pa"),
      of("psf", 47.88025898033584e-3, "lb/ft2", "lb/ft²", "lbf/ft2", "pounds per square foot")),
  /** Stress or strength; base N/mm2. */
  STRESS(
      "stress",
      "a strength or stiffness",
      of("N/mm2", 1, "n/mm²", "n/mm^2", "mpa"),
      of("GPa", 1000, "kn/mm2", "kn/mm²"),
      of("psi", 6894.757293168361e-6, "lbf/in2")),
  /** Force; base kN. */
  FORCE(
      "force",
      "a force",
      of("kN", 1, "kilonewton", "kilonewtons"),
      of("N", 1e-3, "newton", "newtons"),
      of("lbf", 0.0044482216152605)),
  /** Density; base kg/L. */
  DENSITY(
      "density",
      "a density",
      of("kg/L", 1, "kg/litre"),
      of("kg/m3", 1e-3, "kg/m³", "kg/m^3"),
      of("lb/ft3", 0.016018463373960142)),
  /** Mass on an area; base kg/m2. */
  AREA_MASS(
      "mass per area",
      "a mass on each square metre",
      of("kg/m2", 1, "kg/m²", "kg/m^2"),
      of("g/m2", 1e-3, "g/m²")),
  /** Mass on an area for each mm of depth; base kg/m2 per mm. */
  MASS_PER_DEPTH(
      "mass per area and depth",
      "a mass on each square metre per mm of depth",
      of(
          "kg/m2",
          1,
          "kg/m²",
          "kg/m2 per mm",
          "kg/m² per mm",
          "kg/m2 per mm of depth",
          "kg/m2/mm",
          "kg/m2.mm",
          "kg/m2mm")),
  /** Heat given off by an area; base W/m2. */
  HEAT_FLUX(
      "heat flux",
      "a heat output",
      of("W/m2", 1, "w/m²", "w/m^2", "watts per square metre"),
      of("W/ft2", 10.763910416709722, "w/ft²", "watts per square foot"),
      of("Btu/h ft2", 3.154590745063049, "btu/(h ft2)", "btu/h/ft2")),
  /** Difference of temperatures, or a step of one each day; base K. */
  TEMPERATURE_DIFFERENCE(
      "temperature difference",
      "a temperature difference",
      of("K", 1, "kelvin", "k/day", "k per day", "k/d")),
  /** Thermal conductivity; base W/mK. */
  CONDUCTIVITY(
      "conductivity", "a conductivity", of("W/mK", 1, "w/m.k", "w/(mk)", "w/(m.k)", "w/m k")),
  /** Thermal resistance of an area; base m2K/W. */
  RESISTANCE(
      "thermal resistance",
      "a thermal resistance",
      of("m2K/W", 1, "m²k/w", "m2.k/w", "m².k/w", "m2 k/w")),
  /** Bending stiffness of a strip one metre wide; base N.m2. */
  BENDING_STIFFNESS(
      "bending stiffness",
      "a bending stiffness per m of width",
      of(
          "N.m2",
          1,
          "n.m²",
          "nm2",
          "nm²",
          "n.m2/m",
          "n.m²/m",
          "nm2/m",
          "n.m2 per m",
          "n.m2 per m of width")),
  /** Frequency; base Hz. */
  FREQUENCY("frequency", "a frequency", of("Hz", 1, "hertz")),
  /** Angle; base degree. */
  ANGLE("angle", "an angle", of("degrees", 1, "degree", "deg", "°")),
  /** Time for each mm of depth; base days/mm. */
  TIME_PER_DEPTH("time per depth", "a time per mm of depth", of("days/mm", 1, "day/mm")),
  /** Water leaving a surface; base kg/m2h. */
  EVAPORATION("evaporation", "an evaporation rate", of("kg/m2h", 1, "kg/m²h", "kg/m2/h")),
  /** A fall, held as the n of 1:n, and written {@code 1:50}, {@code 1 in 50}, 50 or 2 %. */
  GRADIENT("gradient", "the n of a fall of 1:n"),
  /**
   * A share of a span, held as the n of span/n, and written {@code L/360}, {@code 1/360} or 360.
   */
  SPAN_SHARE("share of a span", "the n of span/n"),
  /** Money; the number stays in the currency it is written in. */
  MONEY(
      "money",
      "a sum of money",
      of("GBP", 1, "£", "pounds", "pound", "pounds sterling"),
      of("EUR", 1, "€", "euro", "euros"),
      of("USD", 1, "$", "dollar", "dollars")),
  /** A plain number, without a unit. */
  NUMBER("number", "a plain number");

  private static final Map<String, Dimension> BY_NAME = new HashMap<>();

  static {
    for (Dimension dimension : values()) {
      BY_NAME.put(dimension.word, dimension);
    }
    BY_NAME.put("load", PRESSURE);
  }

  private final String word;
  private final String phrase;
  private final List<Unit> units;
  private final Map<String, Unit> bySpelling = new HashMap<>();

  Dimension(String word, String phrase, Unit... units) {
    this.word = word;
    this.phrase = phrase;
    this.units = List.of(units);
    for (Unit unit : units) {
      bySpelling.put(unit.symbol(), unit);
      bySpelling.put(unit.symbol().toLowerCase(Locale.ROOT), unit);
      for (String spelling : unit.spellings()) {
        bySpelling.put(spelling, unit);
      }
    }
  }

  /**
   * The dimension a unit belongs to; of two, the first.
   *
   * @param spelling the unit as written, such as {@code kg/m2}
   * @return the dimension, or empty if no unit is written so
   */
  public static Optional<Dimension> ofUnit(String spelling) {
    for (Dimension dimension : values()) {
      if (dimension.unit(spelling) != null) {
        return Optional.of(dimension);
      }
    }
    return Optional.empty();
  }

  /**
   * The dimension of this name.
   *
   * @param name a name as the facts files write it, such as {@code heat flux}
   * @return the dimension, or empty if there is none of this name
   */
  public static Optional<Dimension> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name.trim().toLowerCase(Locale.ROOT)));
  }

  /** The dimension's name as the facts files write it, such as {@code heat flux}. */
  public String word() {
    return word;
  }

  /** The dimension in a sentence, such as {@code a length}. */
  public String phrase() {
    return phrase;
  }

  /** The units it may be written in, the base unit first; empty for a plain number. */
  public List<Unit> units() {
    return units;
  }

  /** The symbol of the base unit; empty for a plain number. */
  public String base() {
    return units.isEmpty() ? "" : units.get(0).symbol();
  }

  /**
   * The unit written so, letter case not minded.
   *
   * @param spelling the unit as written, such as {@code inches} or {@code m²}
   * @return the unit, or null if this dimension has none of that spelling
   */
  public Unit unit(String spelling) {
    Unit exact = bySpelling.get(spelling);
    return exact != null ? exact : bySpelling.get(spelling.toLowerCase(Locale.ROOT));
  }

  /** Every way to write one of its units, for suggestions and the schema. */
  public Iterable<String> spellings() {
    return bySpelling.keySet();
  }
}
