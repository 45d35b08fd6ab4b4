package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.WhatIf.Assumed;
import underfoot.reasoning.WhatIf.Otherwise;
import underfoot.reasoning.WhatIf.Unsaid;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Place;

/**
 * What to find out first: the unknown facts on which decisions hang, in the order of a survey, each
 * with its rank by how much would change. A changed verdict counts before another way of building,
 * and that before the number of decisions.
 */
final class FindOutFirst {
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final ActsInWords acts;
  private final List<Open> open = new ArrayList<>();

  /** A fact as it is told, but for its rank, and what becomes of its other values. */
  private record Open(FactDefinition fact, String about, List<Otherwise> changes, boolean tried) {}

  private FindOutFirst(Sayings sayings) {
    this.knowledge = sayings.knowledge();
    this.phrases = sayings.phrases();
    this.acts = sayings.acts();
  }

  static List<FindOut> of(Sayings sayings, List<Assumed> assumed, List<Unsaid> unsaid) {
    FindOutFirst all = new FindOutFirst(sayings);
    assumed.forEach(one -> all.add(one.definition(), one.about(), one.otherwise(), one.tried()));
    unsaid.forEach(
        one -> all.add(Optional.of(one.definition()), one.about(), one.otherwise(), one.tried()));
    return all.ranked();
  }

  private void add(
      Optional<FactDefinition> definition, String about, List<Otherwise> changes, boolean tried) {
    if (definition.isEmpty()
        || (tried && changes.isEmpty())
        || acts.forbids(definition.get().acts(), about)) {
      return;
    }
    open.add(
        new Open(
            definition.get(),
            about,
            changes.stream().sorted(Otherwise.FARTHEST_FIRST).toList(),
            tried));
  }

  private List<FindOut> ranked() {
    List<Open> byChange = new ArrayList<>(open);
    byChange.sort(Comparator.comparing(Open::changes, Otherwise.MOST_FIRST));
    List<Open> bySurvey = new ArrayList<>(byChange);
    bySurvey.sort(Comparator.comparingInt(one -> knowledge.survey().placeOf(one.fact().key())));
    return bySurvey.stream().map(one -> told(one, byChange.indexOf(one) + 1)).toList();
  }

  private FindOut told(Open one, int rank) {
    FactDefinition fact = one.fact();
    return new FindOut(
        Place.named(fact.key(), one.about()),
        one.about(),
        one.about().isEmpty() ? fact.called() : fact.called() + " (" + one.about() + ")",
        fact.ask(),
        fact.look().isEmpty() ? fact.means() : acts.told(fact.acts(), one.about(), fact.look()),
        knowledge.survey().titleOf(fact.key()),
        rank,
        one.changes(),
        AdviceMaker.told(phrases, one.changes(), one.tried()));
  }
}
