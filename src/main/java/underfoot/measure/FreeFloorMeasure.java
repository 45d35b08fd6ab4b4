package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;

/**
 * How much of a floor is free for an electric heating mat or cable: the floor less what stands on
 * it and a margin at the walls; and the largest mat that does not exceed it.
 */
final class FreeFloorMeasure implements Measure {
  private static final double MM2_PER_M2 = 1e6;
  private static final double MM_PER_M = 1000;

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!basis.wordIfHeld("cables to bury").equals("yes")) {
      return found.list();
    }
    double area = basis.fact("area");
    double perimeter = perimeter(basis, area);
    double margin = basis.figure("heating-margin-at-walls");
    List<String> terms = new ArrayList<>();
    double standing = 0;
    boolean placed = false;
    for (String item : facts.abouts("heavy item")) {
      double x = size(item, "item along x", "assumed item length", basis);
      double y = size(item, "item along y", "assumed item width", basis);
      placed |= facts.find("item along x", item) != null;
      if (x > 0 && y > 0) {
        standing += x * y / MM2_PER_M2;
        terms.add(item + " " + Texts.of(x * y / MM2_PER_M2, ""));
      }
    }
    double edge = perimeter / MM_PER_M * margin / MM_PER_M;
    double free = Math.max(0, area - standing - edge);
    String how =
        "area − "
            + (terms.isEmpty() ? "" : "what stands there − ")
            + "margin at the walls: "
            + Texts.of(area, "")
            + (terms.isEmpty() ? "" : " − (" + String.join(" + ", terms) + ")")
            + " − "
            + Texts.of(edge, "");
    // Where nobody has said what stands where, no more than the usual share is free.
    double share = basis.figure("share-of-floor-heated");
    if (!placed && !basis.wordIfHeld("fixtures").equals("none") && area * share < free) {
      free = area * share;
      how +=
          "; nobody has said where fixtures stand: no more than " + Texts.of(share, "") + " of it";
    }
    Fact floor = found.add("floor free for heating", free, "m2", how, basis);
    if (floor == null) {
      return found.list();
    }
    TracedFacts ofMat = new TracedFacts(figures, facts).use(floor);
    double step = ofMat.figure("heating-mat-step");
    double mat = Math.floor(free / step + 1e-9) * step;
    found.add(
        "heated floor",
        mat > 0 ? mat : free,
        "m2",
        mat > 0
            ? "the largest of a range in steps of "
                + Texts.of(step, "m2")
                + " that is not more than "
                + floor.text()
            : "less than the smallest of a range; a cable laid by hand may fit",
        ofMat);
    return found.list();
  }

  private static double perimeter(TracedFacts basis, double area) {
    double told = basis.factIfHeld("perimeter", "");
    return Double.isNaN(told)
        ? basis.figure("round-the-room") * Math.sqrt(Math.max(0, area)) * MM_PER_M
        : told;
  }

  private static double size(String item, String told, String taken, TracedFacts basis) {
    double own = basis.factIfHeld(told, item);
    return Double.isNaN(own) ? basis.factIfHeld(taken, item) : own;
  }
}
