package underfoot.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.HilbertSort;
import org.tinfour.utils.TriangleCollector;

/** Triangles between places, by Delaunay. */
public final class Triangles {
  /** Places are told apart by this, mm; a power of two, so that rounded numbers are exact. */
  private static final double FINEST_MM = 1.0 / 1024;

  /**
   * How far places are pushed along for each mm they lie apart across, so that in a square of four
   * readings, which two triangles may share in either of two ways, it is always the same way. A
   * power of two, and so small that rounded numbers stay exact.
   */
  private static final double LEAN = 1.0 / (1 << 20);

  private Triangles() {}

  /**
   * Spans the triangles. They are looked for among rounded places, so that readings on a straight
   * line that runs aslant are one to the last digit. The places themselves stay as they are.
   *
   * @param places where they are; a place that is rounded to that of an earlier one is left out
   * @param unitMm how long their unit is: 1 for mm, 1000 for m
   * @return each triangle as three places in the list; none where all places lie on one line
   */
  public static List<int[]> of(List<Coordinate> places, double unitMm) {
    Map<Coordinate, Vertex> rounded = new LinkedHashMap<>();
    Envelope reach = new Envelope();
    for (int i = 0; i < places.size(); i++) {
      Coordinate place =
          new Coordinate(rounded(places.get(i).x * unitMm), rounded(places.get(i).y * unitMm));
      rounded.putIfAbsent(place, new Vertex(place.x + LEAN * place.y, place.y, 0, i));
      reach.expandToInclude(place);
    }
    List<int[]> triangles = new ArrayList<>();
    if (rounded.size() < 3) {
      return triangles;
    }
    List<Vertex> corners = new ArrayList<>(rounded.values());
    new HilbertSort().sort(corners);
    // How far the places are from one another: what the search takes for as good as nothing.
    double apart = Math.max(reach.getDiameter() / rounded.size(), FINEST_MM);
    IncrementalTin net = new IncrementalTin(apart);
    if (net.add(corners, null)) {
      TriangleCollector.visitSimpleTriangles(
          net,
          triangle ->
              triangles.add(
                  new int[] {
                    triangle.getVertexA().getIndex(),
                    triangle.getVertexB().getIndex(),
                    triangle.getVertexC().getIndex()
                  }));
    }
    return triangles;
  }

  private static double rounded(double mm) {
    // Adding nought makes minus nought nought.
    return Math.rint(mm / FINEST_MM) * FINEST_MM + 0.0;
  }
}
