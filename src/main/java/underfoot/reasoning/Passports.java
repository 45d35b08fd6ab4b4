package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;

/**
 * What the rows of its materials say of the layers of a build-up, for the rules that judge it: of
 * each layer by its own name, and of what is filled into it, such as grout, by the name of that.
 */
final class Passports {
  private final Knowledge knowledge;
  private final StackKinds kinds;

  /**
   * @param knowledge the rows of materials
   */
  Passports(Knowledge knowledge) {
    this.knowledge = knowledge;
    this.kinds = new StackKinds(knowledge);
  }

  /** What the passports say, of a layer as its classes make it: a bed of class R2 is of resin. */
  List<Fact> of(BuildUp buildUp) {
    List<Fact> said = new ArrayList<>();
    for (StackLayer layer : buildUp.stack().layers()) {
      List<String> made = kinds.of(buildUp, layer);
      said.addAll(
          LayersBeside.said(knowledge, LayersBeside.MATERIAL, made.get(0), layer.kind().id()));
      for (String filledIn : made.subList(1, made.size())) {
        List<Fact> all = LayersBeside.said(knowledge, LayersBeside.MATERIAL, filledIn, filledIn);
        said.addAll(all.subList(1, all.size())); // it is no layer: nothing is said of it as of one
      }
    }
    return said;
  }
}
