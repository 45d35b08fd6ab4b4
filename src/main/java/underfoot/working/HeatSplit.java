package underfoot.working;

import static underfoot.quantity.Dimension.CONDUCTIVITY;
import static underfoot.quantity.Dimension.HEAT_FLUX;
import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.quantity.Dimension.RESISTANCE;
import static underfoot.quantity.Dimension.TEMPERATURE;
import static underfoot.working.Key.Trait.ABOVE;

/** How much of a heated floor's heat goes up and how much is lost below. */
public final class HeatSplit extends Working {
  private static final double SURFACE_COEFFICIENT = 10.8;

  /** Makes the working. */
  public HeatSplit() {
    super(
        new Sheet(
            "heat-split",
            "How much of a heated floor's heat goes up and how much is lost below",
            "EN 1264-2 clause 8, downward heat flow; surface coefficient 10.8 W/m2K (quoted)",
            "output=60 W/m2",
            "room=20 C",
            "below=20 C",
            "covering-resistance=0.0132 m2K/W",
            "screed=45 mm",
            "screed-conductivity=1.2 W/mK",
            "resistance-below=1.04 m2K/W"),
        Key.of("output", HEAT_FLUX, "W/m2", 0, 1000, "heat to the room", ABOVE),
        Key.of("room", TEMPERATURE, "C", -20, 60, "temperature of the room"),
        Key.of("below", TEMPERATURE, "C", -40, 60, "temperature below the floor"),
        Key.of(
            "covering-resistance",
            RESISTANCE,
            "m2K/W",
            0,
            5,
            "resistance of everything over the screed"),
        Key.of("screed", LENGTH, "mm", 0, 500, "thickness of screed over the pipes"),
        Key.of(
            "screed-conductivity", CONDUCTIVITY, "W/mK", 0.01, 400, "conductivity of the screed"),
        Key.of(
            "resistance-below",
            RESISTANCE,
            "m2K/W",
            0.001,
            100,
            "all resistance below the pipes, surface included"));
  }

  /**
   * What a heated floor comes to.
   *
   * @param upWPerM2 heat to the room, W/m2
   * @param downWPerM2 heat below, W/m2; negative where the space below is the warmer
   * @param upShare up/(up + down)
   * @param resistanceAbove resistance from the pipes to the room, m2K/W
   */
  public record Values(
      double upWPerM2, double downWPerM2, double upShare, double resistanceAbove) {}

  /**
   * Works out down = (Ro q + room - below)/Ru with Ro = 1/10.8 + covering + screed/conductivity.
   *
   * @param outputWPerM2 heat to the room, W/m2, above 0
   * @param roomC temperature of the room, C
   * @param belowC temperature below, C
   * @param coveringResistance resistance of everything over the screed, m2K/W, 0 or more
   * @param screedMm screed over the pipes, mm, 0 or more
   * @param screedConductivity conductivity of the screed, W/mK, above 0
   * @param resistanceBelow all resistance below the pipes, m2K/W, above 0
   * @throws IllegalArgumentException outside those ranges, or where all heat would come from below
   */
  public static Values of(
      double outputWPerM2,
      double roomC,
      double belowC,
      double coveringResistance,
      double screedMm,
      double screedConductivity,
      double resistanceBelow) {
    double above =
        1 / SURFACE_COEFFICIENT
            + Need.notNegative("covering resistance", coveringResistance)
            + Need.notNegative("screed", screedMm)
                / 1000
                / Need.positive("screed conductivity", screedConductivity);
    double up = Need.positive("output", outputWPerM2);
    double down =
        (above * up + Need.finite("room", roomC) - Need.finite("below", belowC))
            / Need.positive("resistance below", resistanceBelow);
    if (!(up + down > 0)) {
      throw new IllegalArgumentException("the space below is so warm that it heats the room alone");
    }
    return new Values(up, down, up / (up + down), above);
  }

  @Override
  Result work(Inputs in) {
    Values values =
        in.blaming(
            "below",
            () ->
                of(
                    in.number("output"),
                    in.number("room"),
                    in.number("below"),
                    in.number("covering-resistance"),
                    in.number("screed"),
                    in.number("screed-conductivity"),
                    in.number("resistance-below")));
    return new Result.Draft(in)
        .value("up", values.upWPerM2(), "W/m2")
        .value("down", values.downWPerM2(), "W/m2")
        .value("up-share", values.upShare(), "")
        .let("Ro", values.resistanceAbove(), "m2K/W")
        .let("covering", in.number("covering-resistance"), "m2K/W")
        .let("screed", in.metres("screed"), "m")
        .let("conductivity", in.number("screed-conductivity"), "W/mK")
        .let("resistance below", in.number("resistance-below"), "m2K/W")
        .step("Ro = 1/10.8 + covering + screed/conductivity")
        .step("down = (Ro*output + room - below)/resistance below")
        .step("up share = up/(up + down)", "up-share = {up-share}")
        .noteIf(
            values.downWPerM2() < 0,
            "The space below is warm enough to give heat to the floor, so down is negative.")
        .done(this);
  }
}
