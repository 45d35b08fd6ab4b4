package underfoot.buildup;

import java.util.List;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.LayerKind;

/**
 * One layer of a worked-out build-up.
 *
 * @param kind what it is
 * @param thickness how thick it comes out
 * @param laid every rule that asked for it
 */
public record StackLayer(LayerKind kind, LayerThickness thickness, List<Laid> laid) {
  /** Copies the list. */
  public StackLayer {
    laid = List.copyOf(laid);
  }

  @Override
  public int hashCode() {
    return 31 * kind.id().hashCode() + Double.hashCode(thickness.max());
  }

  /** Whether it is poured, as thick as the floor is uneven. */
  public boolean poured() {
    return kind.thickness().equals(LayerThickness.OF_POUR);
  }

  /** Whether it is packed up to a line, as thick as the floor is uneven. */
  public boolean packed() {
    return kind.thickness().equals(LayerThickness.OF_PACKING);
  }

  /** Whether it is laid to falls. */
  public boolean fallsToDrain() {
    return kind.thickness().equals(LayerThickness.OF_FALLS);
  }

  /** Whether it takes the place of the old deck. */
  public boolean replacesDeck() {
    return kind.id().equals("new-deck");
  }

  /** Whether it is a board or sheet that is screwed down. */
  public boolean isBoard() {
    return kind.family().equals("board") || kind.family().equals("deck");
  }

  /** Why it is there. */
  public List<Derivation> because() {
    return laid.stream().map(Laid::because).toList();
  }
}
