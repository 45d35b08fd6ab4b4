package underfoot.plan.setout;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Shapes that lie along the axes. Most rooms, boards and tiles do, and what the general methods
 * find of them at length can be told from their bounds; the rest is left to the general methods.
 */
final class Boxes {
  private Boxes() {}

  /** What two shapes have in common. */
  static Geometry common(Geometry one, Geometry other) {
    if (!one.isRectangle() || !other.isRectangle()) {
      return one.intersection(other);
    }
    Envelope both = one.getEnvelopeInternal().intersection(other.getEnvelopeInternal());
    return isFlat(both) ? Field.SHAPES.createPolygon() : Field.SHAPES.toGeometry(both);
  }

  /**
   * A box less a strip at every side, its ring begun at the same corner and led clockwise.
   *
   * @param box a shape that {@code isRectangle()}
   * @param gap the width of the strip, mm, 0 or more
   */
  static Polygon shrunk(Polygon box, double gap) {
    Envelope inner = new Envelope(box.getEnvelopeInternal());
    inner.expandBy(-gap);
    if (isFlat(inner)) {
      return Field.SHAPES.createPolygon();
    }
    Coordinate[] outer = box.getExteriorRing().getCoordinates();
    Coordinate[] ring = new Coordinate[outer.length];
    boolean back = Orientation.isCCW(outer);
    for (int i = 0; i < ring.length; i++) {
      Coordinate corner = outer[back ? ring.length - 1 - i : i];
      boolean left = corner.x == box.getEnvelopeInternal().getMinX();
      boolean low = corner.y == box.getEnvelopeInternal().getMinY();
      ring[i] =
          new Coordinate(
              left ? inner.getMinX() : inner.getMaxX(), low ? inner.getMinY() : inner.getMaxY());
    }
    return Field.SHAPES.createPolygon(ring);
  }

  private static boolean isFlat(Envelope box) {
    return box.isNull() || box.getWidth() <= 0 || box.getHeight() <= 0;
  }
}
