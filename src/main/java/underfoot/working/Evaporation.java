package underfoot.working;

import static underfoot.quantity.Dimension.RATIO;
import static underfoot.quantity.Dimension.SPEED;
import static underfoot.quantity.Dimension.TEMPERATURE;

/** How fast water leaves a fresh surface. */
public final class Evaporation extends Working {
  private final EvaporationBands bands;

  /**
   * Makes the working.
   *
   * @param bands the rates at which the risk steps up
   */
  public Evaporation(EvaporationBands bands) {
    super(
        new Sheet(
            "evaporation",
            "How fast water leaves a fresh surface, or whether it settles there instead",
            "Uno 1998, Plastic shrinkage cracking and evaporation formulas, ACI Materials Journal"
                + " 95-M34 (formula quoted)",
            "surface=25 C",
            "air=25 C",
            "humidity=50 %",
            "wind=10 km/h"),
        Key.of("surface", TEMPERATURE, "C", -10, 80, "temperature of the fresh surface"),
        Key.of("air", TEMPERATURE, "C", -10, 60, "temperature of the air"),
        Key.of("humidity", RATIO, "%", 0, 100, "relative humidity of the air"),
        Key.of("wind", SPEED, "km/h", 0, 200, "air speed 0.5 m above the surface"));
    this.bands = bands;
  }

  /**
   * What a surface comes to.
   *
   * @param rateKgPerM2h rate, kg/m2h, never negative
   * @param condensation whether water settles on the surface instead
   * @param band 0 (little) to 3 (much)
   * @param formulaKgPerM2h what the formula gave, which may be negative
   */
  public record Values(
      double rateKgPerM2h, boolean condensation, int band, double formulaKgPerM2h) {}

  /**
   * Works out E = 5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5) (V + 4) 10^-6.
   *
   * @param surfaceC temperature of the surface, C, above -18
   * @param airC temperature of the air, C, above -18
   * @param humidityPercent relative humidity, %, 0 to 100
   * @param windKmPerH wind 0.5 m above the surface, km/h, 0 or more
   * @param bands the rates at which the risk steps up
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(
      double surfaceC,
      double airC,
      double humidityPercent,
      double windKmPerH,
      EvaporationBands bands) {
    Need.positive("surface temperature + 18", surfaceC + 18);
    Need.positive("air temperature + 18", airC + 18);
    Need.notNegative("wind", windKmPerH);
    if (!(humidityPercent >= 0) || !(humidityPercent <= 100)) {
      throw new IllegalArgumentException("humidity must be 0 to 100 %, not " + humidityPercent);
    }
    double formula =
        5
            * (Math.pow(surfaceC + 18, 2.5) - humidityPercent / 100 * Math.pow(airC + 18, 2.5))
            * (windKmPerH + 4)
            * 1e-6;
    double rate = Math.max(0, formula);
    return new Values(rate, formula < 0, bands.of(rate), formula);
  }

  @Override
  Result work(Inputs in) {
    double surface = in.number("surface");
    double air = in.number("air");
    double humidity = in.number("humidity");
    Values values = of(surface, air, humidity, in.number("wind"), bands);
    boolean wet = values.condensation();
    boolean damp = humidity > 0 && surface <= DewPoint.of(air, humidity);
    return new Result.Draft(in)
        .let("Tc", surface, "C")
        .let("Ta", air, "C")
        .let("V", in.number("wind"), "km/h")
        .let("r", humidity / 100, "")
        .let("E", values.formulaKgPerM2h(), "kg/m2h")
        .let("dew point", humidity > 0 ? DewPoint.of(air, humidity) : 0, "C")
        .value("rate", values.rateKgPerM2h(), "kg/m2h")
        .value("condensation", wet ? 1 : 0, "")
        .value("band", values.band(), "")
        .step("E = 5*((Tc + 18)^2.5 - r*(Ta + 18)^2.5)*(V + 4)*10^-6, r = RH/100")
        .step(
            "band 0 below "
                + Show.number(bands.low())
                + ", 1 below "
                + Show.number(bands.middle())
                + ", 2 below "
                + Show.number(bands.high())
                + ", else 3",
            "rate {rate} kg/m2h",
            "band {band}")
        .noteIf(
            wet,
            "The formula gives less than nought: water settles on the surface. The dew point of the"
                + " air is {dew point} C and the surface is at {surface} C.")
        .noteIf(
            !wet && damp,
            "The surface is not above the dew point of {dew point} C: expect it to be wet.")
        .note(
            "A coarse band of risk only: real rates lie within about 40 % either way, and no limit"
                + " is published for tile levellers.")
        .done(this);
  }
}
