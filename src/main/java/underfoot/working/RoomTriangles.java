package underfoot.working;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * A room cut into triangles once, so that what is cut to a room of very many corners is only held
 * against those near it, and two triangles at a time.
 */
final class RoomTriangles {
  private final STRtree triangles = new STRtree();

  /** Cuts a room. */
  RoomTriangles(Polygon room) {
    Geometry cut = PolygonTriangulator.triangulate(room);
    for (int i = 0; i < cut.getNumGeometries(); i++) {
      Geometry triangle = cut.getGeometryN(i);
      triangles.insert(triangle.getEnvelopeInternal(), anticlockwise(triangle.getCoordinates()));
    }
    triangles.build();
  }

  /**
   * Gives what of a triangle lies within the room, in triangles that do not overlap.
   *
   * @param corners its three corners
   * @param piece told each
   */
  void within(Coordinate[] corners, Consumer<Coordinate[]> piece) {
    Envelope box = new Envelope(corners[0], corners[1]);
    box.expandToInclude(corners[2]);
    for (Object one : triangles.query(box)) {
      List<Coordinate> common = List.of(corners);
      Coordinate[] room = (Coordinate[]) one;
      for (int i = 0; i < 3 && !common.isEmpty(); i++) {
        common = leftOf(room[i], room[(i + 1) % 3], common);
      }
      for (int i = 2; i < common.size(); i++) {
        piece.accept(new Coordinate[] {common.get(0), common.get(i - 1), common.get(i)});
      }
    }
  }

  /** What of a shape without hollows lies to the left of a line. */
  private static List<Coordinate> leftOf(Coordinate from, Coordinate to, List<Coordinate> shape) {
    List<Coordinate> left = new ArrayList<>();
    for (int i = 0; i < shape.size(); i++) {
      Coordinate here = shape.get(i);
      Coordinate next = shape.get((i + 1) % shape.size());
      double off = off(from, to, here);
      double then = off(from, to, next);
      if (off >= 0) {
        left.add(here);
      }
      if (off > 0 && then < 0 || off < 0 && then > 0) {
        double share = off / (off - then);
        left.add(
            new Coordinate(here.x + share * (next.x - here.x), here.y + share * (next.y - here.y)));
      }
    }
    return left;
  }

  /** How far a place lies to the left of a line, times the length of the line. */
  private static double off(Coordinate from, Coordinate to, Coordinate place) {
    return (to.x - from.x) * (place.y - from.y) - (to.y - from.y) * (place.x - from.x);
  }

  private static Coordinate[] anticlockwise(Coordinate[] c) {
    return Orientation.index(c[0], c[1], c[2]) == Orientation.CLOCKWISE
        ? new Coordinate[] {c[0], c[2], c[1]}
        : new Coordinate[] {c[0], c[1], c[2]};
  }
}
