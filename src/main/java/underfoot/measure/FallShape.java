package underfoot.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import underfoot.working.Fall;

/**
 * How far water runs to a drain on a floor that is no rectangle: the way goes round corners that
 * stand into the room, never through them.
 *
 * @param longestRunMm way from the farthest corner to the drain, mm
 * @param shortestRunMm shortest straight run from the drain to a wall it does not touch, mm
 */
record FallShape(double longestRunMm, double shortestRunMm) {
  private static final double TOUCHES_MM = 1;

  /** With more corners the way is taken as straight. */
  private static final int MOST_CORNERS = 60;

  /** Whether a floor is, but for a hair, the rectangle round it. */
  static boolean isRectangle(RoomShape shape) {
    Coordinate[] corners = shape.rectangle().toArray(new Coordinate[0]);
    double sides = corners[0].distance(corners[1]) * corners[1].distance(corners[2]);
    return shape.floor().getArea() > sides * 0.999;
  }

  /**
   * The runs on a floor.
   *
   * @param shape the floor
   * @param drain where the drain lies: in the middle of the floor, in the corner from which the way
   *     is longest, or along the longest or the shortest wall
   */
  static FallShape of(RoomShape shape, Fall.Drain drain) {
    Polygon floor = shape.floor();
    Coordinate[] corners = Arrays.copyOf(floor.getCoordinates(), floor.getNumPoints() - 1);
    return switch (drain) {
      case CENTRE -> {
        Coordinate middle =
            floor.contains(floor.getCentroid())
                ? floor.getCentroid().getCoordinate()
                : floor.getInteriorPoint().getCoordinate();
        yield to(floor, corners, new LineSegment(middle, middle));
      }
      case CORNER -> {
        Coordinate worst = corners[0];
        for (Coordinate corner : corners) {
          worst = farthest(corners, corner) > farthest(corners, worst) ? corner : worst;
        }
        yield to(floor, corners, new LineSegment(worst, worst));
      }
      case LONG_EDGE, SHORT_EDGE -> {
        LineSegment best = null;
        for (LineSegment wall : walls(corners)) {
          boolean longer = best == null || wall.getLength() > best.getLength();
          best = longer == (drain == Fall.Drain.LONG_EDGE) || best == null ? wall : best;
        }
        yield to(floor, corners, best);
      }
    };
  }

  private static double farthest(Coordinate[] corners, Coordinate from) {
    return Arrays.stream(corners).mapToDouble(from::distance).max().orElse(0);
  }

  private static List<LineSegment> walls(Coordinate[] corners) {
    List<LineSegment> walls = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      walls.add(new LineSegment(corners[i], corners[(i + 1) % corners.length]));
    }
    return walls;
  }

  private static FallShape to(Polygon floor, Coordinate[] corners, LineSegment drain) {
    double[] way = ways(floor, corners, drain);
    double longest = Arrays.stream(way).filter(Double::isFinite).max().orElse(0);
    double shortest = Double.MAX_VALUE;
    for (LineSegment wall : walls(corners)) {
      boolean touches = wall.distance(drain) < TOUCHES_MM;
      double run = touches ? beside(wall, drain) : wall.distance(drain);
      shortest = run > TOUCHES_MM ? Math.min(shortest, run) : shortest;
    }
    return new FallShape(longest, Math.min(shortest, longest));
  }

  /** From a drain along a wall it touches to the wall's farther end. */
  private static double beside(LineSegment wall, LineSegment drain) {
    return Math.max(drain.distance(wall.p0), drain.distance(wall.p1));
  }

  /** The way from each corner to the drain: straight where that stays on the floor, else round. */
  private static double[] ways(Polygon floor, Coordinate[] corners, LineSegment drain) {
    if (corners.length > MOST_CORNERS) { // a round room: nothing stands into it
      return Arrays.stream(corners).mapToDouble(drain::distance).toArray();
    }
    PreparedGeometry on = PreparedGeometryFactory.prepare(floor.buffer(TOUCHES_MM));
    double[] way = new double[corners.length];
    boolean[] settled = new boolean[corners.length];
    for (int i = 0; i < corners.length; i++) {
      Coordinate nearest = drain.closestPoint(corners[i]);
      way[i] = sees(on, corners[i], nearest) ? corners[i].distance(nearest) : Double.MAX_VALUE;
    }
    List<Integer> turns = turns(corners);
    // Shortest ways first; they bend only at corners that stand into the room.
    for (int done = 0; done < turns.size(); done++) {
      int next = -1;
      for (int turn : turns) {
        if (!settled[turn] && (next < 0 || way[turn] < way[next])) {
          next = turn;
        }
      }
      settled[next] = true;
      for (int i = 0; i < corners.length; i++) {
        double round = way[next] + corners[next].distance(corners[i]);
        if (round < way[i] && sees(on, corners[next], corners[i])) {
          way[i] = round;
        }
      }
    }
    return Arrays.stream(way).map(one -> one == Double.MAX_VALUE ? Double.NaN : one).toArray();
  }

  /** The corners that stand into the room. */
  private static List<Integer> turns(Coordinate[] corners) {
    Coordinate[] ring = Arrays.copyOf(corners, corners.length + 1);
    ring[corners.length] = corners[0];
    boolean left = Orientation.isCCW(ring);
    List<Integer> turns = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      int turn =
          Orientation.index(
              corners[(i + corners.length - 1) % corners.length],
              corners[i],
              corners[(i + 1) % corners.length]);
      if (turn == (left ? Orientation.CLOCKWISE : Orientation.COUNTERCLOCKWISE)) {
        turns.add(i);
      }
    }
    return turns;
  }

  private static boolean sees(PreparedGeometry on, Coordinate one, Coordinate other) {
    if (one.distance(other) < TOUCHES_MM) {
      return true;
    }
    LineString line = RoomShape.SHAPES.createLineString(new Coordinate[] {one, other});
    return on.covers(line);
  }
}
