package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Talks at a terminal, as scripts. */
class AskTest {
  private static final String BEGUN = "bathroom\nold wooden floor\nporcelain\nbig\n";

  @TempDir Path folder;

  @Test
  void a_newcomer_gets_an_advice_and_three_things_to_find_out_first() throws Exception {
    Path file = folder.resolve("floor.yaml");
    Console.Ran ran =
        ask(BEGUN + "don't know\n\nno idea\nnot sure\n\nenough\n", "--to", file.toString());
    assertThat(ran.exit()).isEqualTo(Exit.FINE);
    assertThat(ran.out())
        .contains("Taken as square-edged boards", "What hangs on it", "Sound once put right")
        .containsPattern("Find out first\n 1 .*\\S[\\s\\S]*\n 2 [\\s\\S]*\n 3 ")
        .contains("asbestos");
    assertThat(ran.out().split("\nFind out first", -1)).as("said once").hasSize(2);
    assertThat(Console.run("advise", file.toString()).exit()).isEqualTo(Exit.FINE);
    assertThat(Files.readString(file)).contains("# Written by the interview", "unknown");
  }

  @Test
  void who_knows_three_things_only_is_asked_no_more_than_25_times() {
    Console.Ran ran =
        ask(
            "upstairs bathroom\nold wooden floor\nbig tiles\n" + "\n".repeat(22),
            "--to",
            folder.resolve("three.yaml").toString());
    assertThat(ran.exit()).isEqualTo(Exit.FINE);
    String talk = ran.out().substring(0, ran.out().indexOf("From the old floor up"));
    int asked = talk.split("(?m)^> ", -1).length - 1;
    assertThat(asked).as(talk).isBetween(5, 25);
    assertThat(talk)
        .contains("Storey: upper floor", "Tile length taken as 600 mm", "Tile width taken as")
        .contains("Go on? (yes, or Enter for the advice)")
        .doesNotContain("What shall this floor be called");
    assertThat(ran.out().substring(ran.out().indexOf("Find out first")))
        .contains("What is the floor made of?", "asbestos", "stops");
  }

  @Test
  void what_was_only_taken_is_still_not_known_when_the_talk_is_taken_up_again() throws Exception {
    Path file = folder.resolve("taken.yaml");
    ask(BEGUN + "\nenough\n", "--to", file.toString());
    assertThat(Files.readString(file)).contains("# Not certain; taken so:");
    Console.Ran left = ask("\nenough\n", "--from", file.toString());
    assertThat(left.out()).contains("not known, or only by and large, when this was written");
    assertThat(left.out().substring(left.out().indexOf("Find out first")))
        .contains("What is the floor made of? Taken as square-edged boards");
    Path again = folder.resolve("again.yaml");
    Console.Ran asked =
        ask(
            "yes\ntongue and groove boards\n\nsmall\nenough\n",
            "--from",
            file.toString(),
            "--to",
            again.toString());
    assertThat(asked.out())
        .contains("Square-edged boards was taken; press Enter to leave it at that.")
        .contains("Has anyone sampled the floor for asbestos?");
    assertThat(Files.readString(again))
        .contains("deck: tongue-and-groove boards", "scenario: Bathroom on tongue")
        .contains("taken so: it is a usual size")
        .doesNotContain("of the floors that may be meant");
  }

  @Test
  void both_sides_of_a_tile_may_be_said_at_once_and_a_unit_may_be_left_out() {
    Console.Ran both = ask("hall\nconcrete\nporcelain\n12 x 24 in\nquit\n");
    assertThat(both.out()).doesNotContain("shorter side");
    Console.Ran unit = ask("hall\nconcrete\nporcelain\n600\nquit\n");
    assertThat(unit.out()).contains("That is: 600 mm.", "shorter side");
  }

  @Test
  void who_leaves_is_asked_whether_to_keep_the_answers() throws Exception {
    Path file = folder.resolve("kept.yaml");
    Console.Ran kept = ask("hall\nquit\n" + file + "\n");
    assertThat(kept.exit()).isEqualTo(Exit.FINE);
    assertThat(Files.readString(file)).contains("use: hall");
    assertThat(ask("quit\n").out()).doesNotContain("Keep your answers?");
    assertThat(ask("hall\nquit\nno\n").out()).contains("Nothing was written.");
  }

  @Test
  void the_advice_as_it_stands_can_be_seen_at_any_question() {
    Console.Ran ran = ask("so far\n" + BEGUN + "so far\nquit\n");
    assertThat(ran.out()).contains("There is no advice yet: say a little more.");
    assertThat(ran.out()).contains("From the old floor up");
  }

  @Test
  void back_takes_an_answer_back_and_why_and_help_explain() {
    Console.Ran ran = ask("kitchen\nback\nbathroom\nwood\nwhy\nhelp\nquit\n");
    assertThat(ran.out().split("What is the room used for", -1)).hasSize(3);
    assertThat(ran.out()).contains("no advice can be given without it", "What the tile is made of");
    Console.Ran later = ask(BEGUN + "why\nquit\n");
    assertThat(later.out())
        .contains("It matters because", "- If found asbestos: the work stops", "‹");
    assertThat(later.out()).contains("Nothing was written.");
  }

  @Test
  void a_talk_is_saved_and_taken_up_again_even_when_it_is_unfinished() throws Exception {
    Path file = folder.resolve("half.yaml");
    Console.Ran first = ask("bathroom\nsave " + file + "\nquit\n");
    assertThat(first.exit()).isEqualTo(Exit.FINE);
    assertThat(Files.readString(file)).contains("Not finished", "use: bathroom");
    Console.Ran second = ask("boards\nquit\n", "--from", file.toString());
    assertThat(second.out()).doesNotContain("What is the room used for");
    assertThat(second.out()).contains("What is the floor made of?", "Taken as square-edged boards");
  }

  @Test
  void a_file_that_is_there_is_left_unless_told_otherwise() throws Exception {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, "mine");
    assertThat(ask(BEGUN + "enough\n", "--to", file.toString()).exit()).isEqualTo(Exit.WRONG_USAGE);
    Console.Ran saved = ask("bathroom\nsave " + file + "\nquit\n");
    assertThat(saved.out()).contains("is there already");
    assertThat(Files.readString(file)).isEqualTo("mine");
    assertThat(ask(BEGUN + "enough\n", "--to", file.toString(), "--replace").exit()).isZero();
    assertThat(Files.readString(file)).startsWith("# Written by the interview");
    try (var left = Files.list(folder)) {
      assertThat(left).hasSize(1);
    }
  }

  @Test
  void what_is_no_answer_is_said_to_be_none_with_how_to_say_it() {
    Console.Ran ran = ask("balcony\nbathroom\nwood\nporcelain\nlong\nquit\n");
    assertThat(ran.out()).contains("Outdoor tiling is out of scope", "\"long\" is not understood");
    assertThat(ask("\nquit\n").out()).contains("Without this nothing can be advised");
    assertThat(ask("").exit()).isEqualTo(Exit.SCENARIO_INVALID);
  }

  @Test
  void the_program_completes_its_commands_and_has_a_manual_and_a_version_of_its_rules() {
    assertThat(Console.run("generate-completion").out()).contains("complete -F", "advise");
    assertThat(Console.run("manual").out()).startsWith(".TH UNDERFOOT 1").contains(".SH ASK");
    assertThat(Console.run("--version").out()).containsPattern("rule base [0-9a-f]{12}");
  }

  private static Console.Ran ask(String lines, String... options) {
    String[] all = new String[options.length + 1];
    all[0] = "ask";
    System.arraycopy(options, 0, all, 1, options.length);
    return Console.run(lines.getBytes(StandardCharsets.UTF_8), Map.of(), false, all);
  }
}
