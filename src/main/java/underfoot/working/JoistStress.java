package underfoot.working;

/**
 * A screen of a joist's strength under an even load: the stresses, to be held against what the
 * timber may carry. It is a screen, not a design.
 *
 * <p>Source: M = wL^2/8, bending M/Z, shear 1.5 V/A, bearing V/(b a), as in Chudley and Greeno,
 * Building Construction Handbook, 8th ed., "Timber beam design".
 */
public final class JoistStress {
  private JoistStress() {}

  /**
   * What a joist carries.
   *
   * @param bending bending stress at mid-span, N/mm2
   * @param shear greatest shear stress at the support, N/mm2
   * @param bearing stress across the grain on the bearing, N/mm2
   * @param reactionN load on each bearing, N
   */
  public record Values(double bending, double shear, double bearing, double reactionN) {}

  /**
   * Works out the stresses.
   *
   * @param breadthMm breadth, mm, above 0
   * @param depthMm depth left after notching where it matters, mm, above 0
   * @param centresMm joist spacing, mm, above 0
   * @param loadKnPerM2 total load, kN/m2, above 0
   * @param spanMm span, mm, above 0
   * @param bearingMm length of bearing, mm, above 0
   * @throws IllegalArgumentException for a number that is not above 0
   */
  public static Values of(
      double breadthMm,
      double depthMm,
      double centresMm,
      double loadKnPerM2,
      double spanMm,
      double bearingMm) {
    double load =
        Beam.lineLoad(Need.positive("load", loadKnPerM2), Need.positive("centres", centresMm));
    double span = Need.positive("span", spanMm);
    double area = Need.positive("breadth", breadthMm) * Need.positive("depth", depthMm);
    double reaction = load * span / 2;
    return new Values(
        load * span * span / 8 / (area * depthMm / 6),
        1.5 * reaction / area,
        reaction / (breadthMm * Need.positive("bearing", bearingMm)),
        reaction);
  }
}
