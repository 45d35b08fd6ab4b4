package underfoot.working;

import java.util.List;

/** The days of warming a heated screed up and letting it cool before tiling. */
public final class HeatingProgramme implements Working {
  private static final double SLIP = 1e-9;

  private final HeatingStart earliest;

  /**
   * Makes the working.
   *
   * @param earliest first days a screed may be warmed, for the notes
   */
  public HeatingProgramme(HeatingStart earliest) {
    this.earliest = earliest;
  }

  static Key screedKey() {
    return Key.choice("screed", "kind of screed", List.of("cement", "calcium sulfate"));
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
  public String name() {
    return "heating-programme";
  }

  @Override
  public String purpose() {
    return "The days of warming a heated screed up and cooling it before tiling";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        screedKey(),
        Key.of("start-day", Dimension.DAYS, "days", 0, 3650, "day warming begins, from laying")
            .takesBare(),
        Key.of("from", Dimension.TEMPERATURE, "C", -10, 60, "water temperature it begins at"),
        Key.of("to", Dimension.TEMPERATURE, "C", -10, 90, "highest water temperature"),
        Key.of("step", Dimension.TEMPERATURE_STEP, "K", 0.1, 60, "step up each day"),
        Key.of("hold", Dimension.DAYS, "days", 0, 365, "days at the highest temperature")
            .takesBare());
  }

  @Override
  public List<String> example() {
    return List.of("screed=cement", "start-day=21", "from=20 C", "to=45 C", "step=5 K", "hold=3");
  }

  @Override
  public String source() {
    return "BS 5385-3 Annex C (quoted): up by no more than 5 K a day, held 3 days, cooled; earliest"
        + " start EN 1264-4 (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double from = in.number("from");
    double to = in.number("to");
    if (to < from) {
      throw in.refuse("to", "is below the " + Show.number(from) + " C it begins at");
    }
    long start = (long) in.number("start-day");
    long hold = (long) in.number("hold");
    double step = in.number("step");
    Values values = of(start, from, to, step, hold);
    Result.Draft draft =
        new Result.Draft()
            .step(
                "steps = (to - from)/step, rounded up",
                "(" + Show.term(to) + " - " + Show.term(from) + ")/" + Show.number(step),
                "steps = " + values.steps() + " days")
            .step(
                "at the top = start + steps",
                start + " + " + values.steps(),
                "at-top-day = " + values.atTopDay())
            .step(
                "cool from = at the top + hold",
                values.atTopDay() + " + " + hold,
                "cool-from-day = " + values.coolFromDay())
            .step(
                "done = cool from + steps",
                values.coolFromDay() + " + " + values.steps(),
                "done-day = " + values.doneDay())
            .value("at-top-day", values.atTopDay(), "days")
            .value("cool-from-day", values.coolFromDay(), "days")
            .value("done-day", values.doneDay(), "days");
    double first =
        in.word("screed").equals("cement") ? earliest.cementDay() : earliest.calciumSulfateDay();
    if (start < first) {
      draft.note(
          "Too early: EN 1264-4 has a "
              + in.word("screed")
              + " screed first warmed on day "
              + Show.number(first)
              + " (quoted), unless its maker says otherwise.");
    }
    return draft
        .note("Days count from laying. The programme does not prove that the screed is dry.")
        .done(this, in);
  }
}
