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
 * @param way the opening, and the floor before it
 * @param swept the floor the leaf sweeps within the room, hung on either side where it is not said
 *     on which; only the opening where it opens outwards or slides
 * @param midway how high the floor stands midway in the opening, mm
 * @param under how high the floor stands at its highest under the closed leaf, mm
 * @param swung how high it stands at its highest in all the leaf sweeps, mm; NaN if it is not known
 */
public record Doorway(
    LevelSurvey survey, WayIn way, Geometry swept, double midway, double under, double swung) {
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
    boolean left = survey.turnsLeft();
    Fact hinge = facts.find("door hinge", door);
    // Seen from inside the room, the wall runs from right to left where the room lies to its left.
    boolean atTheEnd = hinge != null && hinge.text().equals("left") == left;
    Swing swing =
        !into
            ? Swing.NONE
            : hinge == null ? Swing.EITHER : atTheEnd ? Swing.FROM_THE_END : Swing.FROM_THE_START;
    return survey.doorway(new Place(a, b, left, start, width, swing));
  }

  /** How a leaf sweeps the room. */
  enum Swing {
    /** It opens outwards or slides. */
    NONE,
    /** Hung on the side of the opening that its wall comes to first. */
    FROM_THE_START,
    /** Hung on the other side. */
    FROM_THE_END,
    /** Nobody said on which side it is hung: on either. */
    EITHER
  }

  /**
   * Where a door is.
   *
   * @param a the corner its wall begins at
   * @param b the corner its wall ends at
   * @param left whether the room lies to the left of the way from a to b
   * @param start how far from a the opening begins, mm
   * @param width how wide it is, mm
   * @param swing how its leaf sweeps the room
   */
  record Place(Point a, Point b, boolean left, double start, double width, Swing swing) {
    Optional<Doorway> in(LevelSurvey survey) {
      Polygon floor = survey.room().orElseThrow().floor();
      WayIn way = WayIn.at(floor, a, b, left, start, width);
      Coordinate from = way.from();
      Coordinate to = way.to();
      double ux = (to.x - from.x) / width;
      double uy = (to.y - from.y) / width;
      double vx = way.inX();
      double vy = way.inY();
      Geometry swept = strip(from, to, vx, vy, IN_THE_OPENING);
      if (swing == Swing.EITHER || swing == Swing.FROM_THE_START) {
        swept = swept.union(quarter(from, ux, uy, vx, vy, width));
      }
      if (swing == Swing.EITHER || swing == Swing.FROM_THE_END) {
        swept = swept.union(quarter(to, -ux, -uy, vx, vy, width));
      }
      Geometry within = RoomShape.common(swept, floor);
      if (within.getArea() <= 0) {
        return Optional.empty();
      }
      double midway = floorAt(survey, (from.x + to.x) / 2, (from.y + to.y) / 2);
      double under = highest(survey, from, to);
      double swung = survey.highestWithin(within);
      return Optional.of(new Doorway(survey, way, within, midway, under, swung));
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

  /** Depth of a pour midway in the opening, mm. */
  public double depthInTheOpening(PourSurface pour) {
    double x = (way.from().x + way.to().x) / 2;
    double y = (way.from().y + way.to().y) / 2;
    return Math.max(0, pour.at(x, y) - midway);
  }

  /**
   * The greatest depth of a pour on a line before the door, as wide as the opening, mm.
   *
   * @param pour what is poured
   * @param distance how far the line is from the wall, mm
   */
  public double depthBefore(PourSurface pour, double distance) {
    Coordinate from = way.from();
    Coordinate to = way.to();
    double most = 0;
    for (int i = 0; i <= ARC; i++) {
      double share = (double) i / ARC;
      double x = from.x + share * (to.x - from.x) + distance * way.inX();
      double y = from.y + share * (to.y - from.y) + distance * way.inY();
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
