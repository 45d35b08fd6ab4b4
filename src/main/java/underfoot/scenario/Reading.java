package underfoot.scenario;

/**
 * A spot height of the floor.
 *
 * @param x millimetres along the outline's first direction
 * @param y millimetres along its second direction
 * @param z height in millimetres above the datum, up being positive
 */
public record Reading(double x, double y, double z) {}
