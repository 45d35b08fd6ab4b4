package underfoot.working;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** The worst gap under a straightedge slid along a profile, and how far it rocks on a hump. */
public final class StraightedgeGap implements Working {
  /** The edge is moved by this much at most, mm. */
  private static final double SLIDE_MM = 10;

  /** Gaps closer than this are the same gap, mm. */
  private static final double SAME_MM = 1e-9;

  private static final double LONGEST_PROFILE_MM = 200_000;

  private final double usualEdgeMm;

  /**
   * Makes the working.
   *
   * @param usualEdgeMm length of the edge where none is given, mm
   */
  public StraightedgeGap(double usualEdgeMm) {
    this.usualEdgeMm = Need.positive("edge", usualEdgeMm);
  }

  /**
   * What a profile comes to.
   *
   * @param gapMm worst gap below the edge, mm
   * @param atMm where it is, mm along the profile; the start of the profile where there is no gap
   * @param humpMm the most the profile stands above an edge held under it, mm: the rocking measure
   * @param humpAtMm where that is, mm
   * @param windowFromMm where the edge begins when the gap is worst, mm
   * @param windowToMm where it ends, mm
   */
  public record Values(
      double gapMm,
      double atMm,
      double humpMm,
      double humpAtMm,
      double windowFromMm,
      double windowToMm) {}

  /**
   * Slides an edge along a profile of straight pieces. In each place the gap is the upper convex
   * hull of the profile under the edge, less the profile; the hump is the profile less its lower
   * convex hull. The edge is tried from the start in steps of 10 mm at most, and also wherever
   * either of its ends comes to a reading. A profile shorter than the edge is taken in one piece.
   *
   * @param positionsMm places of the readings, mm, rising, at least two
   * @param heightsMm heights of the readings, mm, as many
   * @param edgeMm length of the edge, mm, above 0
   * @throws IllegalArgumentException where positions do not rise or the numbers do not match
   */
  public static Values of(double[] positionsMm, double[] heightsMm, double edgeMm) {
    check(positionsMm, heightsMm, edgeMm);
    double[] x = positionsMm.clone();
    double[] z = heightsMm.clone();
    double gap = 0;
    double hump = 0;
    double at = x[0];
    double humpAt = x[0];
    double from = x[0];
    double to = Math.min(x[0] + edgeMm, x[x.length - 1]);
    for (double start : starts(x, edgeMm)) {
      double end = Math.min(start + edgeMm, x[x.length - 1]);
      double[][] under = window(x, z, start, end);
      double[] below = worst(under[0], under[1], 1);
      if (below[0] > gap + SAME_MM) {
        gap = below[0];
        at = below[1];
        from = start;
        to = end;
      }
      double[] above = worst(under[0], under[1], -1);
      if (above[0] > hump + SAME_MM) {
        hump = above[0];
        humpAt = above[1];
      }
    }
    return new Values(gap, at, hump, humpAt, from, to);
  }

  private static void check(double[] x, double[] z, double edge) {
    Need.positive("edge", edge);
    if (x.length < 2 || x.length != z.length) {
      throw new IllegalArgumentException(
          "a profile needs two or more positions, each with a height");
    }
    for (int i = 0; i < x.length; i++) {
      Need.finite("position", x[i]);
      Need.finite("height", z[i]);
      if (i > 0 && x[i] <= x[i - 1]) {
        throw new IllegalArgumentException("positions must rise along the profile");
      }
    }
    if ((x[x.length - 1] - x[0]) / SLIDE_MM > 1e7) {
      throw new IllegalArgumentException("the profile is too long");
    }
  }

  /** The starting places of the edge, rising. */
  private static TreeSet<Double> starts(double[] x, double edge) {
    TreeSet<Double> starts = new TreeSet<>();
    double first = x[0];
    double last = x[x.length - 1] - edge;
    starts.add(first);
    if (last <= first) {
      return starts;
    }
    long steps = (long) Math.ceil((last - first) / SLIDE_MM);
    for (long i = 1; i < steps; i++) {
      starts.add(first + i * SLIDE_MM);
    }
    starts.add(last);
    for (double reading : x) {
      for (double start : new double[] {reading, reading - edge}) {
        if (start >= first && start <= last) {
          starts.add(start);
        }
      }
    }
    return starts;
  }

  /** The profile between two places, with heights interpolated at both ends. */
  private static double[][] window(double[] x, double[] z, double start, double end) {
    int first = firstAbove(x, start);
    int last = first;
    while (last < x.length && x[last] < end) {
      last++;
    }
    int count = last - first;
    double[] places = new double[count + 2];
    double[] heights = new double[count + 2];
    places[0] = start;
    heights[0] = height(x, z, start);
    System.arraycopy(x, first, places, 1, count);
    System.arraycopy(z, first, heights, 1, count);
    places[count + 1] = end;
    heights[count + 1] = height(x, z, end);
    return new double[][] {places, heights};
  }

  private static int firstAbove(double[] x, double place) {
    int found = Arrays.binarySearch(x, place);
    return found >= 0 ? found + 1 : -found - 1;
  }

  private static double height(double[] x, double[] z, double place) {
    int found = Arrays.binarySearch(x, place);
    if (found >= 0) {
      return z[found];
    }
    int right = Math.min(Math.max(-found - 1, 1), x.length - 1);
    double share = (place - x[right - 1]) / (x[right] - x[right - 1]);
    return z[right - 1] + share * (z[right] - z[right - 1]);
  }

  /** The largest distance from the hull to the profile and its place; side 1 upper, -1 lower. */
  private static double[] worst(double[] x, double[] z, int side) {
    int[] hull = new int[x.length];
    int size = 0;
    for (int i = 0; i < x.length; i++) {
      while (size > 1 && side * turn(x, z, hull[size - 2], hull[size - 1], i) >= 0) {
        size--;
      }
      hull[size++] = i;
    }
    double most = 0;
    double place = x[0];
    for (int h = 1; h < size; h++) {
      int left = hull[h - 1];
      int right = hull[h];
      for (int i = left + 1; i < right; i++) {
        double share = (x[i] - x[left]) / (x[right] - x[left]);
        double distance = side * (z[left] + share * (z[right] - z[left]) - z[i]);
        if (distance > most + SAME_MM) {
          most = distance;
          place = x[i];
        }
      }
    }
    return new double[] {most, place};
  }

  /** Positive where the way from a over b to c turns upwards. */
  private static double turn(double[] x, double[] z, int a, int b, int c) {
    return (x[b] - x[a]) * (z[c] - z[a]) - (z[b] - z[a]) * (x[c] - x[a]);
  }

  @Override
  public String name() {
    return "straightedge-gap";
  }

  @Override
  public String purpose() {
    return "The worst gap under a straightedge slid along a floor, and how far it rocks";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("positions", Dimension.LENGTH, "mm", -1e6, 1e6, "places of the readings, rising")
            .as(Key.Shape.LIST)
            .takesBare(),
        Key.of("heights", Dimension.LENGTH, "mm", -1e5, 1e5, "heights of the readings, up positive")
            .as(Key.Shape.LIST)
            .takesBare(),
        Key.of(
                "edge",
                Dimension.LENGTH,
                "m",
                0.1,
                10,
                "length of the edge; " + Show.number(usualEdgeMm / 1000) + " m if left out")
            .optional());
  }

  @Override
  public List<String> example() {
    return List.of("positions=0,1500,3000", "heights=0,-6,0", "edge=2 m");
  }

  @Override
  public String source() {
    return "BS 8204-1:2003 Annex C as quoted: the edge lies on the surface, the gap is measured between"
        + " its points of contact; the hump measure is our own";
  }

  @Override
  public Result work(Inputs in) {
    double[] positions = in.list("positions");
    double[] heights = in.list("heights");
    if (positions.length < 2) {
      throw in.refuse("positions", "needs two readings or more");
    }
    if (heights.length != positions.length) {
      throw in.refuse(
          "heights", "has " + heights.length + " values for " + positions.length + " positions");
    }
    for (int i = 1; i < positions.length; i++) {
      if (positions[i] <= positions[i - 1]) {
        throw in.refuse("positions", "must rise, and value " + (i + 1) + " does not");
      }
    }
    if (positions[positions.length - 1] - positions[0] > LONGEST_PROFILE_MM) {
      throw in.refuse("positions", "covers more than 200 m, the longest profile taken at once");
    }
    double edge = in.has("edge") ? in.number("edge") : usualEdgeMm;
    Values values = of(positions, heights, edge);
    double length = positions[positions.length - 1] - positions[0];
    Result.Draft draft =
        new Result.Draft()
            .step(
                "gap(x) = upper convex hull of the profile under the edge - profile; worst of all"
                    + " places of the edge",
                "edge of "
                    + Show.number(edge)
                    + " mm from "
                    + Show.number(values.windowFromMm())
                    + " mm to "
                    + Show.number(values.windowToMm())
                    + " mm",
                "gap = "
                    + Show.number(values.gapMm())
                    + " mm at "
                    + Show.number(values.atMm())
                    + " mm")
            .step(
                "hump(x) = profile - lower convex hull of the profile under the edge",
                "same places of the edge",
                "hump = "
                    + Show.number(values.humpMm())
                    + " mm at "
                    + Show.number(values.humpAtMm())
                    + " mm")
            .value("gap", values.gapMm(), "mm")
            .value("at", values.atMm(), "mm")
            .value("hump", values.humpMm(), "mm");
    if (!in.has("edge")) {
      draft.note(
          "No edge was given: one of "
              + Show.number(usualEdgeMm / 1000)
              + " m is taken, the length of BS 8204 since 2003 (quoted).");
    }
    if (length < edge) {
      draft.note(
          "The profile is shorter than the edge, so the edge lies over the whole of it at once.");
    }
    if (values.gapMm() == 0) {
      draft.note("There is no gap anywhere; 'at' is the start of the profile.");
    }
    if (values.humpMm() > values.gapMm()) {
      draft.note(
          "The edge rocks on a hump at "
              + Show.number(values.humpAtMm())
              + " mm: a gap below the edge alone would not show it.");
    }
    return draft
        .note("A straightedge tells flatness, not level: a flat slope reads nought.")
        .done(this, in);
  }
}
