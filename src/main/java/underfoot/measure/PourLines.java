package underfoot.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import underfoot.scenario.Point;

/**
 * A room in which a pour stops at lines before some of its doors.
 *
 * @param doors what lies before each door, in the order of the lines
 * @param beyond whether anywhere beyond the lines the floor is as wide as a pour must be to be
 *     worth making
 */
public record PourLines(List<Before> doors, boolean beyond) {
  private static final double MM2_PER_M2 = 1e6;

  /** Copies the list. */
  public PourLines {
    doors = List.copyOf(doors);
  }

  /**
   * A line across the way in at a door.
   *
   * @param wall the door's wall, by the corner it begins at, from 0
   * @param start how far along it the opening begins, mm
   * @param width how wide the opening is, mm
   * @param stop how far the line is from the wall, mm
   */
  public record Line(int wall, double start, double width, double stop) {}

  /**
   * What lies before a door.
   *
   * @param roomMm how far the room goes on before it, square to its wall, mm
   * @param floorM2 floor before its line, m2, but none that also lies before the line of another
   *     door and is told there
   */
  public record Before(double roomMm, double floorM2) {}

  /**
   * Draws the lines.
   *
   * @param room the room
   * @param outline its corners, of which the walls are numbered
   * @param lines the lines, each at a wall that there is
   * @param least how wide a pour is to be worth making, mm
   */
  static PourLines of(RoomShape room, List<Point> outline, List<Line> lines, double least) {
    boolean left = LevelSurvey.turnsLeft(outline);
    List<WayIn> ways = lines.stream().map(line -> way(room, outline, left, line)).toList();
    // The farthest lines first: what is reached within a nearer one is then mostly there already.
    List<Integer> order =
        IntStream.range(0, lines.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -lines.get(i).stop()))
            .toList();
    double[] floor = new double[lines.size()];
    Geometry taken = RoomShape.SHAPES.createPolygon();
    List<List<Geometry>> ofWall = new ArrayList<>();
    outline.forEach(corner -> ofWall.add(new ArrayList<>()));
    for (int i : order) {
      List<Geometry> here = ofWall.get(lines.get(i).wall());
      if (here.stream().anyMatch(ways.get(i).opening()::within)) {
        continue; // a line of the same wall lies farther in, and nothing stands between
      }
      Geometry within = ways.get(i).within(lines.get(i).stop());
      here.add(within);
      Geometry with = OverlayNGRobust.overlay(taken, within, OverlayNG.UNION);
      floor[i] = Math.max(0, with.getArea() - taken.getArea()) / MM2_PER_M2;
      taken = with;
    }
    List<Before> doors = new ArrayList<>();
    for (int i = 0; i < floor.length; i++) {
      doors.add(new Before(ways.get(i).room(), floor[i]));
    }
    Geometry beyond = OverlayNGRobust.overlay(room.floor(), taken, OverlayNG.DIFFERENCE);
    return new PourLines(doors, !beyond.buffer(-least / 2).isEmpty());
  }

  private static WayIn way(RoomShape room, List<Point> outline, boolean left, Line line) {
    return WayIn.at(
        room.floor(),
        outline.get(line.wall()),
        outline.get((line.wall() + 1) % outline.size()),
        left,
        line.start(),
        line.width());
  }
}
