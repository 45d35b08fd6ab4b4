package underfoot.report.html;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import underfoot.measure.Texts;
import underfoot.plan.RoomPlan;
import underfoot.plan.setout.TileSetOut.Ring;
import underfoot.report.html.Svg.Anchor;

/** A room seen from above, to scale, the outline's y running up. */
final class RoomDrawing {
  static final double WIDTH = 360;
  private static final double MARGIN = 40;
  private static final double TALLEST = 460;
  private static final double PER_LETTER = 4.6;
  private static final double BESIDE = 14;

  private final RoomPlan room;
  private final Svg svg;
  private final double scale;
  private final double left;
  private final double top;
  private final double minX;
  private final double maxY;
  private final double height;

  /**
   * @param room the room
   * @param id what tells its names apart
   * @param below room left below the plan for a legend
   */
  RoomDrawing(RoomPlan room, String id, String title, String description, double below) {
    this.room = room;
    double lowX = Double.MAX_VALUE;
    double lowY = Double.MAX_VALUE;
    double highX = -Double.MAX_VALUE;
    double highY = -Double.MAX_VALUE;
    for (double[] c : room.corners()) {
      lowX = Math.min(lowX, c[0]);
      highX = Math.max(highX, c[0]);
      lowY = Math.min(lowY, c[1]);
      highY = Math.max(highY, c[1]);
    }
    minX = lowX;
    maxY = highY;
    scale =
        Math.min((WIDTH - 2 * MARGIN) / (highX - lowX), (TALLEST - 2 * MARGIN) / (highY - lowY));
    left = (WIDTH - (highX - lowX) * scale) / 2;
    top = MARGIN;
    height = (highY - lowY) * scale + 2 * MARGIN;
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
    return Svg.path(drawn(room.corners().stream().flatMapToDouble(Arrays::stream).toArray())) + "Z";
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
    svg.stroke(outline(), Ink.INK, 2.6);
    double inward = turnsLeft() ? 1 : -1;
    for (RoomPlan.Door door : room.doors()) {
      line(door.x1(), door.y1(), door.x2(), door.y2(), Ink.PAPER, 4.4);
      tick(door.x1(), door.y1(), door, inward);
      tick(door.x2(), door.y2(), door, inward);
    }
    List<double[]> corners = room.corners();
    for (int i = 0; i < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % corners.size());
      double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      double nx = (b[1] - a[1]) / length * inward;
      double ny = -(b[0] - a[0]) / length * inward;
      String words = "W" + i + " " + Texts.metres(length);
      double free = length * scale - (outwards(i) + outwards(i + 1)) * BESIDE;
      if (words.length() * PER_LETTER > free) {
        words = "W" + i;
      }
      if (words.length() * PER_LETTER > length * scale + 8) {
        continue;
      }
      double off = 9;
      double[] middle = clearOfDoors(i, a, b, length);
      double x = x(middle[0]) + nx * off;
      double y = y(middle[1]) - ny * off;
      outside(x, y, words, a, b, 8.5, Ink.INK, false);
    }
    for (RoomPlan.Door door : room.doors()) {
      double[] a = {door.x1(), door.y1()};
      double[] b = {door.x2(), door.y2()};
      double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      double nx = (b[1] - a[1]) / length * inward;
      double ny = -(b[0] - a[0]) / length * inward;
      outside(
          x((a[0] + b[0]) / 2) + nx * 20,
          y((a[1] + b[1]) / 2) - ny * 20,
          (Svg.cut(door.name(), 20) + " " + said.apply(door)).strip(),
          a,
          b,
          8.5,
          Ink.MARK,
          true);
    }
  }

  /** 1 where the walls of a corner stand into the room, so that their writing meets outside it. */
  private int outwards(int corner) {
    int n = room.corners().size();
    double[] a = room.corners().get((corner + n - 1) % n);
    double[] b = room.corners().get(corner % n);
    double[] c = room.corners().get((corner + 1) % n);
    double turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return turn > 0 == turnsLeft() ? 0 : 1;
  }

  /** The middle of the longest part of a wall without a door. */
  private double[] clearOfDoors(int wall, double[] a, double[] b, double length) {
    List<double[]> doors = new ArrayList<>();
    for (RoomPlan.Door door : room.doors()) {
      if (door.wall() == wall) {
        double s = Math.hypot(door.x1() - a[0], door.y1() - a[1]);
        double t = Math.hypot(door.x2() - a[0], door.y2() - a[1]);
        doors.add(new double[] {Math.min(s, t), Math.max(s, t)});
      }
    }
    doors.sort(Comparator.comparingDouble(door -> door[0]));
    doors.add(new double[] {length, length});
    double from = 0;
    double best = 0;
    double at = length / 2;
    for (double[] door : doors) {
      if (door[0] - from > best) {
        best = door[0] - from;
        at = (from + door[0]) / 2;
      }
      from = Math.max(from, door[1]);
    }
    double share = at / length;
    return new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])};
  }

  private void tick(double px, double py, RoomPlan.Door door, double inward) {
    double length = Math.hypot(door.x2() - door.x1(), door.y2() - door.y1());
    double nx = (door.y2() - door.y1()) / length * inward;
    double ny = -(door.x2() - door.x1()) / length * inward;
    svg.line(x(px) - nx * 3, y(py) + ny * 3, x(px) + nx * 6, y(py) - ny * 6, Ink.INK, 1.6);
  }

  /** Writing along a wall, outside it, never upside down. */
  private void outside(
      double x,
      double y,
      String words,
      double[] a,
      double[] b,
      double size,
      Ink ink,
      boolean bold) {
    double turn = Math.toDegrees(Math.atan2(-(b[1] - a[1]), b[0] - a[0]));
    if (turn > 90.01) {
      turn -= 180;
    }
    if (turn <= -89.99) {
      turn += 180;
    }
    // The middle of the letters, not their foot, lies on the line.
    double r = Math.toRadians(turn);
    svg.text(
        x - Math.sin(r) * size * 0.35,
        y + Math.cos(r) * size * 0.35,
        words,
        size,
        Anchor.MIDDLE,
        ink,
        bold,
        Math.abs(turn) < 0.01 ? 0 : turn);
  }

  boolean turnsLeft() {
    double twice = 0;
    for (int i = 0; i < room.corners().size(); i++) {
      double[] a = room.corners().get(i);
      double[] b = room.corners().get((i + 1) % room.corners().size());
      twice += a[0] * b[1] - b[0] * a[1];
    }
    return twice > 0;
  }

  /** A place near the middle of a wall, a little inside it. */
  double[] inside(int wall, double offMm) {
    double[] a = room.corners().get(wall);
    double[] b = room.corners().get((wall + 1) % room.corners().size());
    double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    double inward = turnsLeft() ? 1 : -1;
    double nx = -(b[1] - a[1]) / length * inward;
    double ny = (b[0] - a[0]) / length * inward;
    return new double[] {(a[0] + b[0]) / 2 + nx * offMm, (a[1] + b[1]) / 2 + ny * offMm};
  }
}
