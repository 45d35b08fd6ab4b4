package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * A build-up worth working out.
 *
 * @param because why
 * @param way the way of building, such as {@code rigid board}
 * @param standing how the trade sees it here: {@code the usual way}, {@code a fuller way} or {@code
 *     a lesser way}
 */
public record OfferedWay(Derivation because, String way, String standing) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, way, standing);
  }
}
