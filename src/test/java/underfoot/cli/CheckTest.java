package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.knowledge.RuleNote;
import underfoot.reasoning.Floors;

class CheckTest {
  private static final String FLOOR = "scenarios/utility-room-over-a-cellar-on-old-boards.yaml";
  private static final String SOUND = "scenarios/proposals/a-rigid-board-as-recommended.yaml";
  private static final String SCREW = "scenarios/proposals/a-board-fixed-with-the-wrong-screw.yaml";

  @Test
  void a_sound_proposal_exits_with_0_and_says_so_first() {
    Console.Ran ran = Console.run("check", FLOOR, SOUND);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .startsWith("A rigid board over the old boards - for: Utility room over a cellar\n")
        .contains("\nSound - the proposal holds")
        .doesNotContain("If done anyway");
  }

  @Test
  void faults_exit_with_5_and_are_told_with_layer_consequence_and_remedy() {
    Console.Ran ran = Console.run("check", FLOOR, SCREW, "--width", "120");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isEqualTo(5);
    assertThat(ran.out())
        .contains("\nOne fault - put it right")
        .contains("\n 3 Cement board, 10 mm - must not be done so\n")
        .contains("A screw of 50 mm comes out below the deck: the longest that does not is 32 mm.")
        .contains("If done anyway: ")
        .contains("Do this: Use screws of 30 mm between joists")
        .contains("‹CHECK-61›");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void the_json_names_its_format_and_gives_every_finding_a_rule_that_is_listed() throws Exception {
    Set<String> listed = new TreeSet<>();
    for (RuleNote note : Floors.advisor().rules().notes()) {
      listed.add(note.id());
    }
    Console.Ran ran = Console.run("check", FLOOR, SCREW, "--json");
    assertThat(ran.exit()).isEqualTo(5);
    JsonNode json = JsonMapper.shared().readTree(ran.out());
    assertThat(json.get("format").asString()).isEqualTo("underfoot.check/1");
    assertThat(json.get("faults").asInt()).isEqualTo(1);
    assertThat(json.get("layers").size()).isEqualTo(7);
    assertThat(json.get("layers").get(2).get("judgement").asString()).isEqualTo("must not");
    assertThat(json.get("massKgPerM2").asDouble()).isGreaterThan(50);
    assertThat(json.get("heights").get("doors").get(0).get("name").asString())
        .isEqualTo("kitchen door");
    int faults = 0;
    for (JsonNode finding : json.get("findings")) {
      assertThat(finding.get("because").isEmpty()).isFalse();
      finding.findValues("rule").forEach(rule -> assertThat(listed).contains(rule.asString()));
      faults += finding.get("fault").asBoolean() ? 1 : 0;
    }
    assertThat(faults).isEqualTo(1);
  }

  @Test
  void what_is_found_rests_on_the_rule_that_laid_the_layer_and_on_the_line_of_the_proposal()
      throws Exception {
    JsonNode json =
        JsonMapper.shared().readTree(Console.run("check", FLOOR, SCREW, "--json").out());
    JsonNode tip = null;
    for (JsonNode finding : json.get("findings")) {
      if (finding.get("id").asString().equals("tip-below-the-deck")) {
        tip = finding.get("because").get(0);
      }
    }
    assertThat(tip).isNotNull();
    assertThat(tip.toString()).contains("\"rule\":\"OVER-01\"", "layers[layer 3].screw length");
    for (JsonNode fact : tip.get("facts")) {
      if (fact.get("fact").asString().equals("layers[layer 3].screw length")) {
        assertThat(fact.get("from").asString()).isEqualTo("proposal");
        assertThat(fact.get("line").asInt()).isEqualTo(7);
      }
    }
  }

  @Test
  void faults_of_both_files_are_told_at_once() {
    Console.Ran ran =
        Console.run(
            "check",
            "src/test/resources/bad-input/a-misspelt-key.yaml",
            "src/test/resources/bad-proposals/a-misspelt-key.yaml");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("bad-input/a-misspelt-key.yaml:")
        .contains("bad-proposals/a-misspelt-key.yaml:3:26: ")
        .contains("write: thickness");
  }

  @Test
  void one_of_the_two_may_come_from_standard_input() throws Exception {
    byte[] proposal = Files.readAllBytes(Path.of(SCREW));
    byte[] floor = Files.readAllBytes(Path.of(FLOOR));
    String told = Console.run("check", FLOOR, SCREW).out();
    assertThat(Console.run(proposal, Map.of(), false, "check", FLOOR, "-").out()).isEqualTo(told);
    assertThat(Console.run(floor, Map.of(), false, "check", "-", SCREW).out()).isEqualTo(told);
    assertThat(Console.run("check", "-", "-").exit()).isEqualTo(2);
  }

  @Test
  void what_is_no_proposal_at_all_is_told_in_plain_words() {
    for (String text :
        List.of("", "tiles", "- tiles\n", "layers: none\n", "proposal: x\nlayers: []\n")) {
      Console.Ran ran =
          Console.run(text.getBytes(StandardCharsets.UTF_8), Map.of(), false, "check", FLOOR, "-");
      assertThat(ran.exit()).as(text).isIn(3, 5);
      assertThat(ran.err() + ran.out()).doesNotContain("Exception", "null");
    }
    assertThat(Console.run("check", FLOOR).exit()).isEqualTo(2);
    assertThat(Console.run("check", FLOOR, "no-such-file.yaml").exit()).isEqualTo(2);
  }

  @Test
  void a_floor_that_must_not_be_tiled_takes_no_proposal() {
    Console.Ran ran = Console.run("check", "scenarios/pantry-with-rotten-joist-ends.yaml", SOUND);
    assertThat(ran.exit()).isEqualTo(5);
    assertThat(ran.out()).contains("‹CHECK-07›");
  }

  @Test
  void the_schema_of_proposals_is_json_and_lists_the_kinds_of_layer() throws Exception {
    JsonNode schema = JsonMapper.shared().readTree(Console.run("schema", "--proposal").out());
    assertThat(schema.get("properties").has("layers")).isTrue();
    assertThat(schema.toString()).contains("\"cement board\"", "\"foam-core tile board\"");
  }
}
