package underfoot.buildup;

import underfoot.knowledge.Because;

/**
 * The build-up under judgement must not be built here.
 *
 * @param because why
 * @param wording the id of the text that says so
 */
public record RuledOut(Because because, String wording) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording);
  }
}
