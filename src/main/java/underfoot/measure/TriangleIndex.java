package underfoot.measure;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Finds triangles by place, however long and thin they are. */
final class TriangleIndex {
  /** Boxes are widened by this share of themselves, so that rounding loses nothing. */
  private static final double WIDENED = 1e-5;

  private final HPRtree tree = new HPRtree();

  TriangleIndex(List<Coordinate> vertices, List<int[]> triangles) {
    for (int i = 0; i < triangles.size(); i++) {
      int[] triangle = triangles.get(i);
      Envelope box = new Envelope(vertices.get(triangle[0]), vertices.get(triangle[1]));
      box.expandToInclude(vertices.get(triangle[2]));
      box.expandBy(WIDENED * box.getDiameter());
      tree.insert(box, i);
    }
    tree.build();
  }

  /** The triangles that may hold a place, rising; none beyond all of them. */
  int[] at(double x, double y) {
    return in(new Envelope(x, x, y, y));
  }

  /** The triangles whose boxes meet a box, rising. */
  int[] in(Envelope box) {
    List<?> found = tree.query(box);
    return found.stream().mapToInt(Integer.class::cast).sorted().toArray();
  }
}
