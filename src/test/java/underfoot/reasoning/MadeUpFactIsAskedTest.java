package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Remedy;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Knowledge;
import underfoot.language.RuleSet;
import underfoot.plan.Planner;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.Place;

/** A fact and a rule that exist only as files of rules are asked about. */
class MadeUpFactIsAskedTest {
  @Test
  void a_new_fact_that_a_new_rule_reads_is_asked_and_its_answer_is_written_and_heeded()
      throws Exception {
    Overlay files = Overlay.of(Path.of("src/test/resources/made-up-fact"));
    FactBook book = FactBook.load(files);
    Knowledge knowledge = Knowledge.load(files, book, "uk");
    Advisor advisor =
        new Advisor(RuleBase.of(RuleSet.read(files)), knowledge, new Planner(knowledge.prices()));
    Interview interview = new Interview(advisor, InterviewBook.load(files, book));
    Answers answers = Interview.begun(Answers.none(book));
    boolean asked = false;
    Optional<Place> next = interview.next(answers);
    while (next.isPresent() && !asked) {
      Place place = next.get();
      asked = place.id().equals("room.dance floor");
      answers =
          asked
              ? answers.with(place, "yes")
              : answers.with(
                  place, place.fact().required() ? place.fact().example() : Answers.UNKNOWN);
      next = interview.next(answers);
    }
    assertThat(asked).as("asked about the dance floor").isTrue();
    String yaml = answers.file(List.of(), place -> place.fact().ask());
    assertThat(yaml).contains("# Will people dance on this floor?\n  dance floor: yes");
    Answers again = Answers.of(book, "again", yaml.getBytes(StandardCharsets.UTF_8));
    assertThat(again.said()).isEqualTo(answers.said());
    assertThat(interview.assessment(again).orElseThrow().of(Remedy.class))
        .extracting(Remedy::wording)
        .contains("ask-a-specialist-of-dancing");
    Place dance = new Place(book.find("room.dance floor").orElseThrow(), "");
    assertThat(interview.why(again, dance).rules()).extracting(one -> one.id()).contains("XX-99");
  }
}
