package underfoot.buildup;

import underfoot.knowledge.Because;

/**
 * A finding that decides the verdict.
 *
 * @param because why
 * @param verdict {@link Verdict#STOP} or {@link Verdict#OUTSIDE_GUIDANCE}
 * @param wording the id of the text
 */
public record Halt(Because because, Verdict verdict, String wording) implements Conclusion {
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
