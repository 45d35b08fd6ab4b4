package underfoot.working;

import static underfoot.quantity.Dimension.TEMPERATURE;
import static underfoot.quantity.Dimension.TIME;
import static underfoot.working.Key.Trait.ABOVE;
import static underfoot.working.Key.Trait.BARE;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** How long a cement product takes to cure at another temperature. */
public final class CureTime extends Working {
  private static final double GAS_CONSTANT = 8.314;
  private static final double KELVIN = 273.15;
  // Activation energy, J/mol: Freiesleben Hansen and Pedersen 1977.
  private static final double WARM_ENERGY = 33_500;
  private static final double COLD_EXTRA_PER_K = 1_470;
  private static final double COLD_BELOW_C = 20;

  private final double leastC;

  /**
   * Makes the working.
   *
   * @param leastC temperature below which cement may stop hardening, C, for the notes
   */
  public CureTime(double leastC) {
    super(
        new Sheet(
                "cure-time",
                "How long a cement product needs in the cold or the warm, or what age a history is"
                    + " worth",
                "Equivalent age and activation energy: Freiesleben Hansen and Pedersen 1977 (quoted)",
                "hours=24 h",
                "reference=23 C",
                "temperature=10 C")
            .ways(Alternative.of("temperature", "hours"), Alternative.of("history").with("hours")),
        Key.of(
            "hours",
            TIME,
            "h",
            0,
            100_000,
            "time needed at the reference temperature",
            ABOVE,
            OPTIONAL),
        Key.of("reference", TEMPERATURE, "C", 0, 60, "temperature the data sheet speaks of"),
        Key.of("temperature", TEMPERATURE, "C", -10, 80, "temperature while curing", OPTIONAL),
        Key.of("history", TEMPERATURE, "C", -10, 80, "spells of hours@temperature", BARE, OPTIONAL)
            .as(Key.Shape.HISTORY));
    this.leastC = leastC;
  }

  /**
   * A spell at one temperature.
   *
   * @param hours how long, h
   * @param temperatureC how warm, C
   */
  public record Spell(double hours, double temperatureC) {}

  /**
   * The rate of curing relative to that at the reference temperature: exp(-(E/R)(1/T - 1/Tref)), E
   * = 33.5 kJ/mol from 20 C up and 33.5 + 1.47 (20 - T) below, T being the curing temperature.
   *
   * @param temperatureC curing temperature, C, above -100
   * @param referenceC reference temperature, C, above -100
   * @throws IllegalArgumentException outside those ranges
   */
  public static double rate(double temperatureC, double referenceC) {
    Need.positive("temperature + 100", temperatureC + 100);
    Need.positive("reference + 100", referenceC + 100);
    return Math.exp(
        -energy(temperatureC)
            / GAS_CONSTANT
            * (1 / (temperatureC + KELVIN) - 1 / (referenceC + KELVIN)));
  }

  /**
   * The hours needed at a temperature to match some hours at the reference temperature.
   *
   * @param hours hours at the reference, above 0
   * @param referenceC reference temperature, C
   * @param temperatureC curing temperature, C
   */
  public static double hours(double hours, double referenceC, double temperatureC) {
    return Need.positive("hours", hours) / rate(temperatureC, referenceC);
  }

  /**
   * The age at the reference temperature that a history is worth, h.
   *
   * @param history the spells, one after another
   * @param referenceC reference temperature, C
   */
  public static double equivalentAge(List<Spell> history, double referenceC) {
    return history.stream()
        .mapToDouble(
            spell ->
                Need.notNegative("hours", spell.hours()) * rate(spell.temperatureC(), referenceC))
        .sum();
  }

  private static double energy(double temperatureC) {
    return WARM_ENERGY + COLD_EXTRA_PER_K * Math.max(0, COLD_BELOW_C - temperatureC);
  }

  @Override
  Result work(Inputs in) {
    return in.has("history") ? withHistory(in) : atOneTemperature(in);
  }

  private Result atOneTemperature(Inputs in) {
    double temperature = in.number("temperature");
    double reference = in.number("reference");
    Result.Draft draft =
        rate(in, temperature)
            .value("hours", hours(in.number("hours"), reference, temperature), "h")
            .value("rate", rate(temperature, reference), "")
            .let("asked", in.number("hours"))
            .step(
                "hours needed = hours at the reference/rate",
                "{asked}/{rate}",
                "hours = {hours} h");
    return cold(draft, temperature).done(this);
  }

  private Result withHistory(Inputs in) {
    double reference = in.number("reference");
    List<Spell> history =
        Arrays.stream(in.rows("history")).map(row -> new Spell(row[0], row[1])).toList();
    String terms =
        history.stream()
            .limit(8)
            .map(
                spell ->
                    Show.number(spell.hours())
                        + "*"
                        + Show.number(rate(spell.temperatureC(), reference)))
            .collect(Collectors.joining(" + "));
    double elapsed = history.stream().mapToDouble(Spell::hours).sum();
    double age = equivalentAge(history, reference);
    Result.Draft draft =
        rate(in, history.get(0).temperatureC())
            .value("equivalent-age", age, "h")
            .value("rate", age / elapsed, "")
            .let("elapsed", elapsed)
            .step(
                "equivalent age = sum of hours*rate",
                terms + (history.size() > 8 ? " + ... (" + history.size() + " spells)" : ""),
                "equivalent-age = {equivalent-age} h")
            .step(
                "mean rate = equivalent age/hours passed",
                "{equivalent-age}/{elapsed}",
                "rate = {rate}");
    if (in.has("hours")) {
      draft
          .let("short", in.number("hours") - age)
          .note(
              age >= in.number("hours")
                  ? "The history is worth the {hours} h asked for."
                  : "The history falls short of the {hours} h asked for by {short} h at the"
                      + " reference temperature.");
    }
    double coldest = history.stream().mapToDouble(Spell::temperatureC).min().orElseThrow();
    return cold(draft, coldest).done(this);
  }

  private static Result.Draft rate(Inputs in, double temperature) {
    double reference = in.number("reference");
    return new Result.Draft(in)
        .let("C", temperature)
        .let("kJ", energy(temperature) / 1000)
        .let("E", energy(temperature))
        .let("R", GAS_CONSTANT)
        .let("T", temperature + KELVIN)
        .let("Tref", reference + KELVIN)
        .let("rate", rate(temperature, reference))
        .step(
            "E = 33.5 + 1.47*(20 - T) kJ/mol below 20 C, else 33.5", "T = {C} C", "E = {kJ} kJ/mol")
        .step("rate = exp(-(E/R)*(1/T - 1/Tref)), R = 8.314 J/molK, T in K = C + 273.15");
  }

  private Result.Draft cold(Result.Draft draft, double temperature) {
    return draft
        .let("least", leastC)
        .noteIf(
            temperature < leastC,
            "Below {least} C cement may stop hardening, and frost may spoil it: the product's own"
                + " sheet governs.")
        .note("For Portland cement products; rapid systems may differ, so the sheet comes first.");
  }
}
