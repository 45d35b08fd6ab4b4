package underfoot.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;
import underfoot.working.BestPlane;
import underfoot.working.PourVolume;
import underfoot.working.Triangles;

/**
 * The levels of a floor: the readings, the surface through them, and what follows for a levelling
 * compound. What is asked for twice is worked out once.
 */
public final class LevelSurvey {
  private final List<Reading> readings;
  private final Optional<RoomShape> room;
  private final Optional<BestPlane.Values> plane;
  private final TriangulatedSurface measured;
  private final TriangulatedSurface floor;

  /** The triangles of the floor, too thin ones as well, and what is carried on to which place. */
  private final List<int[]> spanned;

  private final int[] carriedFrom;
  private final boolean turnsLeft;

  /** The floor cut to the room, made when it is first poured over. */
  private volatile PourVolume.Ground ground;

  /** How far apart the readings lie, worked out when it is first asked for; NaN before. */
  private volatile double widestStep = Double.NaN;

  private final Map<Double, Flatness> flatness = new ConcurrentHashMap<>();
  private final Map<PourSurface, Pour> pours = new ConcurrentHashMap<>();
  private final Map<Doorway.Place, Optional<Doorway>> doorways = new ConcurrentHashMap<>();

  private LevelSurvey(
      List<Reading> readings,
      Optional<RoomShape> room,
      Optional<BestPlane.Values> plane,
      TriangulatedSurface measured,
      TriangulatedSurface floor,
      List<int[]> spanned,
      int[] carriedFrom,
      boolean turnsLeft) {
    this.readings = List.copyOf(readings);
    this.room = room;
    this.plane = plane;
    this.measured = measured;
    this.floor = floor;
    this.spanned = spanned;
    this.carriedFrom = carriedFrom;
    this.turnsLeft = turnsLeft;
  }

  /** The spot heights, mm, at least two. */
  public List<Reading> readings() {
    return readings;
  }

  /** The room; empty where its outline is not known, and then it is what the readings enclose. */
  public Optional<RoomShape> room() {
    return room;
  }

  /** Whether the corners of the room, as they were given, turn left. */
  boolean turnsLeft() {
    return turnsLeft;
  }

  /** Whether the corners of an outline turn left. */
  static boolean turnsLeft(List<Point> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice > 0;
  }

  /** The plane that fits the readings best; empty where they lie on one line. */
  public Optional<BestPlane.Values> plane() {
    return plane;
  }

  /** The surface through the readings alone. */
  public TriangulatedSurface measured() {
    return measured;
  }

  /** That surface carried on level to the corners of the room that lie beyond the readings. */
  public TriangulatedSurface floor() {
    return floor;
  }

  /** A doorway in this room, drawn once. */
  Optional<Doorway> doorway(Doorway.Place place) {
    return doorways.computeIfAbsent(place, one -> one.in(this));
  }

  /** The levels of a scenario; empty where it has fewer than two readings. */
  public static Optional<LevelSurvey> of(Scenario scenario) {
    return of(scenario.outline(), scenario.readings());
  }

  /**
   * The levels of a floor.
   *
   * @param outline corners in order, mm; may be empty
   * @param readings spot heights, mm
   */
  public static Optional<LevelSurvey> of(List<Point> outline, List<Reading> readings) {
    if (readings.size() < 2) {
      return Optional.empty();
    }
    Optional<RoomShape> room = RoomShape.of(outline);
    Optional<BestPlane.Values> plane = plane(readings);
    List<Coordinate> points = new ArrayList<>();
    for (Reading reading : readings) {
      points.add(new Coordinate(reading.x(), reading.y(), reading.z()));
    }
    List<Coordinate> places = TriangulatedSurface.merged(points);
    List<int[]> spanned = Triangles.of(places, 1);
    TriangulatedSurface measured = TriangulatedSurface.of(places, spanned);
    TriangulatedSurface floor = measured;
    int[] carriedFrom = {};
    if (room.isPresent() && plane.isPresent()) {
      List<Coordinate> beyond = beyond(room.get(), places);
      if (!beyond.isEmpty()) {
        PlaceIndex known = new PlaceIndex(places);
        carriedFrom =
            beyond.stream().mapToInt(corner -> known.nearest(corner.x, corner.y)).toArray();
        List<Coordinate> all = new ArrayList<>(places);
        for (int i = 0; i < carriedFrom.length; i++) {
          Coordinate corner = beyond.get(i);
          all.add(new Coordinate(corner.x, corner.y, places.get(carriedFrom[i]).getZ()));
        }
        spanned = Triangles.of(all, 1);
        floor = TriangulatedSurface.of(all, spanned);
      }
    }
    return Optional.of(
        new LevelSurvey(
            readings, room, plane, measured, floor, spanned, carriedFrom, turnsLeft(outline)));
  }

  private static Optional<BestPlane.Values> plane(List<Reading> readings) {
    List<underfoot.working.Reading> metres = new ArrayList<>();
    for (Reading reading : readings) {
      metres.add(
          new underfoot.working.Reading(reading.x() / 1000, reading.y() / 1000, reading.z()));
    }
    try {
      return Optional.of(BestPlane.of(metres));
    } catch (IllegalArgumentException onOneLine) {
      return Optional.empty();
    }
  }

  /** The corners of the room that lie beyond all readings. */
  private static List<Coordinate> beyond(RoomShape room, List<Coordinate> known) {
    Geometry hull =
        RoomShape.SHAPES.createMultiPointFromCoords(known.toArray(new Coordinate[0])).convexHull();
    Coordinate[] ring = room.floor().getExteriorRing().getCoordinates();
    return Arrays.stream(ring, 0, ring.length - 1)
        .filter(corner -> !hull.covers(RoomShape.SHAPES.createPoint(corner)))
        .toList();
  }

  private static double height(BestPlane.Values plane, Coordinate place) {
    return plane.heightAt(place.x / 1000, place.y / 1000);
  }

  /** The widest step from reading to reading that nobody can do without to reach them all, mm. */
  public double widestStep() {
    double known = widestStep;
    if (Double.isNaN(known)) {
      known = WidestStep.of(measured);
      widestStep = known;
    }
    return known;
  }

  /** The highest reading. */
  public Reading highest() {
    Reading highest = readings.get(0);
    for (Reading reading : readings) {
      if (reading.z() > highest.z()) {
        highest = reading;
      }
    }
    return highest;
  }

  /** The lowest reading. */
  public Reading lowest() {
    Reading lowest = readings.get(0);
    for (Reading reading : readings) {
      if (reading.z() < lowest.z()) {
        lowest = reading;
      }
    }
    return lowest;
  }

  /**
   * What a straightedge finds.
   *
   * @param edgeMm length of the edge, mm
   */
  public Flatness flatness(double edgeMm) {
    return flatness.computeIfAbsent(edgeMm, this::searched);
  }

  private Flatness searched(double edgeMm) {
    List<Coordinate> points = new ArrayList<>();
    for (Reading reading : readings) {
      points.add(new Coordinate(reading.x(), reading.y(), reading.z()));
    }
    if (plane.isEmpty()) {
      return FlatnessSearch.ofOneLine(points, edgeMm);
    }
    List<Coordinate> vertices = measured.vertices();
    double[] residuals = new double[vertices.size()];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = vertices.get(i).getZ() - height(plane.get(), vertices.get(i));
    }
    // Measured from the plane, not from the datum: the gap is the same, and so are its last digits
    // however the floor is tilted.
    return FlatnessSearch.of(
        measured.with(residuals), residuals, clip(), edgeMm, shape().direction());
  }

  /** The room, widened so far that every reading lies within it; null where nothing is cut off. */
  private Geometry clip() {
    if (room.isEmpty()) {
      return null;
    }
    Polygon walls = room.get().floor();
    IndexedPointInAreaLocator within = new IndexedPointInAreaLocator(walls);
    IndexedFacetDistance off = new IndexedFacetDistance(walls);
    double outside = 0;
    for (Reading reading : readings) {
      Coordinate place = new Coordinate(reading.x(), reading.y());
      if (within.locate(place) == Location.EXTERIOR) {
        outside = Math.max(outside, off.distance(RoomShape.SHAPES.createPoint(place)));
      }
    }
    BufferParameters mitred = new BufferParameters();
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    // A hundredth of a millimetre more, so that a line along a wall is not lost to rounding.
    Geometry wide = BufferOp.bufferOp(walls, outside + 0.01, mitred);
    return wide.covers(hull()) ? null : wide;
  }

  private Geometry hull() {
    return RoomShape.SHAPES
        .createMultiPointFromCoords(measured.vertices().toArray(new Coordinate[0]))
        .convexHull();
  }

  /** The floor as it is poured: the room, or what the readings enclose. */
  private RoomShape shape() {
    return room.orElseGet(() -> RoomShape.of((Polygon) hull()));
  }

  /**
   * The surface that a levelling compound comes to.
   *
   * @param level whether it is level; otherwise it is parallel to the plane that fits best
   * @param leastPourMm depth over the highest reading (over the reading that stands highest above
   *     the plane, where it is not level), mm
   * @return the surface; empty where the readings lie on one line
   */
  public Optional<PourSurface> surface(boolean level, double leastPourMm) {
    return plane.map(
        fit ->
            level
                ? new PourSurface(true, highest().z() + leastPourMm, 0, 0)
                : new PourSurface(
                    false,
                    fit.aMm() + fit.highestMm() + leastPourMm,
                    fit.bMmPerM(),
                    fit.cMmPerM()));
  }

  /** Pours a levelling compound up to such a surface. */
  public Optional<Pour> pour(boolean level, double leastPourMm) {
    return surface(level, leastPourMm).map(this::fill);
  }

  private Pour fill(PourSurface surface) {
    return pours.computeIfAbsent(surface, this::filled);
  }

  private Pour filled(PourSurface surface) {
    // Heights are told from the poured surface's own plane, so that it may slope.
    List<Coordinate> sites = floor.vertices();
    int read = sites.size() - carriedFrom.length;
    double[] told = new double[sites.size()];
    for (int i = 0; i < told.length; i++) {
      Coordinate from = sites.get(i < read ? i : carriedFrom[i - read]);
      told[i] = from.getZ() - surface.at(from.x, from.y) + surface.datumMm();
    }
    PourVolume.Values values = ground().fill(told, surface.datumMm());
    List<Double> depths = new ArrayList<>();
    double least = values.minDepthMm();
    double most = values.maxDepthMm();
    for (Reading reading : readings) {
      double depth = surface.at(reading.x(), reading.y()) - reading.z();
      depths.add(depth);
      least = Math.min(least, depth);
      most = Math.max(most, depth);
    }
    return new Pour(
        surface,
        Math.max(0, least),
        values.meanDepthMm(),
        Math.max(0, most),
        values.volumeL(),
        values.areaM2(),
        depths);
  }

  /** The floor cut to the room; worked out once for all that is poured over it. */
  private PourVolume.Ground ground() {
    PourVolume.Ground known = ground;
    if (known == null) {
      List<Coordinate> sites = new ArrayList<>();
      floor.vertices().forEach(one -> sites.add(new Coordinate(one.x / 1000, one.y / 1000)));
      List<PourVolume.Corner> corners = new ArrayList<>();
      Coordinate[] ring = shape().floor().getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        corners.add(new PourVolume.Corner(ring[i].x / 1000, ring[i].y / 1000));
      }
      known = PourVolume.ground(sites, spanned, corners);
      ground = known;
    }
    return known;
  }

  /**
   * The highest that the floor stands within a part of it, mm; NaN where the readings do not reach.
   *
   * @param part the part, mm
   */
  double highestWithin(Geometry part) {
    return SurfaceCut.highest(floor, part);
  }
}
