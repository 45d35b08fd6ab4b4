package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Listed;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;

/**
 * The lint finds nothing in the shipped rules, nothing in the folders of {@code lint/good}, and in
 * each folder of {@code lint/bad}, put over the shipped rules, exactly what its {@code message.txt}
 * says. With {@code -Dreset.lint=true} the messages are written anew; review the difference.
 */
class LintTest {
  private static final Path FOLDER = Path.of("src/test/resources/lint");
  private static final boolean RESET = Boolean.getBoolean("reset.lint");
  private static final String MESSAGE = "message.txt";

  @Test
  void the_shipped_rule_base_has_nothing_to_mend() throws Exception {
    assertThat(Lint.faults(RuleFiles.shipped(), Floors.advisor().knowledge())).isEmpty();
  }

  @Test
  void every_deck_with_every_use_and_heating_has_a_complete_answer() {
    assertThat(CoverageGaps.faults(Floors.advisor())).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> what_is_good_is_left_alone() throws IOException {
    return folders("good").stream()
        .map(
            folder ->
                DynamicTest.dynamicTest(
                    folder.getFileName().toString(), () -> assertThat(told(folder)).isEmpty()));
  }

  @TestFactory
  Stream<DynamicTest> what_is_bad_gets_the_message_written_beside_it() throws IOException {
    return folders("bad").stream()
        .map(
            folder ->
                DynamicTest.dynamicTest(
                    folder.getFileName().toString(),
                    () -> {
                      String message = told(folder);
                      Path expected = folder.resolve(MESSAGE);
                      if (RESET) {
                        Files.writeString(expected, message);
                      }
                      assertThat(message).isNotEmpty().isEqualTo(Files.readString(expected));
                    }));
  }

  @Test
  void what_is_said_to_be_read_by_formulas_is_in_the_program() throws Exception {
    String program = program();
    Set<String> missing = new TreeSet<>();
    for (Listed listed : Listed.in(RuleFiles.shipped(), "read-by-formulas.yaml")) {
      if (listed.name().equals("prices")) {
        continue; // the first line of every price book
      }
      for (String name : listed.list()) {
        String stem = name.endsWith("-") ? name.substring(0, name.length() - 1) : name;
        if (!program.contains(stem)
            && !joined(stem, program)
            && !program.contains("\"" + stem.split("-")[0])) {
          missing.add(listed.name() + ": " + name);
        }
      }
    }
    assertThat(missing).as("names that no formula has").isEmpty();
  }

  /** A formula may put a name together, as in deck + "-drying-rate-first" or use + " class". */
  private static boolean joined(String name, String program) {
    for (int i = 1; i < name.length() - 3; i++) {
      char at = name.charAt(i);
      if ((at == '-' || at == ' ')
          && (program.contains(name.substring(i) + "\"")
              || program.contains("\"" + name.substring(0, i + 1) + "\""))) {
        return true;
      }
    }
    return false;
  }

  private static String program() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!file.getFileName().toString().matches("Lint.java|UnusedNames.java")) {
          texts.add(Files.readString(file));
        }
      }
      return String.join("\n", texts);
    }
  }

  private static String told(Path folder) throws Exception {
    RuleFiles files = Overlay.of(folder);
    try {
      FactBook facts = FactBook.load(files);
      Knowledge knowledge = Knowledge.load(files, facts, "uk");
      return Lint.faults(files, knowledge).stream()
          .map(fault -> fault + "\n")
          .collect(Collectors.joining());
    } catch (KnowledgeFault e) {
      return e.getMessage() + "\n";
    }
  }

  private static List<Path> folders(String sort) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER.resolve(sort))) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }
}
