package underfoot.working;

import java.util.List;
import java.util.OptionalDouble;

/** How fast water leaves a fresh surface. */
public final class Evaporation implements Working {
  private final EvaporationBands bands;

  /**
   * Makes the working.
   *
   * @param bands the rates at which the risk steps up
   */
  public Evaporation(EvaporationBands bands) {
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
  public String name() {
    return "evaporation";
  }

  @Override
  public String purpose() {
    return "How fast water leaves a fresh surface, or whether it settles there instead";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("surface", Dimension.TEMPERATURE, "C", -10, 80, "temperature of the fresh surface"),
        Key.of("air", Dimension.TEMPERATURE, "C", -10, 60, "temperature of the air"),
        Key.of("humidity", Dimension.PERCENT, "%", 0, 100, "relative humidity of the air"),
        Key.of("wind", Dimension.SPEED, "km/h", 0, 200, "air speed 0.5 m above the surface"));
  }

  @Override
  public List<String> example() {
    return List.of("surface=25 C", "air=25 C", "humidity=50 %", "wind=10 km/h");
  }

  @Override
  public String source() {
    return "Uno 1998, Plastic shrinkage cracking and evaporation formulas, ACI Materials Journal"
        + " 95-M34 (formula quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double surface = in.number("surface");
    double air = in.number("air");
    double humidity = in.number("humidity");
    double wind = in.number("wind");
    Values values = of(surface, air, humidity, wind, bands);
    Result.Draft draft =
        new Result.Draft()
            .step(
                "E = 5*((Tc + 18)^2.5 - r*(Ta + 18)^2.5)*(V + 4)*10^-6, r = RH/100",
                "5*(("
                    + Show.term(surface)
                    + " + 18)^2.5 - "
                    + Show.number(humidity / 100)
                    + "*("
                    + Show.term(air)
                    + " + 18)^2.5)*("
                    + Show.number(wind)
                    + " + 4)*10^-6",
                "E = " + Show.number(values.formulaKgPerM2h()) + " kg/m2h")
            .step(
                "band 0 below "
                    + Show.number(bands.low())
                    + ", 1 below "
                    + Show.number(bands.middle())
                    + ", 2 below "
                    + Show.number(bands.high())
                    + ", else 3",
                "rate " + Show.number(values.rateKgPerM2h()) + " kg/m2h",
                "band " + values.band())
            .value("rate", values.rateKgPerM2h(), "kg/m2h")
            .value("condensation", values.condensation() ? 1 : 0, "")
            .value("band", values.band(), "");
    if (values.condensation()) {
      draft.note(
          "The formula gives less than nought: water settles on the surface. The dew point of the air"
              + " is "
              + Show.number(DewPoint.of(air, humidity))
              + " C and the surface is at "
              + Show.number(surface)
              + " C.");
    }
    OptionalDouble dewPoint =
        humidity > 0 ? OptionalDouble.of(DewPoint.of(air, humidity)) : OptionalDouble.empty();
    if (!values.condensation() && dewPoint.isPresent() && surface <= dewPoint.getAsDouble()) {
      draft.note(
          "The surface is not above the dew point of "
              + Show.number(dewPoint.getAsDouble())
              + " C: expect it to be wet.");
    }
    return draft
        .note(
            "A coarse band of risk only: real rates lie within about 40 % either way, and no limit"
                + " is published for tile levellers.")
        .done(this, in);
  }
}
