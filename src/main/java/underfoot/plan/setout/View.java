package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** What a door sees: the line straight in from its middle. */
record View(Field.Opening door, Coordinate from, Coordinate to) {
  double length() {
    return from.distance(to);
  }

  /** What each door sees, the longest view first. */
  static List<View> of(TileTask task) {
    List<View> views = new ArrayList<>();
    Map<Double, Field> byAngle = new HashMap<>();
    for (Field.Opening door : task.doors()) {
      double angle = Math.atan2(door.to().y - door.from().y, door.to().x - door.from().x);
      Field field =
          byAngle.computeIfAbsent(
              angle, turn -> Field.of(task.room(), task.gap(), turn, task.doors()));
      Coordinate middle = field.in(door.middle());
      Field.Edge near = null;
      for (Field.Edge edge : field.edges()) {
        if (edge.door()
            && edge.wall() == door.wall()
            && edge.alongX()
            && Math.min(edge.x1(), edge.x2()) <= middle.x
            && Math.max(edge.x1(), edge.x2()) >= middle.x) {
          near = edge;
        }
      }
      if (near == null) {
        continue;
      }
      double far = Double.NaN;
      for (Field.Edge edge : field.edges()) {
        double low = Math.min(edge.x1(), edge.x2());
        double high = Math.max(edge.x1(), edge.x2());
        if (edge != near && low <= middle.x && high >= middle.x && high - low > Field.SLIP) {
          double y =
              edge.y1()
                  + (middle.x - edge.x1()) / (edge.x2() - edge.x1()) * (edge.y2() - edge.y1());
          double in = (y - near.y1()) * near.ny();
          if (in > Field.SLIP && !(in >= (far - near.y1()) * near.ny())) {
            far = y;
          }
        }
      }
      if (!Double.isNaN(far)) {
        views.add(new View(door, field.out(middle.x, near.y1()), field.out(middle.x, far)));
      }
    }
    views.sort(Comparator.comparingDouble(view -> -Math.rint(view.length())));
    return views;
  }

  /** The direction the tiles run in: that of the main door's wall, else of the longest wall. */
  static double base(TileTask task, List<View> views) {
    Coordinate[] ring = task.room().getExteriorRing().getCoordinates();
    Coordinate a = ring[0];
    Coordinate b = ring[1];
    if (!views.isEmpty()) {
      a = views.get(0).door().from();
      b = views.get(0).door().to();
    } else {
      for (int i = 1; i + 1 < ring.length; i++) {
        if (ring[i].distance(ring[i + 1]) > a.distance(b) + TileLayout.MM) {
          a = ring[i];
          b = ring[i + 1];
        }
      }
    }
    double angle = Math.atan2(b.y - a.y, b.x - a.x);
    double turned = angle - Math.PI / 2 * Math.rint(angle / (Math.PI / 2));
    return Math.abs(turned) < 1e-9 ? 0 : turned;
  }
}
