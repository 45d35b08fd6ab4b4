package underfoot.lesson;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.buildup.Finding;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.ProposedKinds;
import underfoot.plan.ProposalDraft;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Effort;
import underfoot.reasoning.ProposalAssessor;
import underfoot.scenario.FactBook;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;

/**
 * What questions are made with: who thinks floors and proposals through, and what of.
 *
 * @param advisor thinks floors through
 * @param book the bank of questions
 * @param prices in what packs things are sold
 * @param kinds what people call layers
 * @param proposals what proposals may say
 * @param judge thinks proposals through, and may remember; what it cites may be what it remembers
 * @param tries what was tried on the one floor that is asked about, and how much may be
 */
public record Workshop(
    Advisor advisor,
    LessonBook book,
    PriceBook prices,
    ProposedKinds kinds,
    FactBook proposals,
    Advisor judge,
    Tries tries) {

  /**
   * @param advisor thinks floors through
   * @param book the bank of questions
   * @param prices in what packs things are sold
   * @param kinds what people call layers
   * @param proposals what proposals may say
   */
  public Workshop(
      Advisor advisor, LessonBook book, PriceBook prices, ProposedKinds kinds, FactBook proposals) {
    this(advisor, book, prices, kinds, proposals, advisor, new Tries(0));
  }

  /**
   * The same, and what is thought through is remembered: for one floor and what is tried on it.
   *
   * @param stated what was decided on the floor, which tells how much may be tried
   */
  Workshop remembering(Assessment stated) {
    Tries some = new Tries(Effort.ofLesson(stated));
    return new Workshop(advisor, book, prices, kinds, proposals, advisor.remembering(), some);
  }

  /**
   * A floor with facts otherwise, thought through.
   *
   * @param edits facts as {@code joist span = 2.4 m}, by key or by the name rules use
   * @return empty if that contradicts what else is stated
   */
  Optional<Floor> changed(Floor floor, List<String> edits) {
    return tries
        .of(edits, () -> tried(floor, edits))
        .map(assessment -> new Floor(assessment, floor.random()));
  }

  private Optional<Assessment> tried(Floor floor, List<String> edits) {
    try {
      Scenario changed = floor.assessment().scenario();
      for (String edit : edits) {
        String[] parts = edit.split(" = ", 2);
        String key = floor.knowledge().keyOf(parts[0].strip());
        changed = changed.with(key, key.contains("[]") ? floor.door() : "", parts[1].strip());
      }
      return Optional.of(advisor.advise(changed));
    } catch (ScenarioFaults contradiction) {
      return Optional.empty();
    }
  }

  /** The recommended build-up as a proposal; empty if nothing is built. */
  Optional<ProposalDraft> proposal(Floor floor) {
    return floor
        .assessment()
        .chosen()
        .map(chosen -> ProposalDraft.of(floor.knowledge(), kinds, chosen));
  }

  /** The faults that are found of a proposal, each as the rule that found it and its layer. */
  List<Finding> faults(Assessment assessment, ProposalDraft draft) {
    tries.spend();
    try {
      Scenario read =
          new ScenarioReader(proposals)
              .read("proposal", draft.yaml().getBytes(StandardCharsets.UTF_8));
      List<Finding> faults = new ArrayList<>();
      for (Finding one :
          new ProposalAssessor(judge, kinds).examine(assessment.scenario(), read).findings()) {
        if (one.judgement().isFault()) {
          faults.add(one);
        }
      }
      return faults;
    } catch (ScenarioFaults e) {
      throw new IllegalStateException("a lesson's proposal is none: " + e.text(), e);
    }
  }

  /**
   * Changes a proposal.
   *
   * @param edits {@code rigid-board.screw length = 40 mm}, {@code whole.tile joint = 1 mm}, {@code
   *     without tanking}, or {@code tile-bed over tile}, which changes two layers about
   * @return empty if it has no such layer
   */
  static Optional<ProposalDraft> edited(ProposalDraft draft, List<String> edits) {
    ProposalDraft copy = draft.copy();
    for (String edit : edits) {
      if (!edit(copy, edit)) {
        return Optional.empty();
      }
    }
    return Optional.of(copy);
  }

  private static boolean edit(ProposalDraft draft, String edit) {
    if (edit.startsWith("without ")) {
      int at = place(draft, edit.substring("without ".length()));
      return at >= 0 && draft.layers().remove(at) != null;
    }
    if (edit.contains(" over ")) {
      String[] parts = edit.split(" over ", 2);
      int lower = place(draft, parts[0]);
      int upper = place(draft, parts[1]);
      if (lower < 0 || upper < 0) {
        return false;
      }
      draft.layers().add(upper, draft.layers().remove(lower));
      return true;
    }
    String[] parts = edit.split(" = ", 2);
    String[] of = parts[0].split("\\.", 2);
    String id = of[0];
    String key = of[1];
    if (id.equals("whole")) {
      return draft.whole().replace(key, parts[1]) != null;
    }
    int at = place(draft, id);
    if (at < 0) {
      return false;
    }
    Map<String, String> keys = draft.layers().get(at).keys();
    boolean there = keys.containsKey(key);
    if (key.equals("kind")) {
      keys.keySet().removeIf(one -> !one.equals("kind") && !one.equals("thickness"));
    }
    return there && keys.put(key, parts[1]) != null;
  }

  private static int place(ProposalDraft draft, String id) {
    for (int i = 0; i < draft.layers().size(); i++) {
      if (draft.layers().get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }
}
