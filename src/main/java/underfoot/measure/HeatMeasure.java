package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.HeatOutput;

/** How warm a heated floor's surface gets at its full output. */
final class HeatMeasure implements Measure {
  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    String heated = basis.word("heated");
    double output = basis.fact("heating output");
    String use = basis.word("use");
    if (!basis.complete() || !heated.equals("yes")) {
      return found.list();
    }
    double room = basis.figureFor("heated-room-temperature", use);
    Worked.with()
        .key("output", output)
        .key("room", room)
        .run(new HeatOutput(basis.figure("heated-floor-excess-occupied")))
        .ifPresent(
            result -> {
              double excess = result.value("excess");
              found.add("floor surface excess", excess, "K", Worked.how(result), basis);
              found.add(
                  "floor surface temperature",
                  room + excess,
                  "C",
                  Worked.how(result)
                      + "; room + excess: "
                      + Texts.of(room, "")
                      + " + "
                      + Texts.of(excess, "C"),
                  basis);
            });
    return found.list();
  }
}
