package underfoot.language;

import java.util.Locale;

/** The passes in which a floor is thought through. Each has a folder of rules of its own. */
public enum Pass {
  /** Which layers of the floor as it is today may stay; run where its layers are told. */
  FOUND,
  /** What the floor is, what is not known of it and what is assumed. */
  UNDERSTAND,
  /** What must be put right whatever is built, and which build-ups are worth working out. */
  PROPOSE,
  /** What one build-up consists of, layer by layer. */
  LAY,
  /** Whether one worked-out build-up stands, and what goes with it. */
  JUDGE,
  /** What the acts it asks for bring, wait for, and must not be. */
  ACT,
  /** By what the build-ups that stand are ranked. */
  SETTLE,
  /** How a build-up somebody proposes compares with what is asked; run for nothing else. */
  CHECK,
  /** What one kind of layer may lie on; asked of two kinds at a time and of no floor. */
  NEXT;

  /** The folder of the rule base that holds its rules. */
  public String folder() {
    return name().toLowerCase(Locale.ROOT);
  }
}
