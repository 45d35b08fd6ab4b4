package underfoot.reasoning;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Because;
import underfoot.knowledge.Fact;

/** Which rules had a say about a floor. */
public final class Fired {
  private Fired() {}

  /**
   * The ids of all rules that concluded anything, for any build-up, in the order of their names.
   */
  public static Set<String> of(Counsel counsel) {
    Set<String> ids = new TreeSet<>();
    Deque<Object> todo = new ArrayDeque<>(counsel.general());
    todo.addAll(counsel.facts().all());
    for (Candidate candidate : counsel.candidates()) {
      todo.addAll(candidate.concluded());
      todo.addAll(candidate.facts().all());
    }
    while (!todo.isEmpty()) {
      Object one = todo.pop();
      Because because = null;
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
