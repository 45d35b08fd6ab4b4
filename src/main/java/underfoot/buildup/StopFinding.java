package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * A finding that decides the verdict.
 *
 * @param because why
 * @param verdict {@link Verdict#STOP} or {@link Verdict#OUTSIDE_GUIDANCE}
 * @param wording the id of the text
 */
public record StopFinding(Derivation because, Verdict verdict, String wording)
    implements Conclusion {
  /** Whether tiling must not go ahead. */
  public boolean isStop() {
    return verdict == Verdict.STOP;
  }

  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, verdict, wording);
  }
}
