package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * A limit the client set, such as the budget, that the build-up goes beyond. It can be built all
 * the same, but not before that is settled.
 *
 * @param because why
 * @param wording the id of the text
 */
public record ClientLimit(Derivation because, String wording) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording);
  }
}
