package underfoot.measure;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * The floor of a room as it lies before a door: how far it goes on, and how much of it lies within
 * a line across the way in.
 *
 * @param floor the room, mm
 * @param from one side of the opening, mm
 * @param to the other side, mm
 * @param inX how far x moves for each mm into the room, square to the wall
 * @param inY how far y moves for each mm into the room
 */
public record WayIn(Polygon floor, Coordinate from, Coordinate to, double inX, double inY) {
  /** How far into the room the middle of the opening is taken, mm, so that no wall counts. */
  private static final double IN_THE_OPENING = 1;

  /**
   * The way in through a wall.
   *
   * @param floor the room, mm
   * @param a the corner the wall begins at
   * @param b the corner it ends at
   * @param left whether the room lies to the left of the way from a to b
   * @param start how far from a the opening begins, mm
   * @param width how wide it is, mm
   */
  static WayIn at(
      Polygon floor,
      underfoot.scenario.Point a,
      underfoot.scenario.Point b,
      boolean left,
      double start,
      double width) {
    double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
    double ux = (b.x() - a.x()) / length;
    double uy = (b.y() - a.y()) / length;
    Coordinate from = new Coordinate(a.x() + start * ux, a.y() + start * uy);
    Coordinate to = new Coordinate(from.x + width * ux, from.y + width * uy);
    double inwards = left ? 1 : -1;
    return new WayIn(floor, from, to, -uy * inwards, ux * inwards);
  }

  /** How far the room goes on before the middle of the opening, square to the wall, mm. */
  public double room() {
    Coordinate middle = middle();
    Coordinate[] ring = floor.getExteriorRing().getCoordinates();
    double nearest = Double.POSITIVE_INFINITY;
    boolean inside = false;
    for (int i = 1; i < ring.length; i++) {
      double off = aside(middle, ring[i - 1]);
      double then = aside(middle, ring[i]);
      if (off > 0 == then > 0) {
        continue; // this wall lies to one side of the way in
      }
      double from = ahead(middle, ring[i - 1]);
      double crossed = from + (ahead(middle, ring[i]) - from) * off / (off - then);
      if (crossed > 0) {
        inside = !inside;
        nearest = Math.min(nearest, crossed);
      }
    }
    return inside ? nearest + IN_THE_OPENING : 0;
  }

  private double ahead(Coordinate from, Coordinate place) {
    return (place.x - from.x) * inX + (place.y - from.y) * inY;
  }

  private double aside(Coordinate from, Coordinate place) {
    return (place.y - from.y) * inX - (place.x - from.x) * inY;
  }

  /**
   * The floor between the wall of the door and a line across the room; what lies behind a corner
   * and is not reached from the door without crossing the line is left out.
   *
   * @param distance how far the line is from the wall, mm
   * @return in mm; empty where there is none
   */
  Geometry within(double distance) {
    double across = floor.getEnvelopeInternal().getDiameter();
    double ux = inY;
    double uy = -inX;
    Coordinate left = new Coordinate(from.x - across * ux, from.y - across * uy);
    Coordinate right = new Coordinate(from.x + across * ux, from.y + across * uy);
    Polygon strip =
        RoomShape.SHAPES.createPolygon(
            new Coordinate[] {
              left,
              right,
              new Coordinate(right.x + distance * inX, right.y + distance * inY),
              new Coordinate(left.x + distance * inX, left.y + distance * inY),
              left
            });
    Geometry within = RoomShape.common(strip, floor);
    Point middle = opening();
    for (int i = 0; i < within.getNumGeometries(); i++) {
      if (within.getGeometryN(i).distance(middle) < IN_THE_OPENING) {
        return within.getGeometryN(i);
      }
    }
    return RoomShape.SHAPES.createPolygon();
  }

  /** A place just within the opening, at its middle. */
  Point opening() {
    return RoomShape.SHAPES.createPoint(middle());
  }

  private Coordinate middle() {
    return new Coordinate(
        (from.x + to.x) / 2 + IN_THE_OPENING * inX, (from.y + to.y) / 2 + IN_THE_OPENING * inY);
  }
}
