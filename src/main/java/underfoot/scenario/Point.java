package underfoot.scenario;

/**
 * A corner of the room.
 *
 * @param x millimetres along the outline's first direction
 * @param y millimetres along its second direction
 */
public record Point(double x, double y) {
  // Written out, as in what else is looked up by: what Java makes of a record is slow to begin
  // with.
  @Override
  public boolean equals(Object other) {
    return other instanceof Point that
        && Double.compare(x, that.x) == 0
        && Double.compare(y, that.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }
}
