package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerCover;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StackLayer;
import underfoot.working.ScrewLength;

/** What every tiler knows. Common practice, no source. */
class FactsOfTheTradeTest {
  @Test
  void a_foam_core_board_suits_tongue_and_groove_boards() throws Exception {
    BuildUp foam =
        way(floor("subfloor.deck", "tongue-and-groove boards"), "foam-core board overlay");
    assertThat(foam.stands()).isTrue();
  }

  @Test
  void square_edged_boards_rule_a_foam_core_board_out_and_take_a_rigid_one() throws Exception {
    Assessment assessment = floor("subfloor.deck", "square-edged boards");
    assertThat(way(assessment, "foam-core board overlay").of(RuledOut.class)).isNotEmpty();
    assertThat(way(assessment, "rigid board overlay").stands()).isTrue();
  }

  @Test
  void an_overlay_board_lies_in_a_full_bed() throws Exception {
    BuildUp rigid = way(floor("subfloor.deck", "square-edged boards"), "rigid board overlay");
    assertThat(rigid.of(LayerCover.class))
        .anySatisfy(cover -> assertThat(cover.figure().number()).isEqualTo(100));
  }

  @Test
  void a_25_mm_screw_through_a_6_mm_board_stays_inside_20_mm_boards() {
    ScrewLength.Values values = ScrewLength.of(6, 20, 0, 0, List.of(20.0, 25.0, 30.0));
    assertThat(values.longestMm()).isCloseTo(26, within(1e-9));
    assertThat(values.chooseMm()).hasValue(25);
  }

  @Test
  void the_overlay_screw_the_advice_chooses_never_comes_out_below_the_deck() throws Exception {
    for (String thickness : new String[] {"16 mm", "18 mm", "21 mm", "25 mm", "32 mm"}) {
      BuildUp rigid = way(floor("subfloor.thickness", thickness), "rigid board overlay");
      double screw = rigid.facts().number("board screw");
      double depth =
          rigid.facts().number("overlay thickness") + rigid.facts().number("deck thickness");
      assertThat(screw).as(thickness).isLessThanOrEqualTo(depth);
    }
  }

  @Test
  void a_leveller_on_timber_has_fibres_and_at_least_3_mm_over_the_highest_point() throws Exception {
    BuildUp rigid = way(floor("levels.gap under 2 m straightedge", "8 mm"), "rigid board overlay");
    StackLayer leveller =
        rigid.stack().layers().stream()
            .filter(layer -> layer.kind().family().equals("leveller"))
            .findFirst()
            .orElseThrow();
    assertThat(leveller.kind().id()).isEqualTo("fibre-leveller");
    assertThat(leveller.thickness().min()).isGreaterThanOrEqualTo(3);
    assertThat(leveller.thickness().max()).isCloseTo(11, within(1e-9));
  }

  @Test
  void a_timber_floor_aims_for_full_contact_under_every_tile() throws Exception {
    BuildUp rigid = way(floor("subfloor.deck", "square-edged boards"), "rigid board overlay");
    double most =
        rigid.of(CoverageTarget.class).stream()
            .mapToDouble(one -> one.figure().number())
            .max()
            .orElse(0);
    assertThat(most).isEqualTo(100);
  }

  private static Assessment floor(String key, String value) throws Exception {
    return Floors.advisor().advise(Floors.read("boards").with(key, "", value));
  }

  private static BuildUp way(Assessment assessment, String way) {
    return assessment.buildUps().stream()
        .filter(one -> one.way().equals(way))
        .findFirst()
        .orElseThrow();
  }
}
