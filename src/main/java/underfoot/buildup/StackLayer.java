package underfoot.buildup;

import java.util.List;
import underfoot.knowledge.Because;
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

  /** Why it is there. */
  public List<Because> because() {
    return laid.stream().map(Laid::because).toList();
  }
}
