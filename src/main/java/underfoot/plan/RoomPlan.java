package underfoot.plan;

import java.util.List;

/**
 * The room as it is drawn.
 *
 * @param corners the corners of the outline in order, {x, y} in mm; wall n runs from corner n to
 *     the next
 * @param doors the doorways whose place is known
 * @param readings the spot heights, {x, y, z} in mm; may be empty
 */
public record RoomPlan(List<double[]> corners, List<Door> doors, List<double[]> readings) {
  /** Copies the lists. */
  public RoomPlan {
    corners = List.copyOf(corners);
    doors = List.copyOf(doors);
    readings = List.copyOf(readings);
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
   */
  public record Door(String name, int wall, double x1, double y1, double x2, double y2) {}
}
