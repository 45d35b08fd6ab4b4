package underfoot.buildup;

import java.util.Locale;

/** How bad it is if a caution is not heeded, the worst first. */
public enum Severity {
  /** People can be hurt. */
  DANGER,
  /** The floor can fail. */
  CARE,
  /** Worth knowing. */
  NOTE;

  /** The word used in reports and JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
