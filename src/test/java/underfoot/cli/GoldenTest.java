package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.reasoning.Floors;

/**
 * Every example scenario gives the advice that was reviewed. {@code mvn test -Dtest=GoldenTest
 * -Dgolden.reset=true} writes the advice as it now is; read the difference before committing it.
 */
class GoldenTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final boolean RESET = Boolean.getBoolean("golden.reset");

  @TestFactory
  Stream<DynamicTest> every_scenario_gives_the_advice_that_was_reviewed() throws Exception {
    return Floors.examples().stream()
        .flatMap(
            file ->
                Stream.of(
                    DynamicTest.dynamicTest(
                        name(file) + " as text",
                        () -> compare(name(file) + ".txt", advise(file, "--width", "80"))),
                    DynamicTest.dynamicTest(
                        name(file) + " as JSON",
                        () -> compare(name(file) + ".json", advise(file, "--json")))));
  }

  @Test
  void no_golden_file_is_without_its_scenario() throws Exception {
    Set<String> names = new TreeSet<>();
    for (Path file : Floors.examples()) {
      names.add(name(file) + ".txt");
      names.add(name(file) + ".json");
    }
    try (Stream<Path> files = Files.list(GOLDEN)) {
      assertThat(files.map(file -> file.getFileName().toString())).isSubsetOf(names);
    }
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
    // The digest of the rule base changes with every comment in it, the advice does not.
    return ran.out().replaceAll("(\"ruleBase\" : )\"[0-9a-f]+\"", "$1\"a digest\"");
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
