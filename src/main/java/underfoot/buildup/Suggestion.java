package underfoot.buildup;

import underfoot.knowledge.Because;

/**
 * Another way worth thinking of, such as another finish.
 *
 * @param because why
 * @param wording the id of the text
 */
public record Suggestion(Because because, String wording) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording);
  }
}
