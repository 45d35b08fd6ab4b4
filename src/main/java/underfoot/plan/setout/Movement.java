package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Movement joints within a field. Where the pattern has a straight joint in that direction, the
 * tile joint nearest to the wanted place is widened; where it has none, tiles are cut along the
 * wanted place.
 *
 * @param x wanted places of joints that run along y, mm along the tiles' axes
 * @param y wanted places of joints that run along x, mm
 * @param width how wide they are, mm
 */
public record Movement(double[] x, double[] y, double width) {
  /** No movement joints. */
  public static final Movement NONE = new Movement(new double[0], new double[0], 0);

  /** Copies the places. */
  public Movement {
    x = x.clone();
    y = y.clone();
  }

  /**
   * Evenly spaced joints.
   *
   * @param around the field's bounds
   * @param along bays along x
   * @param across bays along y
   * @param width of a joint, mm
   */
  public static Movement even(Envelope around, long along, long across, double width) {
    return new Movement(
        places(around.getMinX(), around.getMaxX(), along),
        places(around.getMinY(), around.getMaxY(), across),
        width);
  }

  private static double[] places(double from, double to, long bays) {
    double[] places = new double[(int) Math.max(0, bays - 1)];
    for (int i = 0; i < places.length; i++) {
      places[i] = from + (to - from) * (i + 1) / bays;
    }
    return places;
  }

  /** Those that a pattern cannot take into its joints, as strips to be left out of the room. */
  List<Polygon> cut(Pattern pattern, Envelope around, double turn) {
    List<Polygon> strips = new ArrayList<>();
    double far = around.getWidth() + around.getHeight() + 2 * width;
    if (!pattern.kind().straightColumns()) {
      for (double at : x) {
        strips.add(
            strip(
                at - width / 2,
                around.getMinY() - far,
                at + width / 2,
                around.getMaxY() + far,
                turn));
      }
    }
    if (!pattern.kind().straightRows()) {
      for (double at : y) {
        strips.add(
            strip(
                around.getMinX() - far,
                at - width / 2,
                around.getMaxX() + far,
                at + width / 2,
                turn));
      }
    }
    return strips;
  }

  private static Polygon strip(double x1, double y1, double x2, double y2, double turn) {
    Polygon strip =
        Field.SHAPES.createPolygon(
            new Coordinate[] {
              new Coordinate(x1, y1),
              new Coordinate(x2, y1),
              new Coordinate(x2, y2),
              new Coordinate(x1, y2),
              new Coordinate(x1, y1)
            });
    return (Polygon) AffineTransformation.rotationInstance(turn).transform(strip);
  }

  /** How much wider than a tile joint they are, mm. */
  double extra(Pattern pattern) {
    return Math.max(0, width - pattern.joint());
  }

  /** The tile joints that are widened along x for a start, by where they begin before widening. */
  double[] widenedX(Pattern pattern, double ox) {
    return pattern.kind().straightColumns()
        ? widened(x, ox, pattern.periodX(), pattern)
        : new double[0];
  }

  /** The tile joints that are widened along y. */
  double[] widenedY(Pattern pattern, double oy) {
    return pattern.kind().straightRows()
        ? widened(y, oy, pattern.periodY(), pattern)
        : new double[0];
  }

  private double[] widened(double[] wanted, double origin, double period, Pattern pattern) {
    double[] at = new double[wanted.length];
    double joint = pattern.joint();
    for (int i = 0; i < at.length; i++) {
      // Earlier joints have moved this one on.
      double place = wanted[i] - i * extra(pattern) - extra(pattern) / 2;
      // Joints begin one joint before the next tile.
      double begin = origin - joint;
      at[i] = begin + Math.rint((place - joint / 2 - begin) / period) * period;
    }
    return Arrays.stream(at).distinct().toArray();
  }

  /** A place before widening, from one after it. */
  double back(double place, double[] widened, Pattern pattern) {
    double extra = extra(pattern);
    double half = pattern.joint() / 2;
    int before = before(place - half, widened, extra);
    // Within a joint a place is where the joint begins.
    return before == 0 ? place : Math.max(place - before * extra, widened[before - 1] + half);
  }

  /** How many joints begin before a place, where each stands so much further on; they rise. */
  private static int before(double place, double[] widened, double further) {
    int from = 0;
    int to = widened.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (widened[middle] + middle * further < place) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }

  /** How far a tile that begins at a place before widening is moved on, mm. */
  double on(double begin, double[] widened, Pattern pattern) {
    return before(begin - pattern.joint() / 2, widened, 0) * extra(pattern);
  }
}
