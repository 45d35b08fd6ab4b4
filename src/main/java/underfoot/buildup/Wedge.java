package underfoot.buildup;

import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.Doorway;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.PourSurface;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;

/**
 * The floor before a leaf that has to clear it without being cut, as a profile from the door into
 * the room. Within the swing the finished floor lies low enough for the leaf; the zero line is
 * where the swing ends. From there it rises as steeply as a floor may to the stop line, where the
 * levelling compound ends at its full height. Between the two lines, and within the swing, the
 * adhesive bed makes up what is left: a wedge, thickest at the stop line.
 */
final class Wedge {
  private static final String DROP = "drop before the leaf";

  private final String door;
  private final Figures figures;
  private final Facts facts;
  private final MeasuredFacts found;

  Wedge(String door, Figures figures, Facts facts, MeasuredFacts found) {
    this.door = door;
    this.figures = figures;
    this.facts = facts;
    this.found = found;
  }

  /**
   * What the wedge brings the leaf to: comfort where the floor beside the pour leaves so much, else
   * what is left there. A leaf that opens over the pour as it is needs no wedge.
   */
  private double clearance(TracedFacts basis, double left) {
    double comfort = basis.figure("door-clearance");
    double least = basis.factIfHeld("least gap", door);
    if (Double.isNaN(least)) {
      return comfort;
    }
    double beside = basis.factIfHeld("gap left beside the pour", door);
    double reached = Double.isNaN(beside) ? comfort : Math.min(comfort, beside);
    return left >= least ? left : Math.max(least, reached);
  }

  /**
   * Works the profile out, if the leaf does not clear the floor where the compound is poured.
   *
   * @param doorway the surveyed doorway; empty where readings or the door's place are not known
   * @param pour the surface poured to; empty where there is no survey
   */
  void work(Optional<Doorway> doorway, Optional<PourSurface> pour) {
    TracedFacts ofDrop = new TracedFacts(figures, facts);
    double left = ofDrop.fact("gap left", door);
    double clearance = clearance(ofDrop, left);
    double drop = clearance - left;
    if (!ofDrop.complete() || drop <= 0) {
      return;
    }
    Fact lost =
        found.add(
            DROP,
            door,
            drop,
            "mm",
            "clearance − gap left: " + Texts.of(clearance, "") + " − " + Texts.of(left, "mm"),
            ofDrop);
    TracedFacts ofZero = new TracedFacts(figures, facts);
    double zero = ofZero.fact("door width", door);
    Fact zeroLine =
        found.addAs(
            "zero line",
            door,
            Texts.metres(zero),
            zero,
            "the end of the leaf's swing, as far from the wall as the leaf is wide",
            ofZero);
    if (zeroLine == null) {
      return;
    }
    TracedFacts ofStop = new TracedFacts(figures, facts).use(lost).use(zeroLine);
    double fall = ofStop.figure("wedge-fall-most");
    double length = drop / fall * 1000;
    double stop = zero + length;
    found.addAs(
        "wedge length",
        door,
        Texts.metres(length),
        length,
        "drop / steepest fall: " + Texts.of(drop, "mm") + " / " + Texts.of(fall, "mm/m"),
        ofStop);
    Fact stopLine =
        found.addAs(
            PourBeforeDoors.STOP_LINE,
            door,
            Texts.metres(stop),
            stop,
            "zero line + wedge: " + Texts.metres(zero) + " + " + Texts.metres(length),
            ofStop);
    if (figures.has("pour-worth-making")) {
      TracedFacts ofPour = new TracedFacts(figures, facts).use(stopLine);
      double least = ofPour.figure("pour-worth-making");
      found.addAs(
          "room the wedge needs",
          door,
          Texts.metres(stop + least),
          stop + least,
          "stop line + least pour: " + Texts.metres(stop) + " + " + Texts.metres(least),
          ofPour);
    }
    TracedFacts ofBed = new TracedFacts(figures, facts).use(stopLine);
    double bed = ofBed.fact("tile bed depth");
    double deep = ofBed.fact("pour most");
    String where = "at its most";
    if (doorway.isPresent() && pour.isPresent()) {
      ofBed.use(facts.find("readings"));
      deep = doorway.get().depthBefore(pour.get(), stop);
      where = "at the stop line";
    }
    found.add(
        "wedge most",
        door,
        bed + deep,
        "mm",
        "tile bed + pour "
            + where
            + ": "
            + Texts.of(bed, "")
            + " + "
            + Texts.of(deep, "mm")
            + ", the base being bare there",
        ofBed);
  }
}
