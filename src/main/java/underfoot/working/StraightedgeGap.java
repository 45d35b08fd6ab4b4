package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.BARE;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.Arrays;

/** The worst gap under a straightedge slid along a profile, and how far it rocks on a hump. */
public final class StraightedgeGap extends Working {
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
    super(
        new Sheet(
            "straightedge-gap",
            "The worst gap under a straightedge slid along a floor, and how far it rocks",
            "BS 8204-1:2003 Annex C as quoted: the edge lies on the surface, the gap is measured"
                + " between its points of contact; the hump measure is our own",
            "positions=0,1500,3000",
            "heights=0,-6,0",
            "edge=2 m"),
        Key.of("positions", LENGTH, "mm", -1e6, 1e6, "places of the readings, rising", BARE)
            .as(Key.Shape.LIST),
        Key.of("heights", LENGTH, "mm", -1e5, 1e5, "heights of the readings, up positive", BARE)
            .as(Key.Shape.LIST),
        Key.of(
            "edge",
            LENGTH,
            "m",
            0.1,
            10,
            "length of the edge; " + Show.number(usualEdgeMm / 1000) + " m if left out",
            OPTIONAL));
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
    return of(positionsMm, heightsMm, edgeMm, 0, 0);
  }

  /**
   * The same, where gaps and humps below some height are of no interest: a place of the edge that
   * cannot hold more is passed over, and what is told of a profile without more is only a part.
   *
   * @param positionsMm places of the readings, mm, rising, at least two
   * @param heightsMm heights of the readings, mm, as many
   * @param edgeMm length of the edge, mm, above 0
   * @param gapFloorMm the gap that is to be passed, mm; 0 for the worst of all
   * @param humpFloorMm the hump that is to be passed, mm; 0 for the worst of all
   * @throws IllegalArgumentException where positions do not rise or the numbers do not match
   */
  public static Values of(
      double[] positionsMm,
      double[] heightsMm,
      double edgeMm,
      double gapFloorMm,
      double humpFloorMm) {
    check(positionsMm, heightsMm, edgeMm);
    Slide gap = new Slide(positionsMm, heightsMm, edgeMm, 1, gapFloorMm);
    Slide hump = new Slide(positionsMm, heightsMm, edgeMm, -1, humpFloorMm);
    gap.run();
    hump.run();
    return new Values(gap.most, gap.at, hump.most, hump.at, gap.from, gap.to);
  }

  /**
   * One edge slid along one profile. A hull over more of the profile lies nowhere below the hull
   * over less of it, so that what lies under several places of the edge taken as one bounds what
   * each of them holds: places are halved again and again, and passed over together where they
   * cannot hold more than was found.
   */
  private static final class Slide {
    private final double[] x;
    private final double[] z;
    private final double edge;
    private final int side;
    private final double floor;
    private final double[] starts;
    private final double[] places;
    private final double[] heights;
    private final int[] hull;
    private double most;
    private double at;
    private double from;
    private double to;

    Slide(double[] x, double[] z, double edge, int side, double floor) {
      this.x = x;
      this.z = z;
      this.edge = edge;
      this.side = side;
      this.floor = floor;
      this.starts = starts(x, edge);
      this.places = new double[x.length + 2];
      this.heights = new double[x.length + 2];
      this.hull = new int[x.length + 2];
      this.at = x[0];
      this.from = x[0];
      this.to = end(x[0]);
    }

    void run() {
      slide(0, starts.length - 1);
    }

    private double end(double start) {
      return Math.min(start + edge, x[x.length - 1]);
    }

    private void slide(int first, int last) {
      double[] found = worst(starts[first], end(starts[last]));
      if (first == last) {
        if (found[0] > most + SAME_MM) {
          most = found[0];
          at = found[1];
          from = starts[first];
          to = end(starts[first]);
        }
      } else if (found[0] > most && found[0] > floor - SAME_MM) {
        int middle = (first + last) / 2;
        slide(first, middle);
        slide(middle + 1, last);
      }
    }

    /** The largest distance from the hull to the profile between two places, and where it is. */
    private double[] worst(double start, double end) {
      int n = window(start, end);
      int size = 0;
      for (int i = 0; i < n; i++) {
        while (size > 1 && side * turn(places, heights, hull[size - 2], hull[size - 1], i) >= 0) {
          size--;
        }
        hull[size++] = i;
      }
      double largest = 0;
      double place = places[0];
      for (int h = 1; h < size; h++) {
        int left = hull[h - 1];
        int right = hull[h];
        for (int i = left + 1; i < right; i++) {
          double share = (places[i] - places[left]) / (places[right] - places[left]);
          double distance =
              side * (heights[left] + share * (heights[right] - heights[left]) - heights[i]);
          if (distance > largest + SAME_MM) {
            largest = distance;
            place = places[i];
          }
        }
      }
      return new double[] {largest, place};
    }

    /** Takes the profile between two places, with heights interpolated at both ends. */
    private int window(double start, double end) {
      int first = firstAbove(x, start);
      int last = first;
      while (last < x.length && x[last] < end) {
        last++;
      }
      int count = last - first;
      places[0] = start;
      heights[0] = height(x, z, start);
      System.arraycopy(x, first, places, 1, count);
      System.arraycopy(z, first, heights, 1, count);
      places[count + 1] = end;
      heights[count + 1] = height(x, z, end);
      return count + 2;
    }
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
  private static double[] starts(double[] x, double edge) {
    double first = x[0];
    double last = x[x.length - 1] - edge;
    if (last <= first) {
      return new double[] {first};
    }
    int steps = (int) Math.ceil((last - first) / SLIDE_MM);
    double[] all = new double[steps + 1 + 2 * x.length];
    int n = 0;
    for (int i = 0; i < steps; i++) {
      all[n++] = first + i * SLIDE_MM;
    }
    all[n++] = last;
    for (double reading : x) {
      for (double start : new double[] {reading, reading - edge}) {
        if (start >= first && start <= last) {
          all[n++] = start;
        }
      }
    }
    Arrays.sort(all, 0, n);
    int distinct = 1;
    for (int i = 1; i < n; i++) {
      if (all[i] > all[distinct - 1]) {
        all[distinct++] = all[i];
      }
    }
    return Arrays.copyOf(all, distinct);
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

  /** Positive where the way from a over b to c turns upwards. */
  private static double turn(double[] x, double[] z, int a, int b, int c) {
    return (x[b] - x[a]) * (z[c] - z[a]) - (z[b] - z[a]) * (x[c] - x[a]);
  }

  @Override
  Result work(Inputs in) {
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
    double length = positions[positions.length - 1] - positions[0];
    if (length > LONGEST_PROFILE_MM) {
      throw in.refuse("positions", "covers more than 200 m, the longest profile taken at once");
    }
    double edge = in.number("edge", usualEdgeMm);
    Values values = of(positions, heights, edge);
    return new Result.Draft(in)
        .let("edge", edge)
        .let("from", values.windowFromMm())
        .let("to", values.windowToMm())
        .let("hump at", values.humpAtMm())
        .let("usual", usualEdgeMm / 1000)
        .value("gap", values.gapMm(), "mm")
        .value("at", values.atMm(), "mm")
        .value("hump", values.humpMm(), "mm")
        .step(
            "gap(x) = upper convex hull of the profile under the edge - profile; worst of all places"
                + " of the edge",
            "edge of {edge} mm from {from} mm to {to} mm",
            "gap = {gap} mm at {at} mm")
        .step(
            "hump(x) = profile - lower convex hull of the profile under the edge",
            "same places of the edge",
            "hump = {hump} mm at {hump at} mm")
        .noteIf(
            !in.has("edge"),
            "No edge was given: one of {usual} m is taken, the length of BS 8204 since 2003"
                + " (quoted).")
        .noteIf(
            length < edge,
            "The profile is shorter than the edge, so the edge lies over the whole of it at once.")
        .noteIf(values.gapMm() == 0, "There is no gap anywhere; 'at' is the start of the profile.")
        .noteIf(
            values.humpMm() > values.gapMm(),
            "The edge rocks on a hump at {hump at} mm: a gap below the edge alone would not show it.")
        .note("A straightedge tells flatness, not level: a flat slope reads nought.")
        .done(this);
  }
}
