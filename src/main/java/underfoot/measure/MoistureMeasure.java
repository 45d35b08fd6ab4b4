package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.DryingRates;
import underfoot.working.DryingTime;

/** How long a slab or screed takes to dry, and how much of that is still to come. */
final class MoistureMeasure implements Measure {
  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    newScreed(figures, facts, found);
    TracedFacts basis = new TracedFacts(figures, facts);
    double thickness = basis.fact("deck thickness");
    double firstDepth = basis.fact("drying first depth");
    double first = basis.fact("drying rate at first");
    double beyond = basis.fact("drying rate deeper down");
    if (!basis.complete()) {
      return found.list();
    }
    DryingRates rates = new DryingRates(firstDepth, first, beyond);
    Worked.with()
        .key("screed", "cement")
        .key("thickness", thickness)
        .run(new DryingTime(rates, rates))
        .ifPresent(
            result -> {
              double days = result.value("days");
              double hours = days * 24;
              Fact needed =
                  found.addAs(
                      "drying needed",
                      "",
                      Texts.of(days, days == 1 ? "day" : "days"),
                      hours,
                      Worked.how(result),
                      basis);
              TracedFacts ofRest = new TracedFacts(figures, facts).use(needed);
              double age = ofRest.fact("base age");
              double left = Math.max(0, hours - age);
              found.addAs(
                  "drying left",
                  "",
                  Texts.of(Math.ceil(left / 24), left / 24 > 0 && left <= 24 ? "day" : "days"),
                  left,
                  "drying needed − age, not below 0: "
                      + Texts.of(days, "")
                      + " − "
                      + Texts.of(age / 24, "days"),
                  ofRest);
            });
    return found.list();
  }

  /** How long a screed that is laid anew dries, by its own thickness. */
  private static void newScreed(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double thickness = basis.fact("new screed thickness");
    DryingRates rates =
        new DryingRates(
            basis.figure("cement-screed-drying-first-depth"),
            basis.figure("cement-screed-drying-rate-first"),
            basis.figure("cement-screed-drying-rate-beyond"));
    if (basis.complete()) {
      Worked.with()
          .key("screed", "cement")
          .key("thickness", thickness)
          .run(new DryingTime(rates, rates))
          .ifPresent(
              result ->
                  found.addAs(
                      "new screed drying time",
                      "",
                      Texts.of(result.value("days"), "days"),
                      result.value("days") * 24,
                      Worked.how(result),
                      basis));
    }
  }
}
