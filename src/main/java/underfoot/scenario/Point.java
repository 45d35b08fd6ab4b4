package underfoot.scenario;

/**
 * A corner of the room.
 *
 * @param x millimetres along the outline's first direction
 * @param y millimetres along its second direction
 */
public record Point(double x, double y) {}
