package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;

/** How many boards pieces are cut from, each board cut right through again and again. */
final class Packing {
  private Packing() {}

  /**
   * Counts boards: each piece goes into the offcut it fits best, else a new board is opened. Pieces
   * are not turned.
   *
   * @param pieces {length, width}, the largest first, mm
   * @param length of a board, mm
   * @param width of a board, mm
   * @param kerf what a cut takes away, mm
   */
  static int boards(List<double[]> pieces, double length, double width, double kerf) {
    List<double[]> free = new ArrayList<>();
    int boards = 0;
    for (double[] piece : pieces) {
      double[] best = null;
      for (double[] one : free) {
        boolean fits = one[0] >= piece[0] - Field.SLIP && one[1] >= piece[1] - Field.SLIP;
        if (fits && (best == null || one[0] * one[1] < best[0] * best[1])) {
          best = one;
        }
      }
      if (best == null) {
        boards++;
        best = new double[] {length, width};
      } else {
        free.remove(best);
      }
      double restLength = best[0] - piece[0] - kerf;
      double restWidth = best[1] - piece[1] - kerf;
      // The first cut is the one that leaves the larger offcut whole.
      boolean lengthFirst = restLength * best[1] >= restWidth * best[0];
      add(free, restLength, lengthFirst ? best[1] : piece[1]);
      add(free, lengthFirst ? piece[0] : best[0], restWidth);
    }
    return boards;
  }

  private static void add(List<double[]> free, double length, double width) {
    if (length > 0 && width > 0) {
      free.add(new double[] {length, width});
    }
  }
}
