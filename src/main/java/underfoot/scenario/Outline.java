package underfoot.scenario;

import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** The geometry of a room's outline, in millimetres. */
final class Outline {
  /** Corners nearer than this are one; a thousandth of a millimetre only absorbs rounding. */
  private static final double SAME = 1e-3;

  private Outline() {}

  /** What is wrong with an outline, or null if it is one plain shape. */
  static Fault fault(
      String file, FactDefinition fact, List<Point> points, List<Node> places, Node list) {
    int n = points.size();
    if (n < 3) {
      return Fault.at(
          file,
          list,
          fact.word() + " has " + corners(n) + ", but a room has at least 3",
          Values.example(fact));
    }
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      if (distance(points.get(i), points.get(next)) < SAME) {
        int later = Math.max(i, next);
        return Fault.at(
            file,
            places.get(later),
            fact.word() + ": corner " + (later + 1) + " stands where its neighbour does",
            "leave one of the two out");
      }
    }
    if (Math.abs(area(points)) < 1 && flat(points)) {
      return Fault.at(
          file,
          list,
          fact.word() + " encloses no floor: its corners lie on one line",
          "check the corners; each is [x, y]");
    }
    STRtree walls = walls(points);
    for (int i = 0; i < n; i++) {
      int meets = n;
      for (Object other : walls.query(around(points, i))) {
        int j = (Integer) other;
        if (j > i && j < meets && meet(points, i, j)) {
          meets = j;
        }
      }
      if (meets < n) {
        return Fault.at(
            file,
            places.get(meets),
            fact.word() + ": " + wall(i, n) + " and " + wall(meets, n) + " cross or touch",
            "list the corners in order, walking once round the room");
      }
    }
    return null;
  }

  /** The walls by where they stand, so that each is held only against those beside it. */
  private static STRtree walls(List<Point> points) {
    STRtree walls = new STRtree();
    for (int i = 0; i < points.size(); i++) {
      walls.insert(around(points, i), i);
    }
    return walls;
  }

  private static Envelope around(List<Point> points, int wall) {
    Point a = points.get(wall);
    Point b = points.get((wall + 1) % points.size());
    return new Envelope(a.x(), b.x(), a.y(), b.y());
  }

  /** The enclosed area in mm2, negative if the corners run clockwise. */
  static double area(List<Point> points) {
    double twice = 0;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }

  /** The length of a wall in mm, wall 0 running from the first corner to the second. */
  static double wallLength(List<Point> points, int wall) {
    return distance(points.get(wall), points.get((wall + 1) % points.size()));
  }

  /** The outline as a shape. */
  static Polygon polygon(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.x(), corner.y());
    }
    return new GeometryFactory().createPolygon(ring);
  }

  /** Tells which readings lie in an outline or on it, without going round it for each. */
  static Predicate<Reading> holding(List<Point> corners) {
    PointOnGeometryLocator within = new IndexedPointInAreaLocator(polygon(corners));
    return one -> within.locate(new Coordinate(one.x(), one.y())) != Location.EXTERIOR;
  }

  /** Tells which readings lie in an outline, or no farther outside it than they may. */
  static Predicate<Reading> within(List<Point> corners, double slack) {
    Predicate<Reading> held = holding(corners);
    STRtree walls = walls(corners);
    return one -> held.test(one) || near(corners, walls, one, slack);
  }

  private static boolean near(List<Point> corners, STRtree walls, Reading one, double slack) {
    Envelope about = new Envelope(new Coordinate(one.x(), one.y()));
    about.expandBy(slack);
    for (Object wall : walls.query(about)) {
      Point a = corners.get((Integer) wall);
      Point b = corners.get(((Integer) wall + 1) % corners.size());
      if (squaredDistance(a, b, one.x(), one.y()) <= slack * slack) {
        return true;
      }
    }
    return false;
  }

  private static double squaredDistance(Point a, Point b, double x, double y) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double along = ((x - a.x()) * dx + (y - a.y()) * dy) / (dx * dx + dy * dy);
    double t = Math.max(0, Math.min(1, along));
    double ex = x - a.x() - t * dx;
    double ey = y - a.y() - t * dy;
    return ex * ex + ey * ey;
  }

  /** Whether all corners lie on one line. */
  private static boolean flat(List<Point> points) {
    Point a = points.get(0);
    Point b = points.get(1);
    for (Point c : points) {
      if (Math.abs(turn(a, b, c)) > SAME * distance(a, b)) {
        return false;
      }
    }
    return true;
  }

  private static boolean meet(List<Point> points, int i, int j) {
    int n = points.size();
    Point a = points.get(i);
    Point b = points.get((i + 1) % n);
    Point c = points.get(j);
    Point d = points.get((j + 1) % n);
    if (j == i + 1) {
      return foldsBack(a, b, d);
    }
    if (i == 0 && j == n - 1) {
      return foldsBack(c, a, b);
    }
    double abc = side(a, b, c);
    double abd = side(a, b, d);
    double cda = side(c, d, a);
    double cdb = side(c, d, b);
    return abc * abd <= 0 && cda * cdb <= 0;
  }

  /** Whether the wall after a corner runs back over the one before it. */
  private static boolean foldsBack(Point before, Point corner, Point after) {
    double ahead =
        (corner.x() - before.x()) * (after.x() - corner.x())
            + (corner.y() - before.y()) * (after.y() - corner.y());
    return ahead < 0 && side(before, corner, after) == 0;
  }

  /** Which side of a line a point lies on: -1, 1, or 0 if it is within rounding of the line. */
  private static double side(Point a, Point b, Point c) {
    double turn = turn(a, b, c);
    return Math.abs(turn) <= SAME * distance(a, b) ? 0 : Math.signum(turn);
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  /** The distance between two corners in mm. */
  static double distance(Point a, Point b) {
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }

  private static String corners(int n) {
    return n == 1 ? "1 corner" : n + " corners";
  }

  private static String wall(int i, int n) {
    return "the wall from corner " + (i + 1) + " to corner " + ((i + 1) % n + 1);
  }
}
