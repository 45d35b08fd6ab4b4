package underfoot.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import underfoot.working.StraightedgeGap;

/**
 * Lays a straightedge along many lines over a surveyed floor. Along each line the surface of
 * triangles is cut exactly, so a profile is exact; how many lines are tried is bounded, so that ten
 * thousand readings take little longer for each than a few.
 *
 * <p>With few readings a line goes through every two of them. With more, lines go in eight
 * directions through readings evenly chosen (for a grid of readings: its rows, columns and
 * diagonals). Besides, lines in twelve directions go through the readings that stand out most above
 * or below those around them. Directions are counted from the room's longer side, so that turning
 * the drawing changes nothing.
 */
final class FlatnessSearch {
  /** Up to here every two readings get a line: at most 1770. */
  private static final int FEW = 60;

  /** Directions in which readings that stand out are tried. */
  private static final int STAR = 12;

  /** How many readings that stand out are tried. */
  private static final int STANDING_OUT = 60;

  /** Directions of the lines that sweep a big survey. */
  private static final int SWEEPS = 8;

  /** Lines in each of those directions, at most. */
  private static final int LINES_A_SWEEP = 60;

  /** Nearer than this is on the line, mm. */
  static final double ON = 1e-6;

  /** More than any floor holds, mm: nothing of that sort is looked for. */
  private static final double NONE = Double.MAX_VALUE;

  private final List<Coordinate[]> walls;
  private final double edgeMm;
  private int tried;
  private final List<Flatness.Line> stretches = new ArrayList<>();

  private FlatnessSearch(Geometry clip, double edgeMm) {
    this.walls = clip == null ? null : walls(clip);
    this.edgeMm = edgeMm;
  }

  /**
   * Searches a surface.
   *
   * @param tin the surface through the readings
   * @param residuals each vertex less the plane that fits best, mm
   * @param clip the floor, beyond which the edge cannot lie; null where it is not needed
   * @param edgeMm length of the edge, mm
   * @param direction the room's own direction, radians
   */
  static Flatness of(
      TriangulatedSurface tin, double[] residuals, Geometry clip, double edgeMm, double direction) {
    FlatnessSearch search = new FlatnessSearch(clip, edgeMm);
    List<Coordinate> vertices = tin.vertices();
    List<SurfaceLines.Ray> rays = new ArrayList<>();
    if (vertices.size() <= FEW) {
      for (int i = 0; i < vertices.size(); i++) {
        for (int j = i + 1; j < vertices.size(); j++) {
          through(vertices.get(i), vertices.get(j), rays);
        }
      }
    } else {
      sweep(vertices, direction, rays);
    }
    for (int i : standingOut(tin, residuals)) {
      for (int k = 0; k < STAR; k++) {
        rays.add(SurfaceLines.Ray.of(vertices.get(i), direction + Math.PI * k / STAR));
      }
    }
    search.along(tin, rays);
    return search.slide();
  }

  /** A profile of readings that all lie on one line. */
  static Flatness ofOneLine(List<Coordinate> points, double edgeMm) {
    Coordinate first = points.get(0);
    Coordinate far = points.stream().max(Comparator.comparingDouble(first::distance)).orElseThrow();
    FlatnessSearch search = new FlatnessSearch(null, edgeMm);
    double length = first.distance(far);
    if (length > 0) {
      List<double[]> cut = new ArrayList<>();
      for (Coordinate point : points) {
        double along =
            ((point.x - first.x) * (far.x - first.x) + (point.y - first.y) * (far.y - first.y))
                / length;
        cut.add(new double[] {along, point.getZ()});
      }
      search.tryProfile(
          first, (far.x - first.x) / length, (far.y - first.y) / length, ordered(cut));
    }
    return search.slide();
  }

  private static List<Coordinate[]> walls(Geometry clip) {
    List<Coordinate[]> walls = new ArrayList<>();
    Geometry boundary = clip.getBoundary();
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      walls.add(boundary.getGeometryN(i).getCoordinates());
    }
    return walls;
  }

  private static int[] standingOut(TriangulatedSurface tin, double[] residuals) {
    int n = residuals.length;
    double[] sum = new double[n];
    int[] count = new int[n];
    for (int[] edge : tin.edges()) {
      sum[edge[0]] += residuals[edge[1]];
      sum[edge[1]] += residuals[edge[0]];
      count[edge[0]]++;
      count[edge[1]]++;
    }
    double[] out = new double[n];
    for (int i = 0; i < n; i++) {
      out[i] = count[i] == 0 ? 0 : Math.abs(residuals[i] - sum[i] / count[i]);
    }
    return IntStream.range(0, n)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -out[i]))
        .limit(STANDING_OUT)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static void sweep(
      List<Coordinate> vertices, double direction, List<SurfaceLines.Ray> rays) {
    for (int k = 0; k < SWEEPS; k++) {
      double angle = direction + Math.PI * k / SWEEPS;
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      List<Aside> sorted = new ArrayList<>();
      vertices.forEach(v -> sorted.add(new Aside(v.y * ux - v.x * uy, v)));
      sorted.sort(Comparator.comparingDouble(Aside::offset));
      List<Coordinate> distinct = new ArrayList<>();
      double last = Double.NEGATIVE_INFINITY;
      for (Aside one : sorted) {
        double offset = one.offset();
        // A line less than a millimetre from the last one tells nothing new.
        if (offset - last > 1) {
          distinct.add(one.vertex());
          last = offset;
        }
      }
      int lines = Math.min(LINES_A_SWEEP, distinct.size());
      for (int i = 0; i < lines; i++) {
        int chosen = (int) ((2L * i + 1) * distinct.size() / (2L * lines));
        rays.add(SurfaceLines.Ray.of(distinct.get(chosen), angle));
      }
    }
  }

  /** A vertex, and how far aside it lies. */
  private record Aside(double offset, Coordinate vertex) {}

  private static void through(Coordinate a, Coordinate b, List<SurfaceLines.Ray> rays) {
    double length = a.distance(b);
    if (length > ON) {
      rays.add(new SurfaceLines.Ray(a, (b.x - a.x) / length, (b.y - a.y) / length));
    }
  }

  /** Tries lines in the order given. */
  private void along(TriangulatedSurface tin, List<SurfaceLines.Ray> rays) {
    List<List<double[]>> cuts = new SurfaceLines(tin).cut(rays);
    for (int i = 0; i < cuts.size(); i++) {
      along(rays.get(i), cuts.get(i));
    }
  }

  private void along(SurfaceLines.Ray ray, List<double[]> cut) {
    Coordinate point = ray.point();
    double ux = ray.ux();
    double uy = ray.uy();
    double[][] profile = ordered(cut);
    if (profile[0].length < 2) {
      return;
    }
    if (walls == null) {
      tryProfile(point, ux, uy, profile);
      return;
    }
    for (double[] stretch : within(point, ux, uy)) {
      double[][] piece = between(profile, stretch[0], stretch[1]);
      if (piece[0].length > 1) {
        tryProfile(point, ux, uy, piece);
      }
    }
  }

  /** Where a line runs within the floor, from and to along it. */
  private List<double[]> within(Coordinate point, double ux, double uy) {
    List<Double> crossings = new ArrayList<>();
    for (Coordinate[] wall : walls) {
      for (int i = 0; i + 1 < wall.length; i++) {
        double a = (wall[i].y - point.y) * ux - (wall[i].x - point.x) * uy;
        double b = (wall[i + 1].y - point.y) * ux - (wall[i + 1].x - point.x) * uy;
        if ((a <= 0) != (b <= 0)) {
          double share = a / (a - b);
          double x = wall[i].x + share * (wall[i + 1].x - wall[i].x);
          double y = wall[i].y + share * (wall[i + 1].y - wall[i].y);
          crossings.add((x - point.x) * ux + (y - point.y) * uy);
        }
      }
    }
    // Walls are closed, so a line enters and leaves by turns.
    crossings.sort(null);
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      stretches.add(new double[] {crossings.get(i), crossings.get(i + 1)});
    }
    return stretches;
  }

  /** Places rising, each with its height; those of one place once. */
  private static double[][] ordered(List<double[]> cut) {
    cut.sort(Comparator.comparingDouble(one -> one[0]));
    List<double[]> kept = new ArrayList<>();
    for (double[] one : cut) {
      if (kept.isEmpty() || one[0] - kept.get(kept.size() - 1)[0] > ON) {
        kept.add(one);
      }
    }
    double[][] profile = new double[2][kept.size()];
    for (int i = 0; i < kept.size(); i++) {
      profile[0][i] = kept.get(i)[0];
      profile[1][i] = kept.get(i)[1];
    }
    return profile;
  }

  private static double[][] between(double[][] profile, double from, double to) {
    double[] s = profile[0];
    double[] z = profile[1];
    double first = Math.max(from, s[0]);
    double last = Math.min(to, s[s.length - 1]);
    List<double[]> kept = new ArrayList<>();
    if (last - first > ON) {
      kept.add(new double[] {first, height(s, z, first)});
      for (int i = 0; i < s.length; i++) {
        if (s[i] > first + ON && s[i] < last - ON) {
          kept.add(new double[] {s[i], z[i]});
        }
      }
      kept.add(new double[] {last, height(s, z, last)});
    }
    return ordered(kept);
  }

  private static double height(double[] s, double[] z, double place) {
    int found = Arrays.binarySearch(s, place);
    if (found >= 0) {
      return z[found];
    }
    int right = Math.min(Math.max(-found - 1, 1), s.length - 1);
    double share = (place - s[right - 1]) / (s[right] - s[right - 1]);
    return z[right - 1] + share * (z[right] - z[right - 1]);
  }

  /** Cuts a profile into stretches, and notes what each may hold at the most. */
  private void tryProfile(Coordinate origin, double ux, double uy, double[][] profile) {
    tried++;
    double first = profile[0][0];
    double last = profile[0][profile[0].length - 1];
    for (double from = first; from == first || from + edgeMm < last - ON; from += edgeMm) {
      // Wherever the edge lies, it lies within one of these stretches of twice its length.
      double[][] piece =
          last - first <= 2 * edgeMm ? profile : between(profile, from, from + 2 * edgeMm);
      int n = piece[0].length;
      if (n < 2) {
        continue;
      }
      double start = piece[0][0];
      double[] positions = new double[n];
      for (int i = 0; i < n; i++) {
        positions[i] = piece[0][i] - start;
      }
      StraightedgeGap.Values most =
          StraightedgeGap.of(positions, piece[1], Math.max(edgeMm, positions[n - 1]));
      if (most.gapMm() > 0 || most.humpMm() > 0 || stretches.isEmpty()) {
        Coordinate begin = new Coordinate(origin.x + start * ux, origin.y + start * uy);
        double length = positions[n - 1];
        Coordinate end = new Coordinate(begin.x + length * ux, begin.y + length * uy);
        stretches.add(new Flatness.Line(begin, end, positions, piece[1], most));
      }
      if (piece == profile) {
        return;
      }
    }
  }

  /**
   * Slides the edge along the stretches that may hold the worst, the most promising first. An edge
   * as long as the whole stretch finds at least as much as a shorter one, so that the rest can be
   * passed over.
   */
  private Flatness slide() {
    return new Flatness(
        worst(
            StraightedgeGap.Values::gapMm,
            (one, found) ->
                StraightedgeGap.of(one.positions(), one.heights(), edgeMm, found, NONE)),
        worst(
            StraightedgeGap.Values::humpMm,
            (one, found) ->
                StraightedgeGap.of(one.positions(), one.heights(), edgeMm, NONE, found)),
        tried);
  }

  /** Slides the edge along a stretch, where only more than was found elsewhere is of interest. */
  private interface Slide {
    StraightedgeGap.Values along(Flatness.Line one, double found);
  }

  private Flatness.Line worst(ToDoubleFunction<StraightedgeGap.Values> measure, Slide slide) {
    stretches.sort(Comparator.comparingDouble(one -> -measure.applyAsDouble(one.values())));
    Flatness.Line worst = null;
    double found = 0;
    for (Flatness.Line one : stretches) {
      if (worst != null && measure.applyAsDouble(one.values()) <= found) {
        break;
      }
      double here = measure.applyAsDouble(slide.along(one, found));
      if (worst == null || here > found) {
        worst = one;
        found = here;
      }
    }
    return worst == null
        ? null
        : new Flatness.Line(
            worst.from(),
            worst.to(),
            worst.positions(),
            worst.heights(),
            StraightedgeGap.of(worst.positions(), worst.heights(), edgeMm));
  }
}
