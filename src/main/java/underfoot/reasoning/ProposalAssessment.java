package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Finding;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/**
 * What the rules made of a proposal.
 *
 * @param assessment what they made of the floor
 * @param proposal the proposal as its file states it
 * @param layers the names of its layers, from the bottom
 * @param fit the build-up it is held against; empty if nothing may be built
 * @param built the proposal itself, worked out and judged; empty if nothing may be built
 * @param facts all facts held when it was compared
 * @param findings what was found
 */
public record ProposalAssessment(
    Assessment assessment,
    Scenario proposal,
    List<String> layers,
    Optional<ProposalMatch> fit,
    Optional<BuildUp> built,
    Facts facts,
    List<Finding> findings) {
  /** Copies the lists. */
  public ProposalAssessment {
    layers = List.copyOf(layers);
    findings = List.copyOf(findings);
  }

  /**
   * Conclusions of one sort that hold for the floor and for the proposal as it is, but for those
   * that ask for what is forbidden.
   */
  public <T extends Conclusion> List<T> all(Class<T> sort) {
    List<Conclusion> held = new ArrayList<>(assessment.general());
    built.ifPresent(one -> held.addAll(one.concluded()));
    ByAct<ActRuling> never = ActsApplied.rulings(held, ActRuling.Sort.NEVER);
    List<T> found = new ArrayList<>();
    for (Conclusion one : held) {
      if (sort.isInstance(one) && !ActsApplied.falls(assessment.knowledge(), one, never)) {
        found.add(sort.cast(one));
      }
    }
    return found;
  }
}
