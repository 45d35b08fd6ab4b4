package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A total is told only where everything bought is in it, and nothing is decided by less. */
class MoneyIsWholeTest {
  private static final Path SCENARIO = Path.of("scenarios/hall-where-the-budget-decides.yaml");
  private static final Path BOOK = Path.of("rules/figures/price-book.yaml");

  @TempDir private Path folder;

  private Path budget(String limit) throws Exception {
    String text = Files.readString(SCENARIO).replaceAll("limit: [0-9]+ GBP", "limit: " + limit);
    return Files.writeString(folder.resolve("floor.yaml"), text);
  }

  private Path book(String without) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(BOOK));
    assertThat(lines.removeIf(line -> line.startsWith(without + ":"))).isTrue();
    return Files.write(folder.resolve("prices.yaml"), lines);
  }

  private static Console.Ran ran(Object... arguments) {
    String[] texts = new String[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = arguments[i].toString();
    }
    return Console.run(texts);
  }

  private static List<String> ids(JsonNode advice, String list) {
    List<String> ids = new ArrayList<>();
    advice.get(list).forEach(one -> ids.add(one.get("id").asString()));
    return ids;
  }

  @Test
  void without_a_price_there_is_no_total_no_word_of_the_budget_and_no_ranking_by_cost()
      throws Exception {
    Path floor = budget("90000 GBP");
    Path prices = book("tiles");
    JsonNode advice =
        JsonMapper.shared().readTree(ran("advise", floor, "--prices", prices, "--json").out());
    JsonNode cost = advice.get("cost");
    assertThat(cost.get("total").isNull()).isTrue();
    assertThat(cost.get("contingency").isNull()).isTrue();
    assertThat(cost.get("atLeast").asDouble()).isPositive();
    assertThat(cost.get("unpriced").toString()).isEqualTo("[\"tiles\"]");
    assertThat(cost.get("invented").asBoolean()).isFalse();
    assertThat(ids(advice, "remedies").toString() + ids(advice, "cautions"))
        .contains("budget-not-told", "cost-does-not-rank")
        .doesNotContain("within-the-budget");
    for (JsonNode one : advice.get("ranking")) {
      assertThat(one.get("criterion").asString()).isNotIn("cost", "over budget");
    }
    String text = ran("advise", floor, "--prices", prices).out();
    assertThat(text.replaceAll("\\s+", " "))
        .containsPattern("Materials together: at least [0-9.]+ GBP, without tiles");
    String full = ran("advise", floor, "--prices", prices, "--detail", "full").out();
    assertThat(full.replaceAll("\\s+", " ")).contains("No sum can be told for tiles, which");
  }

  @Test
  void what_has_a_price_may_be_over_the_budget_already() throws Exception {
    Console.Ran ran = ran("advise", budget("20 GBP"), "--prices", book("tiles"), "--json");
    JsonNode advice = JsonMapper.shared().readTree(ran.out());
    assertThat(ids(advice, "remedies").toString()).contains("over-the-budget-already");
    // More money is no way out while nobody knows how much.
    assertThat(advice.get("leastChanges").toString()).doesNotContain("budget");
  }

  @Test
  void a_budget_in_other_money_is_not_held_against_the_prices() throws Exception {
    JsonNode advice =
        JsonMapper.shared().readTree(ran("advise", budget("90000 EUR"), "--json").out());
    assertThat(ids(advice, "remedies").toString() + ids(advice, "cautions"))
        .contains("budget-in-other-money")
        .doesNotContain("within-the-budget");
    assertThat(advice.get("cost").get("total").asDouble()).isPositive();
    assertThat(advice.get("cost").get("invented").asBoolean()).isTrue();
    assertThat(advice.get("ranking").toString()).doesNotContain("over budget");
  }

  @Test
  void a_price_book_that_cannot_be_used_is_told_line_by_line_all_at_once() throws Exception {
    Path prices = folder.resolve("bad.yaml");
    Files.writeString(
        prices,
        """
        currency: GBP
        tiles: {pack: 1, price: 50 GBP}
        grout: {pack: 5 L, price: 13 GBP}
        tile adhesive: {pack: 1e400 kg, price: 22 GBP}
        screws: {pack: Infinity pieces, price: 22 GBP}
        sealant: {pack: 300 mL, price: 8 EUR}
        edge strip: {pack: 25 m}
        base primer: {pack: 0 L, price: 8 GBP}
        labour: {pack: 1 day, price: 30 GBP}
        """);
    Console.Ran ran = ran("advise", SCENARIO, "--prices", prices);
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains(
            "bad.yaml:2: the price of 'tiles' cannot be used: the pack '1' has no unit; write"
                + " tiles: {pack: 20 m2, price: 18.50 GBP}",
            "bad.yaml:3: the price of 'grout' cannot be used: the pack is in L, and this is bought"
                + " in kg",
            "bad.yaml:4: the price of 'tile adhesive' cannot be used: the pack '1e400 kg' is no"
                + " amount",
            "bad.yaml:5: the price of 'screws' cannot be used: the pack 'Infinity pieces' is no",
            "bad.yaml:6: the price of 'sealant' cannot be used: the price is in EUR",
            "bad.yaml:7: the price of 'edge strip' cannot be used: the price '' is no sum",
            "bad.yaml:8: the price of 'base primer' cannot be used: the pack '0 L' is no amount",
            "bad.yaml:9: the price of 'labour' cannot be used: the pack is in day");
  }

  @Test
  void what_is_bought_by_the_length_of_the_walls_is_in_the_total_of_a_room_known_by_its_area()
      throws Exception {
    Path floor = folder.resolve("area.yaml");
    Files.writeString(
        floor,
        "scenario: A hall\npractice: uk\nroom: {use: hall, area: 16 m2}\nsubfloor: {deck: concrete"
            + " slab}\ntile: {material: ceramic, length: 300 mm, width: 300 mm}\n"
            + "budget: {limit: 9000 GBP, prices: price-book}\n");
    JsonNode advice = JsonMapper.shared().readTree(ran("advise", floor, "--json").out());
    assertThat(advice.get("cost").get("unpriced")).isEmpty();
    assertThat(advice.get("cost").get("lines").toString()).contains("edge strip", "sealant");
    // Four metres square, five sides of it, and what is lost in cutting.
    for (JsonNode line : advice.get("quantities")) {
      if (line.get("item").asString().equals("edge strip")) {
        assertThat(line.get("amount").asDouble()).isBetween(20.0, 23.0);
      }
    }
  }
}
