package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.RuleFiles;

/** What is read of the tables of kinds, and what is said of one that cannot be used. */
class KindsTest {
  private static final String HEAD =
      """
      facts:
        leaf:
          cut: leaf after a cut
      attributes:
        cut:
          is: words
          source: common-practice
          values:
            sound: {reason: It stays whole}
            spoilt: {reason: It falls apart}
      kinds:
      """;

  private static Kinds read(String leaves) throws Exception {
    RuleFiles shipped = RuleFiles.shipped();
    RuleFiles files =
        new RuleFiles() {
          @Override
          public List<String> list(String folder, String suffix) {
            return shipped.list(folder, suffix);
          }

          @Override
          public List<String> all() {
            return shipped.all();
          }

          @Override
          public InputStream open(String path) {
            return leaves.isEmpty() || !path.equals("kinds/leaves.yaml")
                ? shipped.open(path)
                : new ByteArrayInputStream(leaves.getBytes(StandardCharsets.UTF_8));
          }
        };
    return Knowledge.load(files, FactBook.load(files), "uk").kinds();
  }

  @Test
  void a_row_says_what_its_kind_has_and_a_value_brings_its_reason_and_source() throws Exception {
    List<Kinds.Said> said = read("").of("second deck", "chipboard");
    assertThat(said)
        .contains(
            new Kinds.Said(
                "second family",
                Kinds.Sort.WORDS,
                "timber",
                "Timber moves with moisture and with each footstep, so it is treated as a moving"
                    + " base",
                "bs-5385-3-2014"));
  }

  @Test
  void what_a_row_says_itself_goes_before_what_its_value_brings() throws Exception {
    assertThat(
            read(HEAD + "  glass: {cut: {is: spoilt, reason: It shatters}}\n").of("leaf", "glass"))
        .containsExactly(
            new Kinds.Said(
                "leaf after a cut", Kinds.Sort.WORDS, "spoilt", "It shatters", "common-practice"));
  }

  @Test
  void a_kind_that_has_none_says_nothing() throws Exception {
    Kinds kinds = read(HEAD + "  no leaf: {none: [cut]}\n");
    assertThat(kinds.of("leaf", "no leaf")).isEmpty();
    assertThat(kinds.of("leaf", "paper")).isEmpty();
    assertThat(kinds.of("nothing", "no leaf")).isEmpty();
  }

  @Test
  void every_value_of_a_fact_that_rows_speak_of_has_a_row() throws Exception {
    Kinds kinds = read("");
    Map<String, FactDefinition> byName = new java.util.HashMap<>();
    for (FactDefinition fact : FactBook.load(RuleFiles.shipped()).definitions()) {
      byName.put(fact.called(), fact);
    }
    Map<String, TreeSet<String>> rows = new java.util.TreeMap<>();
    for (Kinds.Table table : kinds.tables()) {
      for (String fact : table.facts().keySet()) {
        table
            .rows()
            .forEach(row -> rows.computeIfAbsent(fact, f -> new TreeSet<>()).add(row.kind()));
      }
    }
    List<String> without = new ArrayList<>();
    rows.forEach(
        (fact, kinded) -> {
          FactDefinition definition = byName.get(fact);
          if (definition != null && definition.kind() == Kind.CHOICE) {
            definition.of().stream()
                .filter(value -> !kinded.contains(value))
                .forEach(value -> without.add(fact + ": " + value));
          }
        });
    assertThat(without).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "  glass: {cut: cracked} | 12 | 'cracked' is not among the values sound, spoilt",
        "  glass: {swing: wide, cut: spoilt} | 12 | 'glass' has 'swing', which is no attribute",
        "  glass: {none: []} | 12 | 'glass' must have 'cut', or name it once under none: […]",
        "  glass: {cut: spoilt, none: [cut]} | 12 | must have 'cut', or name it once",
        "  glass: {cut: {is: spoilt, source: hearsay}} | 12 | 'hearsay' is no source",
        "  glass: {cut: {reason: It shatters}} | 12 | there is no 'is' here; write is: …",
        "  glass: {cut: {is: spoilt, because: x}} | 12 | 'because' does not belong here",
      })
  void a_row_that_cannot_be_used_is_told_with_its_line(String row, int line, String what) {
    assertThatThrownBy(() -> read(HEAD + "  " + row.strip() + "\n"))
        .isInstanceOfSatisfying(
            KnowledgeFault.class,
            fault -> {
              assertThat(fault.file()).isEqualTo("kinds/leaves.yaml");
              assertThat(fault.line()).isEqualTo(line);
            })
        .hasMessageContaining(what);
  }

  @Test
  void a_figure_that_is_not_there_is_told() {
    String table =
        HEAD.replace("is: words", "is: figure")
            .replaceAll("(?s)    values:.*?kinds", "    reason: x\nkinds");
    assertThatThrownBy(() -> read(table + "  glass: {cut: no-such-figure}\n"))
        .hasMessage("kinds/leaves.yaml:10: there is no figure 'no-such-figure'");
  }
}
