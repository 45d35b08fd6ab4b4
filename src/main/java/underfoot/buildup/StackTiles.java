package underfoot.buildup;

import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.measure.Worked;
import underfoot.working.Cuts;
import underfoot.working.Result;
import underfoot.working.TilesPerArea;

/** How the tiles fall in the room, and how many there are. */
final class StackTiles {
  private static final String JOINT = "tile joint";

  private StackTiles() {}

  static List<Fact> of(Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    Fact joint = joint(new TracedFacts(figures, facts), found);
    if (joint == null) {
      return found.list();
    }
    Facts known = Facts.over(facts).addAll(found.list());
    count(new TracedFacts(figures, known), found);
    ends("along", "longest run", "longest edge", new TracedFacts(figures, known), found);
    ends("across", "shortest run", "shortest edge", new TracedFacts(figures, known), found);
    return found.list();
  }

  /** The joint that is reckoned with: the one wanted, if it is no less than the least. */
  private static Fact joint(TracedFacts basis, MeasuredFacts found) {
    double least = basis.fact("least joint");
    double wanted = basis.factIfHeld("wanted joint", "");
    return found.add(
        JOINT,
        wanted > least ? wanted : least,
        "mm",
        Double.isNaN(wanted)
            ? "the least joint, none being asked for"
            : "the wider of "
                + Texts.of(wanted, "mm")
                + " asked for and "
                + Texts.of(least, "mm")
                + " at least",
        basis);
  }

  private static void count(TracedFacts basis, MeasuredFacts found) {
    double area = basis.fact("area");
    double waste = basis.fact("tile waste");
    Worked.with()
        .key("length", basis.fact("tile length"))
        .key("width", basis.fact("tile width"))
        .key("joint", basis.fact(JOINT))
        .run(new TilesPerArea())
        .ifPresent(
            result -> {
              double each = result.value("count");
              found.addAs(
                  "tile count",
                  "",
                  Long.toString((long) Math.ceil(each * area * (1 + waste / 100))),
                  Math.ceil(each * area * (1 + waste / 100)),
                  Worked.how(result)
                      + "; × "
                      + Texts.of(area, "m2")
                      + " and "
                      + Texts.of(waste, "%")
                      + " to spare, rounded up",
                  basis);
            });
  }

  /** Whole tiles and the two end cuts in one direction, the longer edge along the longer run. */
  private static void ends(
      String way, String run, String edge, TracedFacts basis, MeasuredFacts found) {
    Optional<Result> result =
        Worked.with()
            .key("run", basis.fact(run))
            .key("tile", basis.fact(edge))
            .key("joint", basis.fact(JOINT))
            .key("gap", basis.figure("movement-joint-width"))
            .run(new Cuts());
    if (result.isPresent()) {
      String how = Worked.how(result.get());
      long full = (long) result.get().value("full");
      found.addAs("whole tiles " + way, "", Long.toString(full), full, how, basis);
      found.add("end cut " + way, result.get().value("cut"), "mm", how, basis);
    }
  }
}
