package underfoot.measure;

import org.locationtech.jts.geom.Coordinate;
import underfoot.working.StraightedgeGap;

/**
 * The worst that a straightedge finds on a floor.
 *
 * @param gap the line where the gap is worst; null where no line could be tried
 * @param hump the line where the edge rocks most; null where no line could be tried
 * @param linesTried how many lines were tried
 */
public record Flatness(Line gap, Line hump, int linesTried) {
  /**
   * A straight line over the floor with its profile.
   *
   * @param from where the profile begins, mm
   * @param to where it ends, mm
   * @param positions places along it, mm, from 0
   * @param heights heights there, mm
   * @param values what the edge finds along it
   */
  public record Line(
      Coordinate from,
      Coordinate to,
      double[] positions,
      double[] heights,
      StraightedgeGap.Values values) {
    /** The place so far along the line, mm. */
    public Coordinate at(double along) {
      double share = along / positions[positions.length - 1];
      return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }
  }

  /** Worst gap below the edge, mm; 0 where no line could be tried. */
  public double gapMm() {
    return gap == null ? 0 : gap.values().gapMm();
  }

  /** Most that the floor stands above an edge held under it, mm. */
  public double humpMm() {
    return hump == null ? 0 : hump.values().humpMm();
  }
}
