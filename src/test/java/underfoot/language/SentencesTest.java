package underfoot.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Overlay;

/** Sentences, what they stand for, and rules are read as they are written or refused by place. */
class SentencesTest {
  @Test
  void a_place_takes_as_few_words_as_let_the_whole_line_fit() {
    Template template = Template.of("Assume the {name} is {value}");
    assertThat(template.match("Assume the first deck joint is one that is whole"))
        .hasValue(Map.of("name", "first deck joint", "value", "one that is whole"));
    assertThat(template.match("Assume the first deck joint")).isEmpty();
    assertThat(template.match("Assume the  is x")).isEmpty();
  }

  @Test
  void a_place_that_names_its_words_takes_no_others() {
    Template template = Template.of("Rank {order:number} by {criterion}");
    assertThat(template.match("Rank 10 by cost")).isPresent();
    assertThat(template.match("Rank ten by cost")).isEmpty();
    assertThat(Template.of("It is {a:one|two} of it").match("It is three of it")).isEmpty();
  }

  @Test
  void the_sentence_that_says_most_in_its_own_words_is_meant() {
    Vocabulary vocabulary = Floors.advisor().rules().set().vocabulary();
    Said said = vocabulary.consequence("Note at that thing find-the-base", 7).orElseThrow();
    assertThat(said.effect())
        .isEqualTo(new Effect(Effect.Verb.NOTE, List.of("find-the-base", Effect.ABOUT)));
    assertThat(said.number()).isEqualTo(7);
  }

  @Test
  void what_a_sentence_stands_for_is_read_into_patterns() {
    List<Pattern> patterns =
        MeaningReader.patterns(
            "$low : Fact( name == \"{name}\", about == \"\" ) not Figure( name == \"f\", number <="
                + " $low.number )");
    assertThat(patterns).hasSize(2);
    assertThat(patterns.get(0).variable()).isEqualTo("low");
    assertThat(patterns.get(1).quantity()).isEqualTo(Pattern.Quantity.NONE);
    assertThat(patterns.get(1).constraints().get(1).variables()).containsExactly("low");
  }

  @Test
  void a_field_nobody_has_and_words_compared_as_numbers_are_refused() {
    assertThatThrownBy(() -> MeaningReader.patterns("Fact( colour == \"red\" )"))
        .hasMessageContaining("one of Fact's fields")
        .hasMessageContaining("found:");
    assertThatThrownBy(() -> MeaningReader.patterns("Fact( name < \"red\" )"))
        .hasMessageContaining("numbers compared by");
    assertThatThrownBy(() -> MeaningReader.effect("remedy( \"a\" )"))
        .hasMessageContaining("remedy with 2 words");
  }

  @Test
  void a_sentence_that_leans_on_nothing_is_told_with_its_own_line() {
    assertThat(faults("    Its leaf must then never be cut"))
        .contains(
            "understand/99-test.dslr:7: TEST-01 says 'Its leaf must then never be cut', which leans");
  }

  @Test
  void a_misspelt_sentence_is_told_with_its_own_line_and_the_nearest() {
    assertThat(faults("    Put rihgt first find-the-base"))
        .contains("understand/99-test.dslr:7:", "nearest: Put right first {wording}");
  }

  @Test
  void every_fault_of_a_file_is_told_at_once() {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    RuleSet.read(
        new Overlay()
            .with(
                "understand/99-test.dslr",
                "what is this\nrule \"TEST-01 a\"\nwhen\n  x\nthen\n  y\n".getBytes()),
        faults);
    assertThat(faults).hasSize(4).allMatch(fault -> fault.line() > 0);
  }

  private static String faults(String consequence) {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    String rule =
        "rule \"TEST-01 a\"\n@reason(\"a\")\n@source(\"common-practice\")\nwhen\n    The deck is OSB"
            + "\nthen\n"
            + consequence
            + "\nend\n";
    RuleSet.read(new Overlay().with("understand/99-test.dslr", rule.getBytes()), faults);
    return new RuleFaults(faults).getMessage();
  }
}
