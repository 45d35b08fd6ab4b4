package underfoot.working;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.quadedge.Vertex;

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
    List<Coordinate> rounded = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      // The height is the place in the list: of those rounded to one place the first is kept.
      rounded.add(
          new Coordinate(rounded(places.get(i).x * unitMm), rounded(places.get(i).y * unitMm), i));
    }
    List<int[]> triangles = new ArrayList<>();
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(rounded);
    if (rounded.stream().distinct().limit(3).count() < 3) {
      return triangles;
    }
    for (Object corners : builder.getSubdivision().getTriangleVertices(false)) {
      Vertex[] vertices = (Vertex[]) corners;
      triangles.add(new int[] {number(vertices[0]), number(vertices[1]), number(vertices[2])});
    }
    return triangles;
  }

  private static int number(Vertex vertex) {
    return (int) vertex.getZ();
  }

  private static double rounded(double mm) {
    // Adding nought makes minus nought nought.
    return Math.rint(mm / FINEST_MM) * FINEST_MM + 0.0;
  }
}
