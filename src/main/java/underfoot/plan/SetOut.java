package underfoot.plan;

import java.util.List;
import java.util.Optional;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;

/**
 * Where the tiles and the boards of a build-up lie.
 *
 * @param tiles the tiles; empty where they are not set out one by one
 * @param whyNoTiles the phrase that says why they are not; empty where they are
 * @param boards the boards of each layer that is laid in boards
 */
public record SetOut(Optional<Tiles> tiles, String whyNoTiles, List<Boards> boards) {
  /** Copies the list. */
  public SetOut {
    boards = List.copyOf(boards);
  }

  /**
   * The tiles.
   *
   * @param layout where every tile lies
   * @param fromDoor whether they were to be centred on a doorway
   * @param patternWanted the pattern that the scenario names; empty where it names none
   * @param breakagePercent what is ordered beyond those counted
   * @param toOrder tiles to order, breakages included and spares for later left out
   * @param leastSharePercent the least width of a cut that is wanted, of the tile
   * @param sliverMm below this a cut is a sliver
   * @param closedBy by how much each joint is closed so that rows end in whole tiles, mm; mostly 0
   * @param because the rules that decided what it begins from
   */
  public record Tiles(
      TileSetOut layout,
      boolean fromDoor,
      String patternWanted,
      double breakagePercent,
      long toOrder,
      double leastSharePercent,
      double sliverMm,
      double closedBy,
      List<Justification> because) {
    /** Copies the list. */
    public Tiles {
      because = List.copyOf(because);
    }
  }

  /**
   * The boards of a layer.
   *
   * @param layer the layer
   * @param name its name
   * @param plan where every board lies
   * @param deckKnown whether it is known which way the deck's joints run and how far apart
   * @param firstJointMeasured whether the first joint of the deck was measured; otherwise it is
   *     taken to lie one board from the wall
   * @param spacingMm the most from screw to screw
   * @param because the rules that laid them and said how
   */
  public record Boards(
      String layer,
      String name,
      BoardPlan plan,
      boolean deckKnown,
      boolean firstJointMeasured,
      double spacingMm,
      List<Justification> because) {
    /** Copies the list. */
    public Boards {
      because = List.copyOf(because);
    }
  }
}
