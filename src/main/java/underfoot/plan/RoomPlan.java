package underfoot.plan;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.plan.setout.Field;

/**
 * The room as it is drawn.
 *
 * @param corners the corners of the outline in order, {x, y} in mm; wall n runs from corner n to
 *     the next
 * @param parts the parts where the floor is otherwise; mostly none
 * @param doors the doorways whose place is known
 * @param readings the spot heights, {x, y, z} in mm; may be empty
 */
public record RoomPlan(
    List<double[]> corners, List<Part> parts, List<Door> doors, List<double[]> readings) {
  /** Copies the lists. */
  public RoomPlan {
    corners = List.copyOf(corners);
    parts = List.copyOf(parts);
    doors = List.copyOf(doors);
    readings = List.copyOf(readings);
  }

  /**
   * A part of the room where the floor is otherwise.
   *
   * @param name its name
   * @param corners its corners in order, {x, y} in mm
   */
  public record Part(String name, List<double[]> corners) {
    /** Copies the list. */
    public Part {
      corners = List.copyOf(corners);
    }
  }

  /**
   * A doorway.
   *
   * @param name its name
   * @param wall the wall it is in
   * @param x1 one side, mm
   * @param y1 one side, mm
   * @param x2 the other side, mm
   * @param y2 the other side, mm
   * @param opens which way its leaf opens; empty if it is not said
   * @param hinge on which side it is hung, seen from inside the room; empty if it is not said
   */
  public record Door(
      String name,
      int wall,
      double x1,
      double y1,
      double x2,
      double y2,
      String opens,
      String hinge) {
    static Door of(Field.Opening at, Facts facts) {
      return new Door(
          at.name(),
          at.wall(),
          at.from().x,
          at.from().y,
          at.to().x,
          at.to().y,
          said("opens", at, facts),
          said("door hinge", at, facts));
    }

    private static String said(String name, Field.Opening at, Facts facts) {
      Fact fact = facts.find(name, at.name());
      return fact == null ? "" : fact.text();
    }

    /** Whether it has a leaf of which it is known how it swings. */
    public boolean swings() {
      return !hinge.isEmpty() && opens.endsWith(" the room");
    }

    /** Its place in the wall. */
    public Stretch stretch() {
      return new Stretch(x1, y1, x2, y2);
    }
  }

  /** A wall, from its corner to the next. */
  public Stretch wall(int number) {
    double[] a = corners.get(number);
    double[] b = corners.get((number + 1) % corners.size());
    return new Stretch(a[0], a[1], b[0], b[1]);
  }

  /** A straight line from one place to another, mm. */
  public record Stretch(double x1, double y1, double x2, double y2) {
    /** How long it is, mm. */
    public double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }

    /** Its direction in degrees from the x axis, anticlockwise. */
    public double degrees() {
      return Math.toDegrees(Math.atan2(y2 - y1, x2 - x1));
    }

    /** The x of a place along it, from 0 at its beginning to 1 at its end. */
    public double x(double share) {
      return x1 + share * (x2 - x1);
    }

    /** The y of a place along it, from 0 at its beginning to 1 at its end. */
    public double y(double share) {
      return y1 + share * (y2 - y1);
    }
  }
}
