package underfoot.buildup;

import underfoot.knowledge.Because;

/**
 * A build-up worth working out.
 *
 * @param because why
 * @param route the way of building, such as {@code rigid board}
 * @param standing how the trade sees it here: {@code the usual way}, {@code a fuller way} or {@code
 *     a lesser way}
 */
public record Offer(Because because, String route, String standing) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, route, standing);
  }
}
