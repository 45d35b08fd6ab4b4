package underfoot.reasoning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.RuleNote;

/** Which rules had a say about a floor. */
public final class FiredRules {
  private FiredRules() {}

  /**
   * The ids of all rules that concluded anything, for any build-up, in the order of their names.
   */
  public static Set<String> of(Assessment assessment) {
    return notes(assessment).stream()
        .map(RuleNote::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What those rules say of themselves; of one for each row of a table, the rows that did. */
  public static Set<RuleNote> notes(Assessment assessment) {
    Set<RuleNote> notes = new HashSet<>();
    Set<Derivation> seen = new HashSet<>();
    Deque<Object> todo = new ArrayDeque<>(assessment.general());
    todo.addAll(assessment.facts().all());
    for (BuildUp buildUp : assessment.buildUps()) {
      todo.addAll(buildUp.concluded());
      todo.addAll(buildUp.facts().all());
    }
    while (!todo.isEmpty()) {
      Object one = todo.pop();
      Derivation because = null;
      if (one instanceof Conclusion conclusion) {
        because = conclusion.because();
      } else if (one instanceof Fact fact) {
        because = fact.because();
      }
      if (because != null && seen.add(because)) {
        notes.add(because.rule());
        todo.addAll(because.premises());
      }
    }
    return notes;
  }
}
