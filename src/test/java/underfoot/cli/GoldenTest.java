package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.reasoning.Floors;
import underfoot.report.GoldenJson;

/**
 * Every example scenario gives the advice that was reviewed: as text, and as JSON in the form of
 * {@link GoldenJson}; one floor also as text in short and in full. {@code mvn test
 * -Dtest=GoldenTest -Dgolden.reset=true} writes the advice as it now is; read the difference before
 * committing it.
 */
class GoldenTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final boolean RESET = Boolean.getBoolean("golden.reset");

  @TestFactory
  Stream<DynamicTest> every_scenario_gives_the_advice_that_was_reviewed() throws Exception {
    return golden().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(), () -> compare(one.getKey(), one.getValue().get())));
  }

  @Test
  void no_golden_file_is_without_its_scenario() throws Exception {
    try (Stream<Path> files = Files.list(GOLDEN)) {
      assertThat(files.map(file -> file.getFileName().toString())).isSubsetOf(golden().keySet());
    }
  }

  /** The golden files by name, and how each is made. */
  private static Map<String, Supplier<String>> golden() throws Exception {
    Map<String, Supplier<String>> golden = new TreeMap<>();
    for (Path file : Floors.examples()) {
      String name = name(file);
      golden.put(name + ".txt", () -> advise(file, "--width", "80"));
      golden.put(name + ".json", () -> GoldenJson.of(name, advise(file, "--json")));
      if (name.equals(GoldenJson.WHOLE)) {
        for (String detail : List.of("short", "full")) {
          golden.put(
              name + "-" + detail + ".txt",
              () -> advise(file, "--width", "80", "--detail", detail));
        }
      }
    }
    return golden;
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".yaml", "");
  }

  private static String advise(Path file, String... options) {
    String[] arguments = new String[options.length + 2];
    arguments[0] = "advise";
    arguments[1] = file.toString().replace('\\', '/');
    System.arraycopy(options, 0, arguments, 2, options.length);
    Console.Ran ran = Console.run(arguments);
    assertThat(ran.err()).isEmpty();
    return ran.out();
  }

  private static void compare(String name, String advice) throws Exception {
    Path golden = GOLDEN.resolve(name);
    if (RESET) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, advice);
      return;
    }
    assertThat(golden).as("write it with -Dgolden.reset=true and review it").exists();
    assertThat(advice)
        .as("if the new advice is right: -Dgolden.reset=true, and review the difference")
        .isEqualTo(Files.readString(golden));
  }
}
