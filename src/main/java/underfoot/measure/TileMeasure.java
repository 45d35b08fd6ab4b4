package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.Adhesive;

/** The tile's longest edge, shortest edge, face area, slenderness and share of bow. */
final class TileMeasure implements Measure {
  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    double length = basis.fact("tile length");
    double width = basis.fact("tile width");
    double longest = Math.max(length, width);
    double shortest = Math.min(length, width);
    String sides = Texts.of(length, "mm") + " × " + Texts.of(width, "mm");
    found.add("longest edge", longest, "mm", "the longer of " + sides, basis);
    found.add("shortest edge", shortest, "mm", "the shorter of " + sides, basis);
    found.add("face area", longest * shortest / 100, "cm2", sides, basis);
    found.add("slenderness", longest / shortest, "to 1", "longer side / shorter side", basis);
    TracedFacts ofBow = new TracedFacts(figures, facts);
    double bow = ofBow.fact("tile bow");
    double edge = Math.max(ofBow.fact("tile length"), ofBow.fact("tile width"));
    found.add(
        "tile bow share",
        bow / edge * 100,
        "%",
        "bow / longest edge: " + Texts.of(bow, "mm") + " / " + Texts.of(edge, "mm"),
        ofBow);
    bed("tile", "trowel notch", figures, facts, found);
    bed("board", "board notch", figures, facts, found);
    bed("membrane", "membrane notch", figures, facts, found);
    return found.list();
  }

  /** The bed a notch leaves, and the powder it takes. */
  private static void bed(
      String of, String notch, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    Worked.with()
        .key("notch", basis.fact(notch))
        .key("angle", basis.figure("trowel-angle"))
        .key("powder", basis.figure("use-of-adhesive-powder"))
        .run(new Adhesive())
        .ifPresent(
            result -> {
              String how = Worked.how(result);
              found.add(of + " bed depth", result.value("bed"), "mm", how, basis);
              found.add(of + " bed powder", result.value("mass"), "kg/m2", how, basis);
            });
  }
}
