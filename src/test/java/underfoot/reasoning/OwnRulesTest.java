package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.language.Pass;
import underfoot.language.RuleSet;
import underfoot.scenario.RuleFiles;

/** A person's own copy of the rules is the same as the shipped ones, until something is changed. */
class OwnRulesTest {
  @Test
  void an_unchanged_copy_holds_the_same_rules() throws Exception {
    RuleSet own = RuleSet.read(RuleFiles.of(java.nio.file.Path.of("rules")));
    assertThat(RuleBase.of(own).notes()).isEqualTo(Floors.advisor().rules().notes());
  }

  @Test
  void rules_that_feed_each_other_without_end_are_stopped_by_name() throws Exception {
    RuleSet own = RuleSet.read(Overlay.of(java.nio.file.Path.of("src/test/resources/endless")));
    assertThatThrownBy(
            () ->
                RuleBase.of(own)
                    .think(
                        Pass.UNDERSTAND,
                        Floors.advisor().knowledge(),
                        List.of(Fact.stated("subfloor.deck", "deck", "", "OSB", Double.NaN))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("feed each other without end")
        .hasMessageContaining("TEST-0");
  }
}
