package underfoot.working;

/**
 * What a timber floor's deflection grows to in time.
 *
 * <p>Source: EN 1995-1-1 clause 2.2.3: u(1 + kdef) for what is permanent, u(1 + psi2 kdef) for what
 * is imposed.
 */
public final class LongTermDeflection {
  private LongTermDeflection() {}

  /**
   * Works out the final deflection.
   *
   * @param permanentMm deflection at once under permanent load, mm, 0 or more
   * @param imposedMm deflection at once under imposed load, mm, 0 or more
   * @param kDef creep factor for the timber and its service class, 0 or more
   * @param psi2 share of the imposed load that is always there, 0 to 1
   * @return final deflection, mm
   * @throws IllegalArgumentException outside those ranges
   */
  public static double of(double permanentMm, double imposedMm, double kDef, double psi2) {
    if (!(psi2 >= 0 && psi2 <= 1)) {
      throw new IllegalArgumentException("psi2 must be 0 to 1, not " + psi2);
    }
    Need.notNegative("kdef", kDef);
    return Need.notNegative("permanent deflection", permanentMm) * (1 + kDef)
        + Need.notNegative("imposed deflection", imposedMm) * (1 + psi2 * kDef);
  }
}
