package underfoot.scenario;

/**
 * A spot height of the floor.
 *
 * @param x millimetres along the outline's first direction
 * @param y millimetres along its second direction
 * @param z height in millimetres above the datum, up being positive
 */
public record Reading(double x, double y, double z) {
  @Override
  public boolean equals(Object other) {
    return other instanceof Reading that
        && Double.compare(x, that.x) == 0
        && Double.compare(y, that.y) == 0
        && Double.compare(z, that.z) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(x) + Double.hashCode(y)) + Double.hashCode(z);
  }
}
