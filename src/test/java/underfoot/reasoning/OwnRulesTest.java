package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.buildup.StopFinding;
import underfoot.language.RuleSet;
import underfoot.plan.Planner;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;

/** A person's own copy of the rules is the same as the shipped ones, until something is changed. */
class OwnRulesTest {
  @Test
  void an_unchanged_copy_holds_the_same_rules() throws Exception {
    RuleSet own = RuleSet.read(RuleFiles.of(java.nio.file.Path.of("rules")));
    assertThat(RuleBase.of(own).notes()).isEqualTo(Floors.advisor().rules().notes());
  }

  @Test
  void where_no_rule_offers_a_way_the_work_stops_for_that_reason() throws Exception {
    Scenario floor = Floors.change(Floors.read("slab"), "subfloor.deck", "beam and block");
    assertThat(stops(Floors.advisor(), floor)).doesNotContain("RANK-91");
    String file = "propose/23-solid-ways.dslr";
    String rules = new String(RuleFiles.shipped().read(file), StandardCharsets.UTF_8);
    String kept = rules.replaceAll("The base is bound with .*\n", "The base is never built upon\n");
    kept = kept.replaceAll("The base movement is at its bearings", "The base kind is screed");
    Advisor advisor = own(file, kept);
    assertThat(stops(advisor, floor)).contains("RANK-91");
  }

  @Test
  void of_a_rule_for_each_row_the_row_that_is_changed_is_told() throws Exception {
    String file = "tables/ranking.yaml";
    String rows = new String(RuleFiles.shipped().read(file), StandardCharsets.UTF_8);
    String changed = rows.replace("by: verdict order, rank: 10", "by: verdict order, rank: 11");
    assertThat(changed).isNotEqualTo(rows);
    assertThat(RulesCompared.of(Floors.advisor(), own(file, changed), List.of()).rules())
        .extracting(RulesCompared.Changed::id)
        .containsExactly("RANK-01/what-guidance-allows");
  }

  private static Advisor own(String file, String content) throws Exception {
    Overlay own = new Overlay().with(file, content.getBytes(StandardCharsets.UTF_8));
    return new Advisor(
        RuleBase.of(RuleSet.read(own)),
        Floors.advisor().knowledge(),
        new Planner(Floors.advisor().knowledge().prices()));
  }

  private static List<String> stops(Advisor advisor, Scenario floor) {
    return advisor.advise(floor).general().stream()
        .filter(StopFinding.class::isInstance)
        .map(one -> one.because().rule().id())
        .toList();
  }
}
