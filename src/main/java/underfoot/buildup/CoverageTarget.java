package underfoot.buildup;

import underfoot.knowledge.Derivation;
import underfoot.knowledge.Figure;

/**
 * A coverage target for the tile bed. Of several the greatest holds.
 *
 * @param because why
 * @param figure the share of each tile's back in contact
 */
public record CoverageTarget(Derivation because, Figure figure) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, figure.name());
  }
}
