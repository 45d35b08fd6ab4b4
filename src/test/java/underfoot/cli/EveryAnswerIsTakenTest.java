package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Phrases;
import underfoot.quantity.Quantity;
import underfoot.quantity.Unit;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Interview;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;
import underfoot.talk.Conversation;
import underfoot.talk.Known;
import underfoot.talk.Reply;

/** Each fact can be answered in each way there is, and the file says what was answered. */
class EveryAnswerIsTakenTest {
  private static final FactBook BOOK = Floors.advisor().knowledge().facts();

  private static final Conversation CONVERSATION = conversation();

  private static Conversation conversation() {
    try {
      InterviewBook order = InterviewBook.load(RuleFiles.shipped(), BOOK);
      Phrases phrases = new Phrases(Floors.advisor().knowledge().wording());
      return new Conversation(new Interview(Floors.advisor(), order), phrases);
    } catch (KnowledgeFault e) {
      throw new AssertionError(e);
    }
  }

  /** Floors between them that can have every fact; the joists of one and the screed of another. */
  private static final List<String> DECKS =
      List.of("square-edged boards", "chipboard", "cement:sand screed", "heated screed");

  /** Shared by files and people of both practices: {metric, imperial}. */
  private static final Map<String, List<String>> UNITS =
      Map.of(
          "mm", List.of("mm", "cm", "m", "in", "ft"),
          "m2", List.of("m2", "ft2"),
          "C", List.of("C", "F"),
          "kg", List.of("kg", "lb", "stone"),
          "km/h", List.of("km/h", "mph"),
          "W/m2", List.of("W/m2", "W/ft2"),
          "h", List.of("h", "days"));

  @Test
  void every_choice_is_taken_by_its_name_by_its_number_and_by_every_other_word_for_it() {
    int tried = 0;
    for (FactDefinition fact : BOOK.definitions()) {
      int n = 0;
      for (String choice : fact.of()) {
        n++;
        tried++;
        if (!fact.of().contains(Integer.toString(n))) { // a class that is a number is meant by it
          assertTaken(fact, Integer.toString(n), choice);
        }
        assertTaken(fact, choice, choice);
        assertTaken(fact, choice.toUpperCase(Locale.ROOT), choice);
      }
      fact.also().forEach((word, choice) -> assertTaken(fact, word, choice));
    }
    assertThat(tried).isGreaterThan(100);
  }

  @Test
  void several_choices_are_taken_by_their_numbers_in_the_order_said() {
    FactDefinition priorities = BOOK.find("priorities").orElseThrow();
    String both = priorities.of().get(1) + ", " + priorities.of().get(0);
    assertTaken(priorities, "2, 1", both);
    assertTaken(priorities, "2 1", both);
  }

  @Test
  void every_quantity_is_taken_in_metric_and_in_imperial_units() {
    int tried = 0;
    for (FactDefinition fact : of(Kind.QUANTITY)) {
      if (fact.dimension().units().isEmpty()) {
        value(fact, fact.example()); // a bare number, such as a pendulum value
        continue;
      }
      String base = fact.dimension().units().get(0).symbol();
      for (String symbol : UNITS.getOrDefault(base, List.of(base))) {
        Unit unit =
            fact.dimension().units().stream()
                .filter(one -> one.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        String said = inUnit(number(fact), unit);
        assertThat(number(value(fact, said))).as(said).isEqualTo(inBase(said, unit));
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(60);
  }

  @Test
  void a_fraction_of_an_inch_and_feet_and_inches_are_lengths() {
    FactDefinition thickness = BOOK.find("subfloor.thickness").orElseThrow();
    assertThat(number(value(thickness, "3/4 in"))).isEqualTo(19.05);
    assertThat(number(value(thickness, "7/8\""))).isEqualTo(22.225);
    FactDefinition span = BOOK.find("subfloor.joists.clear span").orElseThrow();
    assertThat(number(value(span, "9 ft 6 in"))).isEqualTo(2895.6);
  }

  @Test
  void every_yes_and_every_no_is_taken() {
    for (FactDefinition fact : of(Kind.YES_NO)) {
      assertTaken(fact, "yes", "yes");
      assertTaken(fact, "No", "no");
      assertTaken(fact, "y", "yes");
    }
  }

  @Test
  void every_count_year_date_text_list_and_outline_is_taken_as_its_example_says() {
    for (Kind kind :
        List.of(Kind.COUNT, Kind.YEAR, Kind.DATE, Kind.TEXT, Kind.POINTS, Kind.READINGS)) {
      for (FactDefinition fact : of(kind)) {
        if (!fact.key().endsWith("].name")) {
          value(fact, fact.example());
        }
      }
    }
    for (FactDefinition fact : of(Kind.LIST)) {
      boolean named = fact.knownBy().isEmpty();
      Answers two = taken(fact, named ? "first one, second's" : "plywood, lino");
      assertThat(two.scenario().entries(fact.key() + "[]"))
          .containsExactly(named ? "first one" : "plywood", named ? "second's" : "sheet vinyl");
      assertThat(taken(fact, "none").scenario().entries(fact.key() + "[]")).isEmpty();
    }
    FactDefinition outline = BOOK.find("room.outline").orElseThrow();
    assertThat(taken(outline, "12 ft x 9 ft 6 in").scenario().outline()).hasSize(4);
    FactDefinition spots = BOOK.find("levels.readings").orElseThrow();
    assertThat(taken(spots, "0 m, 0 m, 0 mm; 1 m, 1 m, -7 mm").scenario().readings()).hasSize(2);
  }

  @Test
  void every_fact_that_is_not_required_may_be_unknown() {
    int tried = 0;
    for (FactDefinition fact : BOOK.definitions()) {
      if (!fact.required() && !fact.key().endsWith("].name")) {
        for (String words : List.of("", "don't know", "I don't know", "no idea", "unknown")) {
          Answers answers = taken(fact, words);
          assertThat(answers.said(place(fact, answers))).contains(Answers.UNKNOWN);
        }
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(90);
  }

  private static List<FactDefinition> of(Kind kind) {
    return BOOK.definitions().stream().filter(fact -> fact.kind() == kind).toList();
  }

  private static void assertTaken(FactDefinition fact, String said, String meant) {
    assertThat(value(fact, said).text()).as("%s: %s", fact.key(), said).isEqualTo(meant);
  }

  private static StatedFact value(FactDefinition fact, String said) {
    Answers answers = taken(fact, said);
    return answers.scenario().find(fact.key(), place(fact, answers).about()).orElseThrow();
  }

  private static double number(StatedFact given) {
    return Math.round(given.number() * 1e6) / 1e6;
  }

  /** The number of a fact's own example, in the base unit. */
  private static double number(FactDefinition fact) {
    try {
      return Quantity.parse(fact.example(), fact.dimension()).value();
    } catch (Exception e) {
      throw new AssertionError(fact.key(), e);
    }
  }

  private static String inUnit(double base, Unit unit) {
    double inUnit = base / unit.factor() - unit.offset();
    return String.format(Locale.ROOT, "%.4f %s", inUnit, unit.symbol());
  }

  private static double inBase(String said, Unit unit) {
    double number = Double.parseDouble(said.substring(0, said.indexOf(' ')));
    return Math.round((number + unit.offset()) * unit.factor() * 1e6) / 1e6;
  }

  /** The answers of the first floor that can have the fact, with it, as their file reads back. */
  private static Answers taken(FactDefinition fact, String said) {
    Set<String> wrong = new LinkedHashSet<>();
    for (String deck : DECKS) {
      Answers floor = floor(fact, deck);
      try {
        Known before = new Known(floor, Map.of());
        Reply reply = CONVERSATION.say(before, place(fact, floor), said, "");
        if (!reply.answered()) {
          wrong.add(reply.objection());
          continue;
        }
        Answers answers = reply.known().answers();
        String yaml = reply.known().file();
        Answers again = Answers.of(BOOK, "again", yaml.getBytes(StandardCharsets.UTF_8));
        assertThat(facts(again.scenario())).as(yaml).isEqualTo(facts(answers.scenario()));
        return again;
      } catch (ScenarioFaults e) {
        wrong.add(e.text());
      }
    }
    throw new AssertionError(fact.key() + " does not take '" + said + "': " + wrong);
  }

  private static List<String> facts(Scenario scenario) {
    List<String> facts = new ArrayList<>();
    for (StatedFact given : scenario.givens()) {
      facts.add(given.key() + '@' + given.about() + '=' + given.state() + ' ' + given.text());
    }
    facts.add(scenario.outline() + " " + scenario.readings());
    return facts;
  }

  private static Place place(FactDefinition fact, Answers answers) {
    return new Place(fact, fact.ofEntries() ? answers.scenario().entries(fact.list()).get(0) : "");
  }

  /** A floor of which little is known, with an entry for a fact of entries to be about. */
  private static Answers floor(FactDefinition fact, String deck) {
    try {
      Answers answers = Answers.none(BOOK);
      Map<String, String> known =
          Map.of(
              "scenario", "Made up",
              "practice", "uk",
              "room.use", "wet room",
              "subfloor.deck", deck,
              "tile.material", "porcelain",
              "tile.length", "600 mm",
              "tile.width", "100 mm");
      for (Map.Entry<String, String> one : known.entrySet()) {
        if (!one.getKey().equals(fact.key()) && !isSaidBy(fact, one.getKey())) {
          answers = answers.with(place(one.getKey()), one.getValue());
        }
      }
      if (fact.key().startsWith("zones")) {
        answers = answers.with(place("room.outline"), "4 m x 3 m");
      }
      if (fact.ofEntries()) {
        FactDefinition list = BOOK.find(fact.list().replace("[]", "")).orElseThrow();
        String entry = list.knownBy().isEmpty() ? "kitchen island" : "plywood";
        answers = answers.with(place(list.key()), entry);
        if (list.key().equals("zones")) {
          FactDefinition outline = BOOK.find("zones[].outline").orElseThrow();
          answers = answers.with(new Place(outline, entry), "1 m x 1 m");
        }
      }
      return answers;
    } catch (ScenarioFaults e) {
      throw new AssertionError(e.text());
    }
  }

  /** Whether a fact, or the list it is of, says in another way what stands under a key. */
  private static boolean isSaidBy(FactDefinition fact, String key) {
    String list = fact.ofEntries() ? fact.list().replace("[]", "") : fact.key();
    return BOOK.find(key).orElseThrow().insteadOfIt().equals(list);
  }

  private static Place place(String key) {
    return new Place(BOOK.find(key).orElseThrow(), "");
  }
}
