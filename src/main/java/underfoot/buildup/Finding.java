package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * What is found of a proposal.
 *
 * @param because why
 * @param judgement how it compares with what is asked
 * @param wording the id of the text, with its consequence and remedy
 * @param about the layer of the proposal, or the layer that is missing; empty for the whole
 */
public record Finding(Derivation because, Judgement judgement, String wording, String about)
    implements Conclusion {
  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, judgement, wording, about);
  }
}
