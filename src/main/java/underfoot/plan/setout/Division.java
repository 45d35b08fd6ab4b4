package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/** Divides a length into the fewest pieces whose joints keep off certain places. */
final class Division {
  /** Joints are looked for every so many mm, and at all places that matter. */
  private static final double STEP = 10;

  private static final double CUT = 0.05;

  private Division() {}

  /**
   * Finds the joints.
   *
   * @param from where the length begins, mm
   * @param to where it ends, mm
   * @param longest the longest piece, mm
   * @param least the shortest piece, mm
   * @param gap between pieces, mm
   * @param places more places where a joint may begin, mm
   * @param cost what a joint that begins at a place costs, in pieces; infinite where there must be
   *     none
   * @return where each joint begins, in order; empty where there is no way
   */
  static Optional<List<Double>> of(
      double from,
      double to,
      double longest,
      double least,
      double gap,
      List<Double> places,
      DoubleUnaryOperator cost) {
    if (to - from <= longest + Field.SLIP) {
      return Optional.of(List.of());
    }
    TreeSet<Double> all = new TreeSet<>();
    for (double at = from + longest; at < to; at += longest + gap) {
      all.add(at);
    }
    for (double at = to - longest - gap; at > from; at -= longest + gap) {
      all.add(at);
    }
    for (double at = Math.ceil(from / STEP) * STEP; at < to; at += STEP) {
      all.add(at);
    }
    for (double place : places) {
      all.add(place);
      all.add(place + longest + gap);
      all.add(place - longest - gap);
    }
    double[] at =
        all.stream()
            .mapToDouble(Double::doubleValue)
            .filter(place -> place > from && place + gap < to)
            .filter(place -> !Double.isInfinite(cost.applyAsDouble(place)))
            .toArray();
    int n = at.length;
    double[] best = new double[n + 1];
    int[] before = new int[n + 1];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    int low = 0;
    for (int i = 0; i <= n; i++) {
      double end = i < n ? at[i] : to;
      double here = i < n ? cost.applyAsDouble(at[i]) : 0;
      if (end - from <= longest + Field.SLIP && end - from >= least - Field.SLIP) {
        best[i] = piece(end - from, longest) + here;
        before[i] = -1;
      }
      while (low < i && end - at[low] - gap > longest + Field.SLIP) {
        low++;
      }
      for (int k = low; k < i; k++) {
        double length = end - at[k] - gap;
        if (length < least - Field.SLIP) {
          break;
        }
        double total = best[k] + piece(length, longest) + here;
        if (total < best[i] - 1e-9) {
          best[i] = total;
          before[i] = k;
        }
      }
    }
    if (Double.isInfinite(best[n])) {
      return Optional.empty();
    }
    List<Double> joints = new ArrayList<>();
    for (int i = before[n]; i >= 0; i = before[i]) {
      joints.add(0, at[i]);
    }
    return Optional.of(joints);
  }

  private static double piece(double length, double longest) {
    return length > longest - 0.5 ? 1 : 1 + CUT;
  }
}
