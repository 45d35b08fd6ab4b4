package underfoot.report;

/** How much a report tells. The less tells less of the same, never anything else. */
public enum Detail {
  /** The answer, the layers, what comes first and every danger. */
  SHORT,
  /** One page to build from. */
  SITE,
  /** How and why in few words. */
  NORMAL,
  /** Everything. */
  FULL
}
