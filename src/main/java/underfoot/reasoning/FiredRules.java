package underfoot.reasoning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;

/** Which rules had a say about a floor. */
public final class FiredRules {
  private FiredRules() {}

  /**
   * The ids of all rules that concluded anything, for any build-up, in the order of their names.
   */
  public static Set<String> of(Assessment assessment) {
    Set<String> ids = new TreeSet<>();
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
      if (because != null && ids.add(because.rule().id())) {
        todo.addAll(because.premises());
      }
    }
    return ids;
  }
}
