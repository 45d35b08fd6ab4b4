package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;

/**
 * What a start costs at least: tiles for the area, and what the walls make of the tiles wholly
 * beside them, which for upright walls depends on where tiles begin along x alone, and for level
 * ones along y. It is never more than what {@link Count} finds, so a start that is worse by this
 * need not be counted. No tile is wholly beside an upright and a level wall that both pass through
 * it, since walls do not cross. Holds for walls square to each other and patterns in straight rows,
 * without movement joints.
 */
final class LeastPoints {
  private final Pattern pattern;
  private final Pattern.Tile tile;
  private final Weights weights;
  private final double ofTiles;
  private final List<Wall> upright;
  private final List<Wall> level;

  /**
   * A wall.
   *
   * @param at where it stands, mm
   * @param inwards on which side of it the field lies
   * @param tiles how many tiles lie wholly beside it, at least
   * @param sharing how many walls might pass through the same tiles, itself included
   */
  private record Wall(double at, double inwards, double tiles, int sharing) {}

  LeastPoints(Field field, Pattern pattern, Weights weights) {
    this.pattern = pattern;
    this.tile = pattern.tiles().get(0);
    this.weights = weights;
    double around = 0;
    for (Field.Edge edge : field.edges()) {
      around += edge.length();
    }
    // However the grid falls, a strip beside each wall may be joint instead of tile.
    double face = tile.w() * tile.h();
    double covered = field.shape().getArea() * face / pattern.cell() - around * pattern.joint();
    this.ofTiles = weights.tile() * Math.max(0, covered / face);
    this.upright = walls(field.edges().stream().filter(Field.Edge::alongY).toList(), true);
    this.level = walls(field.edges().stream().filter(Field.Edge::alongX).toList(), false);
  }

  private List<Wall> walls(List<Field.Edge> edges, boolean stand) {
    double period = stand ? pattern.periodY() : pattern.periodX();
    double reach = stand ? tile.w() : tile.h();
    List<Wall> walls = new ArrayList<>();
    for (Field.Edge edge : edges) {
      int sharing = 0;
      for (Field.Edge other : edges) {
        if (Math.abs(at(edge, stand) - at(other, stand)) <= reach
            && from(edge, stand) <= to(other, stand)
            && from(other, stand) <= to(edge, stand)) {
          sharing++;
        }
      }
      walls.add(
          new Wall(
              at(edge, stand),
              stand ? edge.nx() : edge.ny(),
              Math.max(0, Math.floor(edge.length() / period) - 1),
              sharing));
    }
    return walls;
  }

  private static double at(Field.Edge edge, boolean stand) {
    return stand ? edge.x1() : edge.y1();
  }

  private static double from(Field.Edge edge, boolean stand) {
    return stand ? Math.min(edge.y1(), edge.y2()) : Math.min(edge.x1(), edge.x2());
  }

  private static double to(Field.Edge edge, boolean stand) {
    return stand ? Math.max(edge.y1(), edge.y2()) : Math.max(edge.x1(), edge.x2());
  }

  /** At least so many points of tiles, wherever they begin. */
  double ofTiles() {
    return ofTiles;
  }

  /** At least so many points of cuts, if tiles begin at this place along x. */
  double pointsX(double x) {
    int rows = pattern.kind().rows();
    double points = 0;
    for (Wall wall : upright) {
      double along = 0;
      for (int row = 0; row < rows; row++) {
        along += points(wall.at - x - row * pattern.up()[0], wall, tile.w(), pattern.periodX());
      }
      points += along * Math.floor(wall.tiles / rows) / wall.sharing;
    }
    return points;
  }

  /** At least so many points of cuts, if tiles begin at this place along y. */
  double pointsY(double y) {
    double points = 0;
    for (Wall wall : level) {
      points += points(wall.at - y, wall, tile.h(), pattern.periodY()) * wall.tiles / wall.sharing;
    }
    return points;
  }

  /** The points of one tile that an edge passes through, so far from where a tile begins. */
  private double points(double off, Wall wall, double whole, double period) {
    double in = off - Math.floor(off / period) * period;
    if (in < 2 * Field.SLIP || in > whole - 2 * Field.SLIP) {
      return 0; // it runs along a joint, or nearly
    }
    double width = wall.inwards > 0 ? whole - in : in;
    double of = weights.cut();
    if (weights.sliver(width, whole)) {
      of += weights.sliver();
    } else if (weights.narrow(width, whole)) {
      of += Math.min(weights.narrow(), weights.sliver()); // it may be a sliver at another wall
    }
    return of;
  }
}
