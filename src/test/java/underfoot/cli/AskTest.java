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
  private static final String BEGUN = "bathroom\nold wooden floor\nporcelain\nbig\nbig\n\n";

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
    assertThat(Console.run("advise", file.toString()).exit()).isEqualTo(Exit.FINE);
    assertThat(Files.readString(file)).contains("# Written by the interview", "unknown");
  }

  @Test
  void back_takes_an_answer_back_and_why_and_help_explain() {
    Console.Ran ran = ask("kitchen\nback\nbathroom\nwood\nwhy\nhelp\nquit\n");
    assertThat(ran.out().split("What is the room used for", -1)).hasSize(3);
    assertThat(ran.out()).contains("no advice can be given without it", "For example: porcelain");
    Console.Ran later = ask(BEGUN + "why\nquit\n");
    assertThat(later.out()).contains("It matters because", "if it is", "‹");
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
    Console.Ran ran = ask("balcony\nbathroom\nwood\nporcelain\n600\nquit\n");
    assertThat(ran.out()).contains("Outdoor tiling is out of scope", "600 what?");
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
