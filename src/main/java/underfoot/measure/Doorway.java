package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;

/**
 * A door in a surveyed room: the floor under its closed leaf, and the floor that the leaf sweeps.
 *
 * @param survey the levels of the room
 * @param from one side of the opening, mm
 * @param to the other side, mm
 * @param swept the floor the leaf sweeps within the room, hung on either side; only the opening
 *     where it opens outwards or slides
 * @param inX how far x moves for each mm into the room, square to the wall
 * @param inY how far y moves for each mm into the room
 * @param under how high the floor stands at its highest under the closed leaf, mm
 * @param swung how high it stands at its highest in all the leaf sweeps, mm; NaN if it is not known
 * @param roomBefore how far the room goes on before the middle of the opening, square to the wall,
 *     mm
 */
public record Doorway(
    LevelSurvey survey,
    Coordinate from,
    Coordinate to,
    Geometry swept,
    double inX,
    double inY,
    double under,
    double swung,
    double roomBefore) {
  private static final GeometryFactory SHAPES = RoomShape.SHAPES;

  /**
   * Corners by which a quarter circle is drawn; it strays from true by a thousandth of the leaf.
   */
  private static final int ARC = 24;

  /** How far into the room the floor in the opening is looked at, mm; a line has no area. */
  private static final double IN_THE_OPENING = 1;

  /**
   * The doorway of a scenario.
   *
   * @param scenario the floor
   * @param survey its levels, with the room known
   * @param facts where the door's facts are looked up
   * @param door the door's name
   * @return empty where the door's place or width is not known
   */
  public static Optional<Doorway> of(
      Scenario scenario, LevelSurvey survey, Facts facts, String door) {
    double wall = facts.number("door wall", door);
    double start = facts.number("door from", door);
    double width = facts.number("door width", door);
    List<Point> outline = scenario.outline();
    if (Double.isNaN(wall + start + width) || wall >= outline.size() || survey.room().isEmpty()) {
      return Optional.empty();
    }
    Point a = outline.get((int) wall);
    Point b = outline.get(((int) wall + 1) % outline.size());
    Fact opens = facts.find("opens", door);
    // Where it is not said, it is taken to open into the room, which asks more of the floor.
    boolean into = opens == null || opens.text().equals("into the room");
    // Corners may run either way round; the room lies on the side of the wall where its area is.
    return survey.doorway(new Place(a, b, survey.turnsLeft(), start, width, into));
  }

  /**
   * Where a door is.
   *
   * @param a the corner its wall begins at
   * @param b the corner its wall ends at
   * @param left whether the room lies to the left of the way from a to b
   * @param start how far from a the opening begins, mm
   * @param width how wide it is, mm
   * @param into whether the leaf opens into the room
   */
  record Place(Point a, Point b, boolean left, double start, double width, boolean into) {
    Optional<Doorway> in(LevelSurvey survey) {
      double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
      double ux = (b.x() - a.x()) / length;
      double uy = (b.y() - a.y()) / length;
      Coordinate from = new Coordinate(a.x() + start * ux, a.y() + start * uy);
      Coordinate to = new Coordinate(from.x + width * ux, from.y + width * uy);
      double inwards = left ? 1 : -1;
      double vx = -uy * inwards;
      double vy = ux * inwards;
      Geometry swept = strip(from, to, vx, vy, IN_THE_OPENING);
      if (into) {
        swept =
            swept
                .union(quarter(from, ux, uy, vx, vy, width))
                .union(quarter(to, -ux, -uy, vx, vy, width));
      }
      Geometry within = swept.intersection(survey.room().orElseThrow().floor());
      if (within.getArea() <= 0) {
        return Optional.empty();
      }
      double under = highest(survey, from, to);
      double swung = survey.highestWithin(within);
      double before = new WayIn(survey.room().orElseThrow().floor(), from, to, vx, vy).room();
      return Optional.of(new Doorway(survey, from, to, within, vx, vy, under, swung, before));
    }
  }

  private static Polygon strip(Coordinate from, Coordinate to, double vx, double vy, double depth) {
    return SHAPES.createPolygon(
        new Coordinate[] {
          from,
          to,
          new Coordinate(to.x + depth * vx, to.y + depth * vy),
          new Coordinate(from.x + depth * vx, from.y + depth * vy),
          from
        });
  }

  private static Polygon quarter(
      Coordinate hinge, double ux, double uy, double vx, double vy, double width) {
    List<Coordinate> ring = new ArrayList<>();
    ring.add(hinge);
    for (int i = 0; i <= ARC; i++) {
      double angle = Math.PI / 2 * i / ARC;
      double along = width * Math.cos(angle);
      double in = width * Math.sin(angle);
      ring.add(new Coordinate(hinge.x + along * ux + in * vx, hinge.y + along * uy + in * vy));
    }
    ring.add(hinge);
    return SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
  }

  /** The floor before it. */
  public WayIn wayIn() {
    return new WayIn(survey.room().orElseThrow().floor(), from, to, inX, inY);
  }

  /** Depth of a pour midway in the opening, mm. */
  public double depthInTheOpening(PourSurface pour) {
    double x = (from.x + to.x) / 2;
    double y = (from.y + to.y) / 2;
    return Math.max(0, pour.at(x, y) - floorAt(x, y));
  }

  /**
   * The greatest depth of a pour on a line before the door, as wide as the opening, mm.
   *
   * @param pour what is poured
   * @param distance how far the line is from the wall, mm
   */
  public double depthBefore(PourSurface pour, double distance) {
    double most = 0;
    for (int i = 0; i <= ARC; i++) {
      double share = (double) i / ARC;
      double x = from.x + share * (to.x - from.x) + distance * inX;
      double y = from.y + share * (to.y - from.y) + distance * inY;
      most = Math.max(most, pour.at(x, y) - floorAt(x, y));
    }
    return most;
  }

  private double floorAt(double x, double y) {
    return floorAt(survey, x, y);
  }

  private static double floorAt(LevelSurvey survey, double x, double y) {
    double height = survey.floor().heightAt(x, y);
    // A wall is never quite where it was measured: the nearest place known.
    return Double.isNaN(height) ? survey.floor().nearest(x, y).getZ() : height;
  }

  /**
   * How far the surface that the leaf has to pass stands, at its highest, above the highest floor
   * under the closed leaf, from which the gap was measured, mm.
   *
   * @param pour what is poured; empty where the leaf passes over the floor as it is
   */
  public double climbUnderTheLeaf(Optional<PourSurface> pour) {
    if (pour.isEmpty()) {
      return Double.isNaN(swung) ? 0 : Math.max(under, swung) - under;
    }
    double highest = Double.NEGATIVE_INFINITY;
    for (Coordinate corner : swept.getCoordinates()) {
      highest = Math.max(highest, pour.get().at(corner.x, corner.y));
    }
    return highest - under;
  }

  /** How high the floor stands at its highest on a line. */
  private static double highest(LevelSurvey survey, Coordinate from, Coordinate to) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= ARC; i++) {
      double share = (double) i / ARC;
      double x = from.x + share * (to.x - from.x);
      double y = from.y + share * (to.y - from.y);
      highest = Math.max(highest, floorAt(survey, x, y));
    }
    return highest;
  }
}
