package underfoot.reasoning;

import underfoot.language.RuleFaults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.scenario.RuleFiles;

/** A person's own copy of the rules is compiled when it holds sentences, and refused otherwise. */
class OwnRulesTest {
  private static final Path SHIPPED = Path.of("rules");

  @TempDir Path own;

  @Test
  void an_unchanged_copy_gives_the_same_rules() throws Exception {
    RuleBase compiled = RuleBase.compile(RuleFiles.of(SHIPPED));
    assertThat(new HashSet<>(compiled.notes()))
        .isEqualTo(new HashSet<>(Floors.advisor().rules().notes()));
  }

  @Test
  void the_fast_road_and_the_documented_road_hold_the_same_rules() {
    assertThat(new HashSet<>(RuleBase.byTheDocumentedRoad().notes()))
        .isEqualTo(new HashSet<>(RuleBase.shipped().notes()));
  }

  /** Were the rules that came with the program compiled at the start, the two would be equal. */
  @Test
  void rules_that_came_with_the_program_load_many_times_faster_than_they_compile() {
    RuleBase.shipped().notes(); // classes and the engine are loaded now, whichever is first
    double loading = Double.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      long start = System.nanoTime();
      RuleBase.shipped().notes();
      loading = Math.min(loading, System.nanoTime() - start);
    }
    long start = System.nanoTime();
    RuleBase.byTheDocumentedRoad().notes();
    double compiling = System.nanoTime() - start;
    assertThat(compiling / loading).isGreaterThan(6);
  }

  @Test
  void a_line_of_code_among_the_conclusions_is_refused() throws Exception {
    copy();
    change("90-which-is-best.dslr", "    Stop the work", "    System.exit(7);\n    Stop the work");
    assertThatThrownBy(() -> RuleBase.compile(RuleFiles.of(own)))
        .isInstanceOf(RuleFaults.class)
        .hasMessageContaining("System.exit(7);")
        .hasMessageContaining("no sentence of the vocabulary")
        .hasMessageContaining("90-which-is-best.dslr:");
  }

  @Test
  void a_function_in_a_rule_file_is_refused() throws Exception {
    copy();
    Path file = own.resolve("90-which-is-best.dslr");
    Files.writeString(file, Files.readString(file) + "\nfunction void f() { System.exit(7); }\n");
    assertThatThrownBy(() -> RuleBase.compile(RuleFiles.of(own)))
        .isInstanceOf(RuleFaults.class)
        .hasMessageContaining("only rules of sentences may stand here");
  }

  @Test
  void a_vocabulary_that_stands_for_code_is_refused() throws Exception {
    copy();
    Path file = own.resolve("vocabulary/90-general.dsl");
    Files.writeString(
        file, Files.readString(file) + "[consequence][]Leave now=System.exit( 7 );\n");
    assertThatThrownBy(() -> RuleBase.compile(RuleFiles.of(own)))
        .isInstanceOf(RuleFaults.class)
        .hasMessageContaining("a consequence may only conclude");
  }

  @Test
  void a_condition_that_calls_code_is_refused() throws Exception {
    copy();
    Path file = own.resolve("vocabulary/90-general.dsl");
    Files.writeString(
        file,
        Files.readString(file)
            + "[condition][]It is time=Fact( eval( Runtime.getRuntime() != null ) )\n");
    assertThatThrownBy(() -> RuleBase.compile(RuleFiles.of(own)))
        .isInstanceOf(RuleFaults.class)
        .hasMessageContaining("a condition may only match facts and conclusions");
  }

  @Test
  void a_quotation_mark_in_a_sentence_is_refused() throws Exception {
    copy();
    change(
        "90-which-is-best.dslr",
        "    Stop the work",
        "    Note x\" ) ); System.exit( 7 ); //\n    Stop the work");
    assertThatThrownBy(() -> RuleBase.compile(RuleFiles.of(own)))
        .isInstanceOf(RuleFaults.class)
        .hasMessageContaining("quotation mark");
  }

  private void change(String name, String from, String to) throws IOException {
    Path file = own.resolve(name);
    String text = Files.readString(file);
    assertThat(text).contains(from);
    Files.writeString(file, text.replaceFirst(from, to.replace("\\", "\\\\")));
  }

  private void copy() throws IOException {
    try (Stream<Path> files = Files.walk(SHIPPED)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = own.resolve(SHIPPED.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }
}
