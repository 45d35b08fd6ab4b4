package underfoot.buildup;

import underfoot.knowledge.Derivation;
import underfoot.knowledge.Figure;

/**
 * The contact a bed must have. Of several the greatest holds.
 *
 * @param because why
 * @param layer the layer kind's id
 * @param figure the share of the area in contact
 */
public record LayerCover(Derivation because, String layer, Figure figure) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, layer, figure.name());
  }
}
