package underfoot.buildup;

import java.util.List;
import java.util.Locale;

/** The answer in one word, the worst last. */
public enum Verdict {
  /** Build it as described. */
  SOUND,
  /** The listed remedies come first. */
  SOUND_ONCE_PUT_RIGHT,
  /** A published code advises against it. */
  OUTSIDE_GUIDANCE,
  /** Do not tile. */
  STOP;

  /** The word used in reports and JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The answer that all that was concluded comes to: the gravest of it. */
  public static Verdict of(List<Conclusion> decisive) {
    Verdict verdict = Verdict.SOUND;
    for (Conclusion one : decisive) {
      if (one instanceof StopFinding stopFinding && stopFinding.verdict().compareTo(verdict) > 0) {
        verdict = stopFinding.verdict();
      } else if ((one instanceof Remedy || one instanceof ClientLimit)
          && verdict == Verdict.SOUND) {
        verdict = Verdict.SOUND_ONCE_PUT_RIGHT;
      }
    }
    return verdict;
  }
}
