package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Why something else is not recommended, and floors and ways side by side, as commands. */
class CompareCommandsTest {
  private static final String BUDGET = "scenarios/hall-where-the-budget-decides.yaml";
  private static final String HEIGHT =
      "scenarios/landing-where-a-fire-door-decides-the-height.yaml";
  private static final String WEIGHT = "scenarios/study-where-the-weight-decides.yaml";
  private static final String TIME = "scenarios/cafe-where-the-opening-day-decides.yaml";

  private static JsonNode json(String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    Console.Ran ran = Console.run(all.toArray(new String[0]));
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }

  private static String way(JsonNode floor) {
    return floor.get("way").get("id").asString();
  }

  @Test
  void on_each_example_the_thing_it_is_named_for_decides() {
    JsonNode budget = json("compare", BUDGET, "--with", "budget.limit=300 GBP");
    assertThat(way(budget.get("a"))).isEqualTo("over the old tiles");
    assertThat(budget.get("decisions").toString()).contains("settle the money first");

    String low = json("compare", HEIGHT).get("ways").toString();
    assertThat(low).contains("Too little would be left under a leaf that may not be cut");
    JsonNode height =
        json("compare", HEIGHT, "--with", "doors[loft stair door].gap under leaf=20 mm");
    assertThat(height.get("decisions").toString()).contains("gap under leaf");

    JsonNode weight = json("compare", WEIGHT, "--with", "joists.clear span=2.4 m");
    assertThat(ruledOut(weight.get("a"))).isFalse();
    JsonNode ways = json("compare", WEIGHT).get("ways");
    assertThat(ways.toString()).contains("The joists sag more than building guidance allows");

    JsonNode time = json("compare", TIME, "--with", "site.ready within=40 days");
    assertThat(way(time.get("a"))).isEqualTo("over the old tiles");
  }

  private static boolean ruledOut(JsonNode floor) {
    return floor.get("way").get("standing").asString().equals("ruled out");
  }

  @Test
  void what_is_decided_otherwise_is_put_down_to_the_fact_that_was_changed() {
    JsonNode compared =
        json(
            "compare",
            BUDGET,
            "--with",
            "budget.limit=300 GBP",
            "--with",
            "site.relative humidity=52 %");
    assertThat(compared.get("facts")).hasSize(2);
    for (JsonNode decision : compared.get("decisions")) {
      assertThat(decision.get("becauseOf").toString()).isEqualTo("[\"budget.limit\"]");
    }
    assertThat(compared.get("decisions")).isNotEmpty();
  }

  @Test
  void a_floor_compared_with_itself_differs_in_nothing() {
    JsonNode compared = json("compare", HEIGHT, HEIGHT);
    assertThat(compared.get("facts")).isEmpty();
    assertThat(compared.get("decisions")).isEmpty();
  }

  @Test
  void two_quite_different_floors_can_be_compared() {
    JsonNode compared = json("compare", HEIGHT, TIME);
    assertThat(compared.get("facts").size()).isGreaterThan(10);
    assertThat(compared.get("decisions")).isNotEmpty();
  }

  @Test
  void the_ways_for_one_floor_stand_on_one_page_priced_dated_and_with_the_height_at_the_door() {
    JsonNode ways = json("compare", HEIGHT).get("ways");
    assertThat(ways.get(0).get("standing").asString()).isEqualTo("recommended");
    Set<String> rules = new TreeSet<>();
    json("rules").get("rules").forEach(rule -> rules.add(rule.get("id").asString()));
    boolean cheaperIsRuledOut = false;
    double cost = ways.get(0).get("cost").get("total").asDouble();
    for (JsonNode way : ways) {
      assertThat(way.get("cost").get("total").asDouble()).isPositive();
      assertThat(way.get("inUse").asString()).startsWith("2027-03-");
      assertThat(way.get("doors").get(0).get("gapLeftMm").isNumber()).isTrue();
      way.get("rules").forEach(rule -> assertThat(rules).contains(rule.asString()));
      cheaperIsRuledOut |=
          way.get("cost").get("total").asDouble() < cost
              && way.get("standing").asString().equals("ruled out")
              && !way.get("against").isEmpty();
    }
    assertThat(cheaperIsRuledOut).isTrue();
    String page = Console.run("compare", HEIGHT, "--width", "100").out();
    assertThat(page).contains("recommended").contains("must not be built here").contains("GBP");
  }

  @Test
  void why_not_names_the_rule_the_fact_and_the_smallest_change() {
    JsonNode refused = json("why-not", HEIGHT, "rigid", "board", "overlay");
    assertThat(refused.get("standing").asString()).isEqualTo("ruled out");
    assertThat(refused.get("reasons").get(0).get("because").get(0).get("rule").asString())
        .isEqualTo("DOOR-22");
    assertThat(refused.get("failed").toString())
        .contains("room.doors[loft stair door].can be trimmed");
    assertThat(refused.get("smallestChanges").toString()).contains("gap under leaf=28 mm");
  }

  @Test
  void why_not_of_what_is_recommended_says_so_and_of_what_nothing_asks_for_too() {
    assertThat(json("why-not", HEIGHT, "foam-core tile board").get("standing").asString())
        .isEqualTo("recommended");
    assertThat(json("why-not", HEIGHT, "tanking").get("standing").asString())
        .isEqualTo("not asked for");
    Console.Ran text = Console.run("why-not", HEIGHT, "tanking");
    assertThat(text.out()).contains("Nothing on this floor asks for tanking");
  }

  @Test
  void what_must_never_be_laid_is_refused_by_the_rule_that_says_so() {
    JsonNode pva = json("why-not", HEIGHT, "PVA");
    assertThat(pva.get("standing").asString()).isEqualTo("must never");
    assertThat(pva.get("reasons").toString()).contains("CHECK-50");
    JsonNode plain = json("why-not", HEIGHT, "self-levelling compound");
    assertThat(plain.get("standing").asString()).isEqualTo("must never");
    assertThat(plain.get("reasons").toString()).contains("CHECK-51");
  }

  @Test
  void what_means_nothing_is_wrong_usage_and_gets_the_nearest() {
    Console.Ran ran = Console.run("why-not", HEIGHT, "membran");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("'membran'").contains("membrane");
    Console.Ran key = Console.run("compare", HEIGHT, "--with", "joists.clear spam=3 m");
    assertThat(key.exit()).isEqualTo(2);
    assertThat(key.err()).contains("subfloor.joists.clear span");
    Console.Ran value = Console.run("compare", HEIGHT, "--with", "joists.clear span=3");
    assertThat(value.exit()).isEqualTo(2);
    assertThat(value.err()).contains("clear span").contains("3 m");
    assertThat(Console.run("compare", HEIGHT, "--with", "nonsense").exit()).isEqualTo(2);
  }

  @Test
  void a_price_book_of_ones_own_beside_the_scenario_is_used_labour_included(@TempDir Path dir)
      throws Exception {
    Files.writeString(
        dir.resolve("mine.yaml"),
        "currency: GBP\ntiles: {pack: 1 m2, price: 50 GBP}\nlabour: {pack: 1 h, price: 30 GBP}\n");
    Path floor = dir.resolve("floor.yaml");
    Files.writeString(floor, Files.readString(Path.of(HEIGHT)).replace("price-book", "mine.yaml"));
    JsonNode advice = json("advise", floor.toString());
    assertThat(advice.get("cost").get("lines").toString()).contains("labour").contains("tiles");
    double before = advice.get("cost").get("atLeast").asDouble();
    assertThat(advice.get("cost").get("total").isNull()).isTrue();
    assertThat(before / 10).isCloseTo(Math.rint(before / 10), within(1e-6));
  }
}
