package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.language.Pass;

class FactFilterTest {
  @Test
  void every_figure_a_rule_compares_with_is_seen_and_most_others_are_not() {
    RuleBase rules = Floors.advisor().rules();
    Knowledge knowledge = Floors.advisor().knowledge();
    long all = knowledge.figures().all().size();
    for (Pass pass : Pass.values()) {
      long seen = knowledge.figures().all().stream().filter(one -> rules.sees(pass, one)).count();
      assertThat(seen).as(pass + " sees figures").isLessThan(all / 2);
    }
    Figure edge = knowledge.figures().get("large-format-edge");
    assertThat(rules.sees(Pass.UNDERSTAND, edge)).isTrue();
  }

  @Test
  void a_fact_no_rule_of_the_pass_asks_for_is_not_seen_and_one_it_asks_for_is() {
    RuleBase rules = Floors.advisor().rules();
    Fact deck = Fact.stated("subfloor.deck", "deck", "", "OSB", Double.NaN);
    Fact other = Fact.stated("x", "a name no rule knows", "", "such a value", Double.NaN);
    assertThat(rules.sees(Pass.UNDERSTAND, deck)).isTrue();
    assertThat(rules.sees(Pass.UNDERSTAND, other)).isFalse();
  }
}
