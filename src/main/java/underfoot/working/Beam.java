package underfoot.working;

import java.util.OptionalDouble;

/**
 * A simply supported rectangular beam under an even load.
 *
 * <p>Source: 5wL^4/(384EI) as in Chudley and Greeno, Building Construction Handbook, 8th ed.,
 * "Timber beam design"; shear deflection wL^2/(8 k G A) with k = 5/6, textbook closed form.
 */
final class Beam {
  /** Shear factor of a rectangle, textbook closed form. */
  static final double SHEAR_FACTOR = 5.0 / 6.0;

  private Beam() {}

  /** Second moment of area b d^3/12 in mm4, of a breadth and depth in mm. */
  static double secondMoment(double breadthMm, double depthMm) {
    return breadthMm * Math.pow(depthMm, 3) / 12;
  }

  /** Bending deflection in mm of a load in N/mm, span in mm, stiffness EI in N.mm2. */
  static double bending(double loadNPerMm, double spanMm, double stiffness) {
    return 5 * loadNPerMm * Math.pow(spanMm, 4) / (384 * stiffness);
  }

  /** Shear deflection in mm; nought where no shear modulus is given. */
  static double shear(
      double loadNPerMm, double spanMm, OptionalDouble shearModulus, double areaMm2) {
    return shearModulus.isPresent()
        ? loadNPerMm * spanMm * spanMm / (8 * SHEAR_FACTOR * shearModulus.getAsDouble() * areaMm2)
        : 0;
  }

  /** The load on one joist in N/mm, of a load in kN/m2 on a strip as wide as the centres in mm. */
  static double lineLoad(double loadKnPerM2, double centresMm) {
    return loadKnPerM2 * centresMm / 1000;
  }
}
