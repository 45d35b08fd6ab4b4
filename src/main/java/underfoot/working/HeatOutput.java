package underfoot.working;

import static underfoot.quantity.Dimension.HEAT_FLUX;
import static underfoot.quantity.Dimension.TEMPERATURE;
import static underfoot.working.Key.Trait.OPTIONAL;

/** What a heated floor gives off, from how much warmer than the room its surface is; and back. */
public final class HeatOutput extends Working {
  private static final double FACTOR = 8.92;
  private static final double POWER = 1.1;

  private final double occupiedExcessK;

  /**
   * Makes the working.
   *
   * @param occupiedExcessK most an occupied floor's surface may be above the room, K, for the notes
   */
  public HeatOutput(double occupiedExcessK) {
    super(
        new Sheet(
                "heat-output",
                "What a heated floor gives off, or how warm its surface must be",
                "EN 1264-2, basic characteristic q = 8.92*(surface - room)^1.1 (quoted)",
                "surface=29 C",
                "room=20 C")
            .ways(Alternative.of("surface", "room"), Alternative.of("output").with("room")),
        Key.of("surface", TEMPERATURE, "C", -20, 100, "mean temperature of the surface", OPTIONAL),
        Key.of("room", TEMPERATURE, "C", -20, 60, "temperature of the room", OPTIONAL),
        Key.of("output", HEAT_FLUX, "W/m2", 0, 1000, "heat wanted, in place of surface", OPTIONAL));
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
  Result work(Inputs in) {
    Result.Draft draft = new Result.Draft(in);
    if (in.has("output")) {
      double excess = excess(in.number("output"));
      draft
          .let("q", in.number("output"), "W/m2")
          .value("excess", excess, "K")
          .step("excess = (q/8.92)^(1/1.1)");
      if (in.has("room")) {
        draft
            .let("surface", in.number("room") + excess, "C")
            .note("In a room at {room} C the surface is at {surface} C.");
      }
    } else {
      double surface = in.number("surface");
      double room = in.number("room");
      if (surface < room) {
        throw in.refuse("surface", "is below the room's " + Show.number(room) + " C");
      }
      draft
          .value("output", output(surface - room), "W/m2")
          .step("q = 8.92*(surface - room)^1.1", "output = {output} W/m2");
    }
    return draft
        .let("occupied", occupiedExcessK, "K")
        .let("most", output(occupiedExcessK), "W/m2")
        .note(
            "EN 1264 keeps the surface of an occupied floor within {occupied} K of the room (quoted),"
                + " which is {most} W/m2.")
        .done(this);
  }
}
