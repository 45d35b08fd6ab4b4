package underfoot.plan.setout;

import java.util.Arrays;

/** A tile that the edge of the field crosses, and how wide it stays at each edge. */
final class Touched {
  /** Which of the repeat. */
  int tile;

  /** Its place along. */
  long i;

  /** Its place up. */
  long j;

  int[] edges = new int[2];
  double[] widths = new double[2];
  int count;

  void lie(int ofTile, long atI, long atJ) {
    tile = ofTile;
    i = atI;
    j = atJ;
    count = 0;
  }

  void add(int edge, double width) {
    if (count == edges.length) {
      edges = Arrays.copyOf(edges, 2 * count);
      widths = Arrays.copyOf(widths, 2 * count);
    }
    edges[count] = edge;
    widths[count] = width;
    count++;
  }
}
