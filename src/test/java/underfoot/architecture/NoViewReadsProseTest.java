package underfoot.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Texts have parts, and what tells them chooses among the parts: no class but the one that reads
 * the wordings looks for the end of a sentence or a clause in a text, or ranks texts by length.
 *
 * <p>What people write of their floors, what stands in formulas and what rules say is read in
 * {@code scenario}, {@code working} and {@code language}, and what they type in answer in three
 * classes besides; it is no prose of ours.
 */
class NoViewReadsProseTest {
  private static final Path MAIN = Path.of("src/main/java/underfoot");
  private static final List<String> READ_WHAT_PEOPLE_WRITE =
      List.of(
          "scenario",
          "working",
          "language",
          "cli/WorkOut.java",
          "lesson/Marking.java",
          "talk/Chosen.java",
          "talk/Known.java",
          "talk/Measured.java",
          "talk/Numbers.java");
  private static final Path LOADER = Path.of("knowledge", "Wording.java");

  /** Looking in a text for a full stop or a semicolon, alone or among other marks. */
  private static final Pattern READS_PROSE =
      Pattern.compile(
          "(?:indexOf|endsWith|contains|split|matches|compile|replaceFirst|replaceAll)\\(\\s*"
              + "(?:\"(?:[.;:!] ?|[^\"]*\\[[^]\"]*[.][^]\"]*\\][^\"]*|\\\\\\\\[.] )\"|'[.;]')"
              + "|\"[.;:!?]{2,}\"\\s*\\.indexOf"
              + "|comparing\\w*\\([^;]*String::length");

  private static boolean readsProse(String java) {
    return READS_PROSE.matcher(java).find();
  }

  private static List<Path> views() throws IOException {
    try (Stream<Path> files = Files.walk(MAIN)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !MAIN.relativize(file).equals(LOADER))
          .filter(
              file -> READ_WHAT_PEOPLE_WRITE.stream().noneMatch(MAIN.relativize(file)::startsWith))
          .toList();
    }
  }

  @Test
  void no_class_outside_the_wording_loader_looks_for_a_full_stop() throws IOException {
    List<Path> views = views();
    assertThat(views).hasSizeGreaterThan(100);
    for (Path file : views) {
      assertThat(readsProse(Files.readString(file))).as(file.toString()).isFalse();
    }
  }

  @Test
  void the_ways_in_which_it_was_done_are_found() {
    assertThat(
            List.of(
                "text.indexOf(\". \")",
                "\".!?\".indexOf(text.charAt(i)) >= 0",
                "\".;:\".indexOf(text.charAt(i)) >= 0",
                "change.split(\"; \")",
                "text.split(\"\\\\. \")",
                "words.endsWith(\".\")",
                "text.indexOf('.')",
                "one.look().replaceFirst(\"[.]$\", \"\")",
                "words.matches(\"(?s).*[.?!]\")",
                "all.sort(Comparator.comparingInt(String::length))",
                "comparingInt(one -> -one.wouldChange().stream().mapToInt(String::length).sum())"))
        .allMatch(NoViewReadsProseTest::readsProse);
    assertThat(
            List.of(
                "String.join(\"; \", titles)",
                "words.endsWith(\"?\")",
                "name.endsWith(\".yaml\")",
                "number.split(\" \")"))
        .noneMatch(NoViewReadsProseTest::readsProse);
  }
}
