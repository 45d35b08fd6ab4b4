package underfoot.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.core.type.TypeReference;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Overlay;
import underfoot.reasoning.RuleBase;
import underfoot.reasoning.RuleCheck;
import underfoot.scenario.FactBook;
import underfoot.scenario.ScenarioFaults;

/**
 * Whatever stands in a rule base from outside, nothing of it is run. Each trick of {@code
 * tricks.yaml} means to write a file; none may. Beside them, files are made up of pieces of tricks
 * and of right lines: {@code -Dtricks=5000 -Dseed=2} makes more.
 */
class NoCodeFromRulesTest {
  private static final Path TRICKS = Path.of("src/test/resources/tricks/tricks.yaml");
  private static final int MADE_UP = Integer.getInteger("tricks", 300);

  @TempDir Path dir;

  /** How a rule base was taken. */
  private enum Taken {
    REFUSED,
    USED
  }

  private static List<Map<String, String>> tricks() throws Exception {
    return YAMLMapper.shared()
        .readValue(Files.readString(TRICKS), new TypeReference<List<Map<String, String>>>() {});
  }

  private Path marker() {
    return dir.resolve("marker");
  }

  private String code() {
    return "new java.io.FileWriter(String.valueOf(new char[] {"
        + marker()
            .toString()
            .chars()
            .mapToObj(Integer::toString)
            .reduce((a, b) -> a + "," + b)
            .get()
        + "})).close()";
  }

  @TestFactory
  Stream<DynamicTest> no_trick_runs_code_and_each_is_refused() throws Exception {
    List<Map<String, String>> tricks = tricks();
    assertThat(tricks).hasSizeGreaterThanOrEqualTo(40);
    return tricks.stream()
        .map(
            trick ->
                DynamicTest.dynamicTest(
                    trick.get("name"),
                    () -> {
                      String text = trick.get("text").replace("MARK", code());
                      Taken taken = use(with(new Overlay(), trick.get("file"), text));
                      assertThat(marker()).doesNotExist();
                      assertThat(taken).isEqualTo(Taken.REFUSED);
                    }));
  }

  @Test
  void files_made_up_of_pieces_of_tricks_run_no_code_and_end_in_no_other_error() throws Exception {
    Random random = new Random(Long.getLong("seed", 1));
    List<String> pieces = new ArrayList<>(List.of("when\n", "then\n", "end\n", "\n", "\"", "\\"));
    for (Map<String, String> trick : tricks()) {
      for (String piece : trick.get("text").replace("MARK", code()).split("(?<=[ \n=(])")) {
        pieces.add(piece);
      }
    }
    List<String> files =
        List.of("understand/01-what-the-floor-is.dslr", "vocabulary/90-general.dsl");
    int refused = 0;
    for (int i = 0; i < MADE_UP; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(30); n >= 0; n--) {
        text.append(pieces.get(random.nextInt(pieces.size())));
      }
      List<RuleFaults.Fault> faults = new ArrayList<>();
      String file = files.get(random.nextInt(files.size()));
      RuleSet.read(with(new Overlay(), file, text.toString()), faults);
      refused += faults.isEmpty() ? 0 : 1;
      assertThat(marker()).as(text.toString()).doesNotExist();
    }
    assertThat(refused).isGreaterThan(MADE_UP / 2);
  }

  /** Puts a text at the end of a file, or makes the file. */
  private static Overlay with(Overlay overlay, String file, String text) {
    String before = "";
    try {
      before = new String(overlay.read(file), StandardCharsets.UTF_8) + "\n";
    } catch (java.io.UncheckedIOException noSuchFile) {
      // then the text is all of it
    }
    return overlay.with(file, (before + text + "\n").getBytes(StandardCharsets.UTF_8));
  }

  /** Uses a rule base as a command does, for a floor that many rules speak of. */
  private static Taken use(Overlay files) throws Exception {
    try {
      FactBook facts = FactBook.load(files);
      Knowledge knowledge = Knowledge.load(files, facts, "uk");
      RuleSet set = RuleSet.read(files);
      List<RuleFaults.Fault> faults = RuleCheck.faults(set, knowledge);
      if (!faults.isEmpty()) {
        return Taken.REFUSED;
      }
      new Advisor(RuleBase.of(set), knowledge, new Planner(knowledge.prices()))
          .advise(Floors.read("plain"));
      return Taken.USED;
    } catch (RuleFaults | KnowledgeFault | ScenarioFaults refused) {
      return Taken.REFUSED;
    }
  }
}
