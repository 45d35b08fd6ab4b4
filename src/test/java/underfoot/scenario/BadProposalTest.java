package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Each {@code NAME.yaml} in {@code bad-proposals} must give exactly the message in {@code
 * NAME.txt}. With {@code -Dreset.bad-input=true} the messages are written anew; review the
 * difference.
 */
@DisplayName("A bad proposal")
class BadProposalTest {
  private static final Path FOLDER = Path.of("src/test/resources/bad-proposals");
  private static final boolean RESET = Boolean.getBoolean("reset.bad-input");

  @TestFactory
  @DisplayName("gets the message written beside it")
  Stream<DynamicTest> messages() throws Exception {
    FactBook book = FactBook.ofProposals(RuleFiles.shipped());
    return files().stream()
        .map(
            file -> {
              String name = file.getFileName().toString();
              return DynamicTest.dynamicTest(
                  name.replace(".yaml", "").replace('-', ' '), () -> check(book, file, name));
            });
  }

  private static void check(FactBook book, Path file, String name) throws IOException {
    Path expected = FOLDER.resolve(name.replace(".yaml", ".txt"));
    String message = "";
    try {
      new ScenarioReader(book).read(name, Files.readAllBytes(file));
    } catch (ScenarioFaults e) {
      message = e.text();
    }
    if (RESET) {
      Files.writeString(expected, message);
    }
    assertThat(message)
        .isNotEmpty()
        .isEqualTo(Files.readString(expected, StandardCharsets.UTF_8))
        .doesNotContain("Exception", "null", "the scenario ");
    assertThat(message.lines()).allMatch(line -> line.startsWith("  ") || line.contains(name));
  }

  @Test
  @DisplayName("is there for each way to go wrong")
  void enough() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(14);
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }
}
