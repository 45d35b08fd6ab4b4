package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Judgement;
import underfoot.buildup.RuledOut;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Source;
import underfoot.language.Effect;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * Whatever rests on a document that holds elsewhere (sources.yaml, {@code holds}) says so, finds no
 * fault, stops nothing and refuses nothing on a guess. {@code -Dfloors=5000} makes up more floors.
 */
class BorrowedRulesTest {
  private static final int FLOORS = Integer.getInteger("floors", 300);
  private static final long SEED = Long.getLong("seed", 20261130L);
  private static final String ELSEWHERE = "North American";
  private static final Knowledge KNOWLEDGE = Floors.advisor().knowledge();

  private static boolean borrowed(String citation) {
    return !KNOWLEDGE.source(citation).holds().isEmpty();
  }

  private static List<Rule> borrowedRules() {
    return Floors.advisor().rules().set().rules().stream()
        .filter(rule -> borrowed(rule.note().source()))
        .toList();
  }

  @Test
  void a_document_that_holds_elsewhere_says_so_in_its_title() {
    for (Source source : KNOWLEDGE.sources().values()) {
      assertThat(source.title().contains(ELSEWHERE))
          .as(source.id())
          .isEqualTo(source.holds().equals("north-america"));
    }
  }

  @Test
  void no_rule_by_a_borrowed_document_finds_a_fault_or_stops_the_work() {
    assertThat(borrowedRules()).hasSizeGreaterThan(40);
    Set<Effect.Verb> condemn = EnumSet.of(Effect.Verb.STOP, Effect.Verb.OUTSIDE);
    Set<String> wrong = new TreeSet<>();
    for (Rule rule : borrowedRules()) {
      for (Effect effect : rule.effects()) {
        boolean fault =
            effect.verb() == Effect.Verb.FIND
                && Judgement.of(effect.word(Effect.Place.WORD)).isFault();
        if (fault || condemn.contains(effect.verb()) || rule.pass() == Pass.NEXT) {
          wrong.add(rule.key());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void a_text_with_a_borrowed_figure_says_that_it_is_north_american() {
    Set<String> silent = new TreeSet<>();
    for (String id : KNOWLEDGE.wording().ids()) {
      String text = String.join(" ", KNOWLEDGE.wording().get(id).parts().values());
      Matcher named = Pattern.compile("\\{([a-z0-9-]+)}").matcher(text);
      while (named.find()) {
        Figure figure = KNOWLEDGE.figures().get(named.group(1));
        if (borrowed(figure.source()) && !text.contains(ELSEWHERE)) {
          silent.add(id + ": " + figure.name());
        }
      }
    }
    assertThat(silent).isEmpty();
  }

  @Test
  void no_way_of_a_made_up_floor_is_refused_by_a_borrowed_limit_on_a_guess() {
    RandomFloors floors = new RandomFloors(KNOWLEDGE.facts(), SEED);
    List<String> wrong = new ArrayList<>();
    int refused = 0;
    for (int i = 0; i < FLOORS; i++) {
      String deck = i % 2 == 0 ? "chipboard" : "square-edged boards";
      String text = floors.next(Map.of("subfloor.deck", deck));
      try {
        Scenario floor = Floors.reader().read("made-up", text.getBytes(StandardCharsets.UTF_8));
        for (BuildUp way : Floors.advisor().advise(floor).buildUps()) {
          for (RuledOut out : way.of(RuledOut.class)) {
            if (borrowed(out.because().rule().source())) {
              refused++;
              Set<String> guesses = guesses(out.because().premises());
              if (!guesses.isEmpty()) {
                wrong.add(out.because().rule().id() + " " + guesses + "\n" + text);
              }
            }
          }
        }
      } catch (ScenarioFaults contradiction) {
        // It contradicts itself, so there is nothing to tell.
      }
    }
    assertThat(refused).as("so that something is tried").isPositive();
    assertThat(wrong).isEmpty();
  }

  /**
   * What was assumed of the floor because nobody had measured it, somewhere in what was matched.
   */
  private static Set<String> guesses(List<Object> premises) {
    Set<String> guesses = new TreeSet<>();
    for (Object premise : premises) {
      if (premise instanceof Fact fact) {
        if (fact.from() == From.ASSUMED && fact.key().startsWith("subfloor.")) {
          guesses.add(fact.name());
        }
        if (fact.because() != null) {
          guesses.addAll(guesses(fact.because().premises()));
        }
        guesses.addAll(guesses(fact.uses()));
      }
    }
    return guesses;
  }
}
