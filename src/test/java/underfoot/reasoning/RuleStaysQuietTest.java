package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.reasoning.RuleCasesTest.RuleCase;

/**
 * Each rule keeps quiet on the floors of {@code rule-stays-quiet.yaml}, where all its conditions
 * hold but one; each floor is named by the case whose floor it is. {@link NearMissSearch} finds and
 * writes them.
 */
class RuleStaysQuietTest {
  private static final Path UNTOLD =
      Path.of("src/test/resources/rule-conditions-no-floor-tells.yaml");

  @Test
  void each_rule_keeps_quiet_where_only_one_of_its_conditions_fails() throws Exception {
    Map<String, RuleCase> byName = NearMiss.byName();
    Map<String, Set<Voice>> heard = new LinkedHashMap<>();
    List<NearMiss> wrong = new ArrayList<>();
    for (List<NearMiss> misses : NearMiss.all().values()) {
      for (NearMiss miss : misses) {
        if (!heard.containsKey(miss.place())) {
          heard.put(miss.place(), miss.heard(Floors.advisor(), byName));
        }
        if (miss.broken(heard.get(miss.place()))) {
          wrong.add(miss);
        }
      }
    }
    assertThat(wrong).as("rules that speak where one of their conditions does not hold").isEmpty();
  }

  @Test
  void each_near_miss_is_of_a_condition_of_its_rule() throws Exception {
    Map<String, List<String>> conditions = conditions();
    NearMiss.all()
        .forEach(
            (rule, misses) ->
                assertThat(conditions.getOrDefault(rule, List.of()))
                    .as(rule)
                    .containsAll(misses.stream().map(NearMiss::without).toList()));
  }

  /**
   * Reasons, each with rules, each with conditions; a mended or renamed one must leave the list.
   */
  @Test
  @SuppressWarnings("unchecked")
  void what_no_floor_tells_apart_is_listed_with_why_and_is_a_condition_of_its_rule()
      throws Exception {
    Map<String, List<String>> conditions = conditions();
    Map<String, Map<String, List<String>>> untold =
        new YAMLMapper().readValue(UNTOLD.toFile(), Map.class);
    Map<String, List<NearMiss>> told = NearMiss.all();
    for (Map<String, List<String>> rules : untold.values()) {
      rules.forEach(
          (rule, lines) -> {
            assertThat(conditions.getOrDefault(rule, List.of())).as(rule).containsAll(lines);
            assertThat(told.getOrDefault(rule, List.of()))
                .as("near misses of " + rule)
                .noneMatch(miss -> lines.contains(miss.without()));
          });
    }
  }

  private static Map<String, List<String>> conditions() throws RuleFaults {
    Map<String, List<String>> conditions = new TreeMap<>();
    for (Rule rule : Floors.advisor().rules().set().rules()) {
      conditions.put(rule.key(), rule.when());
    }
    return conditions;
  }
}
