package underfoot.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import underfoot.working.Triangles;

/**
 * A surface of triangles through points whose heights are known, by Delaunay. Places and heights
 * are in mm.
 */
public final class TriangulatedSurface {
  /** A triangle thinner than this is none, mm. */
  private static final double SLIVER_MM = 0.01;

  private final List<Coordinate> vertices;
  private final List<int[]> triangles;
  private final List<int[]> edges;

  /** The triangles by place, and the vertices; made when they are first asked for. */
  private volatile TriangleIndex index;

  private volatile PlaceIndex places;

  private TriangulatedSurface(List<Coordinate> vertices, List<int[]> triangles, List<int[]> edges) {
    this.vertices = List.copyOf(vertices);
    this.triangles = List.copyOf(triangles);
    this.edges = List.copyOf(edges);
  }

  /**
   * Spans the triangles. Points of one place are taken as one, at their mean height.
   *
   * @param points places with heights, mm
   */
  public static TriangulatedSurface of(List<Coordinate> points) {
    List<Coordinate> vertices = merged(points);
    return of(vertices, Triangles.of(vertices, 1));
  }

  /** The surface of triangles that are known, without those too thin to hold any floor. */
  static TriangulatedSurface of(List<Coordinate> vertices, List<int[]> spanned) {
    List<int[]> triangles = new ArrayList<>(spanned);
    triangles.removeIf(triangle -> isSliver(vertices, triangle));
    List<int[]> edges = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (int[] triangle : triangles) {
      for (int k = 0; k < 3; k++) {
        int a = Math.min(triangle[k], triangle[(k + 1) % 3]);
        int b = Math.max(triangle[k], triangle[(k + 1) % 3]);
        if (seen.add((long) a * vertices.size() + b)) {
          edges.add(new int[] {a, b});
        }
      }
    }
    return new TriangulatedSurface(vertices, triangles, edges);
  }

  /** Readings along a wall that is not quite straight span slivers that hold no floor. */
  private static boolean isSliver(List<Coordinate> vertices, int[] triangle) {
    Coordinate a = vertices.get(triangle[0]);
    Coordinate b = vertices.get(triangle[1]);
    Coordinate c = vertices.get(triangle[2]);
    double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
    return Math.abs(cross(a, b, c.x, c.y)) < SLIVER_MM * longest;
  }

  /** Those of one place as one, at their mean height. */
  static List<Coordinate> merged(List<Coordinate> points) {
    Map<Coordinate, List<Coordinate>> byPlace = new java.util.LinkedHashMap<>();
    for (Coordinate point : points) {
      byPlace.computeIfAbsent(point, place -> new ArrayList<>()).add(point);
    }
    List<Coordinate> merged = new ArrayList<>();
    for (List<Coordinate> same : byPlace.values()) {
      double mean = same.stream().mapToDouble(Coordinate::getZ).average().orElseThrow();
      merged.add(new Coordinate(same.get(0).x, same.get(0).y, mean));
    }
    return merged;
  }

  /** The points, their z being the height, mm. */
  public List<Coordinate> vertices() {
    return vertices;
  }

  /** The triangles, each as three places in the list of vertices. */
  public List<int[]> triangles() {
    return triangles;
  }

  List<int[]> edges() {
    return edges;
  }

  /** The same triangles with other heights, one for each vertex in order, mm. */
  TriangulatedSurface with(double[] heights) {
    List<Coordinate> moved = new ArrayList<>();
    for (int i = 0; i < heights.length; i++) {
      Coordinate vertex = vertices.get(i);
      moved.add(new Coordinate(vertex.x, vertex.y, heights[i]));
    }
    return new TriangulatedSurface(moved, triangles, edges);
  }

  /**
   * The height at a place, mm; NaN outside the triangles.
   *
   * @param x mm
   * @param y mm
   */
  public double heightAt(double x, double y) {
    double best = Double.NaN;
    double bestMiss = 1e-6;
    for (int number : index().at(x, y)) {
      int[] triangle = triangles.get(number);
      Coordinate a = vertices.get(triangle[0]);
      Coordinate b = vertices.get(triangle[1]);
      Coordinate c = vertices.get(triangle[2]);
      double whole = cross(a, b, c.x, c.y);
      if (whole == 0) {
        continue;
      }
      double u = cross(b, c, x, y) / whole;
      double v = cross(c, a, x, y) / whole;
      double w = 1 - u - v;
      double miss = -Math.min(u, Math.min(v, w));
      if (miss < bestMiss) {
        bestMiss = miss;
        best = u * a.getZ() + v * b.getZ() + w * c.getZ();
        if (miss <= 0) {
          return best;
        }
      }
    }
    return best;
  }

  /** The vertex nearest to a place; there is at least one. */
  public Coordinate nearest(double x, double y) {
    PlaceIndex known = places;
    if (known == null) {
      known = new PlaceIndex(vertices);
      places = known;
    }
    return vertices.get(known.nearest(x, y));
  }

  /** The triangles by place. */
  TriangleIndex index() {
    TriangleIndex known = index;
    if (known == null) {
      known = new TriangleIndex(vertices, triangles);
      index = known;
    }
    return known;
  }

  private static double cross(Coordinate a, Coordinate b, double x, double y) {
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  }

  /** The corners of a triangle. */
  Coordinate[] corners(int[] triangle) {
    return new Coordinate[] {
      vertices.get(triangle[0]), vertices.get(triangle[1]), vertices.get(triangle[2])
    };
  }
}
