package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.scenario.RuleFiles;

/** The order of the steps follows from what each comes after, and from nothing else. */
class StepsTest {
  @TempDir private Path folder;

  private Steps steps(String... lines) throws Exception {
    Files.createDirectories(folder.resolve("tables"));
    Files.write(folder.resolve("tables/steps.yaml"), List.of(lines));
    return Steps.load(RuleFiles.of(folder));
  }

  @Test
  void steps_stand_in_the_order_of_their_relations_wherever_they_are_written() throws Exception {
    Steps steps =
        steps(
            "grout: {after: bed, title: Grout, kind: work}",
            "prime: {title: Prime, kind: work}",
            "bed: {after: prime, title: Let the bed set, kind: wait}");
    assertThat(steps.ids()).containsExactly("prime", "bed", "grout");
    assertThat(steps.get("grout").place()).isEqualTo(2);
  }

  @Test
  void two_steps_that_nothing_puts_in_order_are_told() {
    assertThatThrownBy(
            () ->
                steps(
                    "prime: {title: Prime, kind: work}",
                    "bed: {after: prime, title: Let the bed set, kind: wait}",
                    "board: {after: prime, title: Lay boards, kind: work}"))
        .isInstanceOf(KnowledgeFault.class)
        .hasMessageContaining("steps.yaml:3")
        .hasMessageContaining("nothing says which comes first, 'bed' or 'board'");
  }

  @Test
  void steps_that_go_round_in_a_ring_are_told() {
    assertThatThrownBy(
            () ->
                steps(
                    "prime: {title: Prime, kind: work}",
                    "bed: {after: grout, title: Let the bed set, kind: wait}",
                    "grout: {after: bed, title: Grout, kind: work}"))
        .isInstanceOf(KnowledgeFault.class)
        .hasMessageContaining("steps.yaml:2")
        .hasMessageContaining("bed, grout go round in a ring");
  }

  @Test
  void a_step_after_one_that_is_not_there_is_told_with_the_nearest_name() {
    assertThatThrownBy(
            () ->
                steps(
                    "prime: {title: Prime, kind: work}",
                    "bed: {after: primed, title: Let the bed set, kind: wait}"))
        .isInstanceOf(KnowledgeFault.class)
        .hasMessageContaining("nearest: prime");
  }
}
