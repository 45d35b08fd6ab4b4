package underfoot.working;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Triangle;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * How much levelling compound fills a room of any outline up to a level datum, from readings
 * wherever they were taken. Between readings the floor is taken as flat triangles (Delaunay);
 * beyond the outermost readings it is taken as level with the nearest reading. The triangles are
 * cut to the outline and at zero depth exactly.
 */
public final class PourVolume {
  private static final double SAME_PLACE_M = 1e-6;
  private static final GeometryFactory SHAPES = new GeometryFactory();

  private PourVolume() {}

  /**
   * A corner of the outline.
   *
   * @param xM along one wall, m
   * @param yM square to it, m
   */
  public record Corner(double xM, double yM) {
    /** Refuses numbers that are not finite. */
    public Corner {
      Need.finite("x", xM);
      Need.finite("y", yM);
    }
  }

  /**
   * What a room comes to.
   *
   * @param volumeL volume, L
   * @param areaM2 wetted area, m2
   * @param roomM2 area of the room, m2
   * @param minDepthMm least depth in the room, mm; 0 where part of it stands above the datum
   * @param maxDepthMm greatest depth in the room, mm
   * @param meanDepthMm volume over wetted area, mm; 0 where nothing is wetted
   */
  public record Values(
      double volumeL,
      double areaM2,
      double roomM2,
      double minDepthMm,
      double maxDepthMm,
      double meanDepthMm) {}

  /**
   * Fills the room.
   *
   * @param readings heights, at least one, no two of different height in one place
   * @param outline corners of the room in order, at least three, walls not crossing
   * @param datumMm level to fill to, mm, from the same zero as the readings
   * @throws IllegalArgumentException where the outline is no room or readings contradict one
   *     another
   */
  public static Values of(List<Reading> readings, List<Corner> outline, double datumMm) {
    Need.finite("datum", datumMm);
    Polygon room = room(outline);
    List<Coordinate> sites = sites(readings, outline);
    double[] heights = sites.stream().mapToDouble(Coordinate::getZ).toArray();
    return new Ground(sites, Triangles.of(sites, 1000), room).fill(heights, datumMm);
  }

  /**
   * A floor cut to its outline, so that it can be filled to many levels without being cut anew.
   *
   * @param sites places, m
   * @param triangles each as three places in the list of sites; they cover the outline
   * @param outline corners of the room in order, at least three, walls not crossing
   * @throws IllegalArgumentException where the outline is no room
   */
  public static Ground ground(List<Coordinate> sites, List<int[]> triangles, List<Corner> outline) {
    return new Ground(sites, triangles, room(outline));
  }

  /** A floor cut to its outline. */
  public static final class Ground {
    /** A piece of the floor, and the triangle in whose plane it lies. */
    private record Piece(Coordinate[] corners, int[] plane) {}

    private final List<Coordinate> sites;
    private final List<Piece> pieces = new ArrayList<>();
    private final double roomM2;

    private Ground(List<Coordinate> sites, List<int[]> triangles, Polygon room) {
      this.sites = sites;
      this.roomM2 = room.getArea();
      PreparedGeometry prepared = PreparedGeometryFactory.prepare(room);
      RoomTriangles within = new RoomTriangles(room);
      for (int[] plane : triangles) {
        Coordinate[] corners = corners(plane);
        Polygon triangle =
            SHAPES.createPolygon(new Coordinate[] {corners[0], corners[1], corners[2], corners[0]});
        if (prepared.containsProperly(triangle)) {
          pieces.add(new Piece(corners, plane));
        } else {
          within.within(corners, piece -> pieces.add(new Piece(piece, plane)));
        }
      }
    }

    private Coordinate[] corners(int[] plane) {
      return new Coordinate[] {sites.get(plane[0]), sites.get(plane[1]), sites.get(plane[2])};
    }

    /**
     * Fills it.
     *
     * @param heightsMm how high the floor stands at each of the sites, mm
     * @param datumMm level to fill to, mm, from the same zero
     */
    public Values fill(double[] heightsMm, double datumMm) {
      Sum sum = new Sum(datumMm);
      for (Piece piece : pieces) {
        Coordinate[] plane = new Coordinate[3];
        for (int k = 0; k < 3; k++) {
          Coordinate site = sites.get(piece.plane()[k]);
          plane[k] = new Coordinate(site.x, site.y, heightsMm[piece.plane()[k]]);
        }
        sum.add(piece.corners(), plane);
      }
      return sum.values(roomM2);
    }
  }

  private static Polygon room(List<Corner> outline) {
    if (outline.size() < 3) {
      throw new IllegalArgumentException("an outline needs three corners or more");
    }
    List<Coordinate> ring = new ArrayList<>();
    outline.forEach(corner -> ring.add(new Coordinate(corner.xM(), corner.yM())));
    if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
      ring.add(ring.get(0).copy());
    }
    if (ring.size() < 4) {
      throw new IllegalArgumentException("an outline needs three corners or more");
    }
    Polygon room = SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
    if (!room.isValid() || !(room.getArea() > 0)) {
      throw new IllegalArgumentException("the outline's walls cross or enclose nothing");
    }
    return room;
  }

  /** The readings, and those corners of the outline that lie beyond them. */
  private static List<Coordinate> sites(List<Reading> readings, List<Corner> outline) {
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("at least one reading is needed");
    }
    Map<List<Long>, Coordinate> byPlace = new LinkedHashMap<>();
    for (Reading reading : readings) {
      Coordinate site = new Coordinate(reading.xM(), reading.yM(), reading.zMm());
      Coordinate there = byPlace.putIfAbsent(place(site), site);
      if (there != null && there.getZ() != site.getZ()) {
        throw new IllegalArgumentException(
            "two readings differ at x = " + site.getX() + " m, y = " + site.getY() + " m");
      }
    }
    List<Coordinate> read = List.copyOf(byPlace.values());
    Geometry surveyed =
        SHAPES.createMultiPointFromCoords(read.toArray(new Coordinate[0])).convexHull();
    for (Corner corner : outline) {
      Coordinate site = new Coordinate(corner.xM(), corner.yM());
      if (surveyed.getDimension() < 2 || !surveyed.covers(SHAPES.createPoint(site))) {
        Coordinate nearest =
            read.stream().min(Comparator.comparingDouble(site::distance)).orElseThrow();
        site.setZ(nearest.getZ());
        byPlace.putIfAbsent(place(site), site);
      }
    }
    return List.copyOf(byPlace.values());
  }

  private static List<Long> place(Coordinate site) {
    return List.of(Math.round(site.getX() / SAME_PLACE_M), Math.round(site.getY() / SAME_PLACE_M));
  }

  /** Adds up pieces of the floor. */
  private static final class Sum {
    private final double datum;
    private double volume;
    private double area;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    Sum(double datum) {
      this.datum = datum;
    }

    /** Adds a piece that lies in the plane of a larger triangle. */
    void add(Coordinate[] piece, Coordinate[] plane) {
      double[] depth = new double[3];
      for (int i = 0; i < 3; i++) {
        depth[i] = datum - height(piece[i], plane);
        least = Math.min(least, depth[i]);
        most = Math.max(most, depth[i]);
      }
      LevellingVolume.Fill fill =
          LevellingVolume.triangle(
              Triangle.area(piece[0], piece[1], piece[2]), depth[0], depth[1], depth[2]);
      volume += fill.volumeL();
      area += fill.areaM2();
    }

    private static double height(Coordinate place, Coordinate[] plane) {
      double height = Triangle.interpolateZ(place, plane[0], plane[1], plane[2]);
      double low = Math.min(plane[0].getZ(), Math.min(plane[1].getZ(), plane[2].getZ()));
      double high = Math.max(plane[0].getZ(), Math.max(plane[1].getZ(), plane[2].getZ()));
      // A sliver's plane is ill settled; a piece of it never leaves the heights of its corners.
      return Double.isFinite(height) ? Math.max(low, Math.min(high, height)) : plane[0].getZ();
    }

    Values values(double roomM2) {
      return new Values(
          volume,
          area,
          roomM2,
          Math.max(0, least),
          Math.max(0, most),
          area > 0 ? volume / area : 0);
    }
  }
}
