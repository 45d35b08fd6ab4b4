package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code why-not} answers about what was asked: a class, a tile of another kind, a material. */
class WhyNotWordsTest {
  private static JsonNode answer(String floor, String words) {
    Console.Ran ran = Console.run("why-not", "scenarios/" + floor + ".yaml", words, "--json");
    assertThat(ran.exit()).as(ran.err()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }

  private static String standing(JsonNode answer) {
    return answer.get("standing").asString();
  }

  @ParameterizedTest(name = "{1} on {0}: {2}")
  @CsvSource({
    "kitchen-on-tongue-and-groove-boards, C2 adhesive, class short, ADH-02",
    "kitchen-on-tongue-and-groove-boards, S1 adhesive, class asked, ADH-02",
    "kitchen-diner-on-a-heated-calcium-sulfate-screed, S2, class more, SCREED-20",
    "landing-of-tiles-on-plywood-on-boards, C1T, class short, ADH-02",
    "shop-on-precast-planks, CG1 grout, class short, GROUT-02",
    "cafe-where-the-opening-day-decides, CG2 W A, class asked, GROUT-02",
    "wet-room-on-an-upper-timber-floor, class CM, recommended, WET-30",
    "kitchen-on-beams-and-blocks, grout, recommended, GROUT-02",
    "upstairs-bathroom-on-chipboard, epoxy grout, not asked for, CHECK-22",
    "wet-room-on-a-concrete-slab, R2, not asked for, CHECK-02",
    "limestone-on-joists-that-bend-too-far, C2 S2 adhesive, class more, ADH-02"
  })
  void what_is_asked_by_its_class_is_answered_by_the_rules_of_that_class(
      String floor, String words, String standing, String rule) {
    JsonNode answer = answered(floor, words, standing, rule);
    assertThat(answer.get("material").asString()).isEqualTo(words);
  }

  /** The answer, which has a standing and rests on a rule. */
  private static JsonNode answered(String floor, String words, String standing, String rule) {
    JsonNode answer = answer(floor, words);
    assertThat(standing(answer)).isEqualTo(standing);
    assertThat(answer.get("reasons").toString()).contains("\"rule\":\"" + rule + "\"");
    return answer;
  }

  @Test
  void a_class_that_nothing_asks_for_is_said_to_be_neither_needed_nor_wrong() {
    JsonNode answer = answer("hall-where-the-budget-decides", "P1");
    assertThat(standing(answer)).isEqualTo("class not asked");
    assertThat(answer.get("text").asString()).contains("class P1").contains("need not be");
  }

  @ParameterizedTest(name = "{1} on {0}: {2}")
  @CsvSource({
    "shop-on-precast-planks, R11 tile, may be chosen, PASS-75",
    "wet-room-on-a-concrete-slab, class A tile, may be chosen, PASS-75",
    "wet-room-on-an-upper-timber-floor, R10 tiles, may be chosen, PASS-75",
    "bathroom-on-i-joists, wall tile, held, PASS-47",
    "sunny-conservatory-in-pale-marble, porcelain tile, may be chosen, HAND-01"
  })
  void another_tile_is_answered_by_thinking_the_floor_through_with_it(
      String floor, String words, String standing, String rule) {
    answered(floor, words, standing, rule);
  }

  @Test
  void the_tile_that_the_floor_has_already_is_said_to_be_that() {
    assertThat(standing(answer("sunny-conservatory-in-pale-marble", "marble tiles")))
        .isEqualTo("as described");
  }

  @Test
  void a_resin_bed_is_told_with_how_it_comes_and_what_it_needs() {
    String said = answer("utility-room-on-mastic-asphalt", "resin adhesive").toString();
    assertThat(said).contains("mixed whole").contains("gloves that resin does not pass");
  }

  @Test
  void a_class_of_another_sort_of_material_is_wrong_usage() {
    Console.Ran ran = Console.run("why-not", "scenarios/kitchen-with-an-island.yaml", "C2 grout");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("'C2 grout'").contains("compare --with");
  }
}
