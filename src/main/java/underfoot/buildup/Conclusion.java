package underfoot.buildup;

import underfoot.knowledge.Because;

/** Something a rule concluded, other than a plain fact. */
public sealed interface Conclusion
    permits Offer,
        RuledOut,
        Laid,
        LayerClass,
        LayerNote,
        LayerCover,
        Remedy,
        Caution,
        Halt,
        Target,
        Wait,
        ClientLimit,
        Criterion,
        Suggestion,
        Finding {
  /** The rule and what it matched. */
  Because because();

  /** The id of the rule, by which other rules name it as an exception. */
  default String getRule() {
    return because().rule().id();
  }
}
