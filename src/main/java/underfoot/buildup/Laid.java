package underfoot.buildup;

import underfoot.knowledge.Derivation;
import underfoot.knowledge.LayerKind;

/**
 * A layer of the build-up under judgement.
 *
 * @param because why
 * @param kind what is laid
 * @param figure the name of the figure for its thickness; empty for the kind's own
 */
public record Laid(Derivation because, LayerKind kind, String figure) implements Conclusion {
  /** The kind's id, which rules match. */
  public String getLayer() {
    return kind.id();
  }

  /** The kind's family, which rules match. */
  public String getFamily() {
    return kind.family();
  }

  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, kind.id(), figure);
  }
}
