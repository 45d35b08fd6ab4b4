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
    double contact = contact(basis, bearing);
    double notch = deepestNotch(facts, basis);
    double left = depth - notch;
    JoistStress.Values whole = JoistStress.of(breadth, depth, centres, load, span, contact);
    String factored =
        "factored load "
            + Texts.of(load, "kN/m2")
            + " on "
            + Texts.of(centres, "mm")
            + ", span "
            + Texts.of(span, "mm")
            + "; ";
    Stresses even =
        new Stresses(
            whole.bending(),
            left > 0
                ? JoistStress.of(breadth, left, centres, load, span, contact).shear()
                : Double.NaN,
            whole.bearing(),
            factored);
    Strengths strengths = new Strengths(bendingStrength, shearStrength, bearingStrength);
    String cut = notch > 0 ? ", A at the deepest notch of " + Texts.of(notch, "mm") : "";
    uses(found, even, strengths, cut, suffix, basis);
    withItems(
        found, even, strengths, cut, new Section(breadth, depth, left, contact), suffix, basis);
    return found.list();
  }

  private record Stresses(double bending, double shear, double bearing, String load) {}

  private record Strengths(double bending, double shear, double bearing) {}

  private record Section(double breadth, double depth, double left, double contact) {}

  /** The length that bears: timber beside the support helps, as far as there is any. */
  private static double contact(TracedFacts basis, double bearing) {
    return bearing + Math.min(bearing, basis.figure("bearing-contact-extra"));
  }

  private static void uses(
      MeasuredFacts found,
      Stresses stresses,
      Strengths strengths,
      String cut,
      String suffix,
      TracedFacts basis) {
    use(
        found,
        "bending use" + suffix,
        stresses.bending(),
        strengths.bending(),
        stresses.load() + "stress = M/Z",
        basis);
    if (Double.isFinite(stresses.shear())) {
      use(
          found,
          "shear use" + suffix,
          stresses.shear(),
          strengths.shear(),
          stresses.load() + "stress = 1.5 V/A" + cut,
          basis);
    }
    use(
        found,
        "bearing use" + suffix,
        stresses.bearing(),
        strengths.bearing(),
        stresses.load() + "stress = V/(b × bearing with what helps beside it)",
        basis);
  }

  /** The same with the heavy things on the joist that they load the most. */
  private static void withItems(
      MeasuredFacts found,
      Stresses even,
      Strengths strengths,
      String cut,
      Section joist,
      String suffix,
      TracedFacts basis) {
    double moment = basis.factIfHeld("item moment", "") * 1e6;
    double reaction = basis.factIfHeld("item reaction", "") * 1000;
    if (Double.isNaN(moment) || Double.isNaN(reaction)) {
      return;
    }
    double factor = basis.figure("partial-factor-imposed");
    double modulus = joist.breadth() * joist.depth() * joist.depth() / 6;
    Stresses all =
        new Stresses(
            even.bending() + factor * moment / modulus,
            even.shear() + factor * 1.5 * reaction / (joist.breadth() * joist.left()),
            even.bearing() + factor * reaction / (joist.breadth() * joist.contact()),
            even.load()
                + "with "
                + Texts.of(factor, "")
                + " × the heavy things (M "
                + Texts.of(moment / 1e6, "kN.m")
                + ", V "
                + Texts.of(reaction / 1000, "kN")
                + "); ");
    uses(found, all, strengths, cut, " with items" + suffix, basis);
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
