package underfoot.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/** Triangles between places, by Delaunay. */
public final class Triangles {
  /** Places are told apart by this, mm; a power of two, so that rounded numbers are exact. */
  private static final double FINEST_MM = 1.0 / 1024;

  private Triangles() {}

  /**
   * Spans the triangles. They are looked for among rounded places, because readings on a straight
   * line that runs aslant are no straight line to the last digit, and the search for triangles may
   * not end then. The places themselves stay as they are.
   *
   * @param places where they are; a place that is rounded to that of an earlier one is left out
   * @param unitMm how long their unit is: 1 for mm, 1000 for m
   * @return each triangle as three places in the list
   */
  public static List<int[]> of(List<Coordinate> places, double unitMm) {
    Map<Coordinate, Integer> index = new HashMap<>();
    for (int i = 0; i < places.size(); i++) {
      index.putIfAbsent(
          new Coordinate(rounded(places.get(i).x * unitMm), rounded(places.get(i).y * unitMm)), i);
    }
    List<int[]> triangles = new ArrayList<>();
    if (index.size() < 3) {
      return triangles;
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(index.keySet());
    Geometry parts = builder.getTriangles(new GeometryFactory());
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      Coordinate[] ring = parts.getGeometryN(i).getCoordinates();
      triangles.add(new int[] {index.get(ring[0]), index.get(ring[1]), index.get(ring[2])});
    }
    return triangles;
  }

  private static double rounded(double mm) {
    // Adding nought makes minus nought nought.
    return Math.rint(mm / FINEST_MM) * FINEST_MM + 0.0;
  }
}
