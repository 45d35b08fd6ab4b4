package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * Another way worth thinking of, such as another finish.
 *
 * @param because why
 * @param wording the id of the text
 */
public record Suggestion(Derivation because, String wording) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording);
  }
}
