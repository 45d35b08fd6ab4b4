package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Judgement;
import underfoot.reasoning.Floors;

/**
 * A limit borrowed from elsewhere, for want of one that holds here, advises and condemns nothing.
 */
class BorrowedLimitsAdviseTest {
  private static final Path FLOOR = Path.of("src/test/resources/floors/slab.yaml");
  private static final String LARGE =
      "length: 600 mm, width: 600 mm, thickness: 9 mm, edges: rectified";

  @Test
  void a_joint_of_3_mm_with_rectified_tiles_and_an_assumed_bow_is_no_fault() throws Exception {
    Opinion opinion = slab("", "tile joint: 3 mm");
    assertThat(judgements(opinion, "CHECK-71")).containsExactly(Judgement.ADVISED);
    assertThat(Proposals.faults(opinion)).noneMatch(fault -> fault.contains("CHECK-71"));
  }

  @Test
  void a_joint_below_what_the_code_asks_of_any_floor_is_a_fault() throws Exception {
    assertThat(judgements(slab("", "tile joint: 2 mm"), "CHECK-73"))
        .containsExactly(Judgement.SHORT_OF);
  }

  @Test
  void compound_that_only_the_flatness_of_large_tiles_asks_for_is_advised() throws Exception {
    assertThat(judgements(slab("2.5 mm", ""), "CHECK-14")).containsExactly(Judgement.ADVISED);
  }

  @Test
  void compound_that_the_code_asks_for_under_every_tile_is_missing() throws Exception {
    assertThat(judgements(slab("3.5 mm", ""), "CHECK-14")).containsExactly(Judgement.MISSING);
  }

  private static Opinion slab(String gap, String more) throws Exception {
    String floor =
        Files.readString(FLOOR)
            .replace("length: 300 mm, width: 300 mm, thickness: 9 mm, edges: pressed", LARGE);
    if (!gap.isEmpty()) {
      floor = floor.replace("straightedge: 2 mm", "straightedge: " + gap);
    }
    String proposal =
        "proposal: Large tiles on a slab\n"
            + "layers:\n"
            + "  - {kind: tile adhesive, class: C2 S1, thickness: 4 mm, coverage: 100 %}\n"
            + "  - {kind: tile}\n"
            + more
            + "\n";
    return Proposals.judge(
        Floors.reader().read("slab.yaml", floor.getBytes(StandardCharsets.UTF_8)),
        Proposals.read("proposal.yaml", proposal));
  }

  private static List<Judgement> judgements(Opinion opinion, String rule) {
    return Stream.concat(
            opinion.whole().stream(), opinion.layers().stream().flatMap(l -> l.items().stream()))
        .filter(item -> item.because().stream().anyMatch(one -> one.rule().id().equals(rule)))
        .map(Opinion.Item::judgement)
        .toList();
  }
}
