package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.MissingKnowledge;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.reasoning.Mutants.Mutant;
import underfoot.reasoning.RuleCasesTest.RuleCase;

/** Deleting any one rule makes the build fail. */
class EveryRuleIsMissedTest {
  /** How many are truly taken out of the compiled rules; for all of them there is a case. */
  private static final int TAKEN_OUT = Integer.getInteger("taken.out", 12);

  @Test
  void a_rule_that_is_taken_out_leaves_a_case_without_a_rule() throws Exception {
    Set<String> cases = new HashSet<>();
    for (RuleCase one : RuleCasesTest.cases()) {
      cases.add(one.rule());
    }
    for (Rule rule : Floors.advisor().rules().set().rules()) {
      boolean ofLayersAlone =
          Floors.advisor()
              .rules()
              .set()
              .of(Pass.NEXT)
              .contains(rule); // LayersBesideTest has stacks for these
      if (!RuleCasesTest.IN_OWN_RULES.contains(rule.key()) && !ofLayersAlone) {
        assertThat(cases).contains(rule.key());
      }
    }
  }

  @Test
  void a_rule_that_is_taken_out_no_longer_fires_on_its_floor() throws Exception {
    Mutants mutants = new Mutants();
    List<Mutant> deleted =
        new ArrayList<>(
            mutants.all().stream()
                .filter(one -> one.wrong() == null && one.pass() != Pass.NEXT)
                .toList());
    Collections.shuffle(deleted, new Random(7));
    Map<String, RuleCase> byName = NearMiss.byName();
    for (Mutant mutant : deleted.subList(0, Math.min(TAKEN_OUT, deleted.size()))) {
      String id = mutant.rule().key();
      Advisor without = mutants.advisor(mutant);
      String says;
      try {
        says = RuleCasesTest.says(without, byName.get(id));
      } catch (MissingKnowledge told) {
        continue; // what it concludes is missed elsewhere: the case fails as well
      }
      assertThat(says).as(id).isEmpty();
      assertThat(RuleCasesTest.says(Floors.advisor(), byName.get(id))).as(id).isNotEmpty();
    }
  }
}
