package underfoot.plan.setout;

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

  private final Pattern pattern;
  private final Pattern.Tile[] tiles;
  private final Movement movement;
  private final double ux;
  private final double uy;
  private final double nx;
  private final double ny;
  private final double stride;
  private final double rowUp;

  /** The edges as they lie for the start that is counted. */
  private final Line[] lines;

  private final Cuts cuts;

  /** The tiles that edges cross, found by their place: 0 for none, else one more than the index. */
  private int[] places = new int[0];

  private long iFirst;
  private long jFirst;
  private int iCount;
  private int jCount;
  private Touched[] touched = new Touched[64];
  private int touchedCount;
  private double[] marks = new double[8];
  private double[] found = new double[8];
  private int[] rows = new int[8];
  private int[] ends = new int[0];

  Count(Field field, Pattern pattern, Weights weights, Movement movement) {
    this.pattern = pattern;
    this.tiles = pattern.tiles().toArray(new Pattern.Tile[0]);
    this.movement = movement;
    this.stride = Math.hypot(pattern.along()[0], pattern.along()[1]);
    this.ux = pattern.along()[0] / stride;
    this.uy = pattern.along()[1] / stride;
    // Tiles in one row fill a band along the direction of repeating; n is square to it.
    this.nx = -uy;
    this.ny = ux;
    this.rowUp = pattern.up()[0] * nx + pattern.up()[1] * ny;
    this.lines = field.edges().stream().map(Line::new).toArray(Line[]::new);
    this.cuts = new Cuts(lines, tiles, weights);
  }

  /** Counts. */
  Tally at(double ox, double oy) {
    touch(ox, oy);
    return cuts.tally(count(ox, oy), touched, touchedCount);
  }

  /** Takes the tiles that stay whole. */
  interface Whole {
    /** One of them: which of the repeat, and its place along and up. */
    void take(int tile, long i, long j);
  }

  /** Tells the tiles that stay whole, tile by tile of the repeat and row by row. */
  void whole(double ox, double oy, Whole taker) {
    touch(ox, oy);
    tell(ox, oy, taker);
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
    if (ends.length < jCount + 1) {
      ends = new int[jCount + 1];
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

  /**
   * Counts tiles with their middle in the field that no edge crosses: whole stretches of rows, less
   * those that edges cross, so that a hall takes no longer than its walls.
   */
  private long count(double ox, double oy) {
    long whole = 0;
    for (int t = 0; t < tiles.length; t++) {
      mark(ox + tiles[t].x() + tiles[t].w() / 2, oy + tiles[t].y() + tiles[t].h() / 2);
      for (int row = 0; row < jCount; row++) {
        for (int k = ends[row]; k + 1 < ends[row + 1]; k += 2) {
          whole += Math.max(0, (long) Math.floor(marks[k + 1]) - (long) Math.ceil(marks[k]) + 1);
        }
      }
      for (int n = 0; n < touchedCount; n++) {
        if (touched[n].tile == t) {
          whole -= stretchesWith(touched[n].i, (int) (touched[n].j - jFirst));
        }
      }
    }
    return whole;
  }

  /** In how many stretches of its row the middle of a tile lies. */
  private int stretchesWith(long i, int row) {
    // Marks rise, so only stretches about the last that begins before the tile can hold it.
    int low = ends[row];
    int high = ends[row + 1];
    int from = low;
    int to = high;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (marks[middle] < i) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    int held = 0;
    int first = low + Math.max(0, (from - low) / 2 - 1) * 2;
    for (int k = first; k + 1 < high && marks[k] <= i; k += 2) {
      if (i >= (long) Math.ceil(marks[k]) && i <= (long) Math.floor(marks[k + 1])) {
        held++;
      }
    }
    return held;
  }

  /** Tells the tiles with their middle in the field that no edge crosses. */
  private void tell(double ox, double oy, Whole taker) {
    for (int t = 0; t < tiles.length; t++) {
      double cx = ox + tiles[t].x() + tiles[t].w() / 2;
      double cy = oy + tiles[t].y() + tiles[t].h() / 2;
      mark(cx, cy);
      for (int row = 0; row < jCount; row++) {
        for (int k = ends[row]; k + 1 < ends[row + 1]; k += 2) {
          long to = (long) Math.floor(marks[k + 1]);
          for (long i = (long) Math.ceil(marks[k]); i <= to; i++) {
            if (places[place(t, i, jFirst + row)] == 0) {
              taker.take(t, i, jFirst + row);
            }
          }
        }
      }
    }
  }

  /**
   * Marks where rows of middles enter and leave the field, counted in tiles: those of each row
   * rising, from {@code ends[row]} to {@code ends[row + 1]}. An edge is asked only for the rows it
   * runs through, so many edges take no longer for each than a few.
   */
  private void mark(double cx, double cy) {
    Arrays.fill(ends, 0, jCount + 1, 0);
    int count = 0;
    for (Line line : lines) {
      double n1 = (line.x1 - cx) * nx + (line.y1 - cy) * ny;
      double n2 = (line.x2 - cx) * nx + (line.y2 - cy) * ny;
      long jTo = (long) Math.floor(Math.max(n1, n2) / rowUp + 1e-9);
      for (long j = (long) Math.ceil(Math.min(n1, n2) / rowUp - 1e-9); j <= jTo; j++) {
        double rx = cx + j * pattern.up()[0];
        double ry = cy + j * pattern.up()[1];
        double a = (line.x1 - rx) * nx + (line.y1 - ry) * ny;
        double b = (line.x2 - rx) * nx + (line.y2 - ry) * ny;
        if (a > 0 != b > 0) {
          if (count == found.length) {
            found = Arrays.copyOf(found, 2 * count);
            rows = Arrays.copyOf(rows, 2 * count);
          }
          found[count] = along(line, a / (a - b), rx, ry) / stride;
          rows[count] = (int) (j - jFirst);
          ends[rows[count] + 1]++;
          count++;
        }
      }
    }
    for (int row = 0; row < jCount; row++) {
      ends[row + 1] += ends[row];
    }
    marks = marks.length < count ? new double[found.length] : marks;
    for (int k = count - 1; k >= 0; k--) {
      marks[--ends[rows[k] + 1]] = found[k]; // which leaves each row's end where it begins
    }
    System.arraycopy(ends, 1, ends, 0, jCount);
    ends[jCount] = count;
    for (int row = 0; row < jCount; row++) {
      Arrays.sort(marks, ends[row], ends[row + 1]);
    }
  }
}
