package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.HeatingProgramme;
import underfoot.working.HeatingStart;

/** How long a solid base must still wait: for its age, and for the first heating of its pipes. */
final class ReadinessMeasure implements Measure {
  private static final double HOURS_A_DAY = 24;

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    age(figures, facts, found);
    firstHeating(figures, facts, found);
    return found.list();
  }

  private static void age(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double needed = basis.fact("least base age");
    double age = basis.fact("base age");
    if (basis.complete()) {
      double lacking = Math.max(0, needed - age);
      found.addAs("age lacking", "", days(lacking), lacking, minus(needed, age), basis);
    }
  }

  private static void firstHeating(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double first = basis.fact("first heating from");
    double age = basis.fact("base age");
    double from = basis.fact("working temperature");
    if (!basis.word("heating commissioned").equals("no") || !basis.complete()) {
      return;
    }
    TracedFacts ofWait = new TracedFacts(figures, facts);
    basis.uses().forEach(ofWait::use);
    double wait = Math.max(0, first - age);
    found.addAs("wait before first heating", "", days(wait), wait, minus(first, age), ofWait);

    double water = basis.factIfHeld("water temperature", "");
    double most = basis.figure("first-heating-top");
    double top = Math.max(from, Double.isNaN(water) ? most : Math.min(water, most));
    Worked.with()
        .key("screed", "cement")
        .key("start-day", 0)
        .key("from", from)
        .key("to", top)
        .key("step", basis.figure("first-heating-raise"))
        .key("hold", basis.figure("first-heating-hold"))
        .run(new HeatingProgramme(new HeatingStart(first / HOURS_A_DAY, first / HOURS_A_DAY)))
        .ifPresent(
            result -> {
              double done = result.value("done-day") * HOURS_A_DAY;
              double atTop = result.value("at-top-day") * HOURS_A_DAY;
              double cool = result.value("cool-from-day") * HOURS_A_DAY;
              String how = Worked.how(result) + "; counted from the first warm day";
              found.addAs("first heating time", "", days(done), done, how, basis);
              found.addAs("first heating at its top after", "", days(atTop), atTop, how, basis);
              found.addAs("first heating cools after", "", days(cool), cool, how, basis);
              found.add("first heating top", top, "C", how, basis);
            });
  }

  private static String minus(double needed, double held) {
    return Texts.of(needed / HOURS_A_DAY, "") + " − " + Texts.of(held / HOURS_A_DAY, "days");
  }

  private static String days(double hours) {
    double days = Math.ceil(hours / HOURS_A_DAY);
    return Texts.of(days, days == 1 ? "day" : "days");
  }
}
