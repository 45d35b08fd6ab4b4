package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * Something to be said of a layer.
 *
 * @param because why
 * @param layer the layer kind's id
 * @param wording the id of the text
 * @param fixing whether it says how the layer is fixed
 */
public record LayerNote(Derivation because, String layer, String wording, boolean fixing)
    implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, layer, wording, fixing);
  }
}
