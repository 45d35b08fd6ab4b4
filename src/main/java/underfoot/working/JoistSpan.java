package underfoot.working;

import static underfoot.quantity.Dimension.SPAN_SHARE;

import java.util.List;
import java.util.OptionalDouble;

/** The longest span at which a joist still keeps within a share of its span. */
public final class JoistSpan extends Working {
  private static final int MOST_ROUNDS = 100;

  private final JoistKeys shared;

  /**
   * Makes the working.
   *
   * @param grades the strength classes that may be named
   */
  public JoistSpan(List<TimberGrade> grades) {
    this(new JoistKeys(grades));
  }

  private JoistSpan(JoistKeys shared) {
    super(
        new Sheet(
                "joist-span",
                "The longest span at which a joist bends no more than span/n",
                JoistKeys.SOURCE,
                "breadth=1.5 in",
                "depth=9.25 in",
                "modulus=1.6e6 psi",
                "centres=16 in",
                "load=40 psf",
                "limit=360")
            .ways(JoistKeys.modulusOrGrade()),
        shared.keys(Key.of("limit", SPAN_SHARE, "", 10, 10_000, "n of the limit span/n")));
    this.shared = shared;
  }

  /**
   * What a joist comes to.
   *
   * @param spanMm longest span, mm
   * @param bendingSpanMm longest span from bending alone, mm (the same where no shear is counted)
   */
  public record Values(double spanMm, double bendingSpanMm) {}

  /**
   * Works out the longest span for a deflection of span/limit: (384EI/(5 w limit))^(1/3) for
   * bending alone; with a shear modulus the root of 5wL^3/(384EI) + wL/(8kGA) = 1/limit by Newton's
   * method, begun at the bending span, from where it can only fall to the root.
   *
   * @param breadthMm breadth of the joist, mm, above 0
   * @param depthMm depth of the joist, mm, above 0
   * @param modulus modulus of elasticity, N/mm2, above 0
   * @param centresMm joist spacing, mm, above 0
   * @param loadKnPerM2 load, kN/m2, above 0
   * @param limit the n of span/n, above 0
   * @param shearModulus shear modulus, N/mm2, or empty for bending alone
   * @throws IllegalArgumentException for a number that is not above 0
   */
  public static Values of(
      double breadthMm,
      double depthMm,
      double modulus,
      double centresMm,
      double loadKnPerM2,
      double limit,
      OptionalDouble shearModulus) {
    double stiffness =
        Need.positive("modulus", modulus)
            * Beam.secondMoment(
                Need.positive("breadth", breadthMm), Need.positive("depth", depthMm));
    double load =
        Beam.lineLoad(Need.positive("load", loadKnPerM2), Need.positive("centres", centresMm));
    double bendingSpan = Math.cbrt(384 * stiffness / (5 * load * Need.positive("limit", limit)));
    if (shearModulus.isEmpty()) {
      return new Values(bendingSpan, bendingSpan);
    }
    double cubed = 5 * load / (384 * stiffness);
    double linear =
        load
            / (8
                * Beam.SHEAR_FACTOR
                * Need.positive("shear modulus", shearModulus.getAsDouble())
                * breadthMm
                * depthMm);
    double span = bendingSpan;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double excess = cubed * span * span * span + linear * span - 1 / limit;
      double step = excess / (3 * cubed * span * span + linear);
      span -= step;
      if (Math.abs(step) <= 1e-13 * span) {
        break;
      }
    }
    return new Values(span, bendingSpan);
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
            in.number("limit"),
            JoistKeys.shearModulus(in));
    Result.Draft draft =
        shared
            .begun(in)
            .let("bending span", values.bendingSpanMm())
            .let("L", values.spanMm())
            .value("span", values.spanMm() / 1000, "m")
            .step(
                "bending alone: L = (384*E*I/(5*w*n))^(1/3)",
                "(384*{E}*{I}/(5*{w}*{limit}))^(1/3)",
                "L = {bending span} mm");
    if (in.has("shear-modulus")) {
      draft.step(
          "with shear: 5*w*L^3/(384*E*I) + w*L/(8*k*G*b*d) = 1/n, k = 5/6, solved for L",
          "5*{w}*L^3/(384*{E}*{I}) + {w}*L/(8*5/6*{shear-modulus}*{b}*{d}) = 1/{limit}",
          "L = {L} mm");
    }
    return shared.notes(in, draft).done(this);
  }
}
