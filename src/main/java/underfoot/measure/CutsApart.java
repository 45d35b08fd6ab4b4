package underfoot.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** How far the cuts in joists lie from one another, those known to be in different joists apart. */
final class CutsApart {
  private final List<Cut> cuts = new ArrayList<>();

  /** All notches, then all holes: by their joists (empty: any), and along the joist. */
  private final Map<String, TreeMap<Double, List<Cut>>> notches = new HashMap<>();

  private final Map<String, TreeMap<Double, List<Cut>>> holes = new HashMap<>();

  private CutsApart() {}

  /**
   * A notch or a hole.
   *
   * @param place its place among all cuts
   * @param joist which joist it is in; empty where nobody has said
   * @param read the facts it was read from
   */
  private record Cut(
      int place,
      String name,
      boolean hole,
      double fromSupport,
      double size,
      String joist,
      List<Object> read) {
    double apart(Cut other) {
      return Math.abs(fromSupport - other.fromSupport);
    }
  }

  static List<Fact> of(Figures figures, Facts facts) {
    CutsApart apart = new CutsApart();
    apart.gather("notch from support", "notch depth", "notched joist", false, figures, facts);
    apart.gather("hole from support", "hole diameter", "bored joist", true, figures, facts);
    MeasuredFacts found = new MeasuredFacts();
    for (Cut cut : apart.cuts) {
      Cut notch = apart.nearest(cut, apart.notches);
      Cut hole = apart.nearest(cut, apart.holes);
      Cut nearest = cut.hole() ? notch : nearer(cut, notch, hole);
      if (nearest != null) {
        String how = "to " + nearest.name() + ", both measured from the nearer support";
        TracedFacts basis = basis(cut, nearest, figures, facts);
        found.add("nearest cut", cut.name(), cut.apart(nearest), "mm", how, basis);
      }
      if (cut.hole() && hole != null) {
        double widest = Math.max(cut.size(), hole.size());
        String how = "distance to " + hole.name() + " / the wider diameter";
        TracedFacts basis = basis(cut, hole, figures, facts);
        found.add("holes apart", cut.name(), cut.apart(hole) / widest, "", how, basis);
      }
    }
    return found.list();
  }

  private static TracedFacts basis(Cut one, Cut other, Figures figures, Facts facts) {
    TracedFacts basis = new TracedFacts(figures, facts);
    one.read().forEach(basis::use);
    other.read().forEach(basis::use);
    return basis;
  }

  /** The nearest that may share its joist; of several as near the first. */
  private Cut nearest(Cut cut, Map<String, TreeMap<Double, List<Cut>>> all) {
    if (cut.joist().isEmpty()) {
      Cut nearest = null;
      for (TreeMap<Double, List<Cut>> joist : all.values()) {
        nearest = nearer(cut, nearest, nearest(cut, joist));
      }
      return nearest;
    }
    return nearer(cut, nearest(cut, all.get(cut.joist())), nearest(cut, all.get("")));
  }

  private static Cut nearest(Cut cut, TreeMap<Double, List<Cut>> along) {
    if (along == null) {
      return null;
    }
    Cut here = first(cut, along.floorEntry(cut.fromSupport()));
    Cut before = here != null ? here : first(cut, along.lowerEntry(cut.fromSupport()));
    return nearer(cut, before, first(cut, along.higherEntry(cut.fromSupport())));
  }

  /** The first cut of a place that is not this one. */
  private static Cut first(Cut cut, Map.Entry<Double, List<Cut>> place) {
    if (place == null) {
      return null;
    }
    List<Cut> there = place.getValue();
    if (there.get(0) != cut) {
      return there.get(0);
    }
    return there.size() > 1 ? there.get(1) : null;
  }

  private static Cut nearer(Cut cut, Cut one, Cut other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    int order = Double.compare(cut.apart(one), cut.apart(other));
    return order < 0 || order == 0 && one.place() < other.place() ? one : other;
  }

  private void gather(
      String place, String size, String joist, boolean hole, Figures figures, Facts facts) {
    for (String about : facts.abouts(place)) {
      TracedFacts basis = new TracedFacts(figures, facts);
      double from = basis.factIfHeld(place, about);
      double wide = basis.factIfHeld(size, about);
      Fact which = facts.find(joist, about);
      if (which != null) {
        basis.use(which);
      }
      if (Double.isFinite(from) && Double.isFinite(wide)) {
        String in = which == null ? "" : which.text();
        Cut cut = new Cut(cuts.size(), about, hole, from, wide, in, basis.uses());
        cuts.add(cut);
        (hole ? holes : notches)
            .computeIfAbsent(in, any -> new TreeMap<>())
            .computeIfAbsent(from, any -> new ArrayList<>())
            .add(cut);
      }
    }
  }
}
