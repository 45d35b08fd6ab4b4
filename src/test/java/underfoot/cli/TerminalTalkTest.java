package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jline.terminal.Size;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Interview;
import underfoot.report.TextPage;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.talk.Conversation;

/** Keys pressed at a terminal with line editing, within the test. */
class TerminalTalkTest {
  private static final String CTRL_C = "\003";
  private static final String CTRL_D = "\004";
  private static final String UP = "\033[A";
  private static final String LEFT = "\033[D";
  private static final String BACKSPACE = "\177";

  /** Seconds without anything new, after which nothing more is to come. */
  private static final int QUIET = 60;

  private static final FactBook BOOK = Floors.advisor().knowledge().facts();

  @Test
  void lines_can_be_edited_recalled_and_completed() throws Exception {
    try (Keys keys = new Keys(80)) {
      assertThat(keys.line("mm" + LEFT + LEFT + "9 " + "\r")).isEqualTo("9 mm");
      assertThat(keys.line("9 ft" + BACKSPACE + BACKSPACE + "in\r")).isEqualTo("9 in");
      assertThat(keys.line(UP + UP + "\r")).isEqualTo("9 mm");
      assertThat(keys.line("tong\t\r", "tongue-and-groove boards", "OSB").strip())
          .isEqualTo("tongue-and-groove boards");
      assertThat(keys.line("don\t\r", "don't know", "help").strip()).isEqualTo("don't know");
      assertThat(keys.line("a \"half\\ ! one\r")).isEqualTo("a \"half\\ ! one");
    }
  }

  @Test
  void control_c_drops_the_line_and_then_leaves_and_control_d_ends_the_answers() throws Exception {
    try (Keys keys = new Keys(80)) {
      CompletableFuture<String> line = keys.reading();
      keys.press("nonsense");
      keys.shown("nonsense");
      keys.press(CTRL_C);
      keys.shown("\n> ");
      keys.press("no\r");
      assertThat(keys.of(line)).isEqualTo("no");
      CompletableFuture<String> left = keys.reading();
      keys.press(CTRL_C);
      assertThat(keys.of(left)).isEqualTo("quit");
      CompletableFuture<String> ended = keys.reading();
      keys.press(CTRL_D);
      assertThat(keys.of(ended)).isNull();
    }
  }

  @Test
  void a_talk_shows_its_choices_before_the_place_to_type_and_keeps_to_a_narrow_terminal()
      throws Exception {
    try (Keys keys = new Keys(60)) {
      SafeOutput out = new SafeOutput(keys.screen);
      Conversation conversation = conversation();
      TerminalInterview talk =
          new TerminalInterview(
              conversation,
              new InterviewScreen(conversation, out, keys.prompt::columns, false),
              keys.prompt,
              conversation.begun());
      CompletableFuture<TerminalInterview.End> end =
          CompletableFuture.supplyAsync(() -> talk.hold(NOTHING));
      keys.shown("9 light commercial");
      keys.shown("> ");
      keys.press("upst");
      keys.shown("upst");
      keys.press(CTRL_C);
      keys.shown("> ");
      keys.press("upstairs bathroom\r");
      keys.shown("adhesive-soiled concrete");
      keys.press("help\r");
      keys.shown("the knife stops");
      keys.press("old wooden floor\r");
      keys.shown("18 slim panel");
      keys.press("big tiles\r");
      keys.shown("sampled the floor for asbestos");
      keys.press("\r");
      keys.shown("a house or a flat");
      keys.press("back\r");
      keys.press("enough\r");
      assertThat(keys.of(end)).isEqualTo(TerminalInterview.End.DONE);
      talk.tellFirst();
      String screen = keys.screen();
      assertThat(screen).contains("Storey: upper floor", "Taken as square-edged boards");
      assertThat(screen.indexOf("light commercial")).isLessThan(screen.indexOf("> "));
      assertThat(screen.split("sampled the floor for asbestos", -1)).hasSizeGreaterThan(3);
      assertThat(screen.lines())
          .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(60));
    }
  }

  private static final TerminalInterview.Outside NOTHING =
      new TerminalInterview.Outside() {
        @Override
        public String save(String name) {
          return "";
        }

        @Override
        public TextPage advice() {
          return new TextPage(80, false);
        }
      };

  private static Conversation conversation() throws Exception {
    InterviewBook order = InterviewBook.load(RuleFiles.shipped(), BOOK);
    Interview interview = new Interview(Floors.advisor(), order);
    return new Conversation(interview, new Phrases(Floors.advisor().knowledge().wording()));
  }

  /** A terminal within the test: what is typed, and what is shown. */
  private static final class Keys implements AutoCloseable {
    private final PipedOutputStream typed = new PipedOutputStream();
    private final Screen screen = new Screen();
    private final ExternalTerminal terminal;
    private final TerminalPrompt prompt;
    private int seen;

    Keys(int columns) throws IOException {
      terminal =
          new ExternalTerminal(
              "test", "ansi", new PipedInputStream(typed, 8192), screen, StandardCharsets.UTF_8);
      terminal.setSize(new Size(columns, 40));
      prompt = new TerminalPrompt(terminal);
    }

    /** The line read while these keys are pressed. */
    String line(String keys, String... likely) throws Exception {
      CompletableFuture<String> line =
          CompletableFuture.supplyAsync(() -> prompt.line("> ", List.of(likely)));
      shown("> ");
      press(keys);
      return of(line);
    }

    /** A line that is being read, the place to type being there. */
    CompletableFuture<String> reading() throws Exception {
      CompletableFuture<String> line =
          CompletableFuture.supplyAsync(() -> prompt.line("> ", List.of()));
      shown("> ");
      return line;
    }

    void press(String keys) throws IOException {
      typed.write(keys.getBytes(StandardCharsets.UTF_8));
      typed.flush();
    }

    /** Waits until something is shown that was not shown before, while anything is shown. */
    void shown(String words) throws Exception {
      int size = -1;
      long until = 0;
      while (screen.size() != size || System.nanoTime() < until) {
        if (screen.size() != size) {
          size = screen.size();
          until = System.nanoTime() + TimeUnit.SECONDS.toNanos(QUIET);
        }
        int at = screen().indexOf(words, seen);
        if (at >= 0) {
          seen = at + words.length();
          return;
        }
        Thread.sleep(20);
      }
      throw new TimeoutException("never shown: " + words + "\n" + screen());
    }

    <T> T of(CompletableFuture<T> future) throws Exception {
      return future.get(QUIET, TimeUnit.SECONDS);
    }

    /** All that was shown, without the codes that move the cursor. */
    String screen() {
      return screen
          .toString(StandardCharsets.UTF_8)
          .replaceAll("\033\\[[0-9;?]*[A-Za-z]", "")
          .replaceAll("\033[=>]", "")
          .replace("\r", "");
    }

    @Override
    public void close() throws IOException {
      typed.close();
      prompt.close();
    }
  }

  /** Keeps what is written to it. */
  private static final class Screen extends ByteArrayOutputStream {}
}
