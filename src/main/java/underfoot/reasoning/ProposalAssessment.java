package underfoot.reasoning;

import java.util.List;
import java.util.Optional;
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
}
