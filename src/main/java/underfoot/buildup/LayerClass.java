package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * The least class a layer's material must have. Of several the strictest holds.
 *
 * @param because why
 * @param layer the layer kind's id
 * @param grade the class, such as {@code C2 S1}, an entry of a scale of classes
 */
public record LayerClass(Derivation because, String layer, String grade) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, layer, grade);
  }
}
