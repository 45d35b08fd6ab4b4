package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * What build-ups are ranked by.
 *
 * @param because why
 * @param order its place, the smallest first
 * @param name the criterion
 */
public record Criterion(Derivation because, int order, String name) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, order, name);
  }
}
