package underfoot.plan.setout;

import java.util.List;
import java.util.Locale;

/**
 * How tiles repeat: some tiles that are repeated along two directions for ever. Each tile's share
 * of the joints lies on its right and above it.
 *
 * @param kind the way of laying
 * @param tiles the tiles of one repeat
 * @param along the first direction of repeating, {x, y} in mm
 * @param up the second direction of repeating, {x, y} in mm
 * @param length the length of a tile, mm
 * @param width the width of a tile, mm
 * @param joint the joint between tiles, mm
 */
public record Pattern(
    Kind kind,
    List<Tile> tiles,
    double[] along,
    double[] up,
    double length,
    double width,
    double joint) {

  /** Ways of laying that can be reckoned. */
  public enum Kind {
    /** Straight joints both ways. */
    GRID(1, 0),
    /** Each row half a tile on. */
    HALF_OFFSET(2, 0),
    /** Each row a third of a tile on. */
    THIRD_OFFSET(3, 0),
    /** A grid turned to stand on its corners. */
    DIAGONAL(1, 45),
    /** Each tile ends against the side of the next, square to the room. */
    HERRINGBONE(1, 0);

    private final int rows;
    private final double turn;

    Kind(int rows, double turn) {
      this.rows = rows;
      this.turn = turn;
    }

    /** How many rows there are before one lies as the first. */
    public int rows() {
      return rows;
    }

    /** How far the pattern is turned against the room, degrees. */
    public double turnDegrees() {
      return turn;
    }

    /** The kind of a name such as {@code half offset}; null if there is none. */
    public static Kind named(String name) {
      for (Kind kind : values()) {
        if (kind.words().equals(name)) {
          return kind;
        }
      }
      return null;
    }

    /** Its name in words. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether rows run straight through, so that a joint along them cuts no tile. */
    boolean straightRows() {
      return this != HERRINGBONE;
    }

    /** Whether joints run straight through across the rows too. */
    boolean straightColumns() {
      return this == GRID || this == DIAGONAL;
    }
  }

  /**
   * A tile of the repeat.
   *
   * @param x its lower left corner, mm
   * @param y its lower left corner, mm
   * @param w its extent along x, mm
   * @param h its extent along y, mm
   */
  public record Tile(double x, double y, double w, double h) {}

  /** Copies the list. */
  public Pattern {
    tiles = List.copyOf(tiles);
    along = along.clone();
    up = up.clone();
  }

  /**
   * A pattern.
   *
   * @param kind the way of laying
   * @param length along x, mm, above 0
   * @param width along y, mm, above 0
   * @param joint mm, 0 or more
   */
  public static Pattern of(Kind kind, double length, double width, double joint) {
    double a = length + joint;
    double b = width + joint;
    if (kind == Kind.HERRINGBONE) {
      double longer = Math.max(length, width);
      double shorter = Math.min(length, width);
      double l = longer + joint;
      double s = shorter + joint;
      return new Pattern(
          kind,
          List.of(new Tile(0, 0, longer, shorter), new Tile(l, 0, shorter, longer)),
          new double[] {s, -s},
          new double[] {l, l},
          longer,
          shorter,
          joint);
    }
    return new Pattern(
        kind,
        List.of(new Tile(0, 0, length, width)),
        new double[] {a, 0},
        new double[] {kind.rows() == 1 ? 0 : a / kind.rows(), b},
        length,
        width,
        joint);
  }

  /**
   * Between which places of the repeat a box lies, in repeats along and up, not rounded.
   *
   * @param iLow least along
   * @param iHigh most along
   * @param jLow least up
   * @param jHigh most up
   */
  record Span(double iLow, double iHigh, double jLow, double jHigh) {}

  /** The places between which a box lies, measured from the start of the repeat, mm. */
  Span span(double left, double right, double low, double high) {
    double cell = along[0] * up[1] - along[1] * up[0];
    double iLow = Double.MAX_VALUE;
    double iHigh = -Double.MAX_VALUE;
    double jLow = Double.MAX_VALUE;
    double jHigh = -Double.MAX_VALUE;
    for (double x : new double[] {left, right}) {
      for (double y : new double[] {low, high}) {
        double i = (x * up[1] - y * up[0]) / cell;
        double j = (y * along[0] - x * along[1]) / cell;
        iLow = Math.min(iLow, i);
        iHigh = Math.max(iHigh, i);
        jLow = Math.min(jLow, j);
        jHigh = Math.max(jHigh, j);
      }
    }
    return new Span(iLow, iHigh, jLow, jHigh);
  }

  /** The area that one tile takes up with its share of the joints, mm2. */
  public double cell() {
    return Math.abs(along[0] * up[1] - along[1] * up[0]) / tiles.size();
  }

  /** What a way of starting repeats after along x, mm. */
  public double periodX() {
    return kind == Kind.HERRINGBONE ? length + width + 2 * joint : length + joint;
  }

  /** What a way of starting repeats after along y, mm. */
  public double periodY() {
    return kind == Kind.HERRINGBONE ? length + width + 2 * joint : width + joint;
  }
}
