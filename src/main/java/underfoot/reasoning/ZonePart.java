package underfoot.reasoning;

/**
 * What the rules made of a part of the room where the floor is otherwise.
 *
 * @param name what the part is called
 * @param surface how much higher its surface stands today than the rest of the floor, mm
 * @param assessment the part as a floor of its own
 * @param level where its finished floor comes to lie above the rest of the floor as it is today,
 *     mm; NaN if nothing is built
 * @param step how much higher it ends than the rest of the finished floor, mm; NaN if nothing is
 *     built
 */
public record ZonePart(
    String name, double surface, Assessment assessment, double level, double step) {}
