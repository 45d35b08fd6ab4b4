package underfoot.plan.setout;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What is asked of a plan of boards over a deck.
 *
 * @param room the room, mm; the deck's joints are told from its edge
 * @param floor what of it the boards cover, mm; may be in several pieces
 * @param doors the doorways whose place is known
 * @param length of a board, mm
 * @param width of a board, mm
 * @param joint gap between boards, mm
 * @param gap left at every wall, mm
 * @param deck where the deck's own joints lie; empty where nothing is known of them
 * @param offDeck how far a joint keeps from a joint of the deck, mm
 * @param stagger how far joints of neighbouring rows keep from each other, mm
 * @param least the shortest and narrowest piece wanted, mm
 * @param inDoorway what a joint in a doorway counts for, in boards
 * @param fixing where screws go
 * @param kerf what a cut takes away, mm
 * @param most the most boards that are planned one by one
 */
public record BoardTask(
    Polygon room,
    Geometry floor,
    List<Field.Opening> doors,
    double length,
    double width,
    double joint,
    double gap,
    Optional<Deck> deck,
    double offDeck,
    double stagger,
    double least,
    double inDoorway,
    Fixing fixing,
    double kerf,
    long most) {
  /** Copies the list. */
  public BoardTask {
    doors = List.copyOf(doors);
  }

  // Written out: what Java makes of a record of many parts is slow to begin with.
  private List<Object> parts() {
    return List.of(
        room, floor, doors, length, width, joint, gap, deck, offDeck, stagger, least, inDoorway,
        fixing, kerf, most);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BoardTask that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /**
   * The joints of the deck.
   *
   * @param alongX whether its boards or sheets run along the room's x
   * @param first from the room's edge, square to the run, to the first joint, mm
   * @param width of a board or sheet, gaps left out, mm
   * @param pitch from joint to joint, square to the run, mm
   * @param narrow whether it is of floorboards, each of which is to be held; otherwise of sheets
   */
  public record Deck(boolean alongX, double first, double width, double pitch, boolean narrow) {
    private List<Object> parts() {
      return List.of(alongX, first, width, pitch, narrow);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Deck that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
      return parts().hashCode();
    }
  }

  /**
   * Where screws go.
   *
   * @param spacing the most from one to the next, mm
   * @param edge of the outer row from the edge of a board, mm
   * @param edgeLeast the least from any edge, mm
   * @param corner the least from a corner, mm
   * @param onJoints whether the outer row sits on the joints and holds both boards
   */
  public record Fixing(
      double spacing, double edge, double edgeLeast, double corner, boolean onJoints) {
    private List<Object> parts() {
      return List.of(spacing, edge, edgeLeast, corner, onJoints);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Fixing that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
      return parts().hashCode();
    }
  }
}
