package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LessonCommandTest {
  private static final String BOARDS = "src/test/resources/floors/boards.yaml";

  private static Console.Ran mark(String replies, String... more) {
    String[] arguments =
        Stream.concat(Stream.of("lesson", BOARDS, "--mark"), Stream.of(more))
            .toArray(String[]::new);
    return Console.run(replies.getBytes(StandardCharsets.UTF_8), Map.of(), false, arguments);
  }

  private static JsonNode json(String... more) {
    String[] arguments =
        Stream.concat(Stream.of("lesson", BOARDS, "--json"), Stream.of(more))
            .toArray(String[]::new);
    return JsonMapper.shared().readTree(Console.run(arguments).out());
  }

  @Test
  void right_answers_down_a_pipe_get_every_mark() {
    JsonNode lesson = json("--seed", "5");
    StringBuilder replies = new StringBuilder();
    for (JsonNode question : lesson.get("questions")) {
      if (question.has("number")) {
        replies.append(question.get("number").asDouble());
      } else {
        for (JsonNode group : question.get("right")) {
          replies.append(group.get(0).asString()).append(' ');
        }
      }
      replies.append('\n');
    }
    int marks = lesson.get("marks").asInt();
    int count = lesson.get("questions").size();
    Console.Ran ran = mark(replies.toString(), "--seed", "5");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .endsWith(
            marks
                + " of "
                + marks
                + " marks, "
                + count
                + " of "
                + count
                + " questions answered.\n");
    assertThat(ran.out()).doesNotContain("Not right.");
  }

  @Test
  void where_the_answers_end_the_rest_counts_as_not_answered_and_is_still_explained() {
    Console.Ran ran = mark("a\n");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("No answer was given.").contains("Answer: ");
    assertThat(ran.out().strip()).endsWith("questions answered.");
    assertThat(ran.out()).contains(" 1 of ");
  }

  @Test
  void answers_that_are_no_answers_are_said_to_be_none() {
    assertThat(mark("\u0007???\n").out()).contains("none of the answers");
  }

  @Test
  void the_json_has_its_format_its_seed_and_a_rule_behind_answers() {
    JsonNode lesson = json("--seed", "5");
    assertThat(lesson.get("format").asString()).isEqualTo("underfoot.lesson/1");
    assertThat(lesson.get("seed").asInt()).isEqualTo(5);
    assertThat(lesson.get("changes").isEmpty()).isFalse();
    assertThat(json().get("seed").isNull()).isTrue();
    assertThat(json().get("changes").isEmpty()).isTrue();
    assertThat(lesson.toString()).contains("\"rule\"");
  }

  @Test
  void a_page_is_written_whole_or_not_at_all(@TempDir Path folder) throws Exception {
    Path page = folder.resolve("lesson.html");
    Console.Ran ran =
        Console.run("lesson", BOARDS, "--seed", "2", "--answers", "--html", page.toString());
    assertThat(ran).isEqualTo(new Console.Ran(0, "", ""));
    assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    Path nowhere = folder.resolve("no such folder").resolve("lesson.html");
    assertThat(Console.run("lesson", BOARDS, "--html", nowhere.toString()).exit()).isEqualTo(2);
    assertThat(Console.run("lesson", BOARDS, "--html", folder.toString()).exit()).isEqualTo(2);
    for (String command : new String[] {"why", "rules"}) {
      Path other = folder.resolve(command + ".html");
      String[] line =
          command.equals("why")
              ? new String[] {"why", BOARDS, "tile-bed", "--html", other.toString()}
              : new String[] {"rules", "--html", other.toString()};
      assertThat(Console.run(line).exit()).isZero();
      assertThat(Files.readString(other)).endsWith("</html>\n");
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("lesson.html", "why.html", "rules.html");
    }
  }

  @Test
  void what_does_not_go_together_is_wrong_usage() {
    assertThat(Console.run("lesson", BOARDS, "--mark", "--json").exit()).isEqualTo(2);
    assertThat(Console.run("lesson", "-", "--mark").exit()).isEqualTo(2);
    assertThat(Console.run("lesson", BOARDS, "--seed", "x").exit()).isEqualTo(2);
    assertThat(Console.run("rules", "--html", "x.html", "OVER-01").exit()).isEqualTo(2);
    assertThat(Console.run("rules", "--scenarios", BOARDS).exit()).isEqualTo(2);
    assertThat(Console.run("advise", BOARDS, "--detail", "some").exit()).isEqualTo(2);
  }

  @Test
  void a_rule_s_page_names_the_scenarios_and_lessons_that_use_it(@TempDir Path folder)
      throws Exception {
    Files.copy(Path.of(BOARDS), folder.resolve("boards.yaml"));
    String page = Console.run("rules", "TILE-01", "--scenarios", folder.toString()).out();
    String name = json().get("scenario").asString();
    assertThat(page.replaceAll("\\s+", " ")).contains("scenarios: " + name);
    assertThat(page).contains("lessons:");
    assertThat(Console.run("rules", "--by", "source").out())
        .contains("(published)")
        .contains("TILE-01");
  }
}
