package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds;
import underfoot.reasoning.Beside.Answer;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.LayersBeside;

/**
 * What is recommended with one thing more in it, or in the place of what it stands in for: so that
 * what speaks against a thing that no rule lays is found among the layers it would lie between.
 *
 * @param yaml the proposal
 * @param order the place of the thing in it, from 1
 */
public record TriedInPlace(String yaml, int order) {

  /**
   * Puts a thing where it belongs.
   *
   * @param knowledge the layers
   * @param kinds what people call layers
   * @param beside what must lie between it and what it lies on
   * @param buildUp what it is tried in
   * @param called what people call the thing
   */
  public static TriedInPlace of(
      Knowledge knowledge,
      ProposedKinds kinds,
      LayersBeside beside,
      BuildUp buildUp,
      String called) {
    ProposalDraft draft = ProposalDraft.of(knowledge, kinds, buildUp);
    List<ProposalDraft.Line> lines = new ArrayList<>(draft.layers());
    ProposedKinds.Kind kind = kinds.get(called);
    String id = kind.is().get(0);
    if (beside.works(id).contains("grout")) {
      draft.whole().remove("grout"); // it takes the place of what fills the joints
    }
    int at = -1;
    for (int i = 0; i < lines.size() && at < 0; i++) {
      String here = lines.get(i).id();
      at = kind.serves().contains(here) || kind.instead().contains(here) ? i : -1;
    }
    if (at >= 0) {
      lines.set(at, line(id, called));
    } else {
      int rank = knowledge.layers().get(id).rank();
      at = 0;
      while (at < lines.size() && knowledge.layers().get(lines.get(at).id()).rank() < rank) {
        at++;
      }
      lines.add(at, line(id, called));
      at += between(kinds, beside, lines, at);
    }
    return new TriedInPlace(new ProposalDraft(lines, draft.whole()).yaml(), at + 1);
  }

  /** Adds what must lie between it and what it lies on; how many layers that are. */
  private static int between(
      ProposedKinds kinds, LayersBeside beside, List<ProposalDraft.Line> lines, int at) {
    if (at == 0) {
      return 0;
    }
    return beside.of(lines.get(at - 1).id(), lines.get(at).id()).rulings().stream()
        .filter(one -> one.answer() == Answer.ONLY_WITH)
        .flatMap(
            one -> kinds.names().stream().filter(name -> does(kinds, beside, name, one.between())))
        .findFirst()
        .map(
            name -> {
              lines.add(at, line(kinds.get(name).is().get(0), name));
              return 1;
            })
        .orElse(0);
  }

  private static boolean does(ProposedKinds kinds, LayersBeside beside, String name, String work) {
    return beside.works(kinds.get(name).is().get(0)).contains(work);
  }

  private static ProposalDraft.Line line(String id, String called) {
    return new ProposalDraft.Line(id, new LinkedHashMap<>(Map.of("kind", called)));
  }

  /** The same opinion, but only what is said of the thing itself. */
  public Opinion ofIt(Opinion all) {
    return new Opinion(
        all.scenario(),
        all.proposal(),
        all.verdict(),
        all.way(),
        all.title(),
        all.recommended(),
        all.isRecommended(),
        all.layers().stream().filter(layer -> layer.order() == order).toList(),
        List.of(),
        all.remedies(),
        all.dangers(),
        all.heights(),
        all.massKgPerM2(),
        all.stiffness());
  }
}
