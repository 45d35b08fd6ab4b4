package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.quantity.Words;

@DisplayName("Whatever the scenario,")
class ScenarioPropertyTest {

  @Test
  @DisplayName("the order of its keys does not matter")
  void shuffled() throws Exception {
    List<String> expected = said(Book.read(Book.GOOD));
    long seed = 4711;
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      Node.Keys tree =
          (Node.Keys) YamlTree.read("x", Book.GOOD.getBytes(StandardCharsets.UTF_8), 1_000_000);
      String yaml = flow(tree, random);
      assertThat(said(Book.read(yaml)))
          .as("seed %d, round %d: %s", seed, i, yaml)
          .isEqualTo(expected);
    }
  }

  /** A tree as one flow map, its keys in random order. */
  private static String flow(Node node, Random random) {
    if (node instanceof Node.Keys keys) {
      List<String> parts = new ArrayList<>();
      for (Node.Entry entry : keys.entries()) {
        parts.add("\"" + entry.key() + "\": " + flow(entry.value(), random));
      }
      Collections.shuffle(parts, random);
      return "{" + String.join(", ", parts) + "}";
    }
    if (node instanceof Node.Items items) {
      List<String> parts = new ArrayList<>();
      items.items().forEach(item -> parts.add(flow(item, random)));
      return "[" + String.join(", ", parts) + "]";
    }
    return "\"" + ((Node.Scalar) node).text() + "\"";
  }

  private static List<String> said(Scenario scenario) {
    List<String> all = new ArrayList<>();
    for (StatedFact given : scenario.givens()) {
      all.add(given.key() + "|" + given.about() + "|" + given.text() + "|" + given.said());
    }
    all.add(scenario.outline().toString());
    all.add(scenario.readings().toString());
    return all;
  }

  @Test
  @DisplayName("lengths in inches give the same values as in millimetres")
  void inches_and_millimetres() throws Exception {
    long seed = 99;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      int sixteenths = 16 + random.nextInt(16 * 2);
      double mm = sixteenths * 25.4 / 16;
      String inches = sixteenths / 16 + " " + sixteenths % 16 + "/16 in";
      String metric = String.format(Locale.ROOT, "%.4f mm", mm);
      Scenario one = with("thickness: " + inches);
      Scenario other = with("thickness: " + metric);
      assertThat(one.find("subfloor.thickness").orElseThrow().number())
          .as("seed %d: %s", seed, inches)
          .isCloseTo(
              other.find("subfloor.thickness").orElseThrow().number(),
              org.assertj.core.api.Assertions.within(1e-4));
    }
  }

  private static Scenario with(String line) throws ScenarioFaults {
    return Book.read(Book.LEAST.replace("boards}", "boards, " + line + "}"));
  }

  @Test
  @DisplayName("every known value reads back from its own text")
  void round_trip() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    for (StatedFact given : scenario.givens()) {
      boolean plain =
          !(given.value() instanceof Value.Many) && !given.definition().word().equals("name");
      if (plain && given.said()) {
        Scenario again = scenario.with(given.key(), given.about(), given.text());
        assertThat(said(again)).as(given.key()).isEqualTo(said(scenario));
      }
    }
  }

  @Test
  @DisplayName("damaged bytes and characters give a scenario or its faults, never anything else")
  void fuzz() {
    long seed = 31_337;
    Random random = new Random(seed);
    byte[] good = Book.GOOD.getBytes(StandardCharsets.UTF_8);
    String signs = "{}[]:,-?&*!|>'\"%@`#~\\ \t\n\r0Aé\u0000\u0085\u2028\uFEFF\uD800";
    int scenarios = 0;
    int faults = 0;
    for (int i = 0; i < 4000; i++) {
      byte[] bytes;
      if (i % 2 == 0) {
        bytes = good.clone();
        for (int n = random.nextInt(4); n >= 0; n--) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
      } else {
        StringBuilder text = new StringBuilder(Book.GOOD);
        for (int n = random.nextInt(3); n >= 0; n--) {
          int at = random.nextInt(text.length());
          switch (random.nextInt(4)) {
            case 0 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
            case 1 -> text.deleteCharAt(at);
            case 2 -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
            default -> text.delete(at, Math.min(text.length(), at + random.nextInt(200)));
          }
        }
        bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      }
      try {
        Book.read(bytes);
        scenarios++;
      } catch (ScenarioFaults e) {
        faults++;
        String message = e.text();
        assertThat(message)
            .as("seed %d, round %d", seed, i)
            .isNotBlank()
            .doesNotContain("Exception", "null", "snakeyaml");
        assertThat(message.codePoints().filter(c -> c != '\n').anyMatch(Words::isHidden))
            .as("seed %d, round %d: %s", seed, i, message)
            .isFalse();
      } catch (RuntimeException | StackOverflowError e) {
        throw new AssertionError(
            "seed " + seed + ", round " + i + ":\n" + new String(bytes, StandardCharsets.UTF_8), e);
      }
    }
    assertThat(scenarios).isGreaterThan(100);
    assertThat(faults).isGreaterThan(1000);
  }
}
