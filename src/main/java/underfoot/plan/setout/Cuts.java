package underfoot.plan.setout;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Tells what the tiles that edges cross come to: how many are cut, narrow, slivers. */
final class Cuts {
  private final Line[] lines;
  private final Pattern.Tile[] tiles;
  private final Weights weights;

  /** How wide a whole tile is square to an edge, mm, by edge and tile of the repeat. */
  private final double[] full;

  /** Which sort a straight cut along an edge is, by edge and tile of the repeat. */
  private final int[] sort;

  private final Widths[] bySort;

  Cuts(Line[] lines, Pattern.Tile[] tiles, Weights weights) {
    this.lines = lines;
    this.tiles = tiles;
    this.weights = weights;
    this.full = new double[lines.length * tiles.length];
    this.sort = new int[lines.length * tiles.length];
    Map<Long, Integer> sorts = new HashMap<>();
    for (int e = 0; e < lines.length; e++) {
      for (int t = 0; t < tiles.length; t++) {
        Field.Edge edge = lines[e].edge;
        full[at(e, t)] = tiles[t].w() * Math.abs(edge.nx()) + tiles[t].h() * Math.abs(edge.ny());
        sort[at(e, t)] = sorts.computeIfAbsent(angle(edge, tiles[t]), angle -> sorts.size());
      }
    }
    this.bySort = new Widths[sorts.size()];
    Arrays.setAll(bySort, k -> new Widths());
  }

  private int at(int edge, int tile) {
    return edge * tiles.length + tile;
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

  /**
   * Counts.
   *
   * @param whole tiles that stay whole
   * @param touched the tiles that edges cross; more may lie in the array
   * @param cut how many they are
   */
  Tally tally(long whole, Touched[] touched, int cut) {
    int narrow = 0;
    int narrowAtDoor = 0;
    int slivers = 0;
    double least = Double.POSITIVE_INFINITY;
    int boxed = 0;
    for (Widths same : bySort) {
      same.count = 0;
    }
    for (int n = 0; n < cut; n++) {
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
      int along = straight(one);
      if (along < 0) {
        boxed++;
      } else {
        int place = at(one.edges[along], one.tile);
        bySort[sort[place]].add(one.widths[along], full[place]);
      }
    }
    for (Widths same : bySort) {
      boxed += boxes(same);
    }
    return new Tally(whole, cut, boxed, narrow, narrowAtDoor, slivers, least);
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
              && Math.abs(one.widths[0] - one.widths[1]) < Field.SLIP
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
    if (tile.h() > tile.w() && tiles.length > 1) {
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
      if (low < high
          && same.widths[low] + same.widths[high] + weights.kerf() <= same.full + Field.SLIP) {
        low++;
      }
      high--;
      boxes++;
    }
    return boxes;
  }
}
