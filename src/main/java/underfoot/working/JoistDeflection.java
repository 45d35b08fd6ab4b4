package underfoot.working;

import java.util.List;
import java.util.OptionalDouble;

/** How far a floor joist bends under an even load. */
public final class JoistDeflection implements Working {
  private final JoistKeys shared;

  /**
   * Makes the working.
   *
   * @param grades the strength classes that may be named
   */
  public JoistDeflection(List<TimberGrade> grades) {
    shared = new JoistKeys(grades);
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
  public String name() {
    return "joist-deflection";
  }

  @Override
  public String purpose() {
    return "How far a joist bends under a load, and what share of its span that is";
  }

  @Override
  public List<Key> keys() {
    return shared.keys(Key.of("span", Dimension.LENGTH, "m", 0.1, 30, "clear span of the joist"));
  }

  @Override
  public List<Alternative> alternatives() {
    return JoistKeys.modulusOrGrade();
  }

  @Override
  public List<String> example() {
    return List.of(
        "breadth=47 mm",
        "depth=195 mm",
        "grade=C16",
        "centres=400 mm",
        "load=1.5 kN/m2",
        "span=4 m");
  }

  @Override
  public String source() {
    return JoistKeys.SOURCE;
  }

  @Override
  public Result work(Inputs in) {
    double breadth = in.number("breadth");
    double depth = in.number("depth");
    double modulus = shared.modulus(in);
    double span = in.number("span");
    double load = Beam.lineLoad(in.number("load"), in.number("centres"));
    OptionalDouble shearModulus = JoistKeys.shearModulus(in);
    Values values =
        of(breadth, depth, modulus, in.number("centres"), in.number("load"), span, shearModulus);
    Result.Draft draft =
        new Result.Draft()
            .step(
                "I = b*d^3/12",
                Show.number(breadth) + "*" + Show.number(depth) + "^3/12",
                "I = " + Show.number(values.secondMomentMm4()) + " mm4")
            .step(
                "w = load*centres",
                Show.number(in.number("load")) + "*" + Show.number(in.number("centres")) + "/1000",
                "w = " + Show.number(load) + " N/mm")
            .step(
                "bending = 5*w*L^4/(384*E*I)",
                "5*"
                    + Show.number(load)
                    + "*"
                    + Show.number(span)
                    + "^4/(384*"
                    + Show.number(modulus)
                    + "*"
                    + Show.number(values.secondMomentMm4())
                    + ")",
                "bending = " + Show.number(values.bendingMm()) + " mm");
    shearModulus.ifPresent(
        value ->
            draft.step(
                "shear = w*L^2/(8*k*G*b*d), k = 5/6",
                Show.number(load)
                    + "*"
                    + Show.number(span)
                    + "^2/(8*5/6*"
                    + Show.number(value)
                    + "*"
                    + Show.number(breadth)
                    + "*"
                    + Show.number(depth)
                    + ")",
                "shear = " + Show.number(values.shearMm()) + " mm"));
    draft.step(
        "ratio = L/deflection",
        Show.number(span) + "/" + Show.number(values.deflectionMm()),
        "deflection = span/" + Show.number(values.ratio()));
    draft
        .value("deflection", values.deflectionMm(), "mm")
        .value("ratio", values.ratio(), "")
        .value("second-moment", values.secondMomentMm4(), "mm4");
    shared.notes(in, draft);
    return draft.done(this, in);
  }
}
