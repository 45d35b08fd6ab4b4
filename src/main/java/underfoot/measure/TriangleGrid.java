package underfoot.measure;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Finds triangles by place: a grid of cells over them, each with the triangles whose boxes reach
 * into it. The cells are made so wide that all of them together name each triangle a few times
 * only, however long and thin the triangles are.
 */
final class TriangleGrid {
  /** How often each triangle may be named on average. */
  private static final int NAMED = 8;

  /** Boxes are widened by this share of themselves, so that rounding loses nothing. */
  private static final double WIDENED = 1e-5;

  private final Envelope all = new Envelope();
  private final Envelope[] boxes;
  private final int side;

  /** Where the triangles of each cell begin in {@link #named}. */
  private final int[] begins;

  private final int[] named;

  TriangleGrid(List<Coordinate> vertices, List<int[]> triangles) {
    boxes = new Envelope[triangles.size()];
    for (int i = 0; i < boxes.length; i++) {
      int[] triangle = triangles.get(i);
      Envelope box = new Envelope(vertices.get(triangle[0]), vertices.get(triangle[1]));
      box.expandToInclude(vertices.get(triangle[2]));
      box.expandBy(WIDENED * box.getDiameter());
      boxes[i] = box;
      all.expandToInclude(box);
    }
    int cells = Math.max(1, (int) Math.sqrt(boxes.length));
    while (cells > 1 && named(cells) > (long) NAMED * boxes.length) {
      cells /= 2;
    }
    side = cells;
    begins = new int[side * side + 1];
    each((cell, triangle) -> begins[cell + 1]++);
    for (int cell = 0; cell < side * side; cell++) {
      begins[cell + 1] += begins[cell];
    }
    named = new int[begins[side * side]];
    int[] next = Arrays.copyOf(begins, side * side);
    each((cell, triangle) -> named[next[cell]++] = triangle);
  }

  private interface Cells {
    void take(int cell, int triangle);
  }

  private long named(int cells) {
    long sum = 0;
    for (Envelope box : boxes) {
      sum +=
          (long) (column(box.getMaxX(), cells) - column(box.getMinX(), cells) + 1)
              * (row(box.getMaxY(), cells) - row(box.getMinY(), cells) + 1);
    }
    return sum;
  }

  private void each(Cells taker) {
    for (int i = 0; i < boxes.length; i++) {
      for (int row = row(boxes[i].getMinY(), side); row <= row(boxes[i].getMaxY(), side); row++) {
        int last = column(boxes[i].getMaxX(), side);
        for (int column = column(boxes[i].getMinX(), side); column <= last; column++) {
          taker.take(row * side + column, i);
        }
      }
    }
  }

  private int column(double x, int cells) {
    return cell(x - all.getMinX(), all.getWidth(), cells);
  }

  private int row(double y, int cells) {
    return cell(y - all.getMinY(), all.getHeight(), cells);
  }

  private static int cell(double in, double extent, int cells) {
    return extent > 0 ? (int) Math.max(0, Math.min(cells - 1, in / extent * cells)) : 0;
  }

  /** The triangles that may hold a place, rising; none beyond all of them. */
  int[] at(double x, double y) {
    if (!all.contains(x, y)) {
      return new int[0];
    }
    int cell = row(y, side) * side + column(x, side);
    return Arrays.copyOfRange(named, begins[cell], begins[cell + 1]);
  }

  /** The triangles whose boxes meet a box, rising. */
  int[] in(Envelope box) {
    if (!all.intersects(box)) {
      return new int[0];
    }
    int[] found = new int[0];
    int count = 0;
    for (int row = row(box.getMinY(), side); row <= row(box.getMaxY(), side); row++) {
      for (int column = column(box.getMinX(), side);
          column <= column(box.getMaxX(), side);
          column++) {
        int cell = row * side + column;
        int here = begins[cell + 1] - begins[cell];
        if (found.length < count + here) {
          found = Arrays.copyOf(found, 2 * (count + here));
        }
        System.arraycopy(named, begins[cell], found, count, here);
        count += here;
      }
    }
    return Arrays.stream(found, 0, count)
        .filter(triangle -> boxes[triangle].intersects(box))
        .sorted()
        .distinct()
        .toArray();
  }
}
