package underfoot.measure;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;

/**
 * The shape of a room, from its outline.
 *
 * @param floor the floor, mm
 * @param rectangle the smallest rectangle about it, turned as it will, mm; its first side is its
 *     longer one
 */
public record RoomShape(Polygon floor, List<Coordinate> rectangle) {
  /** Makes all shapes; coordinates are mm. */
  static final GeometryFactory SHAPES = new GeometryFactory();

  /** Copies the list. */
  public RoomShape {
    rectangle = List.copyOf(rectangle);
  }

  /** The room of a scenario; empty where its outline is not known. */
  public static Optional<RoomShape> of(Scenario scenario) {
    return of(scenario.outline());
  }

  /** The room of an outline, corners in order, mm; empty where there are fewer than three. */
  public static Optional<RoomShape> of(List<Point> outline) {
    if (outline.size() < 3) {
      return Optional.empty();
    }
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point corner = outline.get(i % outline.size());
      ring[i] = new Coordinate(corner.x(), corner.y());
    }
    return Optional.of(of(SHAPES.createPolygon(ring)));
  }

  static RoomShape of(Polygon floor) {
    Geometry around =
        floor.isRectangle() ? floor.getEnvelope() : MinimumAreaRectangle.getMinimumRectangle(floor);
    Coordinate[] c = around.getCoordinates();
    boolean firstIsLonger = c[0].distance(c[1]) >= c[1].distance(c[2]);
    List<Coordinate> corners =
        firstIsLonger ? List.of(c[0], c[1], c[2], c[3]) : List.of(c[1], c[2], c[3], c[0]);
    return new RoomShape(floor, corners);
  }

  /** Floor area, m2. */
  public double areaM2() {
    return floor.getArea() / 1e6;
  }

  /** Length of the walls, mm. */
  public double perimeterMm() {
    return floor.getLength();
  }

  /** The longer side of the smallest rectangle about the room, mm. */
  public double longestRunMm() {
    return rectangle.get(0).distance(rectangle.get(1));
  }

  /** The shorter side of that rectangle, mm. */
  public double shortestRunMm() {
    return rectangle.get(1).distance(rectangle.get(2));
  }

  /** The direction of the longer side, radians from the outline's first direction. */
  public double direction() {
    return Math.atan2(
        rectangle.get(1).y - rectangle.get(0).y, rectangle.get(1).x - rectangle.get(0).x);
  }

  /**
   * How many of the equal bays of the rectangle hold any floor.
   *
   * @param along bays along the longer side
   * @param across bays along the shorter side
   */
  public long baysWithFloor(long along, long across) {
    Coordinate origin = rectangle.get(0);
    double ux = (rectangle.get(1).x - origin.x) / along;
    double uy = (rectangle.get(1).y - origin.y) / along;
    double vx = (rectangle.get(3).x - origin.x) / across;
    double vy = (rectangle.get(3).y - origin.y) / across;
    long count = 0;
    for (long i = 0; i < along; i++) {
      // Each row of bays is cut out of the floor first, so that a bay is not held against all of
      // it.
      Geometry row = bay(origin, i, 0, across, ux, uy, vx, vy).intersection(floor);
      for (long j = 0; j < across && !row.isEmpty(); j++) {
        Polygon bay = bay(origin, i, j, j + 1, ux, uy, vx, vy);
        double held = 0;
        for (int part = 0; part < row.getNumGeometries(); part++) {
          if (row.getGeometryN(part) instanceof Polygon one
              && one.getEnvelopeInternal().intersects(bay.getEnvelopeInternal())) {
            held += bay.intersection(one).getArea();
          }
        }
        // Slivers from rounding are no floor.
        count += held > bay.getArea() * 1e-6 ? 1 : 0;
      }
    }
    return count;
  }

  /** One bay of a row, or several from one to another as one. */
  private static Polygon bay(
      Coordinate origin, long i, long j, long to, double ux, double uy, double vx, double vy) {
    Coordinate from = corner(origin, i, j, ux, uy, vx, vy);
    return SHAPES.createPolygon(
        new Coordinate[] {
          from,
          corner(origin, i + 1, j, ux, uy, vx, vy),
          corner(origin, i + 1, to, ux, uy, vx, vy),
          corner(origin, i, to, ux, uy, vx, vy),
          from
        });
  }

  private static Coordinate corner(
      Coordinate origin, long i, long j, double ux, double uy, double vx, double vy) {
    return new Coordinate(origin.x + i * ux + j * vx, origin.y + i * uy + j * vy);
  }
}
