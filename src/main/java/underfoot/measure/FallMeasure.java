package underfoot.measure;

import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.Fall;
import underfoot.working.FallLimits;

/**
 * What the falls to a floor drain come to: the drop from the farthest corner, and how steep the
 * shortest run is, by the real shape of the floor.
 */
final class FallMeasure implements Measure {
  private static final String GENTLEST = "fall-gentlest";
  private static final String STEEPEST = "fall-steepest";

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    String drain = basis.word("drain place");
    double longest = basis.fact("longest run");
    double shortest = basis.fact("shortest run");
    if (!basis.complete() || !facts.text("wetness").equals("soaked")) {
      return found.list();
    }
    basis.use(facts.find("wetness"));
    double gentlest = bound(basis, "gentlest fall", GENTLEST);
    double most = bound(basis, "steepest fall", STEEPEST);
    FallLimits limits = new FallLimits(gentlest, most);
    found.add("fall reckoned", gentlest, "", "the gentlest that may be", basis);
    found.add("fall allowed", most, "", "the steepest that may be", basis);
    Optional<RoomShape> shape = RoomShape.of(scenario).filter(one -> !FallShape.isRectangle(one));
    if (shape.isPresent()) {
      ofShape(FallShape.of(shape.get(), Fall.Drain.named(drain)), gentlest, basis, found);
      return found.list();
    }
    Worked.with()
        .key("gradient", gentlest)
        .key("length", longest)
        .key("width", shortest)
        .key("drain", drain)
        .run(new Fall(limits))
        .ifPresent(
            result -> {
              found.add("fall height", result.value("fall"), "mm", Worked.how(result), basis);
              found.add("fall steepest", result.value("steepest"), "", Worked.how(result), basis);
              falls(Fall.of(gentlest, longest, shortest, Fall.Drain.named(drain)), basis, found);
            });
    return found.list();
  }

  /** What rules say of this floor, or the figure that holds for others. */
  private static double bound(TracedFacts basis, String told, String usual) {
    double own = basis.factIfHeld(told, "");
    return Double.isNaN(own) ? basis.figure(usual) : own;
  }

  /** The falls of a floor that is no rectangle. */
  private static void ofShape(
      FallShape shape, double gentlest, TracedFacts basis, MeasuredFacts found) {
    Fall.Values falls = Fall.of(gentlest, shape.longestRunMm());
    double steepest = shape.shortestRunMm() / falls.fallMm();
    String way = "way from the farthest corner, round what stands into the room: ";
    String how =
        way
            + Texts.metres(shape.longestRunMm())
            + "; fall = that / n: / "
            + Texts.of(gentlest, "")
            + ", so "
            + Texts.of(falls.fallMm(), "mm");
    found.add("fall height", falls.fallMm(), "mm", how, basis);
    found.add(
        "fall steepest",
        steepest,
        "",
        "shortest run from the drain / fall: "
            + Texts.of(shape.shortestRunMm(), "mm")
            + " / "
            + Texts.of(falls.fallMm(), "mm"),
        basis);
    falls(
        new Fall.Values(
            falls.fallMm(),
            shape.longestRunMm(),
            shape.shortestRunMm(),
            steepest,
            falls.fallMm() * 2 / 3),
        basis,
        found);
  }

  /** How thick the mortar is that forms the falls. */
  private static void falls(Fall.Values falls, TracedFacts basis, MeasuredFacts found) {
    double least = basis.figure("falls-mortar-least");
    String known = Texts.of(least, "mm") + " at the drain";
    found.add("falls least", least, "mm", known, basis);
    found.add(
        "falls mean",
        least + falls.meanMm(),
        "mm",
        known + " + " + Texts.of(falls.meanMm(), "mm") + ", the mean height of the planes",
        basis);
    found.add(
        "falls most",
        least + falls.fallMm(),
        "mm",
        known + " + " + Texts.of(falls.fallMm(), "mm") + " of fall",
        basis);
    double screed = basis.factIfHeld("new screed thickness", "");
    if (!Double.isNaN(screed)) {
      found.add(
          "screed depth at the drain",
          screed - falls.fallMm(),
          "mm",
          "depth of the new screed − fall: "
              + Texts.of(screed, "mm")
              + " − "
              + Texts.of(falls.fallMm(), "mm"),
          basis);
    }
  }
}
