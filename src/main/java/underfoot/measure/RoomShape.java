package underfoot.measure;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
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

  /**
   * What two shapes have in common. Only edges near both are looked at, so that of a room of many
   * corners and something small in it the room takes little.
   */
  static Geometry common(Geometry one, Geometry other) {
    return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
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
    return inRows(floor, 0, along, across, new double[] {origin.x, origin.y, ux, uy, vx, vy});
  }

  /**
   * How many bays of some rows hold floor. The floor is halved until it is that of one row, so that
   * no row is held against all of it.
   */
  private static long inRows(Geometry part, long from, long to, long across, double[] grid) {
    if (part.isEmpty()) {
      return 0;
    }
    if (to - from > 1) {
      long middle = (from + to) / 2;
      return inRows(
              floor(common(bay(from, middle, 0, across, grid), part)), from, middle, across, grid)
          + inRows(floor(common(bay(middle, to, 0, across, grid), part)), middle, to, across, grid);
    }
    Geometry row = floor(common(bay(from, to, 0, across, grid), part));
    long count = 0;
    for (long j = 0; j < across && !row.isEmpty(); j++) {
      Polygon bay = bay(from, to, j, j + 1, grid);
      double held = 0;
      for (int piece = 0; piece < row.getNumGeometries(); piece++) {
        if (row.getGeometryN(piece) instanceof Polygon one
            && one.getEnvelopeInternal().intersects(bay.getEnvelopeInternal())) {
          held += common(bay, one).getArea();
        }
      }
      // Slivers from rounding are no floor.
      count += held > bay.getArea() * 1e-6 ? 1 : 0;
    }
    return count;
  }

  /** What of a shape is floor, and not an edge that only touches. */
  private static Geometry floor(Geometry shape) {
    return SHAPES.buildGeometry(PolygonExtracter.getPolygons(shape));
  }

  /** The bays from one row to another, and from one of each row to another, as one. */
  private static Polygon bay(long i, long toRow, long j, long to, double[] grid) {
    Coordinate from = corner(i, j, grid);
    return SHAPES.createPolygon(
        new Coordinate[] {
          from, corner(toRow, j, grid), corner(toRow, to, grid), corner(i, to, grid), from
        });
  }

  private static Coordinate corner(long i, long j, double[] grid) {
    return new Coordinate(grid[0] + i * grid[2] + j * grid[4], grid[1] + i * grid[3] + j * grid[5]);
  }
}
