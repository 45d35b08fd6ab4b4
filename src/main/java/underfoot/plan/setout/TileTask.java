package underfoot.plan.setout;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Polygon;

/**
 * What is asked of a set-out of tiles.
 *
 * @param room the floor, mm; may have holes for columns
 * @param doors the doorways whose place is known
 * @param kind the way of laying
 * @param length the length of a tile, mm, above 0
 * @param width the width of a tile, mm, above 0
 * @param joint the joint between tiles, mm
 * @param gap left free at every wall, mm
 * @param fromDoor whether the tiles are to be centred on a doorway; otherwise on the room
 * @param weights what counts how much
 * @param baySide the longest side of a bay between movement joints, mm; empty for no limit
 * @param bayArea the largest bay, mm2; empty for no limit
 * @param movementWidth of a movement joint, mm
 * @param most the most tiles that are set out one by one
 * @param effort about how many tiles at walls a search looks at before it is thinned out
 * @param improving how many more it looks at, at most, while it improves the best starts
 */
public record TileTask(
    Polygon room,
    List<Field.Opening> doors,
    Pattern.Kind kind,
    double length,
    double width,
    double joint,
    double gap,
    boolean fromDoor,
    Weights weights,
    OptionalDouble baySide,
    OptionalDouble bayArea,
    double movementWidth,
    long most,
    double effort,
    double improving) {
  /** Copies the list. */
  public TileTask {
    doors = List.copyOf(doors);
  }

  // Written out: what Java makes of a record of many parts is slow to begin with.
  private List<Object> parts() {
    return List.of(
        room,
        doors,
        kind,
        length,
        width,
        joint,
        gap,
        fromDoor,
        weights,
        baySide,
        bayArea,
        movementWidth,
        most,
        effort,
        improving);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TileTask that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** The same with other joints. */
  public TileTask withJoint(double other) {
    return new TileTask(
        room,
        doors,
        kind,
        length,
        width,
        other,
        gap,
        fromDoor,
        weights,
        baySide,
        bayArea,
        movementWidth,
        most,
        effort,
        improving);
  }

  /** How many tiles would cover the floor, by area alone. */
  public double roughly() {
    return room.getArea() / ((length + joint) * (width + joint));
  }
}
