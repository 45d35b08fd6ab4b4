package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underfoot.language.Effect;
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
                "Of (\\d+) rules that state a fact of the trade, (\\d+) name a document \\((\\d+)"
                    + " %\\): (\\d+) were read in the text itself,\\s+(\\d+) in a page that quotes"
                    + " it, (\\d+) are named from memory")
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

  /** A standard, a guide of a public body or a handbook, by its number. */
  private static final Pattern DOCUMENT =
      Pattern.compile(
          "\\b(?:BS EN|EN ISO|ISO|BS|EN|DIN|ANSI|ASTM|ACI|ETAG|HSG|EH|INDG|BRE Digest|TCNA|NHBC"
              + "|Approved Document) ?[A-Z]*[0-9][0-9.]*(?:-[0-9]+)?|\\bApproved Document [A-Z]\\b"
              + "|\\b(?:TCNA Handbook|NHBC Standards)\\b");

  /** Standards that define classes and say of none where it is to be used. */
  private static final Set<String> OF_CLASSES =
      Set.of("en-12004", "en-13888", "en-13813", "iso-13007-1");

  @Test
  void no_two_entries_of_the_bibliography_are_one_document() {
    Map<String, String> documents = new HashMap<>();
    for (Source source : KNOWLEDGE.sources().values()) {
      Matcher names = DOCUMENT.matcher(source.title());
      while (names.find()) {
        String before = documents.put(names.group(), source.id());
        assertThat(before == null || before.equals(source.id()))
            .as(names.group() + ": " + source.id() + " and " + before)
            .isTrue();
      }
    }
    assertThat(documents).hasSizeGreaterThan(60);
  }

  @Test
  void every_standard_stands_with_its_edition_or_says_that_it_is_not_recalled() {
    Pattern year = Pattern.compile("(?:19|20)[0-9]{2}");
    for (Source source : KNOWLEDGE.sources().values()) {
      if (DOCUMENT.matcher(source.title()).find()) {
        assertThat(
                year.matcher(source.title()).find()
                    || source.note().toLowerCase(Locale.ROOT).contains("edition"))
            .as(source.id() + ": " + source.title())
            .isTrue();
      }
    }
  }

  @Test
  void the_documents_that_a_tiler_in_britain_is_held_to_are_there() {
    List<String> titles = KNOWLEDGE.sources().values().stream().map(Source::title).toList();
    for (String wanted :
        List.of(
            "BS 5385-3:2014",
            "BS 5385-5:2009",
            "BS 8000-11:2011",
            "BS 8203:2017",
            "BS 8204-1:2003",
            "BS 8204-5:2004",
            "BS 8204-7:2003",
            "BS 5250:2021",
            "Approved Document A",
            "Approved Document B",
            "Approved Document C",
            "Approved Document E",
            "Approved Document F",
            "Approved Document K",
            "Approved Document M",
            "Construction (Design and Management) Regulations 2015",
            "Control of Substances Hazardous to Health Regulations 2002",
            "Work at Height Regulations 2005",
            "Manual Handling Operations Regulations 1992")) {
      assertThat(titles).as(wanted).anyMatch(title -> title.contains(wanted));
    }
  }

  @Test
  void where_a_class_is_to_be_used_is_told_by_no_standard_that_only_defines_it() {
    Set<Effect.Verb> uses =
        EnumSet.of(Effect.Verb.GRADE, Effect.Verb.SAY, Effect.Verb.LAY, Effect.Verb.LAY_AS);
    assertThat(
            Floors.advisor().rules().set().rules().stream()
                .filter(rule -> OF_CLASSES.contains(Source.key(rule.note().source())))
                .filter(rule -> rule.effects().stream().anyMatch(one -> uses.contains(one.verb())))
                .map(Rule::key))
        .isEmpty();
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
