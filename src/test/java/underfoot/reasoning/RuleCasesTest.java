package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.buildup.Finding;
import underfoot.knowledge.RuleNote;
import underfoot.plan.Proposals;
import underfoot.scenario.Scenario;

/**
 * Every rule has a floor on which it fires, and a near miss on which it does not. The cases are
 * data: {@code src/test/resources/rule-cases/*.yaml}. A case starts from a floor of {@code
 * src/test/resources/floors} and changes some facts; the near miss changes a few more. A case of a
 * rule that judges proposals also names one of {@code src/test/resources/proposals}.
 */
class RuleCasesTest {
  private static final Path CASES = Path.of("src/test/resources/rule-cases");
  private static final Path PROPOSALS = Path.of("src/test/resources/proposals");

  /** Changes that begin so change the proposal; the others change the floor. */
  static final String OF_PROPOSAL = "proposal ";

  /** One case as it stands in its file. */
  record RuleCase(
      String rule,
      String from,
      String proposal,
      Map<String, String> fires,
      Map<String, String> miss) {}

  @TestFactory
  Stream<DynamicTest> each_rule_fires_on_its_floor_and_not_on_the_near_miss() throws IOException {
    return cases().stream()
        .flatMap(
            one ->
                Stream.of(
                    DynamicTest.dynamicTest(
                        one.rule() + " fires " + one.fires(),
                        () ->
                            assertThat(fired(one, one.fires()).contains(one.rule()))
                                .as(one.rule() + " fires")
                                .isTrue()),
                    DynamicTest.dynamicTest(
                        one.rule() + " does not fire " + one.miss(),
                        () -> {
                          Map<String, String> changes = new LinkedHashMap<>(one.fires());
                          changes.putAll(one.miss());
                          assertThat(speak(Floors.advisor(), one, changes))
                              .as("rules that speak")
                              .doesNotContain(one.rule());
                        })));
  }

  @Test
  void no_rule_is_without_a_case() throws IOException {
    Set<String> without = new TreeSet<>();
    for (RuleNote note : Floors.advisor().rules().notes()) {
      without.add(note.id());
    }
    for (RuleCase one : cases()) {
      without.remove(one.rule());
    }
    assertThat(without).as("rules without a case in " + CASES).isEmpty();
  }

  @Test
  void no_case_names_a_rule_that_is_not_there() throws IOException {
    Set<String> named = new TreeSet<>();
    for (RuleCase one : cases()) {
      named.add(one.rule());
    }
    for (RuleNote note : Floors.advisor().rules().notes()) {
      named.remove(note.id());
    }
    assertThat(named).as("cases of rules that do not exist").isEmpty();
  }

  private static Set<String> fired(RuleCase one, Map<String, String> changes) throws Exception {
    return fired(Floors.advisor(), one, changes);
  }

  /** The rules that conclude anything of a case's floor, or of its proposal. */
  static Set<String> fired(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    if (one.proposal().isEmpty()) {
      return Floors.rulesOf(advisor.advise(floor(one, changes)));
    }
    Set<String> found = new TreeSet<>();
    for (Finding finding : findings(advisor, one, changes)) {
      found.add(finding.getRule());
    }
    return found;
  }

  /** The rules that have anything to say, be it heeded or not. */
  static Set<String> speak(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    Set<String> rules = new TreeSet<>();
    heard(advisor, one, changes).forEach(voice -> rules.add(voice.rule()));
    return rules;
  }

  /** Who has something to say of a case's floor, or of its proposal. */
  static Set<Voice> heard(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    return one.proposal().isEmpty()
        ? Voice.of(advisor, floor(one, changes))
        : Voice.of(findings(advisor, one, changes));
  }

  /** What is found of a case's proposal. */
  static List<Finding> findings(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    return Proposals.examine(advisor, floor(one, changes), proposal(one, changes)).findings();
  }

  /** The floor of a case, changed. */
  static Scenario floor(RuleCase one, Map<String, String> changes) throws Exception {
    Scenario scenario = Floors.read(one.from());
    for (Map.Entry<String, String> change : changes.entrySet()) {
      if (!change.getKey().startsWith(OF_PROPOSAL)) {
        scenario = Floors.change(scenario, change.getKey(), change.getValue());
      }
    }
    return scenario;
  }

  /** The proposal of a case that judges one, changed. */
  static Scenario proposal(RuleCase one, Map<String, String> changes) throws Exception {
    Scenario proposal = Proposals.read(PROPOSALS.resolve(one.proposal() + ".yaml"));
    for (Map.Entry<String, String> change : changes.entrySet()) {
      if (change.getKey().startsWith(OF_PROPOSAL)) {
        String key = change.getKey().substring(OF_PROPOSAL.length());
        proposal = Floors.change(proposal, key, change.getValue());
      }
    }
    return proposal;
  }

  /** Every case, in the order of files and lines. */
  @SuppressWarnings("unchecked")
  static List<RuleCase> cases() throws IOException {
    List<RuleCase> cases = new ArrayList<>();
    YAMLMapper mapper = new YAMLMapper();
    try (Stream<Path> files = Files.list(CASES)) {
      for (Path file : files.sorted().toList()) {
        Map<String, Map<String, Object>> all = mapper.readValue(file.toFile(), Map.class);
        all.forEach(
            (rule, body) ->
                cases.add(
                    new RuleCase(
                        rule,
                        String.valueOf(body.get("from")),
                        String.valueOf(body.getOrDefault("proposal", "")),
                        changes(body.get("fires")),
                        changes(body.get("miss")))));
      }
    }
    return cases;
  }

  private static Map<String, String> changes(Object body) {
    Map<String, String> changes = new LinkedHashMap<>();
    if (body instanceof Map<?, ?> map) {
      map.forEach((key, value) -> changes.put(String.valueOf(key), String.valueOf(value)));
    }
    return changes;
  }
}
