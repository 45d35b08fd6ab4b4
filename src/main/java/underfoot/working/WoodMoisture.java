package underfoot.working;

import static underfoot.quantity.Dimension.RATIO;
import static underfoot.quantity.Dimension.TEMPERATURE;

/** The moisture content wood settles to in air of a given temperature and humidity. */
public final class WoodMoisture extends Working {
  /** Makes the working. */
  public WoodMoisture() {
    super(
        new Sheet(
            "wood-moisture",
            "The moisture content wood settles to in given air",
            "Simpson 1998, Equilibrium moisture content of wood, FPL-RN-0268; Wood Handbook chapter 4"
                + " (coefficients quoted)",
            "temperature=20 C",
            "humidity=65 %"),
        Key.of("temperature", TEMPERATURE, "C", -1.1, 132.2, "air temperature"),
        Key.of("humidity", RATIO, "%", 0, 100, "relative humidity of the air"));
  }

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
  Result work(Inputs in) {
    double air = in.number("temperature");
    double humidity = in.number("humidity");
    Terms terms = Terms.at(air);
    return new Result.Draft(in)
        .let("W", terms.w, "")
        .let("K", terms.k, "")
        .let("K1", terms.k1, "")
        .let("K2", terms.k2, "")
        .let("h", humidity / 100, "")
        .value("content", of(air, humidity), "%")
        .step(
            "W = 349 + 1.29*T + 0.0135*T^2; K = 0.805 + 0.000736*T - 0.00000273*T^2; K1 = 6.27 -"
                + " 0.00938*T - 0.000303*T^2; K2 = 1.91 + 0.0407*T - 0.000293*T^2",
            "T = {temperature}",
            "W = {W}, K = {K}, K1 = {K1}, K2 = {K2}")
        .step(
            "content = 1800/W*(K*h/(1 - K*h) + (K1*K*h + 2*K1*K2*K^2*h^2)/(1 + K1*K*h +"
                + " K1*K2*K^2*h^2)), h = RH/100",
            "h = {h}",
            "content = {content} %")
        .note("Species and history move real wood by a per cent or two.")
        .done(this);
  }
}
