package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.InterviewBook;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/** Only what could change the advice is asked, and all of that. */
class InterviewTest {
  private static final int FLOORS = Integer.getInteger("interviews", 1);
  private static final int ASKING = 3;
  private static final long PATIENCE = 5; // minutes; only so that a wait without end fails
  private static final FactBook BOOK = Floors.advisor().knowledge().facts();

  @Test
  void answering_a_question_that_is_not_asked_changes_nothing() throws Exception {
    long seed = Long.getLong("seed", 9L);
    RandomFloors floors = new RandomFloors(BOOK, seed);
    Interview interview = interview();
    int skipped = 0;
    for (int i = 0; i < FLOORS; ) {
      Answers answers;
      try {
        answers = Answers.of(BOOK, "made up", bytes(floors.next(Map.of())));
      } catch (ScenarioFaults contradiction) {
        continue;
      }
      i++;
      skipped += nothingChanges(interview, answers, interview.open(answers), "floor " + i);
    }
    assertThat(skipped).as("answers tried").isGreaterThan(50);
  }

  @Test
  void after_an_interview_no_answer_to_a_question_that_was_skipped_changes_the_advice()
      throws Exception {
    for (int i = 0; i < Integer.getInteger("interviews", 1); i++) {
      long seed = Long.getLong("seed", 9L) + i;
      Random random = new Random(seed);
      Interview interview = interview();
      Answers answers = Answers.of(BOOK, "made up", bytes(newcomer(random)));
      int asked = 0;
      Optional<Place> next = interview.next(answers);
      while (next.isPresent()) {
        asked++;
        answers = said(answers, next.get(), random);
        next = interview.next(answers);
      }
      String who = "newcomer " + seed + " after " + asked + " questions";
      assertThat(asked).as(who).isPositive();
      assertThat(nothingChanges(interview, answers, List.of(), who)).as(who).isGreaterThan(50);
      assertThat(nothingChangesTogether(interview, answers, random, who)).as(who).isPositive();
    }
  }

  /** Answers several of the questions that were not asked at once, whichever; tells how often. */
  private static int nothingChangesTogether(
      Interview interview, Answers answers, Random random, String who) {
    Advisor advisor = Floors.advisor().remembering();
    DecisionDigest now = DecisionDigest.of(advisor.advise(answers.scenario()));
    int tried = 0;
    for (int sample = 0; sample < 40; sample++) {
      Scenario other = answers.scenario();
      List<String> said = new ArrayList<>();
      for (Place place : answers.places()) {
        boolean asked =
            answers.has(place) || answers.isSaidOtherwise(place) || !interview.fits(answers, place);
        if (!asked && random.nextInt(3) == 0) {
          String value = pick(TriedValues.of(answers.scenario(), place), random);
          Optional<Scenario> changed = TriedValues.changed(other, place, value);
          if (changed.isPresent()) {
            other = changed.get();
            said.add(place + ": " + value);
          }
        }
      }
      tried += said.size() > 1 ? 1 : 0;
      assertThat(DecisionDigest.of(advisor.advise(other))).as("%s: %s", who, said).isEqualTo(now);
    }
    return tried;
  }

  /**
   * Several ask of one floor at once, as a page does. Each question is thought through on all
   * cores, and a core that waits for another takes up the next question: nobody may then wait for
   * themselves.
   */
  @Test
  void those_who_ask_of_the_same_floor_at_once_are_all_answered() throws Exception {
    Answers answers = Answers.of(BOOK, "made up", bytes(newcomer(new Random(1))));
    Interview interview = interview();
    ExecutorService people = Executors.newFixedThreadPool(ASKING);
    try {
      List<Future<List<Place>>> asked = new ArrayList<>();
      for (int i = 0; i < ASKING; i++) {
        asked.add(people.submit(() -> interview.likely(answers)));
      }
      List<Place> first = asked.get(0).get(PATIENCE, TimeUnit.MINUTES);
      for (Future<List<Place>> one : asked) {
        assertThat(one.get(PATIENCE, TimeUnit.MINUTES)).isEqualTo(first);
      }
    } finally {
      people.shutdownNow();
    }
  }

  /** Tries each value of each question that is not open; tells how many. */
  private static int nothingChanges(
      Interview interview, Answers answers, List<Place> open, String who) {
    Advisor advisor = Floors.advisor().remembering();
    DecisionDigest now = DecisionDigest.of(advisor.advise(answers.scenario()));
    int tried = 0;
    for (Place place : answers.places()) {
      if (answers.has(place) || open.contains(place) || !interview.fits(answers, place)) {
        continue;
      }
      if (answers.isSaidOtherwise(place)) { // saying it again would contradict the answer
        continue;
      }
      for (String value : TriedValues.of(answers.scenario(), place)) {
        Scenario other;
        try {
          other = answers.scenario().with(place, value);
        } catch (ScenarioFaults impossible) {
          continue;
        }
        tried++;
        assertThat(DecisionDigest.of(advisor.advise(other)))
            .as("%s, seed %s: %s: %s", who, Long.getLong("seed", 9L), place, value)
            .isEqualTo(now);
      }
    }
    return tried;
  }

  /** A floor of which only the required facts are known. */
  private static String newcomer(Random random) {
    return """
        scenario: Made up
        practice: uk
        room: {use: %s}
        subfloor: {deck: '%s'}
        tile: {material: %s, length: 600 mm, width: 300 mm}
        """
        .formatted(
            pick(BOOK.find("room.use").orElseThrow().of(), random),
            pick(BOOK.find("subfloor.deck").orElseThrow().of(), random),
            pick(BOOK.find("tile.material").orElseThrow().of(), random));
  }

  /** Two answers in three are that nobody knows. */
  private static Answers said(Answers answers, Place place, Random random) throws ScenarioFaults {
    boolean list = place.fact().kind() == Kind.LIST || place.fact().kind() == Kind.READINGS;
    if (!list && random.nextInt(3) == 0) {
      try {
        List<String> values = TriedValues.of(answers.scenario(), place);
        return answers.with(place, pick(values, random));
      } catch (ScenarioFaults impossible) {
        // Then nobody knows.
      }
    }
    return answers.with(place, Answers.UNKNOWN);
  }

  private static String pick(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  @Test
  void what_could_stop_the_work_is_asked_before_what_makes_the_advice_finer() throws Exception {
    Interview interview = interview();
    Answers answers = Answers.of(BOOK, "boards", bytes(BARE));
    List<Boolean> decides = new ArrayList<>();
    Optional<Place> next = interview.next(answers);
    while (next.isPresent()) {
      decides.add(interview.decides(answers, next.get()));
      answers = answers.with(next.get(), Answers.UNKNOWN);
      next = interview.next(answers);
    }
    assertThat(decides).contains(true, false);
    assertThat(decides.lastIndexOf(true)).isLessThan(decides.indexOf(false));
  }

  @Test
  void what_only_sheets_stone_or_heating_have_is_not_asked_of_boards_and_fired_tiles()
      throws Exception {
    Answers answers = Answers.of(BOOK, "boards", bytes(BARE));
    assertThat(interview().open(answers))
        .extracting(Place::id)
        .doesNotContain(
            "subfloor.moisture-resistant", "subfloor.swollen", "tile.gauged", "heating.running");
    Answers sheets =
        Answers.of(BOOK, "sheets", bytes(BARE.replace("square-edged boards", "chipboard")));
    assertThat(interview().open(sheets))
        .extracting(Place::id)
        .contains("subfloor.moisture-resistant");
  }

  @Test
  void every_picture_fits_a_narrow_terminal() {
    InterviewBook words = interview().book();
    assertThat(
            BOOK.definitions().stream().flatMap(fact -> words.help(fact).text("picture").lines()))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(60));
  }

  @Test
  void every_phrase_comes_to_a_value_that_a_scenario_may_say() throws Exception {
    InterviewBook words = interview().book();
    int known = 0;
    for (FactDefinition fact : BOOK.definitions()) {
      for (InterviewBook.Phrase one : words.phrases(fact)) {
        known++;
        if (!fact.ofEntries()) {
          Answers said = Answers.none(BOOK).with(new Place(fact, ""), one.value());
          assertThat(said.said()).as("%s: %s", fact.key(), one.words()).isNotEmpty();
        }
      }
    }
    assertThat(known).isGreaterThan(600);
  }

  @Test
  void every_question_asked_has_an_answer_that_changes_the_advice() throws Exception {
    Interview interview = interview();
    Answers answers = Answers.of(BOOK, "boards", bytes(BARE));
    DecisionDigest now = DecisionDigest.of(Floors.advisor().advise(answers.scenario()));
    List<Place> open = interview.open(answers);
    assertThat(open).isNotEmpty();
    for (Place place : open) {
      boolean changes = false;
      for (String value : TriedValues.of(answers.scenario(), place)) {
        try {
          Scenario other = answers.scenario().with(place, value);
          changes |= !DecisionDigest.of(Floors.advisor().advise(other)).equals(now);
        } catch (ScenarioFaults impossible) {
          continue;
        }
      }
      assertThat(changes).as("%s changes something", place).isTrue();
    }
  }

  @Test
  void a_question_that_a_slab_cannot_have_is_not_asked_of_it() throws Exception {
    Answers slab =
        Answers.of(BOOK, "slab", bytes(BARE.replace("square-edged boards", "concrete slab")));
    assertThat(interview().open(slab))
        .extracting(Place::id)
        .doesNotContain("subfloor.joists.depth", "subfloor.board width")
        .contains("subfloor.damp-proof membrane");
  }

  @Test
  void required_facts_come_first_and_what_can_be_said_one_way_only_is_not_asked() {
    Answers begun = Interview.begun(Answers.none(BOOK));
    assertThat(interview().open(begun))
        .extracting(Place::id)
        .containsExactly(
            "room.use", "subfloor.deck", "tile.material", "tile.length", "tile.width", "scenario");
  }

  @Test
  void why_names_rules_that_read_the_answer_and_what_would_change() throws Exception {
    Answers answers = Answers.of(BOOK, "boards", bytes(BARE));
    Place rot = new Place(BOOK.find("subfloor.condition.rot").orElseThrow(), "");
    Interview.Why why = interview().why(answers, rot);
    assertThat(why.rules()).isNotEmpty();
    assertThat(why.changes()).extracting(WhatIf.Otherwise::value).contains("yes");
  }

  @Test
  void every_fact_has_a_question_in_plain_words() {
    assertThat(BOOK.definitions())
        .allSatisfy(fact -> assertThat(fact.ask().contains("?")).as(fact.key()).isTrue());
  }

  @Test
  void every_value_tried_is_one_that_a_scenario_may_say() throws Exception {
    Answers answers = Answers.of(BOOK, "boards", bytes(BARE));
    for (Place place : answers.places()) {
      long good =
          TriedValues.of(answers.scenario(), place).stream()
              .filter(value -> takes(answers, place, value))
              .count();
      boolean ofSolid = place.id().startsWith("heating.") || good > 0;
      assertThat(ofSolid).as("%s has an answer", place).isTrue();
    }
  }

  @Test
  void what_is_written_reads_back_to_the_same_facts() throws Exception {
    RandomFloors floors = new RandomFloors(BOOK, 44);
    int read = 0;
    for (int i = 0; i < 200; i++) {
      Answers answers;
      try {
        answers = Answers.of(BOOK, "made up", bytes(floors.next(Map.of())));
      } catch (ScenarioFaults contradiction) {
        continue;
      }
      read++;
      String yaml = answers.file(List.of("A head: with a colon"), place -> "Is it # so? " + place);
      Scenario again = Floors.reader().read("again", bytes(yaml));
      assertThat(said(again)).isEqualTo(said(answers.scenario()));
      assertThat(again.outline()).isEqualTo(answers.scenario().outline());
      assertThat(again.readings()).isEqualTo(answers.scenario().readings());
    }
    assertThat(read).isGreaterThan(50);
  }

  private static final String BARE =
      """
      scenario: Bare
      practice: uk
      room: {use: bathroom}
      subfloor: {deck: square-edged boards}
      tile: {material: porcelain, length: 600 mm, width: 600 mm}
      """;

  private static boolean takes(Answers answers, Place place, String value) {
    try {
      answers.scenario().with(place, value);
      return true;
    } catch (ScenarioFaults e) {
      return false;
    }
  }

  private static List<String> said(Scenario scenario) {
    List<String> said = new ArrayList<>();
    for (StatedFact given : scenario.givens()) {
      said.add(given.key() + '@' + given.about() + '=' + given.state() + ' ' + given.text());
    }
    return said;
  }

  private static Interview interview() {
    try {
      return new Interview(Floors.advisor(), InterviewBook.load(RuleFiles.shipped(), BOOK));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
