package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underfoot.language.Rule;
import underfoot.reasoning.Floors;

/** Every rule says how it is known, and no better than it is. */
class SourcesTest {
  private static final Path DOCUMENTS = Path.of("src/test/resources/published/rule-documents.txt");
  private static final Knowledge KNOWLEDGE = Floors.advisor().knowledge();

  private static Stream<String> citations() {
    return Stream.concat(
        Floors.advisor().rules().set().rules().stream().map(rule -> rule.note().source()),
        KNOWLEDGE.kinds().citations().stream());
  }

  private static Status status(String citation) {
    return KNOWLEDGE.statuses().get(KNOWLEDGE.source(citation).status());
  }

  @Test
  void no_rule_cites_a_document_as_better_known_than_the_references_give_it() throws IOException {
    Map<String, Rule> rules = new HashMap<>();
    Floors.advisor().rules().set().rules().forEach(rule -> rules.put(rule.note().key(), rule));
    List<String> order = List.copyOf(KNOWLEDGE.statuses().keySet());
    List<String> wrong = new ArrayList<>();
    for (String line : Files.readAllLines(DOCUMENTS)) {
      if (line.startsWith("#")) {
        continue;
      }
      String[] row = line.split(" \\| ");
      Rule rule = rules.get(row[0]);
      assertThat(rule).as(row[0]).isNotNull();
      String citation = rule.note().source();
      assertThat(Source.key(citation)).as(row[0]).isEqualTo(row[1]);
      int best = order.indexOf(row[2].equals("seen") ? "published" : "named-from-memory");
      if (order.indexOf(status(citation).id()) < best) {
        wrong.add(line + ", cited as " + status(citation).id());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void of_the_rules_that_state_a_fact_of_the_trade_three_in_four_name_a_document() {
    List<Status> facts = citations().map(SourcesTest::status).filter(Status::fact).toList();
    long named = facts.stream().filter(Status::document).count();
    assertThat(named * 4).isGreaterThanOrEqualTo(facts.size() * 3L);
  }

  @Test
  void the_readme_tells_how_many() throws IOException {
    Map<String, Long> counts = new HashMap<>();
    citations().forEach(one -> counts.merge(status(one).id(), 1L, Long::sum));
    long facts =
        KNOWLEDGE.statuses().values().stream()
            .filter(Status::fact)
            .mapToLong(status -> counts.getOrDefault(status.id(), 0L))
            .sum();
    long named = counts.get("published") + counts.get("quoted") + counts.get("named-from-memory");
    Matcher sentence =
        Pattern.compile(
                "Of (\\d+) rules that state a fact of the trade, (\\d+) name a document \\((\\d+) %\\):"
                    + " (\\d+) were read in the text itself,\\s+(\\d+) in a page that quotes it,"
                    + " (\\d+) are named from memory")
            .matcher(Files.readString(Path.of("README.md")));
    assertThat(sentence.find()).isTrue();
    List<Long> told = new ArrayList<>();
    for (int i = 1; i <= sentence.groupCount(); i++) {
      told.add(Long.parseLong(sentence.group(i)));
    }
    assertThat(told)
        .containsExactly(
            facts,
            named,
            100 * named / facts,
            counts.get("published"),
            counts.get("quoted"),
            counts.get("named-from-memory"));
  }

  @Test
  void no_two_entries_of_the_bibliography_are_one_document() {
    Map<String, String> standards = new HashMap<>();
    Pattern number =
        Pattern.compile("^(?:BS EN|EN ISO|BS|EN|DIN|NHBC|Approved Document) [A-Z0-9-]+");
    for (Source source : KNOWLEDGE.sources().values()) {
      Matcher begins = number.matcher(source.title());
      if (begins.find()) {
        assertThat(standards.put(begins.group(), source.id())).as(source.id()).isNull();
      }
    }
  }

  @Test
  void what_is_cited_from_memory_is_known_no_better_than_that() {
    Source cited = KNOWLEDGE.source("bs-5385-3, clause 6.3.2, from memory");
    assertThat(cited.status()).isEqualTo("named-from-memory");
    assertThat(cited.title()).endsWith(", clause 6.3.2");
    assertThat(KNOWLEDGE.source("bs-5385-3, clause 6.3.4").status()).isEqualTo("quoted");
  }

  @Test
  void where_sources_differ_each_has_a_voice_and_one_is_used() {
    for (Disagreement one : KNOWLEDGE.disagreements()) {
      assertThat(one.voices()).as(one.about()).isNotEmpty();
      assertThat(one.used()).as(one.about()).isNotBlank();
      one.voices().forEach(voice -> assertThat(KNOWLEDGE.source(voice.source())).isNotNull());
    }
  }
}
