package underfoot.working;

import java.util.List;
import java.util.Map;

/** How long a screed takes to dry. */
public final class DryingTime implements Working {
  private final Map<String, DryingRates> rates;

  /**
   * Makes the working.
   *
   * @param cement rates of a cement screed
   * @param calciumSulfate rates of a calcium sulfate screed
   */
  public DryingTime(DryingRates cement, DryingRates calciumSulfate) {
    rates = Map.of("cement", cement, "calcium sulfate", calciumSulfate);
  }

  /**
   * Works out the drying time from one face.
   *
   * @param thicknessMm thickness, mm, above 0
   * @param rates how fast that kind of screed dries
   * @return days, not rounded
   * @throws IllegalArgumentException for a thickness that is not above 0
   */
  public static double of(double thicknessMm, DryingRates rates) {
    double first = Math.min(Need.positive("thickness", thicknessMm), rates.firstDepthMm());
    return first * rates.daysPerMm() + (thicknessMm - first) * rates.daysPerMmBeyond();
  }

  @Override
  public String name() {
    return "drying-time";
  }

  @Override
  public String purpose() {
    return "How long a screed takes to dry";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        HeatingProgramme.screedKey(),
        Key.of("thickness", Dimension.LENGTH, "mm", 1, 500, "thickness of the screed"));
  }

  @Override
  public List<String> example() {
    return List.of("screed=cement", "thickness=65 mm");
  }

  @Override
  public String source() {
    return "Cement: BS 8204-1 as quoted for the first depth, trade convention beyond (common"
        + " practice); calcium sulfate: UK trade notes and a warranty body's standard (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    DryingRates rate = rates.get(in.word("screed"));
    double thickness = in.number("thickness");
    double first = Math.min(thickness, rate.firstDepthMm());
    double days = of(thickness, rate);
    return new Result.Draft()
        .step(
            "days = "
                + Show.number(rate.daysPerMm())
                + " a mm for the first "
                + Show.number(rate.firstDepthMm())
                + " mm, then "
                + Show.number(rate.daysPerMmBeyond())
                + " a mm",
            Show.number(first)
                + "*"
                + Show.number(rate.daysPerMm())
                + " + "
                + Show.number(thickness - first)
                + "*"
                + Show.number(rate.daysPerMmBeyond()),
            "days = " + Show.number(days))
        .value("days", days, "days")
        .note(
            "An estimate in good drying air (about 20 C and 65 % or less), not a proof of dryness:"
                + " measure before covering.")
        .done(this, in);
  }
}
