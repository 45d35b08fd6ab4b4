package underfoot.working;

import java.util.List;

/** The temperature at which air of a given temperature and humidity begins to wet a surface. */
public final class DewPoint implements Working {
  // Magnus constants over water, WMO form; from memory.
  private static final double SLOPE = 17.62;
  private static final double BASE_C = 243.12;

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
  public String name() {
    return "dew-point";
  }

  @Override
  public String purpose() {
    return "The surface temperature at which water begins to settle from the air";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("temperature", Dimension.TEMPERATURE, "C", -40, 60, "air temperature"),
        Key.of("humidity", Dimension.PERCENT, "%", 1, 100, "relative humidity of the air"));
  }

  @Override
  public List<String> example() {
    return List.of("temperature=20 C", "humidity=65 %");
  }

  @Override
  public String source() {
    return "Magnus formula in the WMO form, constants 17.62 and 243.12 C (from memory)";
  }

  @Override
  public Result work(Inputs in) {
    double air = in.number("temperature");
    double humidity = in.number("humidity");
    double dewPoint = of(air, humidity);
    double g = exponent(air, humidity);
    return new Result.Draft()
        .step(
            "g = ln(RH/100) + 17.62*T/(243.12 + T)",
            "ln("
                + Show.number(humidity)
                + "/100) + 17.62*"
                + Show.term(air)
                + "/(243.12 + "
                + Show.term(air)
                + ")",
            "g = " + Show.number(g))
        .step(
            "Td = 243.12*g/(17.62 - g)",
            "243.12*" + Show.term(g) + "/(17.62 - " + Show.term(g) + ")",
            "Td = " + Show.number(dewPoint) + " C")
        .value("dew-point", dewPoint, "C")
        .done(this, in);
  }
}
