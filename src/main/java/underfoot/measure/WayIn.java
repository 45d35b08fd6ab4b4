package underfoot.measure;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/**
 * The floor of a room as it lies before a door: how far it goes on, and how much of it lies within
 * a line across the way in.
 *
 * @param floor the room, mm
 * @param from one side of the opening, mm
 * @param to the other side, mm
 * @param inX how far x moves for each mm into the room, square to the wall
 * @param inY how far y moves for each mm into the room
 */
public record WayIn(Polygon floor, Coordinate from, Coordinate to, double inX, double inY) {
  private static final double MM2_PER_M2 = 1e6;

  /** How far into the room the middle of the opening is taken, mm, so that no wall counts. */
  private static final double IN_THE_OPENING = 1;

  /**
   * The way in at a door of a room.
   *
   * @param scenario the floor
   * @param facts where the door's facts are looked up
   * @param door the door's name
   * @return empty where the room's outline, or the door's place or width, is not known
   */
  public static Optional<WayIn> of(Scenario scenario, Facts facts, String door) {
    double wall = facts.number("door wall", door);
    double start = facts.number("door from", door);
    double width = facts.number("door width", door);
    List<underfoot.scenario.Point> outline = scenario.outline();
    Optional<RoomShape> room = RoomShape.of(scenario);
    if (Double.isNaN(wall + start + width) || wall >= outline.size() || room.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        at(
            room.get().floor(),
            outline.get((int) wall),
            outline.get(((int) wall + 1) % outline.size()),
            LevelSurvey.turnsLeft(outline),
            start,
            width));
  }

  /**
   * The way in through a wall.
   *
   * @param floor the room, mm
   * @param a the corner the wall begins at
   * @param b the corner it ends at
   * @param left whether the room lies to the left of the way from a to b
   * @param start how far from a the opening begins, mm
   * @param width how wide it is, mm
   */
  static WayIn at(
      Polygon floor,
      underfoot.scenario.Point a,
      underfoot.scenario.Point b,
      boolean left,
      double start,
      double width) {
    double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
    double ux = (b.x() - a.x()) / length;
    double uy = (b.y() - a.y()) / length;
    Coordinate from = new Coordinate(a.x() + start * ux, a.y() + start * uy);
    Coordinate to = new Coordinate(from.x + width * ux, from.y + width * uy);
    double inwards = left ? 1 : -1;
    return new WayIn(floor, from, to, -uy * inwards, ux * inwards);
  }

  /** How far the room goes on before the middle of the opening, square to the wall, mm. */
  public double room() {
    Coordinate middle = middle();
    double across = floor.getEnvelopeInternal().getDiameter();
    Coordinate far = new Coordinate(middle.x + across * inX, middle.y + across * inY);
    Geometry ahead =
        RoomShape.SHAPES.createLineString(new Coordinate[] {middle, far}).intersection(floor);
    for (int i = 0; i < ahead.getNumGeometries(); i++) {
      Geometry stretch = ahead.getGeometryN(i);
      if (stretch.distance(RoomShape.SHAPES.createPoint(middle)) < IN_THE_OPENING) {
        return stretch.getLength() + IN_THE_OPENING;
      }
    }
    return 0;
  }

  /**
   * The floor between the wall of the door and a line across the room, m2; what lies behind a
   * corner and is not reached from the door without crossing the line is not counted.
   *
   * @param distance how far the line is from the wall, mm
   */
  public double floorWithin(double distance) {
    double across = floor.getEnvelopeInternal().getDiameter();
    double ux = inY;
    double uy = -inX;
    Coordinate left = new Coordinate(from.x - across * ux, from.y - across * uy);
    Coordinate right = new Coordinate(from.x + across * ux, from.y + across * uy);
    Polygon strip =
        RoomShape.SHAPES.createPolygon(
            new Coordinate[] {
              left,
              right,
              new Coordinate(right.x + distance * inX, right.y + distance * inY),
              new Coordinate(left.x + distance * inX, left.y + distance * inY),
              left
            });
    Geometry within = strip.intersection(floor);
    Point middle = RoomShape.SHAPES.createPoint(middle());
    for (int i = 0; i < within.getNumGeometries(); i++) {
      if (within.getGeometryN(i).distance(middle) < IN_THE_OPENING) {
        return within.getGeometryN(i).getArea() / MM2_PER_M2;
      }
    }
    return 0;
  }

  private Coordinate middle() {
    return new Coordinate(
        (from.x + to.x) / 2 + IN_THE_OPENING * inX, (from.y + to.y) / 2 + IN_THE_OPENING * inY);
  }
}
