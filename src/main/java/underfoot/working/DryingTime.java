package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;

import java.util.Map;

/** How long a screed takes to dry. */
public final class DryingTime extends Working {
  private final Map<String, DryingRates> rates;

  /**
   * Makes the working.
   *
   * @param cement rates of a cement screed
   * @param calciumSulfate rates of a calcium sulfate screed
   */
  public DryingTime(DryingRates cement, DryingRates calciumSulfate) {
    super(
        new Sheet(
            "drying-time",
            "How long a screed takes to dry",
            "Cement: BS 8204-1 as quoted for the first depth, trade convention beyond (common"
                + " practice); calcium sulfate: UK trade notes and a warranty body's standard (quoted)",
            "screed=cement",
            "thickness=65 mm"),
        CommonKeys.SCREED,
        Key.of("thickness", LENGTH, "mm", 1, 500, "thickness of the screed"));
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
  Result work(Inputs in) {
    DryingRates rate = rates.get(in.word("screed"));
    double thickness = in.number("thickness");
    double first = Math.min(thickness, rate.firstDepthMm());
    return new Result.Draft(in)
        .let("first", first, "mm")
        .let("rest", thickness - first, "mm")
        .let("fast", rate.daysPerMm(), "days/mm")
        .let("slow", rate.daysPerMmBeyond(), "days/mm")
        .value("days", of(thickness, rate), "days")
        .step(
            "days = "
                + Show.number(rate.daysPerMm())
                + " a mm for the first "
                + Show.number(rate.firstDepthMm())
                + " mm, then "
                + Show.number(rate.daysPerMmBeyond())
                + " a mm",
            "{first}*{fast} + {rest}*{slow}",
            "days = {days}")
        .note(
            "An estimate in good drying air (about 20 C and 65 % or less), not a proof of dryness:"
                + " measure before covering.")
        .done(this);
  }
}
