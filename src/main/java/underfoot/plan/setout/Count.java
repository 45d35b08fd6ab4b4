package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Counts what one start of a pattern makes of a field: whole tiles, cuts, slivers. */
final class Count {
  private static final double SLIP = Field.SLIP;
  private static final long SPAN = 1L << 28;

  private final Field field;
  private final Pattern pattern;
  private final Weights weights;
  private final Movement movement;
  private final double ux;
  private final double uy;
  private final double stride;

  Count(Field field, Pattern pattern, Weights weights, Movement movement) {
    this.field = field;
    this.pattern = pattern;
    this.weights = weights;
    this.movement = movement;
    this.stride = Math.hypot(pattern.along()[0], pattern.along()[1]);
    this.ux = pattern.along()[0] / stride;
    this.uy = pattern.along()[1] / stride;
  }

  /**
   * A tile that the edge of the field crosses.
   *
   * @param tile which of the repeat
   * @param i its place along
   * @param j its place up
   */
  static final class Touched {
    final int tile;
    final long i;
    final long j;
    int[] edges = new int[2];
    double[] widths = new double[2];
    int count;

    Touched(int tile, long i, long j) {
      this.tile = tile;
      this.i = i;
      this.j = j;
    }

    private void add(int edge, double width) {
      if (count == edges.length) {
        edges = Arrays.copyOf(edges, 2 * count);
        widths = Arrays.copyOf(widths, 2 * count);
      }
      edges[count] = edge;
      widths[count] = width;
      count++;
    }
  }

  /**
   * What a start comes to.
   *
   * @param whole tiles that stay whole
   * @param cut tiles that are cut
   * @param boxed tiles taken from boxes for the cut ones, offcuts being used again
   * @param narrow cuts narrower than wanted, slivers left out
   * @param narrowAtDoor those of them in a doorway
   * @param slivers cuts so narrow that they are hard to make
   * @param least the narrowest cut, mm; infinite where nothing is cut
   * @param touched the cut tiles
   */
  record Tally(
      long whole,
      int cut,
      int boxed,
      int narrow,
      int narrowAtDoor,
      int slivers,
      double least,
      List<Touched> touched) {
    double points(Weights w) {
      return w.tile() * (whole + boxed)
          + w.cut() * cut
          + w.narrow() * narrow
          + w.narrowAtDoor() * narrowAtDoor
          + w.sliver() * slivers;
    }
  }

  /** Counts. */
  Tally at(double ox, double oy) {
    List<Field.Edge> edges = edges(ox, oy);
    Map<Long, Touched> touched = new HashMap<>();
    for (int e = 0; e < edges.size(); e++) {
      for (int t = 0; t < pattern.tiles().size(); t++) {
        touch(edges.get(e), e, t, ox, oy, touched);
      }
    }
    List<Touched> all = new ArrayList<>(touched.values());
    return tally(all, edges, whole(edges, touched, ox, oy));
  }

  private List<Field.Edge> edges(double ox, double oy) {
    double[] wx = movement.widenedX(pattern, ox);
    double[] wy = movement.widenedY(pattern, oy);
    if (wx.length + wy.length == 0) {
      return field.edges();
    }
    List<Field.Edge> moved = new ArrayList<>();
    for (Field.Edge edge : field.edges()) {
      moved.add(
          edge.moved(
              movement.back(edge.x1(), wx, pattern),
              movement.back(edge.y1(), wy, pattern),
              movement.back(edge.x2(), wx, pattern),
              movement.back(edge.y2(), wy, pattern)));
    }
    return moved;
  }

  private void touch(
      Field.Edge edge, int number, int t, double ox, double oy, Map<Long, Touched> touched) {
    Pattern.Tile tile = pattern.tiles().get(t);
    // Tiles in one row fill a band along the direction of repeating; n is square to it.
    double nx = -uy;
    double ny = ux;
    double w = tile.w();
    double h = tile.h();
    double nLow = Math.min(0, nx * w) + Math.min(0, ny * h);
    double nHigh = Math.max(0, nx * w) + Math.max(0, ny * h);
    double uLow = Math.min(0, ux * w) + Math.min(0, uy * h);
    double uHigh = Math.max(0, ux * w) + Math.max(0, uy * h);
    double rowUp = pattern.up()[0] * nx + pattern.up()[1] * ny;
    double cx = ox + tile.x();
    double cy = oy + tile.y();
    double a = (edge.x1() - cx) * nx + (edge.y1() - cy) * ny;
    double b = (edge.x2() - cx) * nx + (edge.y2() - cy) * ny;
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    long jFrom = (long) Math.ceil((low - nHigh) / rowUp - 1e-9);
    long jTo = (long) Math.floor((high - nLow) / rowUp + 1e-9);
    for (long j = jFrom; j <= jTo; j++) {
      double rx = cx + j * pattern.up()[0];
      double ry = cy + j * pattern.up()[1];
      // The part of the edge within the band of this row.
      double s = 0;
      double e = 1;
      double from = a - j * rowUp;
      double to = b - j * rowUp;
      if (Math.abs(to - from) > SLIP) {
        double p = (nLow - from) / (to - from);
        double q = (nHigh - from) / (to - from);
        s = Math.max(s, Math.min(p, q));
        e = Math.min(e, Math.max(p, q));
        if (s > e) {
          continue;
        }
      }
      double u1 = along(edge, s, rx, ry);
      double u2 = along(edge, e, rx, ry);
      long iFrom = (long) Math.ceil((Math.min(u1, u2) - uHigh) / stride - 1e-9);
      long iTo = (long) Math.floor((Math.max(u1, u2) - uLow) / stride + 1e-9);
      for (long i = iFrom; i <= iTo; i++) {
        double x = rx + i * pattern.along()[0];
        double y = ry + i * pattern.along()[1];
        if (crosses(edge, x, y, w, h)) {
          double width =
              (edge.nx() > 0 ? x + w - edge.x1() : x - edge.x1()) * edge.nx()
                  + (edge.ny() > 0 ? y + h - edge.y1() : y - edge.y1()) * edge.ny();
          touched
              .computeIfAbsent(key(t, i, j), key -> new Touched(key(key), i(key), j(key)))
              .add(number, width);
        }
      }
    }
  }

  private double along(Field.Edge edge, double share, double rx, double ry) {
    return (edge.x1() + share * (edge.x2() - edge.x1()) - rx) * ux
        + (edge.y1() + share * (edge.y2() - edge.y1()) - ry) * uy;
  }

  private static long key(int tile, long i, long j) {
    return ((j + SPAN) << 31) + ((i + SPAN) << 1) + tile;
  }

  private static int key(long key) {
    return (int) (key & 1);
  }

  private static long i(long key) {
    return ((key >> 1) & ((1L << 30) - 1)) - SPAN;
  }

  private static long j(long key) {
    return (key >> 31) - SPAN;
  }

  /** Whether an edge passes through the inside of a tile. */
  private static boolean crosses(Field.Edge edge, double x, double y, double w, double h) {
    double dx = edge.x2() - edge.x1();
    double dy = edge.y2() - edge.y1();
    double s = 0;
    double e = 1;
    double x0 = x + SLIP - edge.x1();
    double x1 = x + w - SLIP - edge.x1();
    if (dx == 0) {
      if (x0 >= 0 || x1 <= 0) {
        return false;
      }
    } else {
      s = Math.max(s, Math.min(x0 / dx, x1 / dx));
      e = Math.min(e, Math.max(x0 / dx, x1 / dx));
    }
    double y0 = y + SLIP - edge.y1();
    double y1 = y + h - SLIP - edge.y1();
    if (dy == 0) {
      if (y0 >= 0 || y1 <= 0) {
        return false;
      }
    } else {
      s = Math.max(s, Math.min(y0 / dy, y1 / dy));
      e = Math.min(e, Math.max(y0 / dy, y1 / dy));
    }
    return (e - s) * edge.length() > SLIP;
  }

  /** Tiles with their middle in the field that no edge crosses. */
  private long whole(List<Field.Edge> edges, Map<Long, Touched> touched, double ox, double oy) {
    long whole = 0;
    double nx = -uy;
    double ny = ux;
    double rowUp = pattern.up()[0] * nx + pattern.up()[1] * ny;
    Map<Long, List<Long>> byRow = new HashMap<>();
    for (Touched one : touched.values()) {
      byRow.computeIfAbsent(2 * one.j + one.tile, row -> new ArrayList<>()).add(one.i);
    }
    for (int t = 0; t < pattern.tiles().size(); t++) {
      Pattern.Tile tile = pattern.tiles().get(t);
      double cx = ox + tile.x() + tile.w() / 2;
      double cy = oy + tile.y() + tile.h() / 2;
      double low = Double.MAX_VALUE;
      double high = -Double.MAX_VALUE;
      for (Field.Edge edge : edges) {
        double n = (edge.x1() - cx) * nx + (edge.y1() - cy) * ny;
        low = Math.min(low, n);
        high = Math.max(high, n);
      }
      for (long j = (long) Math.ceil(low / rowUp); j <= (long) Math.floor(high / rowUp); j++) {
        double[] marks = marks(edges, cx + j * pattern.up()[0], cy + j * pattern.up()[1]);
        for (int k = 0; k + 1 < marks.length; k += 2) {
          whole += Math.max(0, floor(marks[k + 1]) - ceil(marks[k]) + 1);
        }
        for (long i : byRow.getOrDefault(2 * j + t, List.of())) {
          for (int k = 0; k + 1 < marks.length; k += 2) {
            if (i >= ceil(marks[k]) && i <= floor(marks[k + 1])) {
              whole--;
            }
          }
        }
      }
    }
    return whole;
  }

  private static long floor(double mark) {
    return (long) Math.floor(mark);
  }

  private static long ceil(double mark) {
    return (long) Math.ceil(mark);
  }

  /** Where a row of middles enters and leaves the field, counted in tiles. */
  private double[] marks(List<Field.Edge> edges, double rx, double ry) {
    double nx = -uy;
    double ny = ux;
    double[] marks = new double[edges.size()];
    int count = 0;
    for (Field.Edge edge : edges) {
      double a = (edge.x1() - rx) * nx + (edge.y1() - ry) * ny;
      double b = (edge.x2() - rx) * nx + (edge.y2() - ry) * ny;
      if (a > 0 != b > 0) {
        marks[count++] = along(edge, a / (a - b), rx, ry) / stride;
      }
    }
    double[] sorted = Arrays.copyOf(marks, count);
    Arrays.sort(sorted);
    return sorted;
  }

  private Tally tally(List<Touched> all, List<Field.Edge> edges, long whole) {
    int narrow = 0;
    int narrowAtDoor = 0;
    int slivers = 0;
    double least = Double.POSITIVE_INFINITY;
    int alone = 0;
    Map<Long, List<Double>> bySort = new HashMap<>();
    Map<Long, Double> fullOf = new HashMap<>();
    for (Touched one : all) {
      Pattern.Tile tile = pattern.tiles().get(one.tile);
      boolean sliver = false;
      boolean thin = false;
      boolean door = false;
      for (int k = 0; k < one.count; k++) {
        Field.Edge edge = edges.get(one.edges[k]);
        double full = full(edge, tile);
        double width = one.widths[k];
        for (int m = 0; m < k; m++) {
          Field.Edge other = edges.get(one.edges[m]);
          if (edge.nx() * other.nx() + edge.ny() * other.ny() < -1 + 1e-9) {
            width = Math.min(width, width + one.widths[m] - full);
          }
        }
        least = Math.min(least, width);
        sliver |= weights.sliver(width, full);
        boolean thinHere = weights.narrow(width, full);
        thin |= thinHere;
        door |= thinHere && edge.door();
      }
      if (sliver) {
        slivers++;
      } else if (thin) {
        narrow++;
      }
      narrowAtDoor += door ? 1 : 0;
      int kind = straight(one, edges, tile);
      if (kind < 0) {
        alone++;
      } else {
        Field.Edge edge = edges.get(one.edges[kind]);
        long sort = sort(edge, tile);
        bySort.computeIfAbsent(sort, s -> new ArrayList<>()).add(one.widths[kind]);
        fullOf.put(sort, full(edge, tile));
      }
    }
    int boxed = alone;
    for (Map.Entry<Long, List<Double>> same : bySort.entrySet()) {
      boxed += boxes(same.getValue(), fullOf.get(same.getKey()));
    }
    return new Tally(whole, all.size(), boxed, narrow, narrowAtDoor, slivers, least, all);
  }

  private static double full(Field.Edge edge, Pattern.Tile tile) {
    return tile.w() * Math.abs(edge.nx()) + tile.h() * Math.abs(edge.ny());
  }

  /**
   * The edge along which a tile is cut straight through, so that its offcut serves again: the only
   * one, or the upright one of two that meet in a corner of the room. -1 where there is none.
   */
  private static int straight(Touched one, List<Field.Edge> edges, Pattern.Tile tile) {
    if (one.count == 1) {
      return 0;
    }
    if (one.count == 2) {
      Field.Edge a = edges.get(one.edges[0]);
      Field.Edge b = edges.get(one.edges[1]);
      Field.Edge upright = a.alongY() ? a : b;
      Field.Edge level = a.alongY() ? b : a;
      if (upright.alongY() && level.alongX() && inwards(upright, level)) {
        return upright == a ? 0 : 1;
      }
      boolean sameLine =
          Math.abs(a.nx() - b.nx()) + Math.abs(a.ny() - b.ny()) < 1e-9
              && Math.abs(one.widths[0] - one.widths[1]) < SLIP
              && Math.hypot(a.x2() - b.x1(), a.y2() - b.y1()) < SLIP;
      boolean sameBack =
          Math.abs(a.nx() - b.nx()) + Math.abs(a.ny() - b.ny()) < 1e-9
              && Math.abs(one.widths[0] - one.widths[1]) < SLIP
              && Math.hypot(b.x2() - a.x1(), b.y2() - a.y1()) < SLIP;
      return sameLine || sameBack ? 0 : -1;
    }
    return -1;
  }

  /** Whether two edges meet in a corner that leaves a rectangle of a tile. */
  private static boolean inwards(Field.Edge upright, Field.Edge level) {
    boolean after = Math.hypot(upright.x2() - level.x1(), upright.y2() - level.y1()) < SLIP;
    boolean before = Math.hypot(level.x2() - upright.x1(), level.y2() - upright.y1()) < SLIP;
    if (!after && !before) {
      return false;
    }
    Field.Edge first = after ? upright : level;
    Field.Edge second = after ? level : upright;
    double turn =
        (first.x2() - first.x1()) * (second.y2() - second.y1())
            - (first.y2() - first.y1()) * (second.x2() - second.x1());
    return turn > 0;
  }

  /** Cuts of one sort are made at one angle across tiles lying one way. */
  private long sort(Field.Edge edge, Pattern.Tile tile) {
    double angle = Math.atan2(edge.ny(), edge.nx());
    if (tile.h() > tile.w() && pattern.tiles().size() > 1) {
      angle -= Math.PI / 2;
    }
    double half = angle - Math.PI * Math.floor(angle / Math.PI + 1e-9);
    return Math.round(half * 1e6) % Math.round(Math.PI * 1e6);
  }

  /**
   * Tiles needed for straight cuts: one tile gives at most two pieces, because each must keep one
   * of the tile's own edges for the joint.
   */
  private int boxes(List<Double> widths, double full) {
    double[] sorted = widths.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    int low = 0;
    int high = sorted.length - 1;
    int boxes = 0;
    while (low <= high) {
      if (low < high && sorted[low] + sorted[high] + weights.kerf() <= full + SLIP) {
        low++;
      }
      high--;
      boxes++;
    }
    return boxes;
  }
}
