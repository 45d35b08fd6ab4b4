package underfoot.working;

import java.util.ArrayList;
import java.util.List;

/** How long a cement product takes to cure at another temperature. */
public final class CureTime implements Working {
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
  public String name() {
    return "cure-time";
  }

  @Override
  public String purpose() {
    return "How long a cement product needs in the cold or the warm, or what age a history is worth";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("hours", Dimension.TIME, "h", 0, 100_000, "time needed at the reference temperature")
            .above()
            .optional(),
        Key.of(
            "reference", Dimension.TEMPERATURE, "C", 0, 60, "temperature the data sheet speaks of"),
        Key.of("temperature", Dimension.TEMPERATURE, "C", -10, 80, "temperature while curing")
            .optional(),
        Key.of("history", Dimension.TEMPERATURE, "C", -10, 80, "spells of hours@temperature")
            .as(Key.Shape.HISTORY)
            .takesBare()
            .optional());
  }

  @Override
  public List<Alternative> alternatives() {
    return List.of(Alternative.of("temperature", "hours"), Alternative.of("history").with("hours"));
  }

  @Override
  public List<String> example() {
    return List.of("hours=24 h", "reference=23 C", "temperature=10 C");
  }

  @Override
  public String source() {
    return "Equivalent age and activation energy: Freiesleben Hansen and Pedersen 1977 (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double reference = in.number("reference");
    return in.has("history") ? withHistory(in, reference) : atOneTemperature(in, reference);
  }

  private Result atOneTemperature(Inputs in, double reference) {
    double temperature = in.number("temperature");
    double hours = in.number("hours");
    double rate = rate(temperature, reference);
    double needed = hours(hours, reference, temperature);
    Result.Draft draft = new Result.Draft();
    rateStep(draft, temperature, reference, rate);
    draft
        .step(
            "hours needed = hours at the reference/rate",
            Show.number(hours) + "/" + Show.number(rate),
            "hours = " + Show.number(needed) + " h")
        .value("hours", needed, "h")
        .value("rate", rate, "");
    cold(draft, temperature);
    return draft.done(this, in);
  }

  private Result withHistory(Inputs in, double reference) {
    List<Spell> history = new ArrayList<>();
    List<String> terms = new ArrayList<>();
    double elapsed = 0;
    double coldest = Double.POSITIVE_INFINITY;
    for (double[] row : in.rows("history")) {
      history.add(new Spell(row[0], row[1]));
      if (terms.size() < 8) {
        terms.add(Show.number(row[0]) + "*" + Show.number(rate(row[1], reference)));
      }
      elapsed += row[0];
      coldest = Math.min(coldest, row[1]);
    }
    if (history.size() > terms.size()) {
      terms.add("... (" + history.size() + " spells)");
    }
    double age = equivalentAge(history, reference);
    Result.Draft draft = new Result.Draft();
    double first = history.get(0).temperatureC();
    rateStep(draft, first, reference, rate(first, reference));
    draft
        .step(
            "equivalent age = sum of hours*rate",
            String.join(" + ", terms),
            "equivalent-age = " + Show.number(age) + " h")
        .step(
            "mean rate = equivalent age/hours passed",
            Show.number(age) + "/" + Show.number(elapsed),
            "rate = " + Show.number(age / elapsed))
        .value("equivalent-age", age, "h")
        .value("rate", age / elapsed, "");
    if (in.has("hours")) {
      double asked = in.number("hours");
      draft.note(
          age >= asked
              ? "The history is worth the " + Show.number(asked) + " h asked for."
              : "The history falls short of the "
                  + Show.number(asked)
                  + " h asked for by "
                  + Show.number(asked - age)
                  + " h at the reference temperature.");
    }
    cold(draft, coldest);
    return draft.done(this, in);
  }

  private static void rateStep(
      Result.Draft draft, double temperature, double reference, double rate) {
    draft
        .step(
            "E = 33.5 + 1.47*(20 - T) kJ/mol below 20 C, else 33.5",
            "T = " + Show.number(temperature) + " C",
            "E = " + Show.number(energy(temperature) / 1000) + " kJ/mol")
        .step(
            "rate = exp(-(E/R)*(1/T - 1/Tref)), R = 8.314 J/molK, T in K = C + 273.15",
            "exp(-("
                + Show.number(energy(temperature))
                + "/8.314)*(1/"
                + Show.number(temperature + KELVIN)
                + " - 1/"
                + Show.number(reference + KELVIN)
                + "))",
            "rate = " + Show.number(rate));
  }

  private void cold(Result.Draft draft, double temperature) {
    if (temperature < leastC) {
      draft.note(
          "Below "
              + Show.number(leastC)
              + " C cement may stop hardening, and frost may spoil it: the product's own sheet"
              + " governs.");
    }
    draft.note("For Portland cement products; rapid systems may differ, so the sheet comes first.");
  }
}
