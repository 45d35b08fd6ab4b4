package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.Piece;
import underfoot.plan.setout.TileSetOut.Reach;
import underfoot.plan.setout.TileSetOut.Ring;
import underfoot.plan.setout.TileSetOut.Strip;

/** Lays every tile of one start, and tells what is measured of it. */
final class TilePieces {
  private final TileTask task;
  private final Field field;
  private final Pattern pattern;
  private final Movement movement;
  private final double ox;
  private final double oy;
  private final double[] wx;
  private final double[] wy;

  /**
   * Prepares a start.
   *
   * @param ox where the pattern begins, mm along the tiles' axes
   * @param oy where it begins, mm
   */
  TilePieces(TileTask task, Field field, Pattern pattern, Movement movement, double ox, double oy) {
    this.task = task;
    this.field = field;
    this.pattern = pattern;
    this.movement = movement;
    this.ox = ox;
    this.oy = oy;
    this.wx = movement.widenedX(pattern, ox);
    this.wy = movement.widenedY(pattern, oy);
  }

  /**
   * What there is to tell.
   *
   * @param base the direction of the two lines that the first tile is laid to, radians
   * @param anchor the place by which the first tile goes, mm in the room
   * @param options the ways of starting that were compared, the chosen one first
   * @param tried how many starts were weighed
   * @param every whether no other start can be better
   */
  TileSetOut setOut(
      double base, Coordinate anchor, List<Option> options, long tried, boolean every) {
    Count count = new Count(field, pattern, task.weights(), movement);
    Tally tally = count.at(ox, oy);
    List<Touched> touched = count.touched(ox, oy);
    return new TileSetOut(
        pattern.kind(),
        task.length(),
        task.width(),
        task.joint(),
        task.gap(),
        Math.toDegrees(field.turn()),
        this::pieces,
        tally.whole(),
        tally.cut(),
        tally.boxed(),
        walls(touched),
        strips(),
        rings(field.shape()),
        start(base, anchor, touched),
        options,
        tried,
        every);
  }

  /** Every tile and piece of one. */
  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    Count count = new Count(field, pattern, task.weights(), movement);
    Parts parts = new Parts(field.shape(), 2 * Math.max(task.length(), task.width()));
    for (Touched one : count.touched(ox, oy)) {
      Geometry left = parts.common(tile(one.tile, one.i, one.j));
      if (left.getArea() > Field.SLIP) {
        pieces.add(new Piece(false, rings(left), left.getArea()));
      }
    }
    count.whole(
        ox,
        oy,
        (t, i, j) -> {
          Polygon whole = tile(t, i, j);
          pieces.add(new Piece(true, rings(whole), whole.getArea()));
        });
    return pieces;
  }

  /** The places in the repeat whose tiles may lie within bounds. */
  private List<long[]> near(Envelope around, double cx, double cy, Pattern.Tile tile) {
    double ax = pattern.along()[0];
    double ay = pattern.along()[1];
    double bx = pattern.up()[0];
    double by = pattern.up()[1];
    // Widened joints move tiles on, so the bounds reach back.
    double back = movement.extra(pattern) * (movement.x().length + movement.y().length);
    double[] xs = {around.getMinX() - tile.w() - back, around.getMaxX()};
    double[] ys = {around.getMinY() - tile.h() - back, around.getMaxY()};
    Pattern.Span span = pattern.span(xs[0] - cx, xs[1] - cx, ys[0] - cy, ys[1] - cy);
    List<long[]> all = new ArrayList<>();
    for (long j = (long) Math.floor(span.jLow()); j <= (long) Math.ceil(span.jHigh()); j++) {
      for (long i = (long) Math.floor(span.iLow()); i <= (long) Math.ceil(span.iHigh()); i++) {
        double x = cx + i * ax + j * bx;
        double y = cy + i * ay + j * by;
        if (x > xs[0] && x < xs[1] && y > ys[0] && y < ys[1]) {
          all.add(new long[] {i, j});
        }
      }
    }
    return all;
  }

  private Polygon tile(int t, long i, long j) {
    Pattern.Tile tile = pattern.tiles().get(t);
    double x = ox + tile.x() + i * pattern.along()[0] + j * pattern.up()[0];
    double y = oy + tile.y() + i * pattern.along()[1] + j * pattern.up()[1];
    x += movement.on(x, wx, pattern);
    y += movement.on(y, wy, pattern);
    return Field.SHAPES.createPolygon(
        new Coordinate[] {
          new Coordinate(x, y),
          new Coordinate(x + tile.w(), y),
          new Coordinate(x + tile.w(), y + tile.h()),
          new Coordinate(x, y + tile.h()),
          new Coordinate(x, y)
        });
  }

  private List<Ring> rings(Geometry shape) {
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      if (shape.getGeometryN(i) instanceof Polygon part) {
        rings.add(ring(part.getExteriorRing().getCoordinates()));
        for (int k = 0; k < part.getNumInteriorRing(); k++) {
          rings.add(ring(part.getInteriorRingN(k).getCoordinates()));
        }
      }
    }
    return rings;
  }

  private Ring ring(Coordinate[] c) {
    double[] xy = new double[2 * (c.length - 1)];
    for (int i = 0; i + 1 < c.length; i++) {
      Coordinate out = field.out(c[i].x, c[i].y);
      xy[2 * i] = out.x;
      xy[2 * i + 1] = out.y;
    }
    return new Ring(xy);
  }

  private List<TileSetOut.WallCuts> walls(List<Touched> touched) {
    Map<Integer, Map<Long, Integer>> byWall = new TreeMap<>();
    Map<Integer, double[]> range = new HashMap<>();
    List<Field.Edge> edges = field.edges();
    for (Field.Edge edge : edges) {
      if (edge.wall() >= 0) {
        byWall.putIfAbsent(edge.wall(), new TreeMap<>());
      }
    }
    for (Touched one : touched) {
      Set<Integer> counted = new HashSet<>();
      for (int k = 0; k < one.count; k++) {
        int wall = edges.get(one.edges[k]).wall();
        if (wall >= 0 && counted.add(wall)) {
          double width = one.widths[k];
          byWall.get(wall).merge(Math.round(width), 1, Integer::sum);
          double[] seen = range.computeIfAbsent(wall, w -> new double[] {width, width});
          seen[0] = Math.min(seen[0], width);
          seen[1] = Math.max(seen[1], width);
        }
      }
    }
    List<TileSetOut.WallCuts> walls = new ArrayList<>();
    byWall.forEach(
        (wall, sizes) -> {
          List<TileSetOut.Size> sorted = new ArrayList<>();
          sizes.forEach((mm, count) -> sorted.add(new TileSetOut.Size(mm, count)));
          sorted.sort(
              Comparator.comparingInt((TileSetOut.Size size) -> -size.count())
                  .thenComparingLong(size -> -size.mm()));
          double[] seen = range.getOrDefault(wall, new double[] {Double.NaN, Double.NaN});
          walls.add(new TileSetOut.WallCuts(wall, sorted, seen[0], seen[1]));
        });
    return walls;
  }

  private List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    if (movement.width() <= 0) {
      return strips;
    }
    Envelope around = task.room().getEnvelopeInternal();
    double far = around.getWidth() + around.getHeight();
    Envelope here = field.shape().getEnvelopeInternal();
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    double half = movement.width() / 2;
    if (pattern.kind().straightColumns()) {
      for (double at : wx) {
        xs.add(at + movement.on(at, wx, pattern) + half);
      }
    } else {
      for (double at : movement.x()) {
        xs.add(at);
      }
    }
    if (pattern.kind().straightRows()) {
      for (double at : wy) {
        ys.add(at + movement.on(at, wy, pattern) + half);
      }
    } else {
      for (double at : movement.y()) {
        ys.add(at);
      }
    }
    Parts room = new Parts(task.room(), Math.min(around.getWidth(), around.getHeight()));
    for (double x : xs) {
      strip(x, here.getMinY() - far, x, here.getMaxY() + far, room, strips);
    }
    for (double y : ys) {
      strip(here.getMinX() - far, y, here.getMaxX() + far, y, room, strips);
    }
    return strips;
  }

  private void strip(double x1, double y1, double x2, double y2, Parts room, List<Strip> strips) {
    LineString line =
        Field.SHAPES.createLineString(new Coordinate[] {field.out(x1, y1), field.out(x2, y2)});
    Geometry within = room.common(line.intersection(task.room().getEnvelope()));
    for (int i = 0; i < within.getNumGeometries(); i++) {
      Coordinate[] c = within.getGeometryN(i).getCoordinates();
      if (c.length > 1) {
        strips.add(
            new Strip(c[0].x, c[0].y, c[c.length - 1].x, c[c.length - 1].y, movement.width()));
      }
    }
  }

  /** The corner of a tile nearest to a place, and what is measured to find it. */
  private TileSetOut.Start start(double base, Coordinate anchor, List<Touched> touched) {
    Set<List<Long>> cut = new HashSet<>();
    touched.forEach(one -> cut.add(List.of((long) one.tile, one.i, one.j)));
    Coordinate wanted = field.in(anchor);
    PointOnGeometryLocator within = new IndexedPointInAreaLocator(field.shape());
    Polygon best = null;
    double bestFar = Double.MAX_VALUE;
    for (int t = 0; t < pattern.tiles().size(); t++) {
      Pattern.Tile tile = pattern.tiles().get(t);
      Envelope close = new Envelope(wanted);
      close.expandBy(3 * Math.max(tile.w(), tile.h()));
      for (long[] ij : near(close, ox + tile.x(), oy + tile.y(), tile)) {
        Polygon first = tile(t, ij[0], ij[1]);
        Coordinate corner = first.getCoordinates()[0];
        if (within.locate(corner) != Location.EXTERIOR) {
          // Any whole tile comes before a cut one.
          boolean whole = !cut.contains(List.of((long) t, ij[0], ij[1]));
          double far = corner.distance(wanted) + (whole ? 0 : 1e9);
          if (far < bestFar) {
            bestFar = far;
            best = first;
          }
        }
      }
    }
    Coordinate corner = best == null ? wanted : best.getCoordinates()[0];
    Coordinate at = field.out(corner.x, corner.y);
    List<Reach> reaches = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      double angle = base + quarter * Math.PI / 2;
      reach(at, Math.cos(angle), Math.sin(angle), reaches);
    }
    Ring first = best == null ? new Ring(new double[0]) : ring(best.getCoordinates());
    return new TileSetOut.Start(at.x, at.y, first, reaches);
  }

  private void reach(Coordinate at, double dx, double dy, List<Reach> reaches) {
    Reach nearest = null;
    List<LineString> walls = new ArrayList<>();
    walls.add(task.room().getExteriorRing());
    for (int k = 0; k < task.room().getNumInteriorRing(); k++) {
      walls.add(task.room().getInteriorRingN(k));
    }
    for (int ring = 0; ring < walls.size(); ring++) {
      Coordinate[] c = walls.get(ring).getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        double ex = c[i + 1].x - c[i].x;
        double ey = c[i + 1].y - c[i].y;
        double det = dx * ey - dy * ex;
        if (Math.abs(det) < 1e-12) {
          continue;
        }
        double far = ((c[i].x - at.x) * ey - (c[i].y - at.y) * ex) / det;
        double share = ((c[i].x - at.x) * dy - (c[i].y - at.y) * dx) / det;
        if (far > -Field.SLIP
            && share > -1e-9
            && share < 1 + 1e-9
            && (nearest == null || far < nearest.distance())) {
          nearest = new Reach(ring == 0 ? i : -1, at.x + far * dx, at.y + far * dy, far);
        }
      }
    }
    if (nearest != null) {
      reaches.add(nearest);
    }
  }
}
