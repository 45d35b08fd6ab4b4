package underfoot.working;

import java.util.List;

/** The moisture content wood settles to in air of a given temperature and humidity. */
public final class WoodMoisture implements Working {

  /**
   * Works out the equilibrium moisture content (Simpson).
   *
   * @param airC air temperature, C, from -1.1 to 132.2, the range of the published table
   * @param humidityPercent relative humidity, %, from 0 to 100
   * @return moisture content, % of dry mass
   * @throws IllegalArgumentException outside those ranges
   */
  public static double of(double airC, double humidityPercent) {
    if (!(airC >= -1.1) || !(airC <= 132.2)) {
      throw new IllegalArgumentException("temperature must be -1.1 to 132.2 C, not " + airC);
    }
    if (!(humidityPercent >= 0) || !(humidityPercent <= 100)) {
      throw new IllegalArgumentException("humidity must be 0 to 100 %, not " + humidityPercent);
    }
    Terms terms = Terms.at(airC);
    double kh = terms.k * humidityPercent / 100;
    double first = terms.k1 * kh;
    double second = terms.k1 * terms.k2 * kh * kh;
    return 1800 / terms.w * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
  }

  private record Terms(double w, double k, double k1, double k2) {
    static Terms at(double t) {
      return new Terms(
          349 + 1.29 * t + 0.0135 * t * t,
          0.805 + 0.000736 * t - 0.00000273 * t * t,
          6.27 - 0.00938 * t - 0.000303 * t * t,
          1.91 + 0.0407 * t - 0.000293 * t * t);
    }
  }

  @Override
  public String name() {
    return "wood-moisture";
  }

  @Override
  public String purpose() {
    return "The moisture content wood settles to in given air";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("temperature", Dimension.TEMPERATURE, "C", -1.1, 132.2, "air temperature"),
        Key.of("humidity", Dimension.PERCENT, "%", 0, 100, "relative humidity of the air"));
  }

  @Override
  public List<String> example() {
    return List.of("temperature=20 C", "humidity=65 %");
  }

  @Override
  public String source() {
    return "Simpson 1998, Equilibrium moisture content of wood, FPL-RN-0268; Wood Handbook chapter 4"
        + " (coefficients quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double air = in.number("temperature");
    double humidity = in.number("humidity");
    double content = of(air, humidity);
    Terms terms = Terms.at(air);
    return new Result.Draft()
        .step(
            "W = 349 + 1.29*T + 0.0135*T^2; K = 0.805 + 0.000736*T - 0.00000273*T^2; K1 = 6.27 -"
                + " 0.00938*T - 0.000303*T^2; K2 = 1.91 + 0.0407*T - 0.000293*T^2",
            "T = " + Show.number(air),
            "W = "
                + Show.number(terms.w)
                + ", K = "
                + Show.number(terms.k)
                + ", K1 = "
                + Show.number(terms.k1)
                + ", K2 = "
                + Show.number(terms.k2))
        .step(
            "content = 1800/W*(K*h/(1 - K*h) + (K1*K*h + 2*K1*K2*K^2*h^2)/(1 + K1*K*h +"
                + " K1*K2*K^2*h^2)), h = RH/100",
            "h = " + Show.number(humidity / 100),
            "content = " + Show.number(content) + " %")
        .value("content", content, "%")
        .note("Species and history move real wood by a per cent or two.")
        .done(this, in);
  }
}
