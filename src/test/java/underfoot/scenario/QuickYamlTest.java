package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The quick reader of plain YAML")
class QuickYamlTest {

  @Test
  @DisplayName("reads the facts files itself, so that a cold start is quick")
  void facts_are_plain() {
    RuleFiles files = RuleFiles.shipped();
    for (String path : files.list("facts", ".yaml")) {
      String text = new String(files.read(path), StandardCharsets.UTF_8);
      assertThat(QuickYaml.read(text)).as(path).isNotNull();
    }
    assertThat(QuickYaml.read(Book.GOOD)).isNotNull();
  }

  @Test
  @DisplayName("reads the same tree as the full parser, places included, or leaves it to that")
  void same_tree() throws IOException {
    for (String text : texts()) {
      same(text, "as it is");
    }
  }

  @Test
  @DisplayName("reads the same tree as the full parser when files are damaged")
  void same_tree_of_damaged_files() throws IOException {
    long seed = 271_828;
    Random random = new Random(seed);
    List<String> texts = texts();
    String signs = "{}[]:,-?&*!|>'\"%@`#~\\ \t\n\n  ::,,--##0Aé\u00a0\uE000";
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text =
          new StringBuilder(window(texts.get(random.nextInt(texts.size())), random));
      for (int n = random.nextInt(4); n > 0 && text.length() > 1; n--) {
        int at = random.nextInt(text.length());
        char sign = signs.charAt(random.nextInt(signs.length()));
        switch (random.nextInt(4)) {
          case 0 -> text.insert(at, sign);
          case 1 -> text.deleteCharAt(at);
          case 2 -> text.setCharAt(at, sign);
          default -> text.delete(at, Math.min(text.length(), at + random.nextInt(30)));
        }
      }
      if (same(text.toString(), "seed " + seed + ", round " + i)) {
        read++;
      }
    }
    assertThat(read).as("damaged files the quick reader took").isGreaterThan(2_000);
  }

  /** Whether the quick reader took the text; if so, the full parser must agree. */
  private static boolean same(String text, String as) {
    Node quick = QuickYaml.read(text);
    if (quick == null) {
      return false;
    }
    List<Fault> faults = new ArrayList<>();
    Node full = YamlTree.full("x", text, faults);
    assertThat(faults).as("%s:%n%s", as, text).isEmpty();
    assertThat(quick).as("%s:%n%s", as, text).isEqualTo(full);
    return true;
  }

  /** Some whole lines out of a text. */
  private static String window(String text, Random random) {
    List<String> lines = text.lines().toList();
    if (lines.isEmpty()) {
      return "a: b\n";
    }
    int from = random.nextInt(lines.size());
    int to = Math.min(lines.size(), from + 1 + random.nextInt(12));
    return String.join("\n", lines.subList(from, to)) + "\n";
  }

  private static List<String> texts() throws IOException {
    List<String> texts = new ArrayList<>(List.of(Book.GOOD, Book.LEAST));
    for (String folder : List.of("rules", "scenarios", "src/test/resources/bad-input")) {
      if (Files.isDirectory(Path.of(folder))) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
          for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            if (text.indexOf('\0') < 0 && text.indexOf('\uFFFD') < 0) {
              texts.add(text);
            }
          }
        }
      }
    }
    return texts;
  }
}
