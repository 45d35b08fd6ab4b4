package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.OptionalDouble;

/** How far a floor joist bends under an even load. */
public final class JoistDeflection extends Working {
  private final JoistKeys shared;

  /**
   * Makes the working.
   *
   * @param grades the strength classes that may be named
   */
  public JoistDeflection(List<TimberGrade> grades) {
    this(new JoistKeys(grades));
  }

  private JoistDeflection(JoistKeys shared) {
    super(
        new Sheet(
                "joist-deflection",
                "How far a joist bends under a load, and what share of its span that is",
                JoistKeys.SOURCE,
                "breadth=47 mm",
                "depth=195 mm",
                "grade=C16",
                "centres=400 mm",
                "load=1.5 kN/m2",
                "span=4 m")
            .ways(JoistKeys.modulusOrGrade()),
        shared.keys(Key.of("span", LENGTH, "m", 0.1, 30, "clear span of the joist")));
    this.shared = shared;
  }

  /**
   * What a joist comes to.
   *
   * @param deflectionMm deflection at mid-span, mm
   * @param bendingMm the part from bending, mm
   * @param shearMm the part from shear, mm (nought where no shear modulus is given)
   * @param ratio span divided by deflection
   * @param secondMomentMm4 second moment of area, mm4
   */
  public record Values(
      double deflectionMm,
      double bendingMm,
      double shearMm,
      double ratio,
      double secondMomentMm4) {}

  /**
   * Works out the deflection: 5wL^4/(384EI), plus wL^2/(8kGA) with k = 5/6 where a shear modulus is
   * given.
   *
   * @param breadthMm breadth of the joist, mm, above 0
   * @param depthMm depth of the joist, mm, above 0
   * @param modulus modulus of elasticity, N/mm2, above 0
   * @param centresMm joist spacing, mm, above 0
   * @param loadKnPerM2 load, kN/m2, above 0
   * @param spanMm span, mm, above 0
   * @param shearModulus shear modulus, N/mm2, or empty for bending alone
   * @throws IllegalArgumentException for a number that is not above 0
   */
  public static Values of(
      double breadthMm,
      double depthMm,
      double modulus,
      double centresMm,
      double loadKnPerM2,
      double spanMm,
      OptionalDouble shearModulus) {
    double inertia =
        Beam.secondMoment(Need.positive("breadth", breadthMm), Need.positive("depth", depthMm));
    double load =
        Beam.lineLoad(Need.positive("load", loadKnPerM2), Need.positive("centres", centresMm));
    shearModulus.ifPresent(value -> Need.positive("shear modulus", value));
    double bending =
        Beam.bending(
            load, Need.positive("span", spanMm), Need.positive("modulus", modulus) * inertia);
    double shear = Beam.shear(load, spanMm, shearModulus, breadthMm * depthMm);
    return new Values(bending + shear, bending, shear, spanMm / (bending + shear), inertia);
  }

  @Override
  Result work(Inputs in) {
    Values values =
        of(
            in.number("breadth"),
            in.number("depth"),
            shared.modulus(in),
            in.number("centres"),
            in.number("load"),
            in.number("span"),
            JoistKeys.shearModulus(in));
    Result.Draft draft =
        shared
            .begun(in)
            .let("L", in.number("span"))
            .let("bending", values.bendingMm(), "mm")
            .let("shear", values.shearMm())
            .value("deflection", values.deflectionMm(), "mm")
            .value("ratio", values.ratio(), "")
            .value("second-moment", values.secondMomentMm4(), "mm4")
            .step("bending = 5*w*L^4/(384*E*I)");
    if (in.has("shear-modulus")) {
      draft.step(
          "shear = w*L^2/(8*k*G*b*d), k = 5/6",
          "{w}*{L}^2/(8*5/6*{shear-modulus}*{b}*{d})",
          "shear = {shear} mm");
    }
    draft.step("ratio = L/deflection", "deflection = span/{ratio}");
    return shared.notes(in, draft).done(this);
  }
}
