package underfoot.working;

import static underfoot.quantity.Dimension.AREA_MASS;
import static underfoot.quantity.Dimension.BENDING_STIFFNESS;
import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.ABOVE;

/** The lowest natural frequency of a floor: how lively it feels. */
public final class FloorFrequency extends Working {
  private final double simpleCheckAboveHz;

  /**
   * Makes the working.
   *
   * @param simpleCheckAboveHz frequency above which the simple vibration check may be used, Hz, for
   *     the notes
   */
  public FloorFrequency(double simpleCheckAboveHz) {
    super(
        new Sheet(
            "floor-frequency",
            "The lowest natural frequency of a floor, from span, stiffness and mass",
            "EN 1995-1-1, equation 7.5 (quoted)",
            "span=5.3 m",
            "stiffness=5.81e6 N.m2",
            "mass=226 kg/m2"),
        Key.of("span", LENGTH, "m", 0.1, 30, "span of the floor"),
        Key.of(
            "stiffness",
            BENDING_STIFFNESS,
            "N.m2",
            0,
            1e12,
            "bending stiffness along the span, per m of width",
            ABOVE),
        Key.of("mass", AREA_MASS, "kg/m2", 0, 10_000, "permanent mass of the floor", ABOVE));
    this.simpleCheckAboveHz = simpleCheckAboveHz;
  }

  /**
   * Works out f = pi/(2 L^2) sqrt(EI/m).
   *
   * @param spanM span, m, above 0
   * @param stiffnessNm2PerM bending stiffness along the span for each metre of width, N.m2/m, above
   *     0
   * @param massKgPerM2 mass of the floor, kg/m2, above 0
   * @return frequency, Hz
   * @throws IllegalArgumentException for a number that is not above 0
   */
  public static double of(double spanM, double stiffnessNm2PerM, double massKgPerM2) {
    return Math.PI
        / (2 * Math.pow(Need.positive("span", spanM), 2))
        * Math.sqrt(
            Need.positive("stiffness", stiffnessNm2PerM) / Need.positive("mass", massKgPerM2));
  }

  @Override
  Result work(Inputs in) {
    double span = in.metres("span");
    double frequency = of(span, in.number("stiffness"), in.number("mass"));
    return new Result.Draft(in)
        .let("L", span, "m")
        .let("EI", in.number("stiffness"), "N.m2")
        .let("m", in.number("mass"), "kg/m2")
        .let("f", frequency, "Hz")
        .let("limit", simpleCheckAboveHz, "Hz")
        .value("frequency", frequency, "Hz")
        .step("f = pi/(2*L^2)*sqrt(EI/m)")
        .note(
            "EN 1995-1-1 holds its simple vibration check for floors above {limit} Hz (quoted); this"
                + " floor is "
                + (frequency > simpleCheckAboveHz ? "above" : "not above")
                + " it.")
        .done(this);
  }
}
