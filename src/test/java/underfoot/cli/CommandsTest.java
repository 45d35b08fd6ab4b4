package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CommandsTest {
  private static final String SLAB = "src/test/resources/floors/slab.yaml";
  private static final String BOARDS = "src/test/resources/floors/boards.yaml";
  private static final byte[] NOTHING = new byte[0];

  @Test
  void a_floor_that_can_be_built_exits_with_0_and_says_nothing_on_standard_error() {
    Console.Ran ran = Console.run("advise", SLAB);
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("A concrete slab with everything known\n");
  }

  @Test
  void a_floor_that_must_not_be_tiled_exits_with_4_and_still_prints_its_json(@TempDir Path dir)
      throws Exception {
    Path own = ownRules(dir);
    Files.writeString(
        own.resolve("propose/99-trial.dslr"),
        "rule \"TRIAL-01 nothing is laid on this slab\"\n@reason(\"Trial\")\n"
            + "@source(\"common-practice\")\nwhen\n    The base is concrete slab\nthen\n"
            + "    Stop the work nothing-stands\nend\n");
    Console.Ran ran = Console.run("advise", SLAB, "--json", "--rules", own.toString());
    assertThat(ran.exit()).isEqualTo(4);
    assertThat(ran.err()).isEmpty();
    JsonNode json = JsonMapper.shared().readTree(ran.out());
    assertThat(json.get("verdict").asString()).isEqualTo("stop");
    assertThat(json.get("layers").isEmpty()).isTrue();
    assertThat(json.get("halts").toString()).contains("\"TRIAL-01\"");
  }

  @Test
  void own_rules_that_are_at_fault_are_refused_and_named_by_file_and_line(@TempDir Path dir)
      throws Exception {
    Path own = ownRules(dir);
    Path file = own.resolve("understand/01-what-the-floor-is.dslr");
    Files.writeString(
        file,
        Files.readString(file).replace("The deck is heated screed", "The deck says heated screed"));
    Console.Ran ran = Console.run("advise", SLAB, "--rules", own.toString());
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("01-what-the-floor-is.dslr:")
        .contains("The deck says heated screed");
  }

  @Test
  void a_figure_of_the_wrong_measure_is_refused_by_every_command_with_its_line(@TempDir Path dir)
      throws Exception {
    Path own = ownRules(dir);
    Path file = own.resolve("figures/backbone.yaml");
    String text = Files.readString(file);
    assertThat(text).contains("rigid-board-least:");
    int at = text.indexOf("value: ", text.indexOf("rigid-board-least:"));
    int end = text.indexOf('\n', at);
    for (String wrong : new String[] {"value: 2 kg", "value: 2"}) {
      Files.writeString(file, text.substring(0, at) + wrong + text.substring(end));
      Console.Ran advised = Console.run("advise", SLAB, "--rules", own.toString());
      assertThat(advised.exit()).isEqualTo(3);
      assertThat(advised.err())
          .contains("figures/backbone.yaml:", "rigid-board-least", "no length");
      Console.Ran linted = Console.run("rules", "--lint", "--rules", own.toString());
      assertThat(linted.exit()).isEqualTo(3);
      assertThat(linted.err()).contains("figures/backbone.yaml:", "rigid-board-least");
    }
    Files.writeString(file, text.substring(0, at) + "value: 11 mm" + text.substring(end));
    Console.Ran changed = Console.run("advise", SLAB, "--rules", own.toString());
    assertThat(changed.out()).startsWith("By changed rules:");
    assertThat(Console.run("advise", SLAB, "--rules", "rules").out())
        .startsWith("A concrete slab with everything known");
  }

  @Test
  void an_id_that_two_rules_bear_is_refused_by_every_command_with_its_line(@TempDir Path dir)
      throws Exception {
    Path own = ownRules(dir);
    Files.writeString(
        own.resolve("judge/99-twice.dslr"),
        "rule \"SLIP-01 the same id once more\"\n@reason(\"Trial\")\n"
            + "@source(\"common-practice\")\nwhen\n    The build-up is known\nthen\n"
            + "    Note slip-ask-dry\nend\n");
    String rules = own.toString();
    String[][] commands = {
      {"advise", SLAB},
      {"why", SLAB},
      {"why-not", SLAB, "tanking"},
      {"check", SLAB, "scenarios/proposals/pva-for-a-primer.yaml"},
      {"compare", SLAB},
      {"lesson", SLAB},
      {"rules", "--lint"},
      {"rules", "SLIP-01"},
      {"batch", SLAB}
    };
    for (String[] command : commands) {
      String[] all = java.util.Arrays.copyOf(command, command.length + 2);
      all[command.length] = "--rules";
      all[command.length + 1] = rules;
      Console.Ran ran = Console.run(all);
      assertThat(ran.exit()).as(String.join(" ", command)).isEqualTo(3);
      assertThat(ran.err()).contains("judge/99-twice.dslr:1").contains("SLIP-01");
    }
  }

  private static Path ownRules(Path dir) throws Exception {
    Path own = dir.resolve("rules");
    try (var files = Files.walk(Path.of("rules"))) {
      for (Path file : files.toList()) {
        Files.copy(file, own.resolve(Path.of("rules").relativize(file).toString()));
      }
    }
    return own;
  }

  @Test
  void a_scenario_with_faults_exits_with_3_and_prints_nothing_on_standard_output() {
    Console.Ran ran = stdin("scenario: A floor\nroom: {use: hall}\n", "advise", "-");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .startsWith("standard input:1:1: ")
        .contains("subfloor is missing from the scenario");
  }

  @Test
  void a_scenario_may_come_from_standard_input() throws Exception {
    String text = Files.readString(Path.of(SLAB));
    assertThat(stdin(text, "advise", "-").out()).isEqualTo(Console.run("advise", SLAB).out());
    assertThat(stdin(text, "why", "-", "tile").exit()).isZero();
  }

  private static Console.Ran stdin(String text, String... arguments) {
    return Console.run(text.getBytes(StandardCharsets.UTF_8), Map.of(), false, arguments);
  }

  @Test
  void a_file_that_cannot_be_read_is_wrong_usage_in_one_plain_line() {
    assertThat(Console.run("advise", "no-such-floor.yaml"))
        .isEqualTo(new Console.Ran(2, "", "There is no file no-such-floor.yaml\n"));
    assertThat(Console.run("why", "src"))
        .isEqualTo(new Console.Ran(2, "", "src is a folder; give a file\n"));
    assertThat(Console.run("advise", SLAB, "--rules", SLAB).exit()).isEqualTo(2);
    assertThat(Console.run("advise", SLAB, "--rules", "no-such-folder").exit()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "advice", "advise", "advise --jsn", "why", "advise a b", "rules --x"})
  void what_is_no_command_is_wrong_usage(String line) {
    String[] arguments = line.isEmpty() ? new String[0] : line.split(" ");
    Console.Ran ran = Console.run(arguments);
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).isNotBlank().doesNotContain("Exception").doesNotContain("\tat ");
  }

  @Test
  void a_width_out_of_range_is_wrong_usage_and_says_the_range() {
    Console.Ran ran = Console.run("advise", SLAB, "--width", "7");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("40").contains("160");
  }

  @Test
  void lines_are_no_longer_than_the_width_asked_for_or_the_columns_there_are() {
    String out = Console.run("advise", BOARDS, "--width", "50").out();
    assertThat(out.lines()).allMatch(line -> line.length() <= 50);
    assertThat(out.lines()).anyMatch(line -> line.length() > 42);
    assertThat(Console.run(NOTHING, Map.of("COLUMNS", "50"), false, "advise", BOARDS).out())
        .isEqualTo(out);
    assertThat(Console.run(NOTHING, Map.of("COLUMNS", "x"), false, "advise", BOARDS).out())
        .isEqualTo(Console.run("advise", BOARDS, "--width", "80").out());
  }

  @Test
  void colour_is_for_terminals_and_never_with_no_color() {
    Map<String, String> plain = Map.of("TERM", "xterm");
    String coloured = Console.run(NOTHING, plain, true, "advise", BOARDS).out();
    String piped = Console.run(NOTHING, plain, false, "advise", BOARDS).out();
    assertThat(coloured).contains("\u001b[");
    assertThat(piped).doesNotContain("\u001b[");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(piped);
    for (Map<String, String> without : List.of(Map.of("NO_COLOR", "1"), Map.of("TERM", "dumb"))) {
      assertThat(Console.run(NOTHING, without, true, "advise", BOARDS).out()).isEqualTo(piped);
    }
  }

  @Test
  void why_explains_down_to_the_line_of_the_scenario() {
    Console.Ran ran = Console.run("why", BOARDS, "tile-bed", "--detail", "normal");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .contains("subfloor.deck: square-edged boards (scenario line 12)")
        .contains("because: ")
        .contains("source: ");
    assertThat(Console.run("why", BOARDS).out()).contains("[tile]").contains("[tile-bed]");
  }

  @Test
  void why_talks_question_by_question_and_tells_each_reason_once() {
    Console.Ran ran = Console.run("why", BOARDS, "tile-bed");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).startsWith("Why: Tile adhesive bed?").contains("And why: ");
    String flat = ran.out().replaceAll("\\s+", " ");
    String reason = "Ridges pressed flat fill the gaps between them";
    assertThat(flat.split(reason, -1)).hasSize(2);
    assertThat(flat).contains("as line 12 says");
  }

  @Test
  void why_of_a_rule_starts_at_the_rule_and_is_told_as_data_too() {
    Console.Ran ran = Console.run("why", BOARDS, "BED-11");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out().strip()).startsWith("Why: ").contains("On this rest: ");
    Console.Ran json = Console.run("why", BOARDS, "BED-11", "--json");
    assertThat(json.exit()).isZero();
    assertThat(json.out()).contains("underfoot.why/1").contains("BED-11");
  }

  @Test
  void why_of_an_unknown_id_is_wrong_usage_and_names_the_nearest() {
    Console.Ran ran = Console.run("why", BOARDS, "tile-bad");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("tile-bed");
  }

  @Test
  void rules_lists_every_rule_and_shows_each() throws Exception {
    JsonNode rules =
        JsonMapper.shared().readTree(Console.run("rules", "--json").out()).get("rules");
    assertThat(rules.size()).isGreaterThan(50);
    StringBuilder missing = new StringBuilder();
    String index = Console.run("rules", "--width", "120").out();
    String[] ids = new String[rules.size() + 1];
    ids[0] = "rules";
    for (int i = 0; i < rules.size(); i++) {
      JsonNode rule = rules.get(i);
      ids[i + 1] = rule.get("id").asString();
      for (String field : List.of("id", "title", "file", "reason", "source", "sourceStatus")) {
        assertThat(rule.get(field).asString()).as(ids[i + 1] + " " + field).isNotBlank();
      }
      if (!index.contains("  " + ids[i + 1] + " ")) {
        missing.append(ids[i + 1]).append(' ');
      }
    }
    assertThat(missing.toString()).as("rules that the index leaves out").isEmpty();
    Console.Ran pages = Console.run(ids);
    assertThat(pages.exit()).isZero();
    for (int i = 1; i < ids.length; i++) {
      String begins = ids[i] + " ";
      assertThat(pages.out().lines().anyMatch(line -> line.startsWith(begins))).as(begins).isTrue();
    }
    assertThat(Console.run("rules", "BASSE-15"))
        .satisfies(ran -> assertThat(ran.exit()).isEqualTo(2))
        .satisfies(ran -> assertThat(ran.err()).contains("BASE-15"));
  }

  @Test
  void a_page_of_a_rule_says_when_then_reason_source_and_figures() throws Exception {
    String page = Console.run("rules", "BASE-15", "--width", "120").out();
    assertThat(page)
        .contains("  when The deck is heated screed\n")
        .contains("  then Conclude that the base is calcium sulfate screed\n")
        .contains("  because Most poured heated screeds are calcium sulfate")
        .contains("  source: ");
    for (JsonNode rule :
        JsonMapper.shared().readTree(Console.run("rules", "--json").out()).get("rules")) {
      if (!rule.get("figures").isEmpty()) {
        String id = rule.get("id").asString();
        String figure = rule.get("figures").get(0).asString();
        assertThat(Console.run("rules", id).out()).contains("figure: " + figure + " = ");
        assertThat(Console.run("rules", figure, "--width", "160").out()).contains(id);
        return;
      }
    }
    throw new AssertionError("no rule reads a figure");
  }

  @Test
  void the_schema_is_the_same_by_either_command() {
    String schema = Console.run("schema").out();
    assertThat(schema).contains("\"$schema\"").contains("joists");
    assertThat(Console.run("advise", "--schema").out()).isEqualTo(schema);
  }

  @Test
  void help_and_version_are_on_standard_output() {
    assertThat(Console.run("--help").out()).contains("advise").contains("why").contains("rules");
    assertThat(Console.run("advise", "--help").exit()).isZero();
    assertThat(Console.run("--version").out()).startsWith("underfoot ");
  }
}
