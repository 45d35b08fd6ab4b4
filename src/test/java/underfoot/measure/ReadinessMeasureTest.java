package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/** Ages, first heatings and falls to drains, counted by hand. */
class ReadinessMeasureTest {
  private static Facts measured(Scenario scenario, String... facts) {
    Facts held = Measured.stated(scenario);
    for (String one : facts) {
      String[] parts = one.split(" = ");
      double number = parts.length > 2 ? Double.parseDouble(parts[2]) : Double.NaN;
      held.add(Fact.stated(parts[0], parts[0], "", parts[1], number));
    }
    Measured.addWhatRowsSay(held);
    Measures.of(scenario, new Surveys(), Measured.knowledge().figures(), held);
    return held;
  }

  private static Facts measured(String... facts) {
    return measured(Measured.scenario(), facts);
  }

  @ParameterizedTest(name = "{0} of {1} days: {2} days")
  @CsvSource({
    // Three weeks for a cement screed, six for concrete.
    "cement:sand screed, 10, 11, 11 days",
    "cement:sand screed, 20, 1, 1 day",
    "cement:sand screed, 21, 0, 0 days",
    "cement:sand screed, 30, 0, 0 days",
    "concrete slab, 10, 32, 32 days",
    "concrete slab, 41.5, 0.5, 1 day",
  })
  void a_base_lacks_the_days_between_its_age_and_the_least(
      String base, double days, double lacking, String text) {
    Facts facts = measured("base = " + base, "base age = x = " + days * 24);
    assertThat(facts.number("age lacking")).isCloseTo(lacking * 24, within(1e-9));
    assertThat(facts.find("age lacking").text()).isEqualTo(text);
  }

  @Test
  void a_base_without_a_least_age_or_of_unknown_age_lacks_none() {
    assertThat(measured("base = terrazzo", "base age = x = 24").find("age lacking")).isNull();
    assertThat(measured("base = concrete slab").find("age lacking")).isNull();
    Scenario boards = Measured.scenario("subfloor: {deck: tongue-and-groove boards}");
    assertThat(measured(boards, "base age = x = 24").find("age lacking")).isNull();
  }

  @ParameterizedTest(name = "{0}, water at {1} C")
  @CsvSource({
    // From 15 C by 5 K a day to 40 C: five days up, three at the top, five down.
    "cement:sand screed, 40, 5, 8, 13, 40, 11",
    "calcium sulfate screed, 40, 5, 8, 13, 40, 0",
    // The water is hotter than the first heating goes: to 45 C only, six days up.
    "cement:sand screed, 55, 6, 9, 15, 45, 11",
    // The water's heat is not known: to 45 C.
    "cement:sand screed, NaN, 6, 9, 15, 45, 11",
    // The water is no warmer than the floor: nothing to raise.
    "cement:sand screed, 12, 0, 3, 3, 15, 11",
  })
  void a_first_heating_goes_up_stays_and_comes_down(
      String base,
      double water,
      double top,
      double cools,
      double done,
      double warmest,
      double wait) {
    Facts facts =
        measured(
            "base = " + base,
            "base age = x = 240",
            "floor temperature = x = 15",
            "heating commissioned = no",
            "water temperature = x = " + water);
    assertThat(facts.number("first heating at its top after")).isCloseTo(top * 24, within(1e-9));
    assertThat(facts.number("first heating cools after")).isCloseTo(cools * 24, within(1e-9));
    assertThat(facts.number("first heating time")).isCloseTo(done * 24, within(1e-9));
    assertThat(facts.number("first heating top")).isEqualTo(warmest);
    assertThat(facts.number("wait before first heating")).isCloseTo(wait * 24, within(1e-9));
    assertThat(facts.find("wait before first heating").uses())
        .contains(facts.find("base age"), facts.find("first heating from"));
    assertThat(facts.find("wait before first heating").how())
        .isEqualTo((base.startsWith("cement") ? 21 : 7) + " − 10 days");
  }

  @Test
  void a_screed_that_was_heated_before_or_has_no_pipes_is_not_heated_again() {
    String[] screed = {
      "base = cement:sand screed", "base age = x = 240", "floor temperature = x = 15"
    };
    assertThat(measured(screed).find("first heating time")).isNull();
    Facts heated = measured(screed[0], screed[1], screed[2], "heating commissioned = yes");
    assertThat(heated.find("first heating time")).isNull();
    Facts slab =
        measured("base = concrete slab", screed[1], screed[2], "heating commissioned = no");
    assertThat(slab.find("first heating time")).isNull();
    Facts cold = measured(screed[0], screed[1], "heating commissioned = no");
    assertThat(cold.find("first heating time")).isNull();
  }

  @ParameterizedTest(name = "{0} days old: {1}")
  @CsvSource({
    // 50 mm of cement screed: 50 days.
    "49.5, 0.5, 1 day",
    "49, 1, 1 day",
    "48.9, 1.1, 2 days",
    "50, 0, 0 days",
    "60, 0, 0 days",
  })
  void days_of_drying_left_are_told_in_whole_days(double age, double left, String text) {
    Facts facts =
        measured(
            "base = cement:sand screed", "deck thickness = x = 50", "base age = x = " + age * 24);
    assertThat(facts.find("drying needed").text()).isEqualTo("50 days");
    assertThat(facts.number("drying left")).isCloseTo(left * 24, within(1e-6));
    assertThat(facts.find("drying left").text()).isEqualTo(text);
  }

  @Test
  void one_millimetre_dries_in_a_day() {
    Facts facts = measured("base = cement:sand screed", "deck thickness = x = 1");
    assertThat(facts.find("drying needed").text()).isEqualTo("1 day");
    assertThat(facts.find("drying left")).isNull();
  }

  private static Scenario wetRoom(String outline) {
    return Measured.scenario("room: {use: wet room, outline: " + outline + "}");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // 1.5 by 1.2 m at 1:80: to a corner 1920.94 mm, to the middle half of it, to edges straight.
    "corner, 24.0117, 1200, 0.66667",
    "centre, 12.0059, 600, 0.66667",
    "long edge, 15, 1200, 0.5",
    "short edge, 18.75, 1500, 0.5",
  })
  void a_rectangle_falls_to_its_drain(String drain, double fall, double shortest, double share) {
    Scenario room = wetRoom("[[0 m, 0 m], [1.5 m, 0 m], [1.5 m, 1.2 m], [0 m, 1.2 m]]");
    Facts facts = measured(room, "drain place = " + drain, "wetness = soaked");
    double least = Measured.knowledge().figures().get("falls-mortar-least").number();
    assertThat(facts.number("fall height")).isCloseTo(fall, within(0.001));
    assertThat(facts.number("fall steepest")).isCloseTo(shortest / fall, within(0.01));
    assertThat(facts.number("falls least")).isEqualTo(least);
    assertThat(facts.number("falls mean")).isCloseTo(least + share * fall, within(0.001));
    assertThat(facts.number("falls most")).isCloseTo(least + fall, within(0.001));
  }

  @Test
  void an_l_falls_along_the_way_round_its_corner() {
    Scenario room =
        wetRoom("[[0 m, 0 m], [4 m, 0 m], [4 m, 1 m], [1 m, 1 m], [1 m, 3 m], [0 m, 3 m]]");
    Facts facts = measured(room, "drain place = corner", "wetness = soaked");
    double way = Math.hypot(3000, 1000) + Math.hypot(1000, 2000);
    double least = Measured.knowledge().figures().get("falls-mortar-least").number();
    assertThat(facts.number("fall height")).isCloseTo(way / 80, within(0.02));
    assertThat(facts.number("fall steepest")).isCloseTo(1000 / (way / 80), within(0.02));
    assertThat(facts.number("falls least")).isEqualTo(least);
    assertThat(facts.number("falls mean")).isCloseTo(least + way / 80 * 2 / 3, within(0.02));
    assertThat(facts.number("falls most")).isCloseTo(least + way / 80, within(0.02));
    assertThat(facts.find("fall steepest").how()).startsWith("shortest run from the drain / fall");
  }

  @Test
  void a_room_that_is_not_soaked_or_has_no_drain_falls_nowhere() {
    Scenario room = wetRoom("[[0 m, 0 m], [1.5 m, 0 m], [1.5 m, 1.2 m], [0 m, 1.2 m]]");
    assertThat(measured(room, "drain place = corner", "wetness = splashed").find("fall height"))
        .isNull();
    assertThat(measured(room, "wetness = soaked").find("fall height")).isNull();
  }
}
