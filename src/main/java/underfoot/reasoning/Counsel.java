package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Criterion;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.Scenario;

/**
 * What the rules made of a floor.
 *
 * @param scenario the floor
 * @param knowledge the knowledge base it was judged by
 * @param verdict the answer in one word
 * @param facts all facts held of the floor
 * @param general what was concluded whatever is built
 * @param candidates the build-ups worked out, the recommended one first, those that do not stand
 *     last
 * @param criteria what they were ranked by
 */
public record Counsel(
    Scenario scenario,
    Knowledge knowledge,
    Verdict verdict,
    Facts facts,
    List<Conclusion> general,
    List<Candidate> candidates,
    List<Criterion> criteria) {
  /** Copies the lists. */
  public Counsel {
    general = List.copyOf(general);
    candidates = List.copyOf(candidates);
    criteria = List.copyOf(criteria);
  }

  /** The recommended build-up; empty if none stands or the work must stop. */
  public Optional<Candidate> chosen() {
    if (verdict == Verdict.STOP || candidates.isEmpty() || !candidates.get(0).stands()) {
      return Optional.empty();
    }
    return Optional.of(candidates.get(0));
  }

  /** Conclusions of one sort that hold for the recommended build-up, general ones first. */
  public <T extends Conclusion> List<T> of(Class<T> sort) {
    List<T> found = new ArrayList<>();
    for (Conclusion one : general) {
      if (sort.isInstance(one)) {
        found.add(sort.cast(one));
      }
    }
    chosen().ifPresent(candidate -> found.addAll(candidate.of(sort)));
    return found;
  }

  /** The facts that hold for the recommended build-up, or for the floor if there is none. */
  public Facts factsOfChosen() {
    return chosen().map(Candidate::facts).orElse(facts);
  }
}
