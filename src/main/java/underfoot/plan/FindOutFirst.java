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

/**
 * What to find out first: the unknown facts on which decisions hang, in the order of a survey, each
 * with its rank by how much would change. A changed verdict counts before another way of building,
 * and that before the number of decisions.
 */
final class FindOutFirst {
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final List<Open> open = new ArrayList<>();

  private record Open(
      String key, String fact, String called, String ask, String look, List<Otherwise> changes) {
    int reach() {
      return changes.stream().mapToInt(one -> one.reach().ordinal()).max().orElse(0);
    }

    long count() {
      return changes.stream().flatMap(one -> one.differences().stream()).distinct().count();
    }
  }

  private FindOutFirst(Knowledge knowledge) {
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
  }

  static List<FindOut> of(Knowledge knowledge, List<Assumed> assumed, List<Unsaid> unsaid) {
    FindOutFirst all = new FindOutFirst(knowledge);
    assumed.forEach(one -> all.add(one.definition(), one.about(), one.otherwise()));
    unsaid.forEach(one -> all.add(Optional.of(one.definition()), one.about(), one.otherwise()));
    return all.ranked();
  }

  private void add(Optional<FactDefinition> definition, String about, List<Otherwise> changes) {
    if (definition.isEmpty() || changes.isEmpty()) {
      return;
    }
    FactDefinition fact = definition.get();
    List<Otherwise> sorted = new ArrayList<>(changes);
    sorted.sort(
        Comparator.comparing(Otherwise::reach)
            .thenComparing(one -> one.differences().size())
            .reversed());
    open.add(
        new Open(
            fact.key(),
            Justifier.name(fact.key(), about),
            about.isEmpty() ? fact.called() : fact.called() + " (" + about + ")",
            fact.ask(),
            fact.look().isEmpty() ? fact.means() : fact.look(),
            sorted));
  }

  private List<FindOut> ranked() {
    List<Open> byChange = new ArrayList<>(open);
    byChange.sort(Comparator.comparingInt(Open::reach).thenComparingLong(Open::count).reversed());
    List<FindOut> all = new ArrayList<>();
    List<Open> bySurvey = new ArrayList<>(byChange);
    bySurvey.sort(Comparator.comparingInt(one -> knowledge.survey().placeOf(one.key())));
    for (Open one : bySurvey) {
      List<String> decisions =
          one.changes().stream()
              .map(
                  other ->
                      phrases.say(
                          "if-it-is",
                          "value",
                          other.value(),
                          "changes",
                          String.join("; ", other.differences())))
              .toList();
      all.add(
          new FindOut(
              one.fact(),
              one.called(),
              one.ask(),
              one.look(),
              knowledge.survey().titleOf(one.key()),
              byChange.indexOf(one) + 1,
              decisions));
    }
    return List.copyOf(all);
  }
}
