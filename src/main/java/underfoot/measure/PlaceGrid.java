package underfoot.measure;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Finds the nearest of many places: a grid of cells, looked through ring by ring. */
final class PlaceGrid {
  private final List<Coordinate> places;
  private final Envelope all = new Envelope();
  private final int side;
  private final double wide;

  /** Where the places of each cell begin in {@link #held}. */
  private final int[] begins;

  private final int[] held;

  /**
   * @param places at least one
   */
  PlaceGrid(List<Coordinate> places) {
    this.places = places;
    places.forEach(all::expandToInclude);
    side = Math.max(1, (int) Math.sqrt(places.size()));
    wide = Math.max(1e-9, Math.max(all.getWidth(), all.getHeight()) / side);
    begins = new int[side * side + 1];
    for (Coordinate place : places) {
      begins[cell(place) + 1]++;
    }
    for (int cell = 0; cell < side * side; cell++) {
      begins[cell + 1] += begins[cell];
    }
    held = new int[places.size()];
    int[] next = Arrays.copyOf(begins, side * side);
    for (int i = 0; i < places.size(); i++) {
      held[next[cell(places.get(i))]++] = i;
    }
  }

  private int cell(Coordinate place) {
    return along(place.y - all.getMinY()) * side + along(place.x - all.getMinX());
  }

  private int along(double in) {
    return (int) Math.max(0, Math.min(side - 1, in / wide));
  }

  /** The nearest place; of several that are as near the first. */
  Coordinate nearest(double x, double y) {
    int column = along(x - all.getMinX());
    int row = along(y - all.getMinY());
    // From without the grid the rings are those of the nearest cell: no place lies nearer than it.
    Coordinate from = new Coordinate(x, y);
    double outside =
        new Coordinate(
                Math.max(all.getMinX(), Math.min(all.getMaxX(), x)),
                Math.max(all.getMinY(), Math.min(all.getMaxY(), y)))
            .distance(from);
    int best = -1;
    double least = Double.MAX_VALUE;
    for (int ring = 0; ring < side; ring++) {
      if (best >= 0 && least < (ring - 1) * wide - outside) {
        break;
      }
      for (int r = Math.max(0, row - ring); r <= Math.min(side - 1, row + ring); r++) {
        boolean edge = Math.abs(r - row) == ring;
        int step = edge || ring == 0 ? 1 : 2 * ring;
        for (int c = column - ring; c <= column + ring; c += step) {
          if (c < 0 || c >= side) {
            continue;
          }
          for (int k = begins[r * side + c]; k < begins[r * side + c + 1]; k++) {
            double distance = places.get(held[k]).distance(from);
            if (distance < least || (distance == least && held[k] < best)) {
              least = distance;
              best = held[k];
            }
          }
        }
      }
    }
    return places.get(best);
  }
}
