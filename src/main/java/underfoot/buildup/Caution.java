package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * A caution.
 *
 * @param because why
 * @param severity how bad it can be
 * @param wording the id of the text
 * @param about which of several things it is about; empty for the room
 */
public record Caution(Derivation because, Severity severity, String wording, String about)
    implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, severity, wording, about);
  }
}
