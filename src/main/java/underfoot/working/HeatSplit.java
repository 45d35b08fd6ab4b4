package underfoot.working;

import java.util.List;

/** How much of a heated floor's heat goes up and how much is lost below. */
public final class HeatSplit implements Working {
  private static final double SURFACE_COEFFICIENT = 10.8;

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
  public String name() {
    return "heat-split";
  }

  @Override
  public String purpose() {
    return "How much of a heated floor's heat goes up and how much is lost below";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("output", Dimension.HEAT_FLOW, "W/m2", 0, 1000, "heat to the room").above(),
        Key.of("room", Dimension.TEMPERATURE, "C", -20, 60, "temperature of the room"),
        Key.of("below", Dimension.TEMPERATURE, "C", -40, 60, "temperature below the floor"),
        Key.of(
            "covering-resistance",
            Dimension.RESISTANCE,
            "m2K/W",
            0,
            5,
            "resistance of everything over the screed"),
        Key.of("screed", Dimension.LENGTH, "mm", 0, 500, "thickness of screed over the pipes"),
        Key.of(
            "screed-conductivity",
            Dimension.CONDUCTIVITY,
            "W/mK",
            0.01,
            400,
            "conductivity of the screed"),
        Key.of(
            "resistance-below",
            Dimension.RESISTANCE,
            "m2K/W",
            0.001,
            100,
            "all resistance below the pipes, surface included"));
  }

  @Override
  public List<String> example() {
    return List.of(
        "output=60 W/m2",
        "room=20 C",
        "below=20 C",
        "covering-resistance=0.0132 m2K/W",
        "screed=45 mm",
        "screed-conductivity=1.2 W/mK",
        "resistance-below=1.04 m2K/W");
  }

  @Override
  public String source() {
    return "EN 1264-2 clause 8, downward heat flow; surface coefficient 10.8 W/m2K (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double output = in.number("output");
    double room = in.number("room");
    double below = in.number("below");
    double covering = in.number("covering-resistance");
    double screed = in.number("screed");
    double conductivity = in.number("screed-conductivity");
    double resistanceBelow = in.number("resistance-below");
    Values values;
    try {
      values = of(output, room, below, covering, screed, conductivity, resistanceBelow);
    } catch (IllegalArgumentException tooWarm) {
      throw in.refuse("below", tooWarm.getMessage());
    }
    Result.Draft draft =
        new Result.Draft()
            .step(
                "Ro = 1/10.8 + covering + screed/conductivity",
                "1/10.8 + "
                    + Show.number(covering)
                    + " + "
                    + Show.number(screed / 1000)
                    + "/"
                    + Show.number(conductivity),
                "Ro = " + Show.number(values.resistanceAbove()) + " m2K/W")
            .step(
                "down = (Ro*output + room - below)/resistance below",
                "("
                    + Show.number(values.resistanceAbove())
                    + "*"
                    + Show.number(output)
                    + " + "
                    + Show.term(room)
                    + " - "
                    + Show.term(below)
                    + ")/"
                    + Show.number(resistanceBelow),
                "down = " + Show.number(values.downWPerM2()) + " W/m2")
            .step(
                "up share = up/(up + down)",
                Show.number(output)
                    + "/("
                    + Show.number(output)
                    + " + "
                    + Show.term(values.downWPerM2())
                    + ")",
                "up-share = " + Show.number(values.upShare()))
            .value("up", values.upWPerM2(), "W/m2")
            .value("down", values.downWPerM2(), "W/m2")
            .value("up-share", values.upShare(), "");
    if (values.downWPerM2() < 0) {
      draft.note("The space below is warm enough to give heat to the floor, so down is negative.");
    }
    return draft.done(this, in);
  }
}
