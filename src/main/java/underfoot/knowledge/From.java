package underfoot.knowledge;

import java.util.Locale;

/** Where a fact comes from. */
public enum From {
  /** The scenario file states it. */
  SCENARIO,
  /** The proposal under judgement states it. */
  PROPOSAL,
  /** It was worked out from other facts by a formula. */
  MEASURED,
  /** The scenario does not say; a rule took the cautious reading. */
  ASSUMED,
  /** A rule concluded it. */
  CONCLUDED;

  /** The word used in reports and JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
