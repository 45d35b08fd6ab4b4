package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.reasoning.Floors;

/** The terminal and the page ask the same, in the same words, and come to the same file. */
class BothMouthsTest {
  @TempDir Path folder;

  private static final List<String> NEWCOMER =
      List.of(
          "old wooden floor, upstairs bathroom",
          "big tiles",
          "",
          "a 1930s semi",
          "dunno",
          "pipes I think",
          "joists",
          "a bit bouncy",
          "12 foot",
          "8x2s",
          "400");

  private static final List<String> SLAB =
      List.of("old vinyl on concrete in a 1970s kitchen, 600 tiles", "porcelin", "");

  @Test
  void the_same_answers_come_to_the_same_questions_and_the_same_file() throws Exception {
    for (List<String> talk : List.of(NEWCOMER, SLAB)) {
      Path file = folder.resolve("said-" + talk.size() + ".yaml");
      String lines = String.join("\n", talk) + "\nsave " + file + "\nquit\n";
      Console.Ran ran = Console.run(lines.getBytes(StandardCharsets.UTF_8), Map.of(), false, "ask");
      Page page = new Page();
      List<String> questions = new ArrayList<>();
      for (String words : talk) {
        questions.add(page.say(words));
      }
      int from = 0;
      for (String question : questions) {
        int at = flat(ran.out()).indexOf(flat(question), from);
        assertThat(at).as(question + "\n" + ran.out()).isNotNegative();
        from = at;
      }
      assertThat(page.file()).isEqualTo(Files.readString(file));
    }
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** What the page does: it asks for the next question and says something to it. */
  private static final class Page {
    private final PageApi api;
    private String state = "\"answers\":{},\"taken\":{}";

    Page() throws Exception {
      Environment around =
          new Environment(
              new ByteArrayInputStream(new byte[0]),
              Map.of(),
              false,
              () -> Floors.advisor().rules());
      CommandContext context = new CommandContext(null, null, around);
      api = new PageApi(context, context.conversation().begun());
    }

    /** Says something to the next question; tells which question it was. */
    String say(String words) throws Exception {
      String next = ask("next", "");
      String id = field(next, "id");
      String more = "\"place\":\"" + id + "\",\"words\":\"" + words + "\"";
      String reply = ask("say", more);
      assertThat(reply).as(words).contains("\"answered\" : true");
      state = "\"answers\":" + map(reply, "answers") + ",\"taken\":" + map(reply, "taken");
      return field(next, "ask");
    }

    String file() throws Exception {
      String reply = ask("file", "");
      String file = reply.substring(reply.indexOf(": \"") + 3, reply.lastIndexOf('"'));
      return file.replace("\\n", "\n").replace("\\\"", "\"").replace("\\\\", "\\");
    }

    private String ask(String what, String more) throws Exception {
      StringWriter out = new StringWriter();
      String body = '{' + state + (more.isEmpty() ? "" : "," + more) + '}';
      api.answer(what, body.getBytes(StandardCharsets.UTF_8), () -> false, out);
      return out.toString();
    }

    private static String field(String json, String name) {
      Matcher field = Pattern.compile('"' + name + "\" : \"([^\"]*)\"").matcher(json);
      assertThat(field.find()).as(name + " in " + json).isTrue();
      return field.group(1);
    }

    private static String map(String json, String name) {
      Matcher map = Pattern.compile('"' + name + "\" : (\\{[^}]*\\})").matcher(json);
      assertThat(map.find()).as(name + " in " + json).isTrue();
      return map.group(1);
    }
  }
}
