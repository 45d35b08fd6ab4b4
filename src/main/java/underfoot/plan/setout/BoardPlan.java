package underfoot.plan.setout;

import java.util.List;
import underfoot.plan.setout.TileSetOut.Ring;

/**
 * Where every board lies. Places are mm in the room.
 *
 * @param length of a board, mm
 * @param width of a board, mm
 * @param joint between boards, mm
 * @param gap left at every wall, mm
 * @param alongX whether the boards' length runs along the room's x
 * @param pieces every board and piece of one
 * @param cuts the sizes to cut, the largest first
 * @param boards how many boards that takes, offcuts used again
 * @param screws where screws go, {x, y}
 * @param deckJoints the joints of the deck beneath, as {x1, y1, x2, y2}; empty if unknown
 * @param offDeck the least distance of a joint from a joint of the deck that it runs along, mm;
 *     infinite if none does
 * @param wantedOffDeck the distance that was asked for, mm
 * @param stagger the least distance between joints of neighbouring rows, mm; infinite if there are
 *     none
 * @param wantedStagger the distance that was asked for, mm
 * @param atDoors joints that run into a doorway
 */
public record BoardPlan(
    double length,
    double width,
    double joint,
    double gap,
    boolean alongX,
    List<Piece> pieces,
    List<Cut> cuts,
    int boards,
    List<double[]> screws,
    List<double[]> deckJoints,
    double offDeck,
    double wantedOffDeck,
    double stagger,
    double wantedStagger,
    int atDoors) {
  /** Copies the lists. */
  public BoardPlan {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
    screws = List.copyOf(screws);
    deckJoints = List.copyOf(deckJoints);
  }

  /** The axis that boards lie along. */
  public String axis() {
    return alongX ? "x" : "y";
  }

  /**
   * A board or a piece of one.
   *
   * @param row its row, from 1
   * @param mark the letter of its size in the cut list
   * @param rings its outline
   * @param x1 its bounds, mm
   * @param y1 its bounds, mm
   * @param x2 its bounds, mm
   * @param y2 its bounds, mm
   * @param notched whether it is cut to another shape than a rectangle
   */
  public record Piece(
      int row,
      String mark,
      List<Ring> rings,
      double x1,
      double y1,
      double x2,
      double y2,
      boolean notched) {
    /** Copies the list. */
    public Piece {
      rings = List.copyOf(rings);
    }
  }

  /**
   * A size to cut.
   *
   * @param mark its letter
   * @param length along the boards' length, mm
   * @param width mm
   * @param count how many
   * @param whole whether it is a whole board
   * @param notched whether corners are cut out of it too, as the plan shows
   */
  public record Cut(
      String mark, double length, double width, int count, boolean whole, boolean notched) {}
}
