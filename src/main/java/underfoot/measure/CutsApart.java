package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** How far the cuts in joists lie from one another, those known to be in different joists apart. */
final class CutsApart {
  private CutsApart() {}

  /** A notch or a hole; the joist is empty where nobody has said which. */
  private record Cut(String name, boolean hole, double fromSupport, double size, String joist) {
    boolean mayShareJoistWith(Cut other) {
      return joist.isEmpty() || other.joist.isEmpty() || joist.equals(other.joist);
    }

    double apart(Cut other) {
      return Math.abs(fromSupport - other.fromSupport);
    }
  }

  static List<Fact> of(Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    List<Cut> cuts = new ArrayList<>();
    gather("notch from support", "notch depth", "notched joist", false, facts, basis, cuts);
    gather("hole from support", "hole diameter", "bored joist", true, facts, basis, cuts);
    for (Cut cut : cuts) {
      Cut nearest = null;
      Cut hole = null;
      for (Cut other : cuts) {
        if (other == cut || !cut.mayShareJoistWith(other)) {
          continue;
        }
        if (cut.hole() && other.hole()) {
          hole = nearer(cut, other, hole);
        } else {
          nearest = nearer(cut, other, nearest);
        }
      }
      if (nearest != null) {
        String how = "to " + nearest.name() + ", both measured from the nearer support";
        found.add("nearest cut", cut.name(), cut.apart(nearest), "mm", how, basis);
      }
      if (hole != null) {
        double widest = Math.max(cut.size(), hole.size());
        String how = "distance to " + hole.name() + " / the wider diameter";
        found.add("holes apart", cut.name(), cut.apart(hole) / widest, "", how, basis);
      }
    }
    return found.list();
  }

  private static Cut nearer(Cut cut, Cut other, Cut held) {
    return held == null || cut.apart(other) < cut.apart(held) ? other : held;
  }

  private static void gather(
      String place,
      String size,
      String joist,
      boolean hole,
      Facts facts,
      TracedFacts basis,
      List<Cut> cuts) {
    for (String about : facts.abouts(place)) {
      double from = basis.factIfHeld(place, about);
      double wide = basis.factIfHeld(size, about);
      Fact which = facts.find(joist, about);
      if (which != null) {
        basis.use(which);
      }
      if (Double.isFinite(from) && Double.isFinite(wide)) {
        cuts.add(new Cut(about, hole, from, wide, which == null ? "" : which.text()));
      }
    }
  }
}
