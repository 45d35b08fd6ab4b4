package underfoot.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Cuts a surface of triangles along many lines. Those of one direction are cut together: an edge is
 * held only against the lines that pass between its ends, so many lines take little longer than
 * one.
 */
final class SurfaceLines {
  /** Nearer than this is on the line, mm. */
  private static final double ON = FlatnessSearch.ON;

  /** Rounding never comes to this, mm. */
  private static final double HARDLY = 1e-3;

  /** Where the edges of the triangles begin and end, in the list of vertices. */
  private final int[] begins;

  private final int[] ends;
  private final double[] x;
  private final double[] y;
  private final double[] z;

  SurfaceLines(TriangulatedSurface tin) {
    this.begins = tin.edges().stream().mapToInt(edge -> edge[0]).toArray();
    this.ends = tin.edges().stream().mapToInt(edge -> edge[1]).toArray();
    this.x = tin.vertices().stream().mapToDouble(Coordinate::getX).toArray();
    this.y = tin.vertices().stream().mapToDouble(Coordinate::getY).toArray();
    this.z = tin.vertices().stream().mapToDouble(Coordinate::getZ).toArray();
  }

  /**
   * A line.
   *
   * @param point a place on it, mm
   * @param ux how far x moves for each mm along it
   * @param uy how far y moves for each mm along it
   */
  record Ray(Coordinate point, double ux, double uy) {
    static Ray of(Coordinate point, double angle) {
      return new Ray(point, Math.cos(angle), Math.sin(angle));
    }

    double off(Coordinate place) {
      return off(place.x, place.y);
    }

    double off(double x, double y) {
      return (y - point.y) * ux - (x - point.x) * uy;
    }

    double on(double x, double y) {
      return (x - point.x) * ux + (y - point.y) * uy;
    }
  }

  /** For each line where it meets the surface: places along it, each with its height, mm. */
  List<List<double[]>> cut(List<Ray> rays) {
    Map<List<Double>, List<Integer>> directions = new LinkedHashMap<>();
    for (int i = 0; i < rays.size(); i++) {
      List<Double> direction = List.of(rays.get(i).ux(), rays.get(i).uy());
      directions.computeIfAbsent(direction, key -> new ArrayList<>()).add(i);
    }
    List<List<double[]>> cuts = new ArrayList<>();
    rays.forEach(ray -> cuts.add(new ArrayList<>()));
    directions.values().forEach(parallel -> cut(rays, parallel, cuts));
    return cuts;
  }

  /** Cuts along lines of one direction. */
  private void cut(List<Ray> rays, List<Integer> parallel, List<List<double[]>> cuts) {
    Ray any = rays.get(parallel.get(0));
    int[] order =
        parallel.stream()
            .sorted(Comparator.comparingDouble(i -> any.off(rays.get(i).point())))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] asides = Arrays.stream(order).mapToDouble(i -> any.off(rays.get(i).point())).toArray();
    double[] aside = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      aside[i] = any.off(x[i], y[i]);
      for (int k = first(asides, aside[i]); k < order.length && upTo(asides[k], aside[i]); k++) {
        Ray ray = rays.get(order[k]);
        if (Math.abs(ray.off(x[i], y[i])) <= ON) {
          cuts.get(order[k]).add(new double[] {ray.on(x[i], y[i]), z[i]});
        }
      }
    }
    for (int e = 0; e < begins.length; e++) {
      double low = Math.min(aside[begins[e]], aside[ends[e]]);
      double high = Math.max(aside[begins[e]], aside[ends[e]]);
      for (int k = first(asides, low); k < order.length && upTo(asides[k], high); k++) {
        cross(rays.get(order[k]), begins[e], ends[e], cuts.get(order[k]));
      }
    }
  }

  private void cross(Ray ray, int from, int to, List<double[]> cut) {
    double a = ray.off(x[from], y[from]);
    double b = ray.off(x[to], y[to]);
    if ((a > ON && b < -ON) || (a < -ON && b > ON)) {
      double share = a / (a - b);
      double atX = x[from] + share * (x[to] - x[from]);
      double atY = y[from] + share * (y[to] - y[from]);
      cut.add(new double[] {ray.on(atX, atY), z[from] + share * (z[to] - z[from])});
    }
  }

  /** The first line that lies no farther back than a place, but for rounding. */
  private static int first(double[] asides, double aside) {
    int found = Arrays.binarySearch(asides, aside - HARDLY);
    int first = found >= 0 ? found : -found - 1;
    while (first > 0 && asides[first - 1] >= aside - HARDLY) {
      first--;
    }
    return first;
  }

  private static boolean upTo(double one, double aside) {
    return one <= aside + HARDLY;
  }
}
