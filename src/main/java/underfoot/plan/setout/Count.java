package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Counts what one start of a pattern makes of a field: whole tiles, cuts, slivers. A search counts
 * hundreds of starts, so the work is done in arrays that are used again; one counter serves one
 * thread.
 */
final class Count {
  private static final double SLIP = Field.SLIP;
  private static final double SAME_PLACE = SLIP * SLIP;

  private final Field field;
  private final Pattern pattern;
  private final Pattern.Tile[] tiles;
  private final Weights weights;
  private final Movement movement;
  private final double ux;
  private final double uy;
  private final double nx;
  private final double ny;
  private final double stride;
  private final double rowUp;

  /** The edges as they lie for the start that is counted. */
  private final Line[] lines;

  /** How wide a whole tile is square to an edge, mm, by edge and tile of the repeat. */
  private final double[] full;

  /** Which sort a straight cut along an edge is, by edge and tile of the repeat. */
  private final int[] sort;

  private final Widths[] bySort;

  /** The tiles that edges cross, found by their place: 0 for none, else one more than the index. */
  private int[] places = new int[0];

  private long iFirst;
  private long jFirst;
  private int iCount;
  private int jCount;
  private Touched[] touched = new Touched[64];
  private int touchedCount;
  private double[] marks = new double[8];

  Count(Field field, Pattern pattern, Weights weights, Movement movement) {
    this.field = field;
    this.pattern = pattern;
    this.tiles = pattern.tiles().toArray(new Pattern.Tile[0]);
    this.weights = weights;
    this.movement = movement;
    this.stride = Math.hypot(pattern.along()[0], pattern.along()[1]);
    this.ux = pattern.along()[0] / stride;
    this.uy = pattern.along()[1] / stride;
    // Tiles in one row fill a band along the direction of repeating; n is square to it.
    this.nx = -uy;
    this.ny = ux;
    this.rowUp = pattern.up()[0] * nx + pattern.up()[1] * ny;
    this.lines = field.edges().stream().map(Line::new).toArray(Line[]::new);
    this.full = new double[lines.length * tiles.length];
    this.sort = new int[lines.length * tiles.length];
    List<Long> sorts = new ArrayList<>();
    for (int e = 0; e < lines.length; e++) {
      for (int t = 0; t < tiles.length; t++) {
        Field.Edge edge = lines[e].edge;
        full[at(e, t)] = tiles[t].w() * Math.abs(edge.nx()) + tiles[t].h() * Math.abs(edge.ny());
        long angle = angle(edge, tiles[t]);
        if (!sorts.contains(angle)) {
          sorts.add(angle);
        }
        sort[at(e, t)] = sorts.indexOf(angle);
      }
    }
    this.bySort = new Widths[sorts.size()];
    Arrays.setAll(bySort, k -> new Widths());
  }

  private int at(int edge, int tile) {
    return edge * tiles.length + tile;
  }

  /** An edge, where it lies before joints are widened. */
  private static final class Line {
    final Field.Edge edge;
    double x1;
    double y1;
    double x2;
    double y2;
    double length;

    Line(Field.Edge edge) {
      this.edge = edge;
      lie(edge.x1(), edge.y1(), edge.x2(), edge.y2());
    }

    void lie(double ax, double ay, double bx, double by) {
      x1 = ax;
      y1 = ay;
      x2 = bx;
      y2 = by;
      length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
    }

    boolean alongX() {
      return Math.abs(y2 - y1) < SLIP;
    }

    boolean alongY() {
      return Math.abs(x2 - x1) < SLIP;
    }

    /** Whether another begins where this one ends. */
    boolean meets(Line next) {
      return (x2 - next.x1) * (x2 - next.x1) + (y2 - next.y1) * (y2 - next.y1) < SAME_PLACE;
    }
  }

  /** The widths of the straight cuts of one sort. */
  private static final class Widths {
    double[] widths = new double[16];
    int count;
    double full;

    void add(double width, double whole) {
      if (count == widths.length) {
        widths = Arrays.copyOf(widths, 2 * count);
      }
      widths[count] = width;
      full = whole;
      count++;
    }
  }

  /** A tile that the edge of the field crosses, and how wide it stays at each edge. */
  static final class Touched {
    /** Which of the repeat. */
    int tile;

    /** Its place along. */
    long i;

    /** Its place up. */
    long j;

    int[] edges = new int[2];
    double[] widths = new double[2];
    int count;

    private void lie(int ofTile, long atI, long atJ) {
      tile = ofTile;
      i = atI;
      j = atJ;
      count = 0;
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
   */
  record Tally(
      long whole, int cut, int boxed, int narrow, int narrowAtDoor, int slivers, double least) {
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
    touch(ox, oy);
    return tally(whole(ox, oy));
  }

  /** The tiles that edges cross, row by row; they are the caller's until the next count. */
  List<Touched> touched(double ox, double oy) {
    touch(ox, oy);
    Touched[] all = Arrays.copyOf(touched, touchedCount);
    Arrays.sort(
        all,
        Comparator.comparingLong((Touched one) -> one.j)
            .thenComparingLong(one -> one.i)
            .thenComparingInt(one -> one.tile));
    return List.of(all);
  }

  private void touch(double ox, double oy) {
    widen(ox, oy);
    for (int k = 0; k < touchedCount; k++) {
      places[place(touched[k].tile, touched[k].i, touched[k].j)] = 0;
    }
    touchedCount = 0;
    bound(ox, oy);
    for (int e = 0; e < lines.length; e++) {
      for (int t = 0; t < tiles.length; t++) {
        touch(lines[e], e, t, ox, oy);
      }
    }
  }

  /** Takes out of the edges what movement joints are wider than others. */
  private void widen(double ox, double oy) {
    double[] wx = movement.widenedX(pattern, ox);
    double[] wy = movement.widenedY(pattern, oy);
    if (wx.length + wy.length == 0) {
      return;
    }
    for (Line line : lines) {
      line.lie(
          movement.back(line.edge.x1(), wx, pattern),
          movement.back(line.edge.y1(), wy, pattern),
          movement.back(line.edge.x2(), wx, pattern),
          movement.back(line.edge.y2(), wy, pattern));
    }
  }

  /** Makes room for every tile that the field can reach from a start. */
  private void bound(double ox, double oy) {
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Line line : lines) {
      left = Math.min(left, Math.min(line.x1, line.x2));
      right = Math.max(right, Math.max(line.x1, line.x2));
      low = Math.min(low, Math.min(line.y1, line.y2));
      high = Math.max(high, Math.max(line.y1, line.y2));
    }
    for (Pattern.Tile tile : tiles) {
      left = Math.min(left, left - tile.x() - tile.w());
      low = Math.min(low, low - tile.y() - tile.h());
    }
    Pattern.Span span = pattern.span(left - ox, right - ox, low - oy, high - oy);
    iFirst = (long) Math.floor(span.iLow()) - 1;
    jFirst = (long) Math.floor(span.jLow()) - 1;
    iCount = (int) ((long) Math.ceil(span.iHigh()) + 2 - iFirst);
    jCount = (int) ((long) Math.ceil(span.jHigh()) + 2 - jFirst);
    int needed = Math.multiplyExact(Math.multiplyExact(iCount, jCount), tiles.length);
    if (places.length < needed) {
      places = new int[needed];
    }
  }

  private int place(int tile, long i, long j) {
    return (int) (((j - jFirst) * iCount + (i - iFirst)) * tiles.length + tile);
  }

  private Touched touched(int tile, long i, long j) {
    int place = place(tile, i, j);
    if (places[place] == 0) {
      if (touchedCount == touched.length) {
        touched = Arrays.copyOf(touched, 2 * touchedCount);
      }
      if (touched[touchedCount] == null) {
        touched[touchedCount] = new Touched();
      }
      touched[touchedCount].lie(tile, i, j);
      touchedCount++;
      places[place] = touchedCount;
    }
    return touched[places[place] - 1];
  }

  private void touch(Line line, int number, int t, double ox, double oy) {
    Pattern.Tile tile = tiles[t];
    double w = tile.w();
    double h = tile.h();
    double nLow = Math.min(0, nx * w) + Math.min(0, ny * h);
    double nHigh = Math.max(0, nx * w) + Math.max(0, ny * h);
    double uLow = Math.min(0, ux * w) + Math.min(0, uy * h);
    double uHigh = Math.max(0, ux * w) + Math.max(0, uy * h);
    double cx = ox + tile.x();
    double cy = oy + tile.y();
    double a = (line.x1 - cx) * nx + (line.y1 - cy) * ny;
    double b = (line.x2 - cx) * nx + (line.y2 - cy) * ny;
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    double inX = line.edge.nx();
    double inY = line.edge.ny();
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
      double u1 = along(line, s, rx, ry);
      double u2 = along(line, e, rx, ry);
      long iFrom = (long) Math.ceil((Math.min(u1, u2) - uHigh) / stride - 1e-9);
      long iTo = (long) Math.floor((Math.max(u1, u2) - uLow) / stride + 1e-9);
      for (long i = iFrom; i <= iTo; i++) {
        double x = rx + i * pattern.along()[0];
        double y = ry + i * pattern.along()[1];
        if (crosses(line, x, y, w, h)) {
          double width =
              (inX > 0 ? x + w - line.x1 : x - line.x1) * inX
                  + (inY > 0 ? y + h - line.y1 : y - line.y1) * inY;
          touched(t, i, j).add(number, width);
        }
      }
    }
  }

  private double along(Line line, double share, double rx, double ry) {
    return (line.x1 + share * (line.x2 - line.x1) - rx) * ux
        + (line.y1 + share * (line.y2 - line.y1) - ry) * uy;
  }

  /** Whether an edge passes through the inside of a tile. */
  private static boolean crosses(Line line, double x, double y, double w, double h) {
    double dx = line.x2 - line.x1;
    double dy = line.y2 - line.y1;
    double s = 0;
    double e = 1;
    double x0 = x + SLIP - line.x1;
    double x1 = x + w - SLIP - line.x1;
    if (dx == 0) {
      if (x0 >= 0 || x1 <= 0) {
        return false;
      }
    } else {
      s = Math.max(s, Math.min(x0 / dx, x1 / dx));
      e = Math.min(e, Math.max(x0 / dx, x1 / dx));
    }
    double y0 = y + SLIP - line.y1;
    double y1 = y + h - SLIP - line.y1;
    if (dy == 0) {
      if (y0 >= 0 || y1 <= 0) {
        return false;
      }
    } else {
      s = Math.max(s, Math.min(y0 / dy, y1 / dy));
      e = Math.min(e, Math.max(y0 / dy, y1 / dy));
    }
    return (e - s) * line.length > SLIP;
  }

  /** Tiles with their middle in the field that no edge crosses. */
  private long whole(double ox, double oy) {
    long whole = 0;
    for (int t = 0; t < tiles.length; t++) {
      double cx = ox + tiles[t].x() + tiles[t].w() / 2;
      double cy = oy + tiles[t].y() + tiles[t].h() / 2;
      double low = Double.MAX_VALUE;
      double high = -Double.MAX_VALUE;
      for (Line line : lines) {
        double n = (line.x1 - cx) * nx + (line.y1 - cy) * ny;
        low = Math.min(low, n);
        high = Math.max(high, n);
      }
      for (long j = (long) Math.ceil(low / rowUp); j <= (long) Math.floor(high / rowUp); j++) {
        int found = mark(cx + j * pattern.up()[0], cy + j * pattern.up()[1]);
        for (int k = 0; k + 1 < found; k += 2) {
          long from = (long) Math.ceil(marks[k]);
          long to = (long) Math.floor(marks[k + 1]);
          for (long i = from; i <= to; i++) {
            if (places[place(t, i, j)] == 0) {
              whole++;
            }
          }
        }
      }
    }
    return whole;
  }

  /** Marks where a row of middles enters and leaves the field, counted in tiles; says how often. */
  private int mark(double rx, double ry) {
    int count = 0;
    for (Line line : lines) {
      double a = (line.x1 - rx) * nx + (line.y1 - ry) * ny;
      double b = (line.x2 - rx) * nx + (line.y2 - ry) * ny;
      if (a > 0 != b > 0) {
        if (count == marks.length) {
          marks = Arrays.copyOf(marks, 2 * count);
        }
        marks[count] = along(line, a / (a - b), rx, ry) / stride;
        count++;
      }
    }
    Arrays.sort(marks, 0, count);
    return count;
  }

  private Tally tally(long whole) {
    int narrow = 0;
    int narrowAtDoor = 0;
    int slivers = 0;
    double least = Double.POSITIVE_INFINITY;
    int boxed = 0;
    for (Widths same : bySort) {
      same.count = 0;
    }
    for (int n = 0; n < touchedCount; n++) {
      Touched one = touched[n];
      boolean sliver = false;
      boolean thin = false;
      boolean door = false;
      for (int k = 0; k < one.count; k++) {
        Field.Edge edge = lines[one.edges[k]].edge;
        double across = full[at(one.edges[k], one.tile)];
        double width = one.widths[k];
        for (int m = 0; m < k; m++) {
          Field.Edge other = lines[one.edges[m]].edge;
          if (edge.nx() * other.nx() + edge.ny() * other.ny() < -1 + 1e-9) {
            width = Math.min(width, width + one.widths[m] - across);
          }
        }
        least = Math.min(least, width);
        sliver |= weights.sliver(width, across);
        boolean thinHere = weights.narrow(width, across);
        thin |= thinHere;
        door |= thinHere && edge.door();
      }
      if (sliver) {
        slivers++;
      } else if (thin) {
        narrow++;
      }
      narrowAtDoor += door ? 1 : 0;
      int cut = straight(one);
      if (cut < 0) {
        boxed++;
      } else {
        int place = at(one.edges[cut], one.tile);
        bySort[sort[place]].add(one.widths[cut], full[place]);
      }
    }
    for (Widths same : bySort) {
      boxed += boxes(same);
    }
    return new Tally(whole, touchedCount, boxed, narrow, narrowAtDoor, slivers, least);
  }

  /**
   * The edge along which a tile is cut straight through, so that its offcut serves again: the only
   * one, or the upright one of two that meet in a corner of the room. -1 where there is none.
   */
  private int straight(Touched one) {
    if (one.count == 1) {
      return 0;
    }
    if (one.count == 2) {
      Line a = lines[one.edges[0]];
      Line b = lines[one.edges[1]];
      Line upright = a.alongY() ? a : b;
      Line level = a.alongY() ? b : a;
      if (upright.alongY() && level.alongX() && inwards(upright, level)) {
        return upright == a ? 0 : 1;
      }
      boolean sameLine =
          Math.abs(a.edge.nx() - b.edge.nx()) + Math.abs(a.edge.ny() - b.edge.ny()) < 1e-9
              && Math.abs(one.widths[0] - one.widths[1]) < SLIP
              && (a.meets(b) || b.meets(a));
      return sameLine ? 0 : -1;
    }
    return -1;
  }

  /** Whether two edges meet in a corner that leaves a rectangle of a tile. */
  private static boolean inwards(Line upright, Line level) {
    boolean after = upright.meets(level);
    if (!after && !level.meets(upright)) {
      return false;
    }
    Line first = after ? upright : level;
    Line second = after ? level : upright;
    double turn =
        (first.x2 - first.x1) * (second.y2 - second.y1)
            - (first.y2 - first.y1) * (second.x2 - second.x1);
    return turn > 0;
  }

  /** Cuts of one sort are made at one angle across tiles lying one way. */
  private long angle(Field.Edge edge, Pattern.Tile tile) {
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
  private int boxes(Widths same) {
    Arrays.sort(same.widths, 0, same.count);
    int low = 0;
    int high = same.count - 1;
    int boxes = 0;
    while (low <= high) {
      if (low < high && same.widths[low] + same.widths[high] + weights.kerf() <= same.full + SLIP) {
        low++;
      }
      high--;
      boxes++;
    }
    return boxes;
  }
}
