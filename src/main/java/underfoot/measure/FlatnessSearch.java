package underfoot.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
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
  private static final double ON = 1e-6;

  private final Tin tin;
  private final Geometry clip;
  private final double edgeMm;
  private final double direction;
  private int tried;
  private Flatness.Line worstGap;
  private Flatness.Line worstHump;

  private FlatnessSearch(Tin tin, Geometry clip, double edgeMm, double direction) {
    this.tin = tin;
    this.clip = clip;
    this.edgeMm = edgeMm;
    this.direction = direction;
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
  static Flatness of(Tin tin, double[] residuals, Geometry clip, double edgeMm, double direction) {
    FlatnessSearch search = new FlatnessSearch(tin, clip, edgeMm, direction);
    List<Coordinate> vertices = tin.vertices();
    if (vertices.size() <= FEW) {
      for (int i = 0; i < vertices.size(); i++) {
        for (int j = i + 1; j < vertices.size(); j++) {
          search.through(vertices.get(i), vertices.get(j));
        }
      }
    } else {
      search.sweep(vertices);
    }
    for (int i : standingOut(tin, residuals)) {
      for (int k = 0; k < STAR; k++) {
        search.along(vertices.get(i), direction + Math.PI * k / STAR);
      }
    }
    return new Flatness(search.worstGap, search.worstHump, search.tried);
  }

  /** A profile of readings that all lie on one line. */
  static Flatness ofOneLine(List<Coordinate> points, double edgeMm) {
    Coordinate first = points.get(0);
    Coordinate far = points.stream().max(Comparator.comparingDouble(first::distance)).orElseThrow();
    FlatnessSearch search = new FlatnessSearch(Tin.of(List.of()), null, edgeMm, 0);
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
    return new Flatness(search.worstGap, search.worstHump, search.tried);
  }

  private static int[] standingOut(Tin tin, double[] residuals) {
    int n = residuals.length;
    double[] sum = new double[n];
    int[] count = new int[n];
    for (int[] edge : tin.edges()) {
      sum[edge[0]] += residuals[edge[1]];
      sum[edge[1]] += residuals[edge[0]];
      count[edge[0]]++;
      count[edge[1]]++;
    }
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    double[] out = new double[n];
    for (int i = 0; i < n; i++) {
      out[i] = count[i] == 0 ? 0 : Math.abs(residuals[i] - sum[i] / count[i]);
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> -out[i]));
    return Arrays.stream(order).limit(STANDING_OUT).mapToInt(Integer::intValue).toArray();
  }

  private void sweep(List<Coordinate> vertices) {
    for (int k = 0; k < SWEEPS; k++) {
      double angle = direction + Math.PI * k / SWEEPS;
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      List<Coordinate> sorted = new ArrayList<>(vertices);
      sorted.sort(Comparator.comparingDouble(v -> v.y * ux - v.x * uy));
      List<Coordinate> distinct = new ArrayList<>();
      double last = Double.NEGATIVE_INFINITY;
      for (Coordinate vertex : sorted) {
        double offset = vertex.y * ux - vertex.x * uy;
        // A line less than a millimetre from the last one tells nothing new.
        if (offset - last > 1) {
          distinct.add(vertex);
          last = offset;
        }
      }
      int lines = Math.min(LINES_A_SWEEP, distinct.size());
      for (int i = 0; i < lines; i++) {
        int chosen = (int) ((2L * i + 1) * distinct.size() / (2L * lines));
        along(distinct.get(chosen), angle);
      }
    }
  }

  private void through(Coordinate a, Coordinate b) {
    double length = a.distance(b);
    if (length > ON) {
      along(a, (b.x - a.x) / length, (b.y - a.y) / length);
    }
  }

  private void along(Coordinate point, double angle) {
    along(point, Math.cos(angle), Math.sin(angle));
  }

  private void along(Coordinate point, double ux, double uy) {
    List<double[]> cut = new ArrayList<>();
    List<Coordinate> vertices = tin.vertices();
    double[] off = new double[vertices.size()];
    for (int i = 0; i < off.length; i++) {
      Coordinate v = vertices.get(i);
      off[i] = (v.y - point.y) * ux - (v.x - point.x) * uy;
      if (Math.abs(off[i]) <= ON) {
        cut.add(new double[] {(v.x - point.x) * ux + (v.y - point.y) * uy, v.getZ()});
      }
    }
    for (int[] edge : tin.edges()) {
      double a = off[edge[0]];
      double b = off[edge[1]];
      if ((a > ON && b < -ON) || (a < -ON && b > ON)) {
        Coordinate from = vertices.get(edge[0]);
        Coordinate to = vertices.get(edge[1]);
        double share = a / (a - b);
        double x = from.x + share * (to.x - from.x);
        double y = from.y + share * (to.y - from.y);
        cut.add(
            new double[] {
              (x - point.x) * ux + (y - point.y) * uy,
              from.getZ() + share * (to.getZ() - from.getZ())
            });
      }
    }
    double[][] profile = ordered(cut);
    if (profile[0].length < 2) {
      return;
    }
    if (clip == null) {
      tryProfile(point, ux, uy, profile);
      return;
    }
    double[] s = profile[0];
    LineString whole =
        RoomShape.SHAPES.createLineString(
            new Coordinate[] {
              new Coordinate(point.x + s[0] * ux, point.y + s[0] * uy),
              new Coordinate(point.x + s[s.length - 1] * ux, point.y + s[s.length - 1] * uy)
            });
    Geometry within = whole.intersection(clip);
    for (int i = 0; i < within.getNumGeometries(); i++) {
      if (within.getGeometryN(i) instanceof LineString part) {
        Coordinate[] ends = part.getCoordinates();
        double from = (ends[0].x - point.x) * ux + (ends[0].y - point.y) * uy;
        Coordinate end = ends[ends.length - 1];
        double to = (end.x - point.x) * ux + (end.y - point.y) * uy;
        double[][] piece = between(profile, Math.min(from, to), Math.max(from, to));
        if (piece[0].length > 1) {
          tryProfile(point, ux, uy, piece);
        }
      }
    }
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

  private void tryProfile(Coordinate origin, double ux, double uy, double[][] profile) {
    tried++;
    double start = profile[0][0];
    int n = profile[0].length;
    double[] positions = new double[n];
    for (int i = 0; i < n; i++) {
      positions[i] = profile[0][i] - start;
    }
    double[] heights = profile[1];
    // An edge as long as the line finds at least as much as a shorter one: lines that cannot be the
    // worst are passed over.
    StraightedgeGap.Values most =
        StraightedgeGap.of(positions, heights, Math.max(edgeMm, positions[n - 1]));
    boolean mayBeGap = worstGap == null || most.gapMm() > worstGap.values().gapMm();
    boolean mayBeHump = worstHump == null || most.humpMm() > worstHump.values().humpMm();
    if (!mayBeGap && !mayBeHump) {
      return;
    }
    StraightedgeGap.Values values =
        positions[n - 1] <= edgeMm ? most : StraightedgeGap.of(positions, heights, edgeMm);
    Flatness.Line line =
        new Flatness.Line(
            new Coordinate(origin.x + start * ux, origin.y + start * uy),
            new Coordinate(
                origin.x + (start + positions[n - 1]) * ux,
                origin.y + (start + positions[n - 1]) * uy),
            positions,
            heights,
            values);
    if (worstGap == null || values.gapMm() > worstGap.values().gapMm()) {
      worstGap = line;
    }
    if (worstHump == null || values.humpMm() > worstHump.values().humpMm()) {
      worstHump = line;
    }
  }
}
