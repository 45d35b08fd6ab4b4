package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.scenario.RuleFiles;

/**
 * The reasons of the rules read as sentences, and none was left standing when a rule was copied.
 */
class ReasonsTest {
  private static final int LONGEST = 150;

  /** Two conclusions of one reason: the board's bed is laid, and it must touch the board. */
  private static final Set<String> FOR_TWO_THINGS =
      Set.of("A board with hollows beneath it drums or gives way, and cracks the grout");

  @Test
  void every_reason_is_one_plain_sentence_without_its_stop() throws Exception {
    for (Rule rule : RuleSet.read(RuleFiles.shipped()).rules()) {
      assertThat(rule.note().reason())
          .as(rule.note().id())
          .matches("[A-Z][^.!?{}\\[\\]<>@]*[a-z0-9%)]")
          .doesNotContain("  ")
          .doesNotContainPattern("[A-Z]{3,}-\\d")
          .contains(" ")
          .hasSizeLessThanOrEqualTo(LONGEST);
    }
  }

  /** Rules that share a reason are one thought for several materials, so they conclude alike. */
  @Test
  void rules_of_one_file_that_share_a_reason_conclude_by_the_same_sentences() throws Exception {
    Map<String, Set<Set<String>>> conclusions = new TreeMap<>();
    each(
        (rule, sentences) -> {
          if (!FOR_TWO_THINGS.contains(rule.note().reason())) {
            conclusions
                .computeIfAbsent(rule.file() + ": " + rule.note().reason(), key -> new HashSet<>())
                .add(sentences);
          }
        });
    assertThat(conclusions).hasSizeGreaterThan(500);
    conclusions.values().removeIf(different -> different.size() == 1);
    assertThat(conclusions).as("one reason for different things").isEmpty();
  }

  @Test
  void a_reason_for_two_things_is_still_one() throws Exception {
    Map<String, Set<Set<String>>> conclusions = new TreeMap<>();
    each(
        (rule, sentences) ->
            conclusions
                .computeIfAbsent(rule.note().reason(), key -> new HashSet<>())
                .add(sentences));
    for (String reason : FOR_TWO_THINGS) {
      assertThat(conclusions.get(reason)).as(reason).hasSizeGreaterThan(1);
    }
  }

  private static void each(BiConsumer<Rule, Set<String>> look) throws RuleFaults {
    for (Rule rule : RuleSet.read(RuleFiles.shipped()).rules()) {
      Set<String> sentences = new TreeSet<>();
      rule.consequences().forEach(said -> sentences.add(String.valueOf(said.sentence())));
      look.accept(rule, sentences);
    }
  }
}
