package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

class InterestTest {
  @Test
  void every_figure_a_rule_compares_with_is_seen_and_most_others_are_not() {
    RuleBase rules = Floors.advisor().rules();
    Knowledge knowledge = Floors.advisor().knowledge();
    long all = knowledge.figures().all().size();
    for (Stage stage : Stage.values()) {
      long seen = knowledge.figures().all().stream().filter(one -> rules.sees(stage, one)).count();
      assertThat(seen).as(stage + " sees figures").isLessThan(all / 2);
    }
    Figure edge = knowledge.figures().get("large-format-edge");
    assertThat(rules.sees(Stage.UNDERSTAND, edge)).isTrue();
  }

  @Test
  void a_fact_no_rule_of_the_pass_asks_for_is_not_seen_and_one_it_asks_for_is() {
    RuleBase rules = Floors.advisor().rules();
    Fact deck = Fact.stated("subfloor.deck", "deck", "", "OSB", Double.NaN);
    Fact other = Fact.stated("x", "a name no rule knows", "", "such a value", Double.NaN);
    assertThat(rules.sees(Stage.UNDERSTAND, deck)).isTrue();
    assertThat(rules.sees(Stage.UNDERSTAND, other)).isFalse();
  }

  /** The memory must not change what is decided: every variant is compared with a fresh thought. */
  @TestFactory
  Stream<DynamicTest> with_a_memory_every_variant_is_decided_as_without() throws Exception {
    Advisor plain = Floors.advisor();
    Scenario floor = Floors.read("plain");
    Advisor quick = plain.remembering();
    quick.advise(floor);
    return floor.book().definitions().stream()
        .filter(definition -> !definition.ofEntries() && !definition.otherwise().isEmpty())
        .flatMap(
            definition ->
                definition.otherwise().stream()
                    .map(
                        value ->
                            DynamicTest.dynamicTest(
                                definition.key() + " " + value,
                                () -> compare(plain, quick, floor, definition, value))));
  }

  private static void compare(
      Advisor plain, Advisor quick, Scenario floor, FactDefinition definition, String value)
      throws Exception {
    Scenario other;
    try {
      other = floor.with(definition.key(), "", value);
    } catch (ScenarioFaults contradictsThisFloor) {
      return;
    }
    Counsel fresh = plain.advise(other);
    Counsel recalled = quick.advise(other);
    assertThat(recalled.verdict()).isEqualTo(fresh.verdict());
    assertThat(said(recalled)).isEqualTo(said(fresh));
  }

  private static String said(Counsel counsel) {
    StringBuilder said = new StringBuilder();
    counsel.general().stream().map(Conclusion::toString).forEach(said::append);
    for (Candidate candidate : counsel.candidates()) {
      said.append('\n').append(candidate.route()).append(candidate.stack().rise());
      candidate.concluded().stream().map(Conclusion::toString).forEach(said::append);
      for (Fact fact : candidate.facts().all()) {
        said.append(fact.says()).append('@').append(fact.about()).append(fact.number());
      }
    }
    return said.toString();
  }
}
