package underfoot.working;

import java.util.List;

/** The lowest natural frequency of a floor: how lively it feels. */
public final class FloorFrequency implements Working {
  private final double simpleCheckAboveHz;

  /**
   * Makes the working.
   *
   * @param simpleCheckAboveHz frequency above which the simple vibration check may be used, Hz, for
   *     the notes
   */
  public FloorFrequency(double simpleCheckAboveHz) {
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
  public String name() {
    return "floor-frequency";
  }

  @Override
  public String purpose() {
    return "The lowest natural frequency of a floor, from span, stiffness and mass";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("span", Dimension.LENGTH, "m", 0.1, 30, "span of the floor"),
        Key.of(
                "stiffness",
                Dimension.STIFFNESS,
                "N.m2",
                0,
                1e12,
                "bending stiffness along the span, per m of width")
            .above(),
        Key.of("mass", Dimension.AREA_MASS, "kg/m2", 0, 10_000, "permanent mass of the floor")
            .above());
  }

  @Override
  public List<String> example() {
    return List.of("span=5.3 m", "stiffness=5.81e6 N.m2", "mass=226 kg/m2");
  }

  @Override
  public String source() {
    return "EN 1995-1-1, equation 7.5 (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double span = in.metres("span");
    double stiffness = in.number("stiffness");
    double mass = in.number("mass");
    double frequency = of(span, stiffness, mass);
    return new Result.Draft()
        .step(
            "f = pi/(2*L^2)*sqrt(EI/m)",
            "pi/(2*"
                + Show.number(span)
                + "^2)*sqrt("
                + Show.number(stiffness)
                + "/"
                + Show.number(mass)
                + ")",
            "f = " + Show.number(frequency) + " Hz")
        .value("frequency", frequency, "Hz")
        .note(
            "EN 1995-1-1 holds its simple vibration check for floors above "
                + Show.number(simpleCheckAboveHz)
                + " Hz (quoted); this floor is "
                + (frequency > simpleCheckAboveHz ? "above" : "not above")
                + " it.")
        .done(this, in);
  }
}
