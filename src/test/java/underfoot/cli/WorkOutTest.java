package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.knowledge.Workings;
import underfoot.working.Working;

@DisplayName("work-out")
class WorkOutTest {
  private record Run(int code, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        new CommandLine(new WorkOut())
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private static JsonNode json(String text) {
    return JsonMapper.builder().build().readTree(text);
  }

  @Test
  @DisplayName("alone lists every working on a line of its own")
  void lists() {
    Run run = run();
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines()).hasSize(22).allMatch(line -> line.matches("[a-z-]+ +[A-Z].+"));
    assertThat(json(run("--json").out()).get("workings")).hasSize(22);
  }

  @Test
  @DisplayName("with a name alone explains each key, its unit, its range and an example")
  void explains() {
    for (Working working : Workings.standard().all()) {
      Run run = run(working.name());
      assertThat(run.code()).isZero();
      working.keys().forEach(key -> assertThat(run.out()).contains(key.name(), key.range()));
      assertThat(run.out()).contains("Example: work-out " + working.name(), "Source: ");
    }
    assertThat(run("screw-length").out()).contains("(may be left out)");
    assertThat(run("best-plane").out())
        .contains("Give one way only: points; or grid with dx and dy.");
    assertThat(json(run("grout", "--json").out()).get("keys")).hasSize(5);
  }

  @Test
  @DisplayName("shows formula, numbers, result, source and range as text")
  void text() {
    Run run = run("dew-point", "temperature=20 C", "humidity=65 %");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "g = ln(RH/100) + 17.62*T/(243.12 + T)",
            "ln(65/100) + 17.62*20/(243.12 + 20)",
            "dew-point = 13.2",
            "Source: Magnus",
            "humidity: a percentage in %, 1 % to 100 %");
  }

  @Test
  @DisplayName("prints JSON with unrounded values in the shape of the contract")
  void jsonShape() {
    Run run =
        run(
            "joist-span",
            "breadth=1.5 in",
            "depth=9 1/4 in",
            "modulus=1.6e6 psi",
            "centres=16 in",
            "load=40 psf",
            "limit=360",
            "--json");
    assertThat(run.code()).isZero();
    JsonNode node = json(run.out());
    assertThat(node.get("working").asString()).isEqualTo("joist-span");
    assertThat(node.get("inputs").get("breadth").get("value").asDouble())
        .isCloseTo(38.1, within(1e-9));
    assertThat(node.get("inputs").get("breadth").get("unit").asString()).isEqualTo("mm");
    JsonNode span = node.get("results").get("span");
    assertThat(span.get("unit").asString()).isEqualTo("m");
    assertThat(span.get("value").asDouble()).isBetween(4.99342, 4.99344);
    assertThat(span.get("value").toString().length()).isGreaterThan(12);
    assertThat(node.get("steps").size()).isEqualTo(9);
    assertThat(node.get("source").asString()).isNotBlank();
    assertThat(node.get("notes").isArray()).isTrue();
  }

  @Test
  @DisplayName("says what is wrong with a key on one line of standard error and exits 2")
  void refuses() {
    String[][] bad = {
      {"dew-point", "temperature=20 C"},
      {"dew-point", "temperature=20 C", "humidity=50 %", "colour=red"},
      {"dew-point", "temperature=20 C", "humidity=500 %"},
      {"dew-point", "temperature=20 C", "humidity=50 C"},
      {"dew-point", "temperature=20 C", "humidity"},
      {"dew-point", "temperature=20 C", "temperature=21 C", "humidity=50 %"},
      {"dew-point", "=20 C"},
      {"dew-pint"},
      {"dew-point", "temperature=20 C\nC", "humidity=50 %"},
    };
    for (String[] arguments : bad) {
      Run run = run(arguments);
      assertThat(run.code()).as(String.join(" ", arguments)).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err().lines()).as(run.err()).hasSize(1);
      assertThat(run.err()).startsWith("work-out: ").doesNotContain("Exception");
    }
    assertThat(run("dew-point", "temperature=20 C").err().strip())
        .isEqualTo("work-out: humidity: is missing; it is a percentage in %, 1 % to 100 %");
    assertThat(run("dew-point", "temperature=20 C", "temperature=21 C", "humidity=50 %").err())
        .contains("temperature: is given twice; it is a temperature in C, F or K, -40 C to 60 C");
  }
}
