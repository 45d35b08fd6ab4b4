package underfoot.working;

/** How far a joist bends under a load at mid-span: P L^3/(48 E I), textbook closed form. */
public final class PointLoad {
  private PointLoad() {}

  /**
   * Works out the deflection.
   *
   * @param breadthMm breadth, mm, above 0
   * @param depthMm depth, mm, above 0
   * @param modulus modulus of elasticity, N/mm2, above 0
   * @param loadKn load at mid-span, kN, above 0
   * @param spanMm span, mm, above 0
   * @return deflection, mm
   * @throws IllegalArgumentException for a number that is not above 0
   */
  public static double of(
      double breadthMm, double depthMm, double modulus, double loadKn, double spanMm) {
    double stiffness =
        Need.positive("modulus", modulus)
            * Beam.secondMoment(
                Need.positive("breadth", breadthMm), Need.positive("depth", depthMm));
    return Need.positive("load", loadKn)
        * 1000
        * Math.pow(Need.positive("span", spanMm), 3)
        / (48 * stiffness);
  }
}
