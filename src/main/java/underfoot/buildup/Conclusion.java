package underfoot.buildup;

import underfoot.knowledge.Derivation;

/**
 * Something a rule concluded, other than a plain fact. The engine asks each for its hash, and
 * variants of a floor are told apart by their words, so both are written out: what Java makes of a
 * record by itself is slow to begin with, and its words stay slow.
 */
public sealed interface Conclusion
    permits OfferedWay,
        RuledOut,
        Laid,
        LayerClass,
        LayerNote,
        LayerCover,
        Remedy,
        Caution,
        StopFinding,
        CoverageTarget,
        StepTime,
        ClientLimit,
        Criterion,
        Suggestion,
        Finding,
        ActRuling {
  /** The rule and what it matched. */
  Derivation because();

  /** The id of the rule, by which other rules name it as an exception. */
  default String getRule() {
    return because().rule().id();
  }

  /** A conclusion in one line: what sort it is, its rule, and what it says. */
  static String line(Conclusion one, Object... says) {
    StringBuilder line = new StringBuilder(one.getClass().getSimpleName());
    line.append(' ').append(one.getRule());
    for (Object part : says) {
      line.append(", ").append(part);
    }
    return line.toString();
  }
}
