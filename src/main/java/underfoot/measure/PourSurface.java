package underfoot.measure;

/**
 * The plane that a levelling compound's surface comes to.
 *
 * @param level whether it is level; otherwise it is parallel to the plane that fits the floor best
 * @param datumMm its height at the origin of the readings, mm; its height everywhere where level
 * @param alongX how it rises along x, mm a m; 0 where level
 * @param alongY how it rises along y, mm a m; 0 where level
 */
public record PourSurface(boolean level, double datumMm, double alongX, double alongY) {
  /** Its height at a place given in mm, mm. */
  public double at(double x, double y) {
    return datumMm + alongX * x / 1000 + alongY * y / 1000;
  }
}
