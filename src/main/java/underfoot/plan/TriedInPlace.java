package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds;
import underfoot.reasoning.Beside.Answer;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.LayersBeside;
import underfoot.reasoning.MaterialClasses;
import underfoot.reasoning.StackKinds;

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
   * @param grade the class it is of; empty if none is named
   */
  public static TriedInPlace of(
      Knowledge knowledge,
      ProposedKinds kinds,
      LayersBeside beside,
      BuildUp buildUp,
      String called,
      Optional<String> grade) {
    ProposalDraft draft = ProposalDraft.of(knowledge, kinds, buildUp);
    List<ProposalDraft.Line> lines = new ArrayList<>(draft.layers());
    ProposedKinds.Kind kind = kinds.get(called);
    String id = kind.is().get(0);
    if (beside.works(id).contains("grout")) {
      draft.whole().remove("grout"); // it takes the place of what fills the joints
    }
    int at = last(lines, kind.is());
    if (at < 0) {
      at = last(lines, kind.serves());
      at = at >= 0 ? at : last(lines, kind.instead());
      if (at >= 0) {
        lines.set(at, line(id, called));
      } else {
        int rank = knowledge.layers().get(id).rank();
        at = 0;
        while (at < lines.size() && knowledge.layers().get(lines.get(at).id()).rank() < rank) {
          at++;
        }
        lines.add(at, line(id, called));
      }
      at -= unwanted(beside, StackKinds.beneath(buildUp.facts()), lines, at);
      at += between(kinds, beside, lines, at);
    }
    if (grade.isPresent()) {
      lines
          .get(at)
          .keys()
          .merge(
              "class", "[" + grade.get() + "]", (was, is) -> graded(knowledge, was, grade.get()));
    }
    return new TriedInPlace(new ProposalDraft(lines, draft.whole()).yaml(), at + 1);
  }

  /** The topmost layer that is one of some kinds; -1 if there is none. */
  private static int last(List<ProposalDraft.Line> lines, List<String> kinds) {
    int at = lines.size() - 1;
    while (at >= 0 && !kinds.contains(lines.get(at).id())) {
      at--;
    }
    return at;
  }

  /** Classes with one in the place of those on its scale. */
  private static String graded(Knowledge knowledge, String classes, String grade) {
    String scale = MaterialClasses.scaleOf(knowledge, grade);
    List<String> all =
        new ArrayList<>(List.of(classes.substring(1, classes.length() - 1).split(", ")));
    all.removeIf(one -> MaterialClasses.scaleOf(knowledge, one).equals(scale));
    all.add(grade);
    return "[" + String.join(", ", all) + "]";
  }

  /** Takes away coats that it does not lie on, where it does lie on what they are on. */
  private static int unwanted(
      LayersBeside beside, String base, List<ProposalDraft.Line> lines, int at) {
    int from = at;
    while (from > 0
        && beside.works(lines.get(from - 1).id()).contains("primer")
        && !lies(beside, beneath(base, lines, from), lines.get(at).id())) {
      from--;
    }
    if (from == at || !lies(beside, beneath(base, lines, from), lines.get(at).id())) {
      return 0;
    }
    lines.subList(from, at).clear();
    return at - from;
  }

  private static String beneath(String base, List<ProposalDraft.Line> lines, int at) {
    return at == 0 ? base : lines.get(at - 1).id();
  }

  private static boolean lies(LayersBeside beside, String lower, String upper) {
    return beside.of(lower, upper).answer() != Answer.NEVER;
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
