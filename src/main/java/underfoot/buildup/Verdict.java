package underfoot.buildup;

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
}
