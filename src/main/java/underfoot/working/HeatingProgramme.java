package underfoot.working;

import static underfoot.quantity.Dimension.TEMPERATURE;
import static underfoot.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static underfoot.quantity.Dimension.TIME;
import static underfoot.working.Key.Trait.BARE;

/** The days of warming a heated screed up and letting it cool before tiling. */
public final class HeatingProgramme extends Working {
  private static final double SLIP = 1e-9;
  private static final long HOURS_A_DAY = 24;

  private final HeatingStart earliest;

  /**
   * Makes the working.
   *
   * @param earliest first days a screed may be warmed, for the notes
   */
  public HeatingProgramme(HeatingStart earliest) {
    super(
        new Sheet(
            "heating-programme",
            "The days of warming a heated screed up and cooling it before tiling",
            "BS 5385-3 Annex C (quoted): up by no more than 5 K a day, held 3 days, cooled; earliest"
                + " start EN 1264-4 (quoted)",
            "screed=cement",
            "start-day=21",
            "from=20 C",
            "to=45 C",
            "step=5 K",
            "hold=3"),
        CommonKeys.SCREED,
        Key.of("start-day", TIME, "days", 0, 3650, "day warming begins, from laying", BARE),
        Key.of("from", TEMPERATURE, "C", -10, 60, "water temperature it begins at"),
        Key.of("to", TEMPERATURE, "C", -10, 90, "highest water temperature"),
        Key.of("step", TEMPERATURE_DIFFERENCE, "K", 0.1, 60, "step up each day"),
        Key.of("hold", TIME, "days", 0, 365, "days at the highest temperature", BARE));
    this.earliest = earliest;
  }

  /**
   * The days of a programme, counted from laying.
   *
   * @param steps steps up, and as many down
   * @param atTopDay day the highest temperature is reached
   * @param coolFromDay day cooling begins
   * @param doneDay day it is back where it began
   */
  public record Values(long steps, long atTopDay, long coolFromDay, long doneDay) {}

  /**
   * Works out the programme in whole days: steps rounded up, the same step down as up.
   *
   * @param startDay day warming begins, from laying, 0 or more
   * @param fromC temperature it begins at, C
   * @param toC highest temperature, C, not below {@code fromC}
   * @param stepK step a day, K, above 0
   * @param holdDays days at the highest temperature, 0 or more
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(long startDay, double fromC, double toC, double stepK, long holdDays) {
    Need.positive("step", stepK);
    Need.notNegative("start day", startDay);
    Need.notNegative("hold", holdDays);
    Need.notNegative("rise", toC - fromC);
    long steps = (long) Math.ceil((toC - fromC) / stepK - SLIP);
    long top = startDay + steps;
    return new Values(steps, top, top + holdDays, top + holdDays + steps);
  }

  @Override
  Result work(Inputs in) {
    double from = in.number("from");
    double to = in.number("to");
    if (to < from) {
      throw in.refuse("to", "is below the " + Show.number(from) + " C it begins at");
    }
    long start = (long) in.number("start-day") / HOURS_A_DAY;
    long hold = (long) in.number("hold") / HOURS_A_DAY;
    Values values = of(start, from, to, in.number("step"), hold);
    boolean cement = in.word("screed").equals("cement");
    double first = cement ? earliest.cementDay() : earliest.calciumSulfateDay();
    return new Result.Draft(in)
        .let("start", start)
        .let("hold", hold)
        .let("steps", values.steps(), "days")
        .let("first", first)
        .value("at-top-day", values.atTopDay(), "days")
        .value("cool-from-day", values.coolFromDay(), "days")
        .value("done-day", values.doneDay(), "days")
        .step("steps = (to - from)/step, rounded up")
        .step("at the top = start + steps", "at-top-day = {at-top-day}")
        .step(
            "cool from = at the top + hold",
            "{at-top-day} + {hold}",
            "cool-from-day = {cool-from-day}")
        .step("done = cool from + steps", "{cool-from-day} + {steps}", "done-day = {done-day}")
        .noteIf(
            start < first,
            "Too early: EN 1264-4 has a "
                + in.word("screed")
                + " screed first warmed on day {first} (quoted), unless its maker says otherwise.")
        .note("Days count from laying. The programme does not prove that the screed is dry.")
        .done(this);
  }
}
