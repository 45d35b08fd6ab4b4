package underfoot.reasoning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Finding;
import underfoot.buildup.Remedy;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.scenario.Scenario;

/**
 * That a rule had something to say, and of what.
 *
 * @param rule the rule
 * @param way the way of building it spoke of; empty for the floor whatever is built
 * @param about the door, the heavy thing or the layer it spoke of; empty for the whole
 */
record Voice(String rule, String way, String about) {
  private static final String SOMEWHERE = "somewhere";

  /**
   * Who had something to say of a floor, also where another rule's fact of the same name was held
   * in place of its own: the rules of later passes see both, so neither may be wrong.
   */
  static Set<Voice> of(Advisor advisor, Scenario floor) {
    Advisor listening = advisor.remembering();
    Set<Voice> voices = of(listening.advise(floor));
    gather(listening.rules().concluded(), SOMEWHERE, voices);
    return voices;
  }

  private static Set<Voice> of(Assessment assessment) {
    Set<Voice> voices = new HashSet<>();
    // Also what others only rest on; of that it is not told apart what it is about.
    Floors.rulesOf(assessment).forEach(rule -> voices.add(new Voice(rule, SOMEWHERE, "")));
    gather(assessment.general(), "", voices);
    gather(assessment.facts().all(), "", voices);
    Set<Object> common = new HashSet<>(assessment.facts().all());
    for (BuildUp buildUp : assessment.buildUps()) {
      gather(buildUp.concluded(), buildUp.way(), voices);
      Deque<Object> own = new ArrayDeque<>(buildUp.facts().all());
      own.removeIf(common::contains);
      gather(own, buildUp.way(), voices);
    }
    return voices;
  }

  /** Who had something to say of a proposal. */
  static Set<Voice> of(Iterable<? extends Conclusion> concluded) {
    Set<Voice> voices = new HashSet<>();
    gather(concluded, "", voices);
    return voices;
  }

  private static void gather(Iterable<?> all, String way, Set<Voice> voices) {
    for (Object one : all) {
      Derivation because =
          one instanceof Conclusion conclusion
              ? conclusion.because()
              : one instanceof Fact fact ? fact.because() : null;
      if (because != null) {
        voices.add(new Voice(because.rule().key(), way, about(one)));
      }
    }
  }

  private static String about(Object one) {
    return one instanceof Fact fact
        ? fact.about()
        : one instanceof Caution caution
            ? caution.about()
            : one instanceof Remedy remedy
                ? remedy.about()
                : one instanceof Finding finding ? finding.about() : "";
  }
}
