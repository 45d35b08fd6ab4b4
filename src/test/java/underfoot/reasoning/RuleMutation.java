package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import underfoot.reasoning.Mutants.Mutant;
import underfoot.reasoning.RuleCasesTest.RuleCase;

/**
 * Puts one thing wrong in the rules, again and again, and sees whether the tests that look at
 * advice would notice. No part of the build: {@code mvn -o test -Dtest=RuleMutation -Dmutants=300
 * -Dseed=1}, with {@code -Drules=DOOR-.*} these rules only. It judges by what {@link RuleCasesTest}
 * and {@link RuleStaysQuietTest} hold of the rule. Reasons are not swapped: no test holds a rule to
 * the words of its reason.
 */
class RuleMutation {
  private static final System.Logger LOG = System.getLogger("underfoot.mutation");

  @Test
  void most_of_what_is_put_wrong_is_noticed() throws Exception {
    long seed = Long.getLong("seed", 1);
    Mutants mutants = new Mutants();
    List<Mutant> all = new ArrayList<>(mutants.all());
    String rules = System.getProperty("rules", ".*");
    all.removeIf(mutant -> !mutant.rule().key().matches(rules));
    int there = all.size();
    Collections.shuffle(all, new Random(seed));
    all = all.subList(0, Math.min(all.size(), Integer.getInteger("mutants", 300)));
    Map<String, List<RuleCase>> cases = new LinkedHashMap<>();
    Map<String, RuleCase> byName = NearMiss.byName();
    for (RuleCase one : RuleCasesTest.cases()) {
      cases.computeIfAbsent(one.rule(), rule -> new ArrayList<>()).add(one);
    }
    Map<String, String> says = RuleCasesTest.conclusions();
    Map<String, List<NearMiss>> quiet = NearMiss.all();
    Map<String, int[]> bySort = new TreeMap<>();
    List<String> survivors = new ArrayList<>();
    for (Mutant mutant : all) {
      String rule = mutant.rule().key();
      Advisor advisor = mutants.advisor(mutant);
      boolean killed =
          noticed(advisor, rule, cases.getOrDefault(rule, List.of()), says.getOrDefault(rule, ""))
              || loud(advisor, quiet.getOrDefault(rule, List.of()), byName);
      int[] count = bySort.computeIfAbsent(mutant.sort(), sort -> new int[2]);
      count[killed ? 0 : 1]++;
      if (!killed) {
        survivors.add(rule + ", " + mutant.sort() + ": " + mutant.told());
      }
    }
    StringBuilder told = new StringBuilder();
    bySort.forEach(
        (sort, n) ->
            told.append("\n  ")
                .append(sort)
                .append(": ")
                .append(n[0])
                .append(" of ")
                .append(n[0] + n[1]));
    LOG.log(
        Level.INFO,
        "seed "
            + seed
            + ", "
            + all.size()
            + " mutants of "
            + there
            + ", noticed "
            + (all.size() - survivors.size())
            + told
            + "\nnot noticed:\n  "
            + String.join("\n  ", survivors));
    assertThat(survivors.size() * 100)
        .as("mutants not noticed: %s", survivors)
        .isLessThanOrEqualTo(all.size() * (100 - Integer.getInteger("least.noticed", 85)));
  }

  private static boolean noticed(Advisor advisor, String rule, List<RuleCase> cases, String says) {
    try {
      boolean first = true;
      for (RuleCase one : cases) {
        String said = RuleCasesTest.says(advisor, one);
        if ((first ? !said.equals(says) : said.isEmpty())
            || RuleCasesTest.speak(advisor, one, RuleCasesTest.changes(one, true)).contains(rule)) {
          return true;
        }
        first = false;
      }
      return false;
    } catch (Exception broken) {
      return true; // a test that ends so has failed
    }
  }

  private static boolean loud(
      Advisor advisor, List<NearMiss> misses, Map<String, RuleCase> byName) {
    try {
      for (NearMiss miss : misses) {
        if (miss.broken(miss.heard(advisor, byName))) {
          return true;
        }
      }
      return false;
    } catch (Exception broken) {
      return true;
    }
  }
}
