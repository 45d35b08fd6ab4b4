package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rules --lint} on the command line. */
class LintCommandTest {
  @Test
  void a_fault_is_told_with_its_file_and_line_as_text_and_as_json(@TempDir Path folder)
      throws Exception {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.sorted().toList()) {
        Path copy = folder.resolve(Path.of("rules").relativize(file).toString());
        if (!Files.isDirectory(copy)) {
          Files.copy(file, copy);
        }
      }
    }
    Files.writeString(
        folder.resolve("vocabulary/99-own.dsl"),
        "[condition][]Nobody ever says this=Fact( about == \"\", says == \"use: hall\" )\n");
    Console.Ran text = Console.run("rules", "--lint", "--rules", folder.toString());
    assertThat(text.exit()).isEqualTo(Exit.FAULTS_FOUND);
    assertThat(text.out())
        .contains(
            "vocabulary/99-own.dsl:1: no rule says 'Nobody ever says this'; take the sentence out");
    Console.Ran json = Console.run("rules", "--lint", "--json", "--rules", folder.toString());
    assertThat(json.exit()).isEqualTo(Exit.FAULTS_FOUND);
    assertThat(json.out())
        .contains("\"format\":\"underfoot.lint/1\"", "\"file\":\"vocabulary/99-own.dsl\"");
  }
}
