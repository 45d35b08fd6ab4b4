package underfoot.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** The part of a surface of triangles that lies over a floor of any shape. */
final class SurfaceCut {
  private SurfaceCut() {}

  /**
   * A triangle of the part, with heights at its corners.
   *
   * @param areaM2 its area, m2
   * @param corners its corners, z being the height, mm
   */
  record Piece(double areaM2, Coordinate[] corners) {}

  /**
   * Cuts a surface to a floor: each triangle that crosses the edge of the floor is cut along it and
   * what is left is cut into triangles again, so that heights stay exact.
   *
   * @param tin the surface
   * @param floor the floor, mm
   */
  static List<Piece> of(TriangulatedSurface tin, Geometry floor) {
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(floor);
    List<Piece> pieces = new ArrayList<>();
    for (int number : tin.index().in(floor.getEnvelopeInternal())) {
      Coordinate[] c = tin.corners(tin.triangles().get(number));
      Polygon whole = RoomShape.SHAPES.createPolygon(new Coordinate[] {c[0], c[1], c[2], c[0]});
      if (prepared.covers(whole)) {
        pieces.add(new Piece(area(c), c));
      } else if (prepared.intersects(whole)) {
        cut(c, RoomShape.common(whole, floor), pieces);
      }
    }
    return pieces;
  }

  /**
   * How high a surface stands at its highest over a floor, mm; NaN where it does not reach there.
   * The highest triangles are looked at first, and none that has no corner above what was found.
   *
   * @param tin the surface
   * @param floor the floor, mm
   */
  static double highest(TriangulatedSurface tin, Geometry floor) {
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(floor);
    List<Coordinate[]> falling = new ArrayList<>();
    for (int number : tin.index().in(floor.getEnvelopeInternal())) {
      falling.add(tin.corners(tin.triangles().get(number)));
    }
    falling.sort(Comparator.comparingDouble(c -> -top(c)));
    double highest = Double.NaN;
    for (Coordinate[] c : falling) {
      if (top(c) <= highest) {
        break;
      }
      Polygon whole = RoomShape.SHAPES.createPolygon(new Coordinate[] {c[0], c[1], c[2], c[0]});
      if (prepared.containsProperly(whole)) {
        return Double.isNaN(highest) ? top(c) : Math.max(highest, top(c));
      }
      if (prepared.intersects(whole)) {
        List<Piece> pieces = new ArrayList<>();
        cut(c, RoomShape.common(whole, floor), pieces);
        for (Piece piece : pieces) {
          double top = top(piece.corners());
          highest = Double.isNaN(highest) ? top : Math.max(highest, top);
        }
      }
    }
    return highest;
  }

  private static double top(Coordinate[] c) {
    return Math.max(c[0].getZ(), Math.max(c[1].getZ(), c[2].getZ()));
  }

  private static void cut(Coordinate[] c, Geometry part, List<Piece> pieces) {
    for (int i = 0; i < part.getNumGeometries(); i++) {
      if (!(part.getGeometryN(i) instanceof Polygon polygon) || polygon.getArea() == 0) {
        continue; // touches the floor's edge only
      }
      Geometry triangles = PolygonTriangulator.triangulate(polygon);
      for (int k = 0; k < triangles.getNumGeometries(); k++) {
        Coordinate[] ring = triangles.getGeometryN(k).getCoordinates();
        Coordinate[] corners = {on(c, ring[0]), on(c, ring[1]), on(c, ring[2])};
        pieces.add(new Piece(area(corners), corners));
      }
    }
  }

  /** A place on the plane of a triangle, with its height. */
  private static Coordinate on(Coordinate[] c, Coordinate place) {
    double whole = cross(c[0], c[1], c[2]);
    double u = cross(c[1], c[2], place) / whole;
    double v = cross(c[2], c[0], place) / whole;
    return new Coordinate(
        place.x, place.y, u * c[0].getZ() + v * c[1].getZ() + (1 - u - v) * c[2].getZ());
  }

  private static double area(Coordinate[] c) {
    return Math.abs(cross(c[0], c[1], c[2])) / 2 / 1e6;
  }

  private static double cross(Coordinate a, Coordinate b, Coordinate c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  }
}
