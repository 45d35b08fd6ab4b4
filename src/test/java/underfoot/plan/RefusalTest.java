package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Judgement;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.FloorComparison;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhyNot;
import underfoot.reasoning.WhyNot.Standing;
import underfoot.scenario.FactDefinition;

/** Refusals and comparisons in words, made of what was found out on one floor. */
class RefusalTest {
  private static final Assessment LANDING =
      assessment("landing-where-a-fire-door-decides-the-height");
  private static final Assessment PANTRY = assessment("pantry-with-rotten-joist-ends");
  private static final Knowledge KNOWLEDGE = LANDING.knowledge();

  private static Assessment assessment(String name) {
    try {
      Path file = Path.of("scenarios", name + ".yaml");
      return Floors.advisor()
          .advise(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    } catch (Exception e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static Refusal refusal(WhyNot found, Opinion... opinion) {
    return Refusals.of(
        found,
        "a board",
        List.of("BOARD-01"),
        List.of(),
        opinion.length == 0 ? Optional.empty() : Optional.of(opinion[0]),
        new Planner(KNOWLEDGE.prices()));
  }

  private static WhyNot found(
      Assessment assessment,
      Standing standing,
      BuildUp nearest,
      List<? extends Conclusion> refusals) {
    return new WhyNot(
        assessment,
        standing,
        Optional.ofNullable(nearest),
        List.copyOf(refusals),
        List.of(),
        List.of());
  }

  private static BuildUp ruledOut() {
    return LANDING.buildUps().stream().filter(one -> !one.stands()).findFirst().orElseThrow();
  }

  private static List<String> rules(Advice.Say say) {
    return say.because().stream().map(one -> one.rule().id()).toList();
  }

  @Test
  void what_is_ruled_out_is_told_with_each_reason_once_and_its_rule() {
    BuildUp nearest = ruledOut();
    List<RuledOut> outs = nearest.of(RuledOut.class);
    Refusal refusal = refusal(found(LANDING, Standing.RULED_OUT, nearest, outs));
    assertThat(refusal.scenario()).isEqualTo(LANDING.scenario().name());
    assertThat(refusal.asked()).isEqualTo("a board");
    assertThat(refusal.askedFor()).containsExactly("BOARD-01");
    assertThat(refusal.standing()).isEqualTo("ruled out");
    assertThat(refusal.way().orElseThrow().id()).isEqualTo(nearest.way());
    assertThat(refusal.text())
        .isEqualTo(
            "It must not be built here: "
                + refusal.way().get().title()
                + ", the nearest build-up with it, is ruled out.");
    assertThat(refusal.reasons()).isNotEmpty();
    assertThat(refusal.reasons()).extracting(Advice.Say::text).doesNotHaveDuplicates();
    assertThat(rules(refusal.reasons().get(0))).containsExactly(outs.get(0).because().rule().id());
    // The same twice is told once.
    List<RuledOut> twice = List.of(outs.get(0), outs.get(0));
    assertThat(refusal(found(LANDING, Standing.RULED_OUT, nearest, twice)).reasons()).hasSize(1);
  }

  @Test
  void what_is_recommended_is_told_with_the_reasons_of_the_rules_that_offer_it() {
    BuildUp chosen = LANDING.chosen().orElseThrow();
    Refusal refusal = refusal(found(LANDING, Standing.RECOMMENDED, chosen, List.of()));
    assertThat(refusal.standing()).isEqualTo("recommended");
    assertThat(refusal.text())
        .isEqualTo("It is what is recommended here: " + refusal.way().orElseThrow().title() + ".");
    List<OfferedWay> offers = chosen.offers();
    assertThat(refusal.reasons()).hasSameSizeAs(offers);
    for (int i = 0; i < offers.size(); i++) {
      assertThat(refusal.reasons().get(i).text())
          .isEqualTo(offers.get(i).because().rule().reason() + ".");
      assertThat(rules(refusal.reasons().get(i)))
          .containsExactly(offers.get(i).because().rule().id());
    }
  }

  @Test
  void a_second_choice_is_told_with_what_ranks_it_behind_and_what_speaks_for_and_against_it() {
    BuildUp other = ruledOut();
    Conclusion behind = LANDING.chosen().orElseThrow().offers().get(0);
    Refusal refusal = refusal(found(LANDING, Standing.SECOND_CHOICE, other, List.of(behind)));
    ComparedBuildUp way = refusal.way().orElseThrow();
    assertThat(refusal.standing()).isEqualTo("second choice");
    assertThat(refusal.text())
        .startsWith("It may be built here: " + way.title() + ". Another way ranks before it, ");
    assertThat(refusal.reasons().get(0).text()).isEqualTo(behind.because().rule().reason() + ".");
    assertThat(rules(refusal.reasons().get(0))).containsExactly(behind.because().rule().id());
    assertThat(way.gains().size() + way.givesUp().size()).isPositive();
    List<String> expected = new ArrayList<>();
    way.gains().forEach(one -> expected.add("For it: " + one + "."));
    way.givesUp().forEach(one -> expected.add("Against it: " + one + "."));
    assertThat(refusal.reasons().stream().skip(1).map(Advice.Say::text))
        .containsExactlyElementsOf(expected);
  }

  @Test
  void what_nothing_asks_for_and_what_is_stopped_with_its_floor() {
    Refusal none = refusal(found(LANDING, Standing.NOT_ASKED_FOR, null, List.of()));
    assertThat(none.standing()).isEqualTo("not asked for");
    assertThat(none.text()).startsWith("Nothing on this floor asks for");
    assertThat(none.way()).isEmpty();
    assertThat(none.reasons()).isEmpty();
    List<StopFinding> stops = PANTRY.of(StopFinding.class);
    Refusal stopped = refusal(found(PANTRY, Standing.FLOOR_STOPPED, null, stops));
    assertThat(stopped.standing()).isEqualTo("floor stopped");
    assertThat(stopped.text()).startsWith("Nothing is worked out for this floor");
    assertThat(stopped.reasons()).isNotEmpty();
    assertThat(rules(stopped.reasons().get(0))).containsExactly(stops.get(0).because().rule().id());
  }

  private static Opinion opinion(Opinion.Item... items) {
    Opinion.Layer layer =
        new Opinion.Layer(
            1, "layer 1", "primer", "primer", "", LayerThickness.even(0), "", List.of(items));
    return new Opinion(
        "a floor",
        "a proposal",
        Verdict.SOUND,
        "",
        "",
        "",
        false,
        List.of(layer),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        0,
        List.of());
  }

  private static Opinion.Item item(Judgement judgement, String id, String remedy) {
    return new Opinion.Item(judgement, "layer 1", id, "It lets go.", "", remedy, List.of());
  }

  @Test
  void what_must_never_be_laid_is_told_in_place_of_what_nobody_asks_for() {
    WhyNot found = notAskedFor(opening("300 mm", "400 mm"));
    Refusal never = refusal(found, opinion(item(Judgement.MUST_NOT, "pva", "Use the primer.")));
    assertThat(never.standing()).isEqualTo("must never");
    assertThat(never.text())
        .isEqualTo("No rule asks for it on this floor, and rules speak against it.");
    assertThat(never.reasons())
        .singleElement()
        .extracting(Advice.Say::text)
        .isEqualTo("It lets go. Use the primer.");
    assertThat(never.changes()).as("no change lets it in").isEmpty();
    // What is short of something, and what is said of the whole way, is no such word.
    Refusal other =
        refusal(
            found,
            opinion(
                item(Judgement.SHORT_OF, "thin", ""), item(Judgement.MUST_NOT, "way-stopped", "")));
    assertThat(other.standing()).isEqualTo("not asked for");
    assertThat(other.changes()).hasSize(1);
  }

  private static FactDefinition defined(String key) {
    return KNOWLEDGE.facts().find(key).orElseThrow();
  }

  private static WhyNot.Opening opening(String was, String is) {
    return new WhyNot.Opening(
        List.of(
            new WhyNot.Asked(defined("tile.length"), "", was, is),
            new WhyNot.Asked(defined("room.doors[].external"), "loft door", "unknown", "no")),
        Optional.empty(),
        LANDING);
  }

  private static WhyNot notAskedFor(WhyNot.Opening opening) {
    return new WhyNot(
        LANDING, Standing.NOT_ASKED_FOR, Optional.empty(), List.of(), List.of(), List.of(opening));
  }

  @Test
  void changes_are_told_as_a_sentence_and_as_they_are_typed() {
    WhyNot found = notAskedFor(opening("300 mm", "400 mm"));
    Refusal.Opening change = refusal(found).changes().get(0);
    assertThat(change.with())
        .containsExactly("tile.length=400 mm", "room.doors[loft door].external=no");
    assertThat(change.text())
        .isEqualTo(
            "If the "
                + defined("tile.length").called()
                + " were 400 mm instead of 300 mm; If the "
                + defined("room.doors[].external").called()
                + " (loft door), of which nothing is said, were no");
    assertThat(change.way())
        .isEqualTo(
            refusal(found(LANDING, Standing.RECOMMENDED, LANDING.chosen().orElseThrow(), List.of()))
                .way()
                .orElseThrow()
                .title());
  }

  @Test
  void the_facts_it_fails_on_have_their_keys_and_say_what_was_only_assumed() {
    Fact stated = Fact.stated("tile.length", "tile length", "", "300 mm", 300);
    Fact assumed =
        new Fact(
            "room.doors[].external",
            "external",
            "loft door",
            "no",
            Double.NaN,
            From.ASSUMED,
            "",
            List.of(),
            null);
    WhyNot found =
        new WhyNot(
            LANDING,
            Standing.NOT_ASKED_FOR,
            Optional.empty(),
            List.of(),
            List.of(stated, assumed),
            List.of());
    assertThat(refusal(found).failed())
        .containsExactly(
            new Refusal.Failed("tile.length", "tile length", "300 mm", false),
            new Refusal.Failed(
                "room.doors[loft door].external", "external (loft door)", "no", true));
  }

  // --- two floors

  @Test
  void two_floors_are_told_with_their_verdicts_ways_facts_and_decisions() {
    FloorComparison.Differing length =
        new FloorComparison.Differing(defined("tile.length"), "", "300 mm", "400 mm");
    FloorComparison.Differing door =
        new FloorComparison.Differing(defined("room.doors[].external"), "loft door", "no", "yes");
    Planner planner = new Planner(KNOWLEDGE.prices());
    FloorsCompared compared =
        FloorsCompared.of(
            new FloorComparison(
                LANDING,
                PANTRY,
                List.of(length, door),
                List.of(
                    new FloorComparison.Decided("the work stops", List.of(door)),
                    new FloorComparison.Decided("a thicker bed", List.of())),
                true),
            planner,
            planner);
    assertThat(compared.facts())
        .containsExactly(
            new FloorsCompared.Differing("tile.length", "300 mm", "400 mm"),
            new FloorsCompared.Differing("room.doors[loft door].external", "no", "yes"));
    assertThat(compared.decisions())
        .containsExactly(
            new FloorsCompared.Decided("the work stops", List.of("room.doors[loft door].external")),
            new FloorsCompared.Decided("a thicker bed", List.of()));
    assertThat(compared.first().scenario()).isEqualTo(LANDING.scenario().name());
    assertThat(compared.first().verdict()).isEqualTo(LANDING.verdict());
    assertThat(compared.first().way().orElseThrow().id())
        .isEqualTo(LANDING.buildUps().get(0).way());
    assertThat(compared.second().scenario()).isEqualTo(PANTRY.scenario().name());
    assertThat(compared.second().verdict()).isEqualTo(Verdict.STOP);
    Phrases phrases = new Phrases(KNOWLEDGE.wording());
    assertThat(FloorsCompared.verdict(compared.second(), phrases))
        .isEqualTo(phrases.say("verdict-stop"))
        .isNotBlank();
  }
}
