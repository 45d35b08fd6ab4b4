package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.working.JoistStress;

/** How much of the joists' strength is used: in bending, in shear and at their bearings. */
final class JoistStrength {
  private JoistStrength() {}

  /** Works it out under the dead load {@code before} or {@code after}. */
  static List<Fact> of(Figures figures, Facts facts, String when) {
    MeasuredFacts found = new MeasuredFacts();
    String suffix = when.equals("after") ? "" : " before";
    TracedFacts basis = new TracedFacts(figures, facts);
    double dead = basis.fact("dead load " + when);
    double imposed = basis.fact("imposed load");
    double breadth = basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double span = basis.fact("effective span");
    double bearing = basis.fact("joist bearing");
    String grade = DeadLoads.gradeStem(basis);
    if (!basis.complete() || !(bearing > 0)) {
      return found.list();
    }
    double load =
        basis.figure("partial-factor-dead") * dead
            + basis.figure("partial-factor-imposed") * imposed;
    double duration = basis.figure("timber-load-duration-factor");
    double material = basis.figure("timber-material-factor");
    double sharing = basis.figure("timber-load-sharing-factor");
    double cracks = basis.figure("timber-crack-factor");
    double bendingStrength =
        basis.figure(grade + "bending-strength") * duration * sharing / material;
    double shearStrength = basis.figure(grade + "shear-strength") * duration * cracks / material;
    double bearingStrength = basis.figure(grade + "bearing-strength") * duration / material;
    JoistStress.Values whole = JoistStress.of(breadth, depth, centres, load, span, bearing);
    double notch = deepestNotch(facts, basis);
    double left = depth - notch;
    String factored =
        "factored load "
            + Texts.of(load, "kN/m2")
            + " on "
            + Texts.of(centres, "mm")
            + ", span "
            + Texts.of(span, "mm")
            + "; ";
    use(
        found,
        "bending use" + suffix,
        whole.bending(),
        bendingStrength,
        factored + "M = wL^2/8, stress = M/Z",
        basis);
    if (left > 0) {
      use(
          found,
          "shear use" + suffix,
          JoistStress.of(breadth, left, centres, load, span, bearing).shear(),
          shearStrength,
          factored
              + "stress = 1.5 V/A"
              + (notch > 0 ? ", A at the deepest notch of " + Texts.of(notch, "mm") : ""),
          basis);
    }
    use(
        found,
        "bearing use" + suffix,
        whole.bearing(),
        bearingStrength,
        factored + "stress = V/(b × bearing)",
        basis);
    return found.list();
  }

  private static double deepestNotch(Facts facts, TracedFacts basis) {
    double deepest = 0;
    for (String notch : facts.abouts("notch depth")) {
      double depth = basis.factIfHeld("notch depth", notch);
      deepest = Double.isNaN(depth) ? deepest : Math.max(deepest, depth);
    }
    return deepest;
  }

  private static void use(
      MeasuredFacts found,
      String name,
      double stress,
      double strength,
      String how,
      TracedFacts basis) {
    found.add(
        name,
        stress / strength * 100,
        "%",
        how + ": " + Texts.of(stress, "") + " of " + Texts.of(strength, "N/mm2"),
        basis);
  }
}
