package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.reasoning.RuleCasesTest.RuleCase;

/**
 * On the floor of its case, each rule gives the reason and concludes the things written down in
 * {@code rule-says.txt}, and keeps quiet on the floors of {@code rule-stays-quiet.yaml}, each named
 * by the case whose floor it is. When a rule is changed on purpose, write the first anew with
 * {@code -Dreset.rule-says=true} and read the difference; {@link RuleMutation} writes the second.
 */
class RuleSaysTest {
  static final Path SAYS = Path.of("src/test/resources/rule-says.txt");
  static final Path QUIET = Path.of("src/test/resources/rule-stays-quiet.yaml");

  @Test
  void each_rule_gives_its_reason_and_concludes_what_is_written_down() throws Exception {
    Map<String, String> says = new TreeMap<>();
    for (RuleCase one : RuleCasesTest.cases()) {
      says.putIfAbsent(one.rule(), says(Floors.advisor(), one));
    }
    if (Boolean.getBoolean("reset.rule-says")) {
      StringBuilder text = new StringBuilder();
      says.forEach((rule, said) -> text.append(rule).append(": ").append(said).append('\n'));
      Files.writeString(SAYS, text);
    }
    assertThat(says).isEqualTo(written());
  }

  @Test
  void each_rule_keeps_quiet_where_only_one_of_its_conditions_fails() throws Exception {
    Map<String, RuleCase> byName = new LinkedHashMap<>();
    for (RuleCase one : RuleCasesTest.cases()) {
      byName.putIfAbsent(one.rule(), one);
    }
    Map<String, String> wrong = new TreeMap<>();
    Map<String, Set<String>> fired = new LinkedHashMap<>();
    for (Map.Entry<String, List<String>> entry : quiet().entrySet()) {
      for (String floor : entry.getValue()) {
        if (!fired.containsKey(floor)) {
          fired.put(floor, fired(Floors.advisor(), floor, byName));
        }
        if (fired.get(floor).contains(entry.getKey())) {
          wrong.put(entry.getKey(), "fires on the floor of " + floor);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The rules that fire on the floor of {@code TMB-10} or of {@code TMB-10 missed}. */
  static Set<String> fired(Advisor advisor, String floor, Map<String, RuleCase> byName)
      throws Exception {
    String[] named = floor.split(" ");
    RuleCase one = byName.get(named[0]);
    assertThat(one).as("the case of " + named[0] + " in " + QUIET).isNotNull();
    return RuleCasesTest.fired(advisor, one, changes(one, named.length > 1));
  }

  /** The changes that make a case fire, or miss. */
  static Map<String, String> changes(RuleCase one, boolean missed) {
    Map<String, String> changes = new LinkedHashMap<>(one.fires());
    if (missed) {
      changes.putAll(one.miss());
    }
    return changes;
  }

  /** What a rule says on the floor of its case. */
  static String says(Advisor advisor, RuleCase one) throws Exception {
    if (one.proposal().isEmpty()) {
      return RuleSays.of(one.rule(), advisor.advise(RuleCasesTest.floor(one, one.fires())));
    }
    return RuleSays.of(
        one.rule(), new ArrayDeque<>(RuleCasesTest.findings(advisor, one, one.fires())));
  }

  /** What each rule is to say. */
  static Map<String, String> written() throws Exception {
    Map<String, String> written = new TreeMap<>();
    for (String line : Files.readAllLines(SAYS)) {
      int colon = line.indexOf(": ");
      written.put(line.substring(0, colon), line.substring(colon + 2));
    }
    return written;
  }

  /** Where each rule is to keep quiet. */
  @SuppressWarnings("unchecked")
  static Map<String, List<String>> quiet() {
    return Files.exists(QUIET) ? new YAMLMapper().readValue(QUIET.toFile(), Map.class) : Map.of();
  }
}
