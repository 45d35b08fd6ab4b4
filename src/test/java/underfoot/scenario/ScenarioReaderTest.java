package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import underfoot.quantity.Words;

@DisplayName("A scenario")
class ScenarioReaderTest {

  @Test
  @DisplayName("is read whole, with the place of each fact")
  void read_whole() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);

    assertThat(scenario.name()).isEqualTo("Utility room over a cellar");
    assertThat(scenario.practice()).isEqualTo("uk");
    assertThat(scenario.outline())
        .containsExactly(
            new Point(0, 0), new Point(3600, 0), new Point(3600, 2400), new Point(0, 2400));
    assertThat(scenario.readings())
        .containsExactly(
            new Reading(0, 0, 0), new Reading(1800, 1200, -7), new Reading(3600, 2400, -2));
    StatedFact thickness = scenario.find("subfloor.thickness").orElseThrow();
    assertThat(thickness.state()).isEqualTo(State.KNOWN);
    assertThat(thickness.text()).isEqualTo("21 mm");
    assertThat(thickness.number()).isEqualTo(21);
    assertThat(thickness.called()).isEqualTo("deck thickness");
    assertThat(thickness.line()).isEqualTo(13);
    assertThat(thickness.column()).isEqualTo(14);
    assertThat(scenario.find("site.start").orElseThrow().text()).isEqualTo("2026-03-02");
    assertThat(scenario.find("priorities").orElseThrow().value())
        .isEqualTo(new Value.Choices(List.of("height", "cost")));
  }

  @Test
  @DisplayName("tells unknown facts that were said from those left out")
  void unknown() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    StatedFact services = scenario.find("subfloor.services below").orElseThrow();
    assertThat(services.state()).isEqualTo(State.UNKNOWN);
    assertThat(services.said()).isTrue();
    assertThat(services.text()).isEqualTo("unknown");
    assertThat(services.number()).isNaN();
    StatedFact swollen = scenario.find("subfloor.swollen").orElseThrow();
    assertThat(swollen.state()).isEqualTo(State.UNKNOWN);
    assertThat(swollen.said()).isFalse();
    assertThat(swollen.line()).isZero();
  }

  @Test
  @DisplayName("says something of every defined fact, once for each entry of a list")
  void every_fact() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    long doorFacts =
        Book.SHIPPED.definitions().stream().filter(f -> f.list().equals("room.doors[]")).count();
    long own = Book.SHIPPED.definitions().stream().filter(f -> !f.ofEntries()).count();
    assertThat(doorFacts).isGreaterThan(10);
    assertThat(scenario.givens()).hasSize((int) (own + 2 * doorFacts));
    assertThat(scenario.entries("room.doors[]")).containsExactly("kitchen door", "cellar door");
    assertThat(scenario.find("room.doors[].gap under leaf", "kitchen door").orElseThrow().number())
        .isEqualTo(16);
    assertThat(scenario.find("room.doors[].gap under leaf", "cellar door").orElseThrow().known())
        .isFalse();
    assertThat(scenario.find("room.doors[].gap under leaf", "back door")).isEmpty();
    assertThat(scenario.find("room.ghosts")).isEmpty();
    assertThat(scenario.find("room.doors").orElseThrow().text()).isEqualTo("2 entries");
  }

  @Test
  @DisplayName("names the entries of a list by their place where they have no name")
  void entries_without_names() throws Exception {
    Scenario scenario =
        Book.read(
            Book.LEAST.replace(
                "boards}",
                "boards, joists: {depth: 150 mm, notches: [{depth: 20 mm}, {depth: 25 mm}]}}"));
    assertThat(scenario.entries("subfloor.joists.notches[]")).containsExactly("notch 1", "notch 2");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "no | no",
        "No | no",
        "NO | no",
        "off | no",
        "false | no",
        "n | no",
        "yes | yes",
        "YES | yes",
        "on | yes",
        "true | yes",
        "\"yes\" | yes",
        "unknown | unknown",
        "Not known | unknown",
        "don't know | unknown",
        "don’t know | unknown",
        "? | unknown",
        "\"?\" | unknown",
        "n/a | not applicable",
        "not applicable | not applicable",
      })
  @DisplayName("takes yes, no and unknown as people write them")
  void words(String written, String text) throws Exception {
    Scenario scenario = Book.read(Book.LEAST + "heating: {floor probe: " + written + "}\n");
    assertThat(scenario.find("heating.floor probe").orElseThrow().text()).isEqualTo(text);
    scenario = Book.read(Book.LEAST + "heating:\n  floor probe: " + written + "  # a note\n");
    assertThat(scenario.find("heating.floor probe").orElseThrow().text()).isEqualTo(text);
  }

  @Test
  @DisplayName("keeps what other readers would turn into numbers, times or dates")
  void traps() throws Exception {
    Scenario scenario = Book.read(Book.LEAST.replace("Kitchen over a crawl space", "3:4"));
    assertThat(scenario.name()).isEqualTo("3:4");
    for (String name : List.of("2026-03-02", "0x1F", "1_000", "1e3", "null and void", "No")) {
      assertThat(Book.read(Book.LEAST.replace("Kitchen over a crawl space", name)).name())
          .isEqualTo(name);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"clear_span", "clear-span", "Clear Span", "CLEAR  SPAN", "clear span"})
  @DisplayName("takes keys with underscores, hyphens and capitals")
  void key_spellings(String key) throws Exception {
    Scenario scenario =
        Book.read(Book.LEAST.replace("boards}", "boards, joists: {" + key + ": 2.9 m}}"));
    assertThat(scenario.find("subfloor.joists.clear span").orElseThrow().number()).isEqualTo(2900);
  }

  @ParameterizedTest(name = "{0} means {1}")
  @CsvSource({
    "Porcelain, porcelain",
    "PORCELAIN TILE, porcelain",
    "glass-mosaic, glass mosaic",
    "encaustic, cement tile",
  })
  @DisplayName("takes choices in any case, and by their other names")
  void choices(String written, String meant) throws Exception {
    Scenario scenario = Book.read(Book.LEAST.replace("porcelain", written));
    assertThat(scenario.find("tile.material").orElseThrow().text()).isEqualTo(meant);
  }

  @Test
  @DisplayName("may say heating in short")
  void shorthand() throws Exception {
    Scenario scenario = Book.read(Book.LEAST + "heating: electric\n");
    assertThat(scenario.find("heating").orElseThrow().key()).isEqualTo("heating.kind");
    assertThat(scenario.find("heating.kind").orElseThrow().text()).isEqualTo("electric mat");
    assertThat(Book.read(Book.LEAST + "heating: unknown\n").find("heating.kind").orElseThrow())
        .matches(given -> given.state() == State.UNKNOWN && given.said());
  }

  @Test
  @DisplayName("may say of a whole group that it is unknown or does not apply")
  void groups() throws Exception {
    Scenario scenario = Book.read(Book.LEAST.replace("boards}", "boards, joists: unknown}"));
    assertThat(scenario.find("joists.depth").orElseThrow())
        .matches(given -> given.state() == State.UNKNOWN && given.said());
    scenario = Book.read(Book.LEAST.replace("boards}", "boards, joists: n/a}"));
    assertThat(scenario.find("joists.depth").orElseThrow().state()).isEqualTo(State.NOT_APPLICABLE);
    scenario = Book.read(Book.LEAST.replace("kitchen}", "kitchen, doors: none}"));
    assertThat(scenario.find("room.doors").orElseThrow().text()).isEqualTo("none");
    assertThat(scenario.entries("room.doors[]")).isEmpty();
    scenario = Book.read(Book.LEAST.replace("kitchen}", "kitchen, doors: unknown}"));
    assertThat(scenario.find("room.doors").orElseThrow().state()).isEqualTo(State.UNKNOWN);
  }

  @Test
  @DisplayName(
      "may begin with a byte order mark, end its lines the Windows way, and be one flow map")
  void encodings() throws Exception {
    Scenario plain = Book.read(Book.GOOD);
    assertThat(Book.read("\uFEFF" + Book.GOOD).givens()).isEqualTo(plain.givens());
    assertThat(Book.read(Book.GOOD.replace("\n", "\r\n")).givens()).isEqualTo(plain.givens());
    String json =
        "{\"scenario\": \"A\", \"practice\": \"uk\", \"room\": {\"use\": \"hall\"}, \"subfloor\":"
            + " {\"deck\": \"OSB\"}, \"tile\": {\"material\": \"ceramic\", \"length\": \"200 mm\","
            + " \"width\": \"200 mm\"}, \"heating\": {\"running\": true}}";
    assertThat(Book.read(json).find("heating.running").orElseThrow().text()).isEqualTo("yes");
  }

  @Test
  @DisplayName("may close its outline by repeating the first corner")
  void closed_outline() throws Exception {
    Scenario scenario =
        Book.read(
            Book.LEAST.replace(
                "kitchen}", "kitchen, outline: [[0 m, 0 m], [3 m, 0 m], [0 m, 2 m], [0 m, 0 m]]}"));
    assertThat(scenario.outline()).hasSize(3);
    assertThat(scenario.find("room.outline").orElseThrow().text()).isEqualTo("3 corners");
  }

  @Test
  @DisplayName("may have 500 corners and 100,000 readings, and is still read within seconds")
  void large() throws Exception {
    StringBuilder yaml = new StringBuilder(Book.LEAST.replace("room: {use: kitchen}\n", ""));
    yaml.append("room:\n  use: kitchen\n  outline:\n");
    for (int i = 0; i < 500; i++) {
      double angle = 2 * Math.PI * i / 500;
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - [%.1f mm, %.1f mm]\n",
              10000 + 9000 * Math.cos(angle),
              10000 + 9000 * Math.sin(angle)));
    }
    yaml.append("levels:\n  readings:\n");
    for (int i = 0; i < 100_000; i++) {
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - [%dmm, %dmm, %dmm]\n",
              5000 + i % 100 * 99,
              5000 + i / 100 * 9,
              i % 13));
    }
    // Of the thread that reads, so that it hangs on the file and not on what else the machine does.
    ThreadMXBean work = ManagementFactory.getThreadMXBean();
    long start = work.getCurrentThreadCpuTime();
    Scenario scenario = Book.read(yaml.toString());
    assertThat(work.getCurrentThreadCpuTime() - start).isLessThan(10_000_000_000L);
    assertThat(scenario.outline()).hasSize(500);
    assertThat(scenario.readings()).hasSize(100_000);
  }

  @Test
  @DisplayName("of more than three megabytes is refused unread")
  void too_large() {
    String yaml = Book.LEAST + "# pad\n".repeat(670_000);
    assertThat(Book.faults(yaml))
        .startsWith("floor.yaml: the file has ")
        .contains(" bytes, but at most 3000000 are read");
  }

  @Test
  @DisplayName("with 100,001 readings, 2,001 corners or 201 doors is refused")
  void too_many() {
    assertThat(
            Book.faults(
                Book.LEAST + "levels: {readings: [" + "[1 m,1 m,1 mm],".repeat(100_001) + "]}"))
        .contains("readings has 100001 entries, but at most 100000 are read");
    assertThat(
            Book.faults(
                Book.LEAST.replace(
                    "kitchen}", "kitchen, outline: [" + "[1 m,1 m],".repeat(2_001) + "]}")))
        .contains("outline has 2001 entries, but at most 2000 are read");
    assertThat(
            Book.faults(
                Book.LEAST.replace(
                    "kitchen}", "kitchen, doors: [" + "{name: a},".repeat(201) + "]}")))
        .contains("doors has 201 entries, but at most 200 are read");
  }

  @Test
  @DisplayName("with hundreds of faults shows 20 and counts the rest, soon")
  void many_faults() {
    StringBuilder yaml = new StringBuilder(Book.LEAST);
    for (int i = 0; i < 60_000; i++) {
      yaml.append("key").append(i).append(": x\n");
    }
    long start = System.nanoTime();
    String text = Book.faults(yaml.toString());
    assertThat(System.nanoTime() - start).isLessThan(10_000_000_000L);
    assertThat(text.lines().filter(line -> line.startsWith("floor.yaml:"))).hasSize(20);
    assertThat(text).endsWith("and 59980 more\n");
  }

  @Test
  @DisplayName("is changed in one fact, as a file would be, the rest kept")
  void with() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    Scenario changed = scenario.with("joists.clear span", "", "3.4 m");
    assertThat(changed.find("clear span").orElseThrow().number()).isEqualTo(3400);
    assertThat(changed.givens()).hasSameSizeAs(scenario.givens());
    assertThat(scenario.find("clear span").orElseThrow().number()).isEqualTo(2900);
    assertThat(scenario.with("services below", "", "none").find("services below").orElseThrow())
        .matches(StatedFact::known);
    assertThat(
            scenario
                .with("subfloor.thickness", "", "unknown")
                .find("subfloor.thickness")
                .orElseThrow()
                .state())
        .isEqualTo(State.UNKNOWN);
    assertThat(
            scenario
                .with("gap under leaf", "Kitchen Door", "5 mm")
                .find("room.doors[].gap under leaf", "kitchen door")
                .orElseThrow()
                .text())
        .isEqualTo("5 mm");
    assertThat(scenario.with("practice", "", "uk").practice()).isEqualTo("uk");
    assertThat(scenario.with("scenario", "", "Another").name()).isEqualTo("Another");
  }

  @Test
  @DisplayName("is changed in its outline, readings and lists too")
  void with_lists() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    assertThat(
            scenario
                .with("outline", "", "[[0 m, 0 m], [5 m, 0 m], [5 m, 5 m], [0 m, 5 m]]")
                .outline())
        .contains(new Point(5000, 5000));
    assertThat(scenario.with("readings", "", "unknown").readings()).isEmpty();
    assertThat(scenario.with("readings", "", "[[1 m, 1 m, 3 mm]]").readings()).hasSize(1);
    Scenario one = scenario.with("room.doors", "", "[{name: hatch, gap under leaf: 3 mm}]");
    assertThat(one.entries("room.doors[]")).containsExactly("hatch");
    assertThat(
            one.with("gap under leaf", "", "4 mm")
                .find("gap under leaf", "hatch")
                .orElseThrow()
                .text())
        .isEqualTo("4 mm");
    assertThat(scenario.with("priorities", "", "[time]").find("priorities").orElseThrow().text())
        .isEqualTo("time");
  }

  @Test
  @DisplayName("is not changed into one a file could not state")
  void with_faults() throws Exception {
    Scenario scenario = Book.read(Book.GOOD);
    assertFault(scenario, "subfloor.thickness", "", "3.4", "write: thickness: 3.4 mm");
    assertFault(scenario, "joists.dept", "", "3 m", "\"joists.dept\" is not one fact");
    assertFault(scenario, "subfloor.joists.depht", "", "3 m", "write: subfloor.joists.depth");
    assertFault(scenario, "subfloor.deck", "", "concrete slab", "A solid floor has no joists");
    assertFault(scenario, "subfloor.deck", "", "unknown", "deck must be known");
    assertFault(scenario, "subfloor.deck", "", "jelly", "\"jelly\" is not one of its choices");
    assertFault(scenario, "gap under leaf", "", "3 mm", "write one of: kitchen door, cellar door");
    assertFault(scenario, "gap under leaf", "back door", "3 mm", "called \"back door\"");
    assertFault(scenario, "room.use", "kitchen door", "hall", "fact of the whole floor");
    assertFault(scenario, "practice", "", "north-america", "not covered yet");
    assertFault(
        scenario, "outline", "", "[[0 m, 0 m], [1 m, 0 m], [1 m, 1 m]]", "outside the room");
    assertFault(scenario, "outline", "", "[[0 m", "not closed");
    assertFault(scenario, "outline", "", "", "nothing after it");
    assertFault(scenario, "room.doors[].name", "kitchen door", "x", "not changed");
  }

  private static void assertFault(
      Scenario scenario, String key, String about, String value, String message) {
    assertThatThrownBy(() -> scenario.with(key, about, value))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining(message)
        .satisfies(
            e -> assertThat(((ScenarioFaults) e).faults()).as(e.getMessage()).hasSizeLessThan(5));
  }

  @Test
  @DisplayName("printed back to a terminal hides no control characters")
  void no_control_characters() {
    for (String key : List.of("\\e[31m", "\\u202e", "\\x7f", "\\u009b1m", "\\0")) {
      String text = Book.faults(Book.LEAST + "\"" + key + "\": 1\ntile: {\"" + key + "\": 2}\n");
      assertThat(text.codePoints().filter(c -> c != '\n').anyMatch(Words::isHidden))
          .as(text)
          .isFalse();
    }
  }

  @Test
  @DisplayName("in Latin-1 is told the byte, the line and the column")
  void latin_1() {
    byte[] bytes = (Book.LEAST + "# caf\u00e9\n").getBytes(StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> Book.read(bytes))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageStartingWith("floor.yaml:6:6: the byte E9 here is not part of UTF-8 text");
  }

  @Test
  @DisplayName("may hold emoji anywhere, and columns still count characters")
  void emoji() throws Exception {
    for (int pad = 0; pad < 8; pad++) {
      String yaml = "# " + "x".repeat(pad) + "\uD83D\uDE00".repeat(5000) + "\n" + Book.LEAST;
      assertThat(Book.read(yaml).name()).isEqualTo("Kitchen over a crawl space");
    }
    assertThat(Book.faults("{\uD83D\uDE00: 1, zz: 2}"))
        .contains("1:2:", "1:8: \"zz\" is not a key");
  }

  @Test
  @DisplayName("built to be awkward is refused soon")
  void awkward() {
    List<String> all =
        List.of(
            "[".repeat(900_000),
            "{".repeat(900_000),
            "{a: ".repeat(200_000),
            "- ".repeat(400_000),
            "? ".repeat(400_000),
            "!".repeat(900_000),
            "\"" + "x".repeat(900_000),
            Book.LEAST + "x".repeat(900_000) + ": 1\n",
            "<<: *a\n".repeat(100_000),
            Book.LEAST.repeat(5_000),
            Book.LEAST.replace("600 mm", "9".repeat(900) + " mm"),
            Book.LEAST.replace("600 mm", "1/".repeat(400) + " mm"));
    for (String yaml : all) {
      long start = System.nanoTime();
      assertThat(Book.faults(yaml)).startsWith("floor.yaml:").hasSizeLessThan(10_000);
      assertThat(System.nanoTime() - start).isLessThan(10_000_000_000L);
    }
  }
}
