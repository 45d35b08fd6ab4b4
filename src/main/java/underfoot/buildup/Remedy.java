package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * Something to be put right first.
 *
 * @param because why
 * @param wording the id of the text
 * @param hold whether it is a hold point: something unknown that could hurt, to be cleared before
 *     any work
 * @param about which of several things it is about; empty for the room
 */
public record Remedy(Derivation because, String wording, boolean hold, String about)
    implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, wording, hold, about);
  }
}
