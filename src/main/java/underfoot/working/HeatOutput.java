package underfoot.working;

import java.util.List;

/** What a heated floor gives off, from how much warmer than the room its surface is; and back. */
public final class HeatOutput implements Working {
  private static final double FACTOR = 8.92;
  private static final double POWER = 1.1;

  private final double occupiedExcessK;

  /**
   * Makes the working.
   *
   * @param occupiedExcessK most an occupied floor's surface may be above the room, K, for the notes
   */
  public HeatOutput(double occupiedExcessK) {
    this.occupiedExcessK = occupiedExcessK;
  }

  /**
   * Heat given off: q = 8.92 excess^1.1.
   *
   * @param excessK mean surface temperature above the room, K, 0 or more
   * @return W/m2
   * @throws IllegalArgumentException for a negative excess
   */
  public static double output(double excessK) {
    return FACTOR * Math.pow(Need.notNegative("excess", excessK), POWER);
  }

  /**
   * Excess needed: (q/8.92)^(1/1.1).
   *
   * @param outputWPerM2 heat given off, W/m2, 0 or more
   * @return mean surface temperature above the room, K
   * @throws IllegalArgumentException for a negative output
   */
  public static double excess(double outputWPerM2) {
    return Math.pow(Need.notNegative("output", outputWPerM2) / FACTOR, 1 / POWER);
  }

  @Override
  public String name() {
    return "heat-output";
  }

  @Override
  public String purpose() {
    return "What a heated floor gives off, or how warm its surface must be";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("surface", Dimension.TEMPERATURE, "C", -20, 100, "mean temperature of the surface")
            .optional(),
        Key.of("room", Dimension.TEMPERATURE, "C", -20, 60, "temperature of the room").optional(),
        Key.of("output", Dimension.HEAT_FLOW, "W/m2", 0, 1000, "heat wanted, in place of surface")
            .optional());
  }

  @Override
  public List<Alternative> alternatives() {
    return List.of(Alternative.of("surface", "room"), Alternative.of("output").with("room"));
  }

  @Override
  public List<String> example() {
    return List.of("surface=29 C", "room=20 C");
  }

  @Override
  public String source() {
    return "EN 1264-2, basic characteristic q = 8.92*(surface - room)^1.1 (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    Result.Draft draft = new Result.Draft();
    if (in.has("output")) {
      double output = in.number("output");
      double excess = excess(output);
      draft
          .step(
              "excess = (q/8.92)^(1/1.1)",
              "(" + Show.number(output) + "/8.92)^(1/1.1)",
              "excess = " + Show.number(excess) + " K")
          .value("excess", excess, "K");
      if (in.has("room")) {
        draft.note(
            "In a room at "
                + Show.number(in.number("room"))
                + " C the surface is at "
                + Show.number(in.number("room") + excess)
                + " C.");
      }
    } else {
      double surface = in.number("surface");
      double room = in.number("room");
      if (surface < room) {
        throw in.refuse("surface", "is below the room's " + Show.number(room) + " C");
      }
      double output = output(surface - room);
      draft
          .step(
              "q = 8.92*(surface - room)^1.1",
              "8.92*(" + Show.term(surface) + " - " + Show.term(room) + ")^1.1",
              "output = " + Show.number(output) + " W/m2")
          .value("output", output, "W/m2");
    }
    return draft
        .note(
            "EN 1264 keeps the surface of an occupied floor within "
                + Show.number(occupiedExcessK)
                + " K of the room (quoted), which is "
                + Show.number(output(occupiedExcessK))
                + " W/m2.")
        .done(this, in);
  }
}
