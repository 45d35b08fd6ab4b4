package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.plan.FindOut;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;

/**
 * How much is tried of a floor does not grow with what it holds, and what was not tried is said.
 */
class EffortTest {
  private static final Advisor ADVISOR = Floors.advisor();
  private static final Knowledge KNOWLEDGE = ADVISOR.knowledge();
  private static final double EFFORT = KNOWLEDGE.figures().get("trials-effort").value();
  private static final String NOT_TRIED = "not tried otherwise";

  /** A hall of so many doors, of whose leaves little is known. */
  private static Scenario hall(int doors, String budget) throws Exception {
    return read(text(doors, budget));
  }

  private static String text(int doors, String budget) {
    StringBuilder text =
        new StringBuilder(
            """
            scenario: A hall of doors
            practice: uk
            subfloor: {deck: concrete slab}
            tile: {material: ceramic, length: 600 mm, width: 600 mm}
            room:
              use: hall
              outline: [[0 m, 0 m], [200 m, 0 m], [200 m, 2 m], [0 m, 2 m]]
              doors:
            """);
    for (int i = 0; i < doors; i++) {
      text.append(
          String.format(
              Locale.ROOT,
              "    - {name: door %d, wall: 0, from: %.1f m, width: 762 mm, gap under leaf: 9 mm}%n",
              i,
              0.1 + 0.99 * i));
    }
    return text.append(budget).toString();
  }

  @Test
  void a_floor_of_any_size_costs_the_same_to_think_through_again() throws Exception {
    for (int doors : List.of(1, 50, 200)) {
      Assessment assessment = ADVISOR.advise(hall(doors, ""));
      double work = Effort.trials(assessment) * Effort.of(assessment);
      assertThat(work).as("%d doors", doors).isBetween(0.8 * EFFORT, EFFORT);
    }
  }

  @Test
  void of_many_doors_the_room_itself_is_tried_first_and_what_is_not_tried_is_said()
      throws Exception {
    Scenario scenario = hall(200, "");
    Advisor quick = ADVISOR.remembering();
    Assessment assessment = quick.advise(scenario);
    WhatIf whatIf = new WhatIf(quick);
    List<WhatIf.Assumed> assumed = whatIf.of(assessment);
    int values =
        assumed.stream()
            .filter(WhatIf.Assumed::tried)
            .mapToInt(one -> one.definition().map(f -> values(f, one.fact())).orElse(0))
            .sum();
    assertThat(values).isPositive().isLessThanOrEqualTo(Effort.trials(assessment));
    assertThat(
            assumed.stream()
                .filter(WhatIf.Assumed::tried)
                .filter(one -> one.definition().map(f -> values(f, one.fact())).orElse(0) > 0))
        .as("what is of the room itself, or of the first door")
        .extracting(WhatIf.Assumed::about)
        .isSubsetOf("", "door 0");

    List<WhatIf.Unsaid> unsaid = whatIf.unsaid(assessment);
    Advice advice = AdviceMaker.make(assessment, assumed, unsaid, Consequences.none());
    List<String> untried =
        advice.assumptions().stream()
            .filter(one -> one.wouldChange().toString().contains(NOT_TRIED))
            .map(Advice.Assumption::fact)
            .toList();
    assertThat(untried)
        .hasSize((int) assumed.stream().filter(one -> !one.tried()).count())
        .anyMatch(fact -> fact.contains("door 199"));
    assertThat(advice.findOutFirst().stream().filter(one -> one.changes().isEmpty()))
        .isNotEmpty()
        .allMatch(one -> one.decisions().toString().contains(NOT_TRIED))
        .extracting(FindOut::fact)
        .anyMatch(fact -> fact.contains("door 199"));
  }

  private static int values(FactDefinition definition, Fact held) {
    return (int)
        definition.otherwise().stream().filter(value -> !value.equals(held.text())).count();
  }

  @Test
  void parts_of_a_room_and_its_corners_count_as_well() throws Exception {
    String one =
        """
        scenario: A hall of parts
        practice: uk
        subfloor: {deck: chipboard}
        tile: {material: ceramic, length: 600 mm, width: 600 mm}
        room: {use: hall, outline: [[0 m, 0 m], [60 m, 0 m], [60 m, 9 m], [0 m, 9 m]]}
        """;
    StringBuilder text = new StringBuilder(one + "zones:\n");
    for (int i = 0; i < 30; i++) {
      text.append(
          "  - {name: part %d, deck: concrete slab, outline: [[%d m, 0 m], [%d m, 0 m], [%d m, 1 m]]}%n"
              .formatted(i, 2 * i, 2 * i + 1, 2 * i + 1));
    }
    double whole = Effort.of(ADVISOR.advise(read(one)));
    assertThat(Effort.of(ADVISOR.advise(read(text.toString())))).isGreaterThan(20 * whole);
    StringBuilder comb = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      comb.append("[%d mm, 9 m], [%d mm, 8 m], ".formatted(59_950 - 100 * i, 59_940 - 100 * i));
    }
    String cornered = one.replace("[0 m, 9 m]", comb + "[0 m, 9 m]");
    assertThat(Effort.of(ADVISOR.advise(read(cornered)))).isGreaterThan(whole + 500);
  }

  private static Scenario read(String text) throws Exception {
    return Floors.reader().read("hall", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void of_few_doors_everything_is_tried() throws Exception {
    Scenario scenario = hall(6, "");
    Advisor quick = ADVISOR.remembering();
    Assessment assessment = quick.advise(scenario);
    WhatIf whatIf = new WhatIf(quick);
    assertThat(whatIf.of(assessment)).allMatch(WhatIf.Assumed::tried);
    assertThat(whatIf.unsaid(assessment)).allMatch(WhatIf.Unsaid::tried);
  }

  @Test
  void least_changes_of_many_doors_are_searched_for_within_the_same_bounds() throws Exception {
    Scenario scenario = hall(200, "budget: {limit: 1 GBP, prices: price-book}\n");
    LeastChange.Found found = LeastChange.of(ADVISOR, ADVISOR.advise(scenario));
    assertThat(found.every()).isFalse();
    Scenario small = hall(2, "budget: {limit: 1 GBP, prices: price-book}\n");
    assertThat(LeastChange.of(ADVISOR, ADVISOR.advise(small)).every()).isTrue();
  }

  @Test
  void of_two_floors_that_hold_very_much_not_every_fact_is_tried_and_that_is_said()
      throws Exception {
    Scenario one = hall(200, "");
    Scenario other = read(text(200, "").replace("762 mm", "763 mm"));
    FloorComparison many = FloorComparison.of(ADVISOR, one, other);
    assertThat(many.every()).isFalse();
    assertThat(many.facts()).hasSizeGreaterThan(150);
    Scenario small = hall(2, "");
    Scenario changed = read(text(2, "").replace("762 mm", "763 mm"));
    assertThat(FloorComparison.of(ADVISOR, small, changed).every()).isTrue();
  }

  @Test
  void things_take_turns_by_their_keys_and_come_back_in_their_own_order() {
    List<String> things = List.of("a1", "a2", "a3", "b1", "b2", "c1");
    assertThat(Effort.some(things, one -> one.substring(0, 1), 4))
        .isEqualTo(List.of("a1", "a2", "b1", "c1"));
    assertThat(Effort.some(things, one -> one.substring(0, 1), 99)).isEqualTo(things);
    assertThat(Optional.of(Effort.inTurn(things, one -> one.substring(0, 1))))
        .contains(List.of(0, 3, 5, 1, 4, 2));
  }
}
