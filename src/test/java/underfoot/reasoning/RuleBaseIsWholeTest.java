package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import underfoot.language.Rule;
import underfoot.language.RuleSet;

/** The shipped rule base refers to nothing that is not there. */
class RuleBaseIsWholeTest {
  private final RuleSet set = Floors.advisor().rules().set();

  @Test
  void every_figure_wording_layer_source_and_exception_that_is_named_is_there() {
    assertThat(RuleCheck.faults(set, Floors.advisor().knowledge())).isEmpty();
  }

  @Test
  void there_are_at_least_120_rules_in_at_least_10_files() {
    assertThat(set.rules()).hasSizeGreaterThanOrEqualTo(120);
    assertThat(set.rules().stream().map(Rule::file).collect(Collectors.toSet()))
        .hasSizeGreaterThanOrEqualTo(10);
  }
}
