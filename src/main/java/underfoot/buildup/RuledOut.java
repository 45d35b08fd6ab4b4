package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * The build-up under judgement must not be built here.
 *
 * @param because why
 * @param wording the id of the text that says so
 */
public record RuledOut(Derivation because, String wording) implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording);
  }
}
