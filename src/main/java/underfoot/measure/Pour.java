package underfoot.measure;

import java.util.List;

/**
 * A levelling compound poured over a surveyed floor.
 *
 * @param level whether its surface is level; otherwise it is parallel to the plane that fits the
 *     floor best
 * @param datumMm height of its surface at the origin of the readings, mm; the whole surface's
 *     height where it is level
 * @param alongX how the surface rises along x, mm a m; 0 where level
 * @param alongY how it rises along y, mm a m; 0 where level
 * @param leastMm least depth, mm
 * @param meanMm volume over area, mm
 * @param mostMm greatest depth, mm
 * @param volumeL volume over the whole floor, L
 * @param areaM2 area poured, m2
 * @param depthsMm depth at each reading in the order given, mm
 */
public record Pour(
    boolean level,
    double datumMm,
    double alongX,
    double alongY,
    double leastMm,
    double meanMm,
    double mostMm,
    double volumeL,
    double areaM2,
    List<Double> depthsMm) {
  /** Copies the list. */
  public Pour {
    depthsMm = List.copyOf(depthsMm);
  }

  /** Height of the surface at a place given in mm, mm. */
  public double surfaceAt(double x, double y) {
    return datumMm + alongX * x / 1000 + alongY * y / 1000;
  }
}
