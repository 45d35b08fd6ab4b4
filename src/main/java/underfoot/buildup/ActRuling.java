package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * What a rule says of an act: that nobody does it here, or not before something is done, or only
 * with care.
 *
 * @param because why
 * @param sort which of these
 * @param act the act
 * @param wording the remedy it waits for, or the care that is taken; empty where it is forbidden
 * @param about which of several things it holds for; empty for the whole floor
 */
public record ActRuling(Derivation because, Sort sort, String act, String wording, String about)
    implements Conclusion {
  /** What may be said of an act. */
  public enum Sort {
    /** It is never done here. */
    NEVER,
    /** It is done only after something else. */
    AFTER,
    /** It is done only so. */
    SO
  }

  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, sort, act, wording, about);
  }
}
