package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** How far joists sag against what building guidance allows: a share of the span, and a cap. */
final class BuildingLimit {
  private BuildingLimit() {}

  /** The share of what is allowed that a deflection takes. */
  static List<Fact> share(Figures figures, Facts facts, String when, Fact total, String name) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts).use(total);
    double span = basis.fact("effective span");
    double fraction = basis.figure("joist-deflection-fraction");
    boolean strutted = basis.wordIfHeld("strutting").equals("yes");
    double cap = basis.figure(strutted ? "joist-deflection-cap-strutted" : "joist-deflection-cap");
    double limit = Math.min(fraction * span, cap);
    found.add(
        when.equals("after") ? name : name + " before",
        total.number() / limit * 100,
        "%",
        "deflection / the lesser of "
            + Texts.of(fraction, "")
            + " × span and "
            + Texts.of(cap, "mm")
            + ": "
            + Texts.of(total.number(), "")
            + " / "
            + Texts.of(limit, "mm"),
        basis);
    return found.list();
  }
}
