package underfoot.measure;

import java.util.List;

/**
 * A levelling compound poured over a surveyed floor.
 *
 * @param surface what its surface comes to
 * @param leastMm least depth, mm
 * @param meanMm volume over area, mm
 * @param mostMm greatest depth, mm
 * @param volumeL volume over the whole floor, L
 * @param areaM2 area poured, m2
 * @param depthsMm depth at each reading in the order given, mm
 */
public record Pour(
    PourSurface surface,
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
}
