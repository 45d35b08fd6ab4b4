package underfoot.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.scenario.RuleFiles;

/** A rule that is written for each row of a table holds for every row, with what the row says. */
class RuleForEachRowTest {
  private static final String RULE =
      """
      rule "TIME-01 a step takes its time"
      @reason("Time is told with the step")
      @source("planning-allowance")
      for each %s
      when
          The build-up lays {lays}
          {where}
      then
          Note {note}
          Advise care {care}
      end
      """;

  @TempDir private Path folder;

  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  private RuleSet read(String forEach, String... rows) throws Exception {
    write(
        "vocabulary/a.dsl",
        "[condition][]The build-up lays {layer}=Laid( layer == \"{layer}\" )",
        "[condition][]The {name} is {value}=Fact( says == \"{name}: {value}\" )",
        "[consequence][]Note {wording}=note( \"{wording}\", \"\" )",
        "[consequence][]Advise care {wording}=care( \"{wording}\", \"\" )");
    write("judge/10-test.dslr", RULE.formatted(forEach).split("\n"));
    write("tables/steps.yaml", rows);
    return RuleSet.read(RuleFiles.of(folder), faults);
  }

  private void write(String path, String... lines) throws Exception {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.write(file, List.of(lines));
  }

  @Test
  void each_row_gives_a_rule_of_its_own_with_the_reason_and_source_it_tells() throws Exception {
    RuleSet set =
        read(
            "row of tables/steps.yaml",
            "lay boards: {lays: board, note: a, reason: Boards take long, source: trade}",
            "lay tiles: {lays: tile, note: b}");
    assertThat(faults).isEmpty();
    assertThat(set.rules()).extracting(Rule::id).containsOnly("TIME-01");
    assertThat(set.rules())
        .extracting(Rule::key)
        .containsExactly("TIME-01/lay-boards", "TIME-01/lay-tiles");
    assertThat(set.rules())
        .extracting(rule -> rule.note().reason() + ", " + rule.note().source())
        .containsExactly(
            "Boards take long, trade", "Time is told with the step, planning-allowance");
    assertThat(set.forms()).hasSize(1);
  }

  @Test
  void a_line_is_left_out_for_a_row_that_does_not_say_it_and_stands_for_each_of_a_list()
      throws Exception {
    RuleSet set =
        read(
            "row of tables/steps.yaml",
            "dry: {where: [The heating is on, The window is shut], care: a}");
    assertThat(faults).isEmpty();
    assertThat(set.rules().get(0).when())
        .containsExactly("The heating is on", "The window is shut");
    assertThat(set.rules().get(0).then()).containsExactly("Advise care a");
  }

  @Test
  void rows_may_be_parts_of_an_entry_and_say_besides_what_the_entry_says() throws Exception {
    RuleSet set =
        read(
            "times of tables/steps.yaml",
            "lay: {lays: board, times: [{note: a}, {where: The heating is on, note: b}]}",
            "wait: {lays: tile, times: {note: c}}",
            "rest: {lays: tile}");
    assertThat(faults).isEmpty();
    assertThat(set.rules())
        .extracting(Rule::key)
        .containsExactly("TIME-01/lay/1", "TIME-01/lay/2", "TIME-01/wait");
    assertThat(set.rules().get(1).when())
        .containsExactly("The build-up lays board", "The heating is on");
  }

  @Test
  void what_is_wrong_with_a_row_is_told_where_the_row_stands() throws Exception {
    read(
        "row of tables/steps.yaml",
        "empty: {lays: tile}",
        "misspelt: {where: The heating are on, note: a}");
    assertThat(faults).extracting(RuleFaults.Fault::file).containsOnly("tables/steps.yaml");
    assertThat(faults).extracting(RuleFaults.Fault::line).containsExactly(1, 2);
    assertThat(faults.get(0).what()).contains("TIME-01/empty has nothing to conclude", "care");
    assertThat(faults.get(1).what()).contains("'The heating are on', which is no sentence");
  }

  @Test
  void a_table_that_is_not_there_is_told() throws Exception {
    read("row of tables/stops.yaml", "lay: {lays: tile, note: a}");
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).toString())
        .contains("judge/10-test.dslr:1")
        .contains("TIME-01 is written for each of 'tables/stops.yaml'");
  }
}
