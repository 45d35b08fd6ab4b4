package underfoot.working;

import static underfoot.quantity.Dimension.RATIO;
import static underfoot.quantity.Dimension.TEMPERATURE;

/** The temperature at which air of a given temperature and humidity begins to wet a surface. */
public final class DewPoint extends Working {
  // Magnus constants over water, WMO form; from memory.
  private static final double SLOPE = 17.62;
  private static final double BASE_C = 243.12;

  /** Makes the working. */
  public DewPoint() {
    super(
        new Sheet(
            "dew-point",
            "The surface temperature at which water begins to settle from the air",
            "Magnus formula in the WMO form, constants 17.62 and 243.12 C (from memory)",
            "temperature=20 C",
            "humidity=65 %"),
        Key.of("temperature", TEMPERATURE, "C", -40, 60, "air temperature"),
        Key.of("humidity", RATIO, "%", 1, 100, "relative humidity of the air"));
  }

  /**
   * Works out the dew point after Magnus: g = ln(RH/100) + 17.62 T/(243.12 + T), Td = 243.12
   * g/(17.62 - g).
   *
   * @param airC air temperature, C, above -60
   * @param humidityPercent relative humidity, %, above 0 and at most 100
   * @return dew point, C
   * @throws IllegalArgumentException outside those ranges
   */
  public static double of(double airC, double humidityPercent) {
    if (!(airC > -60) || !(airC <= 100)) {
      throw new IllegalArgumentException("temperature must be between -60 and 100 C, not " + airC);
    }
    if (!(humidityPercent > 0) || !(humidityPercent <= 100)) {
      throw new IllegalArgumentException("humidity must be above 0 and at most 100 %");
    }
    double g = exponent(airC, humidityPercent);
    return BASE_C * g / (SLOPE - g);
  }

  private static double exponent(double airC, double humidityPercent) {
    return Math.log(humidityPercent / 100) + SLOPE * airC / (BASE_C + airC);
  }

  @Override
  Result work(Inputs in) {
    double air = in.number("temperature");
    double humidity = in.number("humidity");
    double dewPoint = of(air, humidity);
    return new Result.Draft(in)
        .let("RH", humidity, "%")
        .let("T", air, "C")
        .let("g", exponent(air, humidity), "")
        .let("Td", dewPoint, "C")
        .value("dew-point", dewPoint, "C")
        .step("g = ln(RH/100) + 17.62*T/(243.12 + T)")
        .step("Td = 243.12*g/(17.62 - g)")
        .done(this);
  }
}
