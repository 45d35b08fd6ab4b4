package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import underfoot.language.RuleSet;
import underfoot.scenario.RuleFiles;

/** A person's own copy of the rules is the same as the shipped ones, until something is changed. */
class OwnRulesTest {
  @Test
  void an_unchanged_copy_holds_the_same_rules() throws Exception {
    RuleSet own = RuleSet.read(RuleFiles.of(java.nio.file.Path.of("rules")));
    assertThat(RuleBase.of(own).notes()).isEqualTo(Floors.advisor().rules().notes());
  }
}
