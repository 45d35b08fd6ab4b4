package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.reasoning.Floors;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.working.Measure;
import underfoot.working.Refused;

/** Scenarios, figures, prices and workings read a quantity alike. */
@DisplayName("The same text")
class OneQuantityTest {
  @TempDir Path rules;

  private static Scenario scenario(String key, String text) throws ScenarioFaults {
    String yaml =
        """
        scenario: Kitchen
        practice: uk
        room: {use: kitchen}
        subfloor: {deck: tongue-and-groove boards}
        tile: {material: porcelain, length: 600 mm, width: 300 mm}
        """;
    Scenario floor =
        new ScenarioReader(FactBook.load(RuleFiles.shipped()))
            .read("floor.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    return floor.with(key, "", text);
  }

  private double figure(String text) throws Exception {
    Path folder = Files.createDirectories(rules.resolve("figures"));
    Files.writeString(
        folder.resolve("one.yaml"),
        "one: {description: d, value: '"
            + text.replace("'", "''")
            + "', practice: any, source: s, status: quoted}\n");
    return Figures.load(RuleFiles.of(rules), "uk").get("one").number();
  }

  private static Measure worked(String working, String key, String text) {
    Map<String, String> keys = new java.util.LinkedHashMap<>();
    for (String pair : Workings.standard().named(working).example()) {
      keys.put(pair.split("=")[0], pair.split("=")[1]);
    }
    keys.put(key, text);
    return (Measure) Workings.standard().named(working).read(keys).inputs().get(key);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("is the same length in a scenario, a figure and a working")
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "600 mm, 600",
        "60cm, 600",
        "2 ft, 609.6",
        "1 ft 6 in, 457.2",
        "3 ft 1 1/2 in, 952.5",
        "23 5/8 in, 600.075",
        "½ yd, 457.2",
        "0.6 METRES, 600",
        "6e2 mm, 600",
        "1′ 6″, 457.2"
      })
  void lengths(String text, double mm) throws Exception {
    assertThat(scenario("tile.length", text).find("tile.length").orElseThrow().number())
        .isCloseTo(mm, within(1e-6));
    assertThat(figure(text)).isCloseTo(mm, within(1e-6));
    assertThat(worked("grout", "length", text).value()).isCloseTo(mm, within(1e-6));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("is the same temperature in a scenario and a working, degrees Fahrenheit too")
  @CsvSource({"70F, 21.11111111", "70 °F, 21.11111111", "20 C, 20", "293.15 K, 20"})
  void temperatures(String text, double celsius) throws Exception {
    assertThat(
            scenario("site.air temperature", text)
                .find("site.air temperature")
                .orElseThrow()
                .number())
        .isCloseTo(celsius, within(1e-6));
    assertThat(worked("dew-point", "temperature", text).value()).isCloseTo(celsius, within(1e-6));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @DisplayName("is refused for the same reason in a scenario and a working")
  @CsvSource({
    "600, '\"600\" has no unit'",
    "'2,4 m', '\"2,4 m\" has a comma in its number; decimals are written with a point'",
    "600 kg, '\"600 kg\" is a mass, but a length is needed'",
    "600 mmm, '\"mmm\" is not a unit of length'",
    "about 600 mm, '\"about 600 mm\" is not one plain value; write the value itself'",
    "1e13 mm, '\"1e13 mm\" is larger than any floor could need'",
    "1/0 in, '\"1/0 in\" holds a fraction without a proper lower part'",
    "5-6 mm, '\"5-6 mm\" is a range, but one value is needed'",
  })
  void refusals(String text, String reason) {
    assertThat(faults(text)).contains("length: " + reason);
    try {
      worked("grout", "length", text);
      throw new AssertionError("length=" + text + " was taken");
    } catch (Refused refused) {
      assertThat(refused).hasMessageStartingWith("length: " + reason);
    }
  }

  private static String faults(String text) {
    try {
      scenario("tile.length", text);
      return "";
    } catch (ScenarioFaults e) {
      return e.text();
    }
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("is the same sum of money in a budget and a price book")
  @CsvSource({
    "18.50 GBP, 18.5",
    "£18.50, 18.5",
    "18 1/2 pounds, 18.5",
    "'18,50 GBP', NaN",
    "18.50, NaN"
  })
  void money(String text, double sum) {
    double limit;
    try {
      limit = scenario("budget.limit", text).find("budget.limit").orElseThrow().number();
    } catch (ScenarioFaults e) {
      limit = Double.NaN;
    }
    double price;
    try {
      String book = "currency: GBP\nprimer: {pack: 5 L, price: '" + text + "'}\n";
      price =
          PriceBook.own(
                  "prices.yaml",
                  book.getBytes(StandardCharsets.UTF_8),
                  Floors.advisor().knowledge().materials())
              .find("primer")
              .orElseThrow()
              .price();
    } catch (KnowledgeFault e) {
      price = Double.NaN;
    }
    assertThat(limit).isEqualTo(Double.valueOf(sum));
    assertThat(price).isEqualTo(Double.valueOf(sum));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("is no number for a figure or a pack either")
  @CsvSource({"'2,4 m'", "NaN m", "1/0 m", "about 2 m", "1e13 m"})
  void notANumber(String text) {
    assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> figure(text)))
        .isInstanceOf(KnowledgeFault.class);
    String book = "currency: GBP\nprimer: {pack: '" + text + "', price: 5 GBP}\n";
    assertThat(
            org.assertj.core.api.Assertions.catchThrowable(
                () ->
                    PriceBook.own(
                        "p.yaml",
                        book.getBytes(StandardCharsets.UTF_8),
                        Floors.advisor().knowledge().materials())))
        .isInstanceOf(KnowledgeFault.class);
    assertThat(faults(text)).isNotEmpty();
  }
}
