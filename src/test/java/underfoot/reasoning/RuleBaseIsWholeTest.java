package underfoot.reasoning;

import underfoot.language.Rule;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.RuleNote;
import underfoot.scenario.RuleFiles;

/** The shipped rule base refers to nothing that is not there. */
class RuleBaseIsWholeTest {
  @Test
  void every_figure_wording_layer_source_and_exception_that_is_named_is_there() throws Exception {
    assertThat(RuleCheck.faults(RuleFiles.shipped(), Floors.advisor().knowledge())).isEmpty();
  }

  @Test
  void every_rule_file_is_compiled_into_the_program() throws Exception {
    Set<String> compiled = new HashSet<>();
    for (RuleNote note : Floors.advisor().rules().notes()) {
      compiled.add(note.id());
    }
    Set<String> written = new HashSet<>();
    for (Rule rule : Rule.readAll(RuleFiles.shipped())) {
      written.add(rule.note().id());
    }
    assertThat(compiled).isEqualTo(written);
  }

  @Test
  void the_compiled_rules_say_the_same_of_themselves_as_their_files() throws Exception {
    Set<RuleNote> written = new HashSet<>();
    for (Rule rule : Rule.readAll(RuleFiles.shipped())) {
      written.add(rule.note());
    }
    assertThat(new HashSet<>(Floors.advisor().rules().notes())).isEqualTo(written);
  }

  @Test
  void there_are_at_least_120_rules_in_at_least_10_files() throws Exception {
    Set<String> files = new HashSet<>();
    int rules = 0;
    for (Rule rule : Rule.readAll(RuleFiles.shipped())) {
      files.add(rule.file());
      rules++;
    }
    assertThat(rules).isGreaterThanOrEqualTo(120);
    assertThat(files).hasSizeGreaterThanOrEqualTo(10);
  }
}
