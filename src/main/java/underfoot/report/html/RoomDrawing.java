package underfoot.report.html;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import underfoot.measure.Texts;
import underfoot.plan.RoomPlan;
import underfoot.plan.RoomPlan.Stretch;
import underfoot.plan.setout.TileSetOut.Ring;
import underfoot.report.html.Svg.Anchor;

/** A room seen from above, to scale, the outline's y running up. */
final class RoomDrawing {
  static final double WIDTH = 360;
  private static final double MARGIN = 40;
  private static final double TALLEST = 460;
  private static final double PER_LETTER = 4.6;
  private static final double BESIDE = 14;
  private static final double LETTERS = 8.5;

  /** By how many straight lines the way of a leaf is drawn. */
  private static final int ARC = 12;

  private final RoomPlan room;
  private final Svg svg;
  private final double scale;
  private final double left;
  private final double top;
  private final double minX;
  private final double maxY;
  private final double height;
  private final boolean turnsLeft;

  /**
   * @param room the room
   * @param id what tells its names apart
   * @param below room left below the plan for a legend
   */
  RoomDrawing(RoomPlan room, String id, String title, String description, double below) {
    this.room = room;
    DoubleSummaryStatistics xs = room.corners().stream().mapToDouble(c -> c[0]).summaryStatistics();
    DoubleSummaryStatistics ys = room.corners().stream().mapToDouble(c -> c[1]).summaryStatistics();
    double wide = xs.getMax() - xs.getMin();
    double high = ys.getMax() - ys.getMin();
    minX = xs.getMin();
    maxY = ys.getMax();
    scale = Math.min((WIDTH - 2 * MARGIN) / wide, (TALLEST - 2 * MARGIN) / high);
    left = (WIDTH - wide * scale) / 2;
    top = MARGIN;
    turnsLeft = turnsLeft(room);
    height = high * scale + 2 * MARGIN;
    svg = new Svg(id, WIDTH, height + below, title, description);
  }

  Svg svg() {
    return svg;
  }

  double scale() {
    return scale;
  }

  /** Where the plan ends and a legend may begin. */
  double below() {
    return height;
  }

  double x(double mm) {
    return left + (mm - minX) * scale;
  }

  /** A line between two places of the room, mm. */
  void line(double x1, double y1, double x2, double y2, Ink ink, double width) {
    svg.line(x(x1), y(y1), x(x2), y(y2), ink, width);
  }

  double y(double mm) {
    return top + (maxY - mm) * scale;
  }

  String path(List<Ring> rings) {
    StringBuilder path = new StringBuilder();
    rings.forEach(ring -> path.append(Svg.path(drawn(ring.xy()))).append('Z'));
    return path.toString();
  }

  private double[] drawn(double[] xy) {
    double[] drawn = new double[xy.length];
    for (int i = 0; i + 1 < xy.length; i += 2) {
      drawn[i] = x(xy[i]);
      drawn[i + 1] = y(xy[i + 1]);
    }
    return drawn;
  }

  String outline() {
    return closed(room.corners());
  }

  private String closed(List<double[]> corners) {
    return Svg.path(drawn(corners.stream().flatMapToDouble(Arrays::stream).toArray())) + "Z";
  }

  /** The floor's surface, under everything else. */
  void floor() {
    svg.fill(outline(), "#f4f1ea", "floor");
  }

  /** The walls with their lengths, and the doorways with their names. */
  void walls() {
    walls(door -> "");
  }

  /** The walls, with something said of each doorway after its name. */
  void walls(Function<RoomPlan.Door, String> said) {
    room.parts().forEach(this::part);
    svg.stroke(outline(), Ink.INK, 2.6);
    for (RoomPlan.Door door : room.doors()) {
      line(door.x1(), door.y1(), door.x2(), door.y2(), Ink.PAPER, 4.4);
      tick(door.stretch(), 0);
      tick(door.stretch(), 1);
      leaf(door);
    }
    Map<Integer, List<RoomPlan.Door>> doors =
        room.doors().stream().collect(Collectors.groupingBy(RoomPlan.Door::wall));
    for (int i = 0; i < room.corners().size(); i++) {
      double length = room.wall(i).length();
      String words = "W" + i + " " + Texts.metres(length);
      double free = length * scale - (outwards(i) + outwards(i + 1)) * BESIDE;
      if (words.length() * PER_LETTER > free) {
        words = "W" + i;
      }
      if (words.length() * PER_LETTER <= length * scale + 8) {
        outside(
            room.wall(i),
            clearOf(doors.getOrDefault(i, List.of()), room.wall(i)),
            9,
            words,
            Ink.INK,
            false);
      }
    }
    for (RoomPlan.Door door : room.doors()) {
      String words = (Svg.cut(door.name(), 20) + " " + said.apply(door)).strip();
      outside(door.stretch(), 0.5, 20, words, Ink.MARK, true);
    }
  }

  /** The line round a part where the floor is otherwise, with its name at its lowest corner. */
  private void part(RoomPlan.Part part) {
    svg.stroke(closed(part.corners()), Ink.MARK, 1.8, "8 3 2 3");
    double low = part.corners().stream().mapToDouble(corner -> corner[1]).min().orElseThrow();
    double from =
        part.corners().stream()
            .filter(corner -> corner[1] == low)
            .mapToDouble(corner -> corner[0])
            .min()
            .orElseThrow();
    String name = Svg.cut(part.name(), 24);
    double x = x(from) + 4;
    double y = y(low) - 5;
    double wide = name.length() * PER_LETTER + 6;
    svg.fill(
        Svg.path(x - 2, y + 3, x + wide, y + 3, x + wide, y - 9, x - 2, y - 9) + "Z", Ink.PAPER);
    svg.text(x + 1, y, name, LETTERS, Anchor.START, Ink.MARK, true, 0);
  }

  /** 1 where the walls of a corner stand into the room, so that their writing meets outside it. */
  private int outwards(int corner) {
    int n = room.corners().size();
    double[] a = room.corners().get((corner + n - 1) % n);
    double[] b = room.corners().get(corner % n);
    double[] c = room.corners().get((corner + 1) % n);
    double turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return turn > 0 == turnsLeft ? 0 : 1;
  }

  /** The middle of the longest part of a wall without a door, as a share of its length. */
  private static double clearOf(List<RoomPlan.Door> inIt, Stretch wall) {
    List<double[]> doors = new ArrayList<>();
    for (RoomPlan.Door door : inIt) {
      double s = new Stretch(wall.x1(), wall.y1(), door.x1(), door.y1()).length();
      double t = new Stretch(wall.x1(), wall.y1(), door.x2(), door.y2()).length();
      doors.add(new double[] {Math.min(s, t), Math.max(s, t)});
    }
    doors.sort(Comparator.comparingDouble(door -> door[0]));
    doors.add(new double[] {wall.length(), wall.length()});
    double from = 0;
    double best = 0;
    double at = wall.length() / 2;
    for (double[] door : doors) {
      if (door[0] - from > best) {
        best = door[0] - from;
        at = (from + door[0]) / 2;
      }
      from = Math.max(from, door[1]);
    }
    return at / wall.length();
  }

  /** The direction out of the room from a wall or a doorway, of length 1. */
  private double[] outward(Stretch wall) {
    double by = (turnsLeft ? 1 : -1) / wall.length();
    return new double[] {(wall.y2() - wall.y1()) * by, -(wall.x2() - wall.x1()) * by};
  }

  /** The leaf of a door, open, and what it sweeps. */
  private void leaf(RoomPlan.Door door) {
    if (!door.swings()) {
      return;
    }
    Stretch way = door.stretch();
    // Seen from inside the room, a wall runs from right to left where the room lies to its left.
    double hinge = door.hinge().equals("left") == turnsLeft ? 1 : 0;
    double[] out = outward(way);
    double side = door.opens().startsWith("into") ? -1 : 1;
    double[] arc = new double[2 * ARC + 2];
    for (int i = 0; i <= ARC; i++) {
      double angle = Math.PI / 2 * i / ARC;
      double along = Math.abs(hinge - Math.sin(angle)); // from the open leaf to the shut one
      double off = way.length() * Math.cos(angle) * side;
      arc[2 * i] = way.x(along) + off * out[0];
      arc[2 * i + 1] = way.y(along) + off * out[1];
    }
    line(way.x(hinge), way.y(hinge), arc[0], arc[1], Ink.INK, 1.6);
    svg.stroke(Svg.path(drawn(arc)), Ink.FAINT, 0.8, "3 2");
  }

  private void tick(Stretch door, double share) {
    double[] n = outward(door);
    double x = x(door.x(share));
    double y = y(door.y(share));
    svg.line(x - n[0] * 3, y + n[1] * 3, x + n[0] * 6, y - n[1] * 6, Ink.INK, 1.6);
  }

  /** Writing along a wall, so far outside it, never upside down. */
  private void outside(
      Stretch wall, double share, double off, String words, Ink ink, boolean bold) {
    double turn = -wall.degrees();
    if (turn > 90.01) {
      turn -= 180;
    }
    if (turn <= -89.99) {
      turn += 180;
    }
    // The middle of the letters, not their foot, lies on the line.
    double r = Math.toRadians(turn);
    double[] n = outward(wall);
    double x = x(wall.x(share)) + n[0] * off - Math.sin(r) * LETTERS * 0.35;
    double y = y(wall.y(share)) - n[1] * off + Math.cos(r) * LETTERS * 0.35;
    double turned = Math.abs(turn) < 0.01 ? 0 : turn;
    svg.text(x, y, words, LETTERS, Anchor.MIDDLE, ink, bold, turned);
  }

  private static boolean turnsLeft(RoomPlan room) {
    double twice = 0;
    for (int i = 0; i < room.corners().size(); i++) {
      Stretch wall = room.wall(i);
      twice += wall.x1() * wall.y2() - wall.x2() * wall.y1();
    }
    return twice > 0;
  }

  /** A place near the middle of a wall, a little inside it. */
  double[] inside(int number, double offMm) {
    Stretch wall = room.wall(number);
    double[] n = outward(wall);
    return new double[] {wall.x(0.5) - n[0] * offMm, wall.y(0.5) - n[1] * offMm};
  }
}
