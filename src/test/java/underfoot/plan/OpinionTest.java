package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Judgement;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Verdict;
import underfoot.plan.Advice.RemedyNote;
import underfoot.reasoning.Floors;

/** What is said of two example proposals, thought through layer by layer. */
class OpinionTest {
  private static Opinion of(String floor, String proposal) throws Exception {
    Path path = Path.of("scenarios", floor + ".yaml");
    return Proposals.judge(
        Floors.reader().read(path.toString(), Files.readAllBytes(path)),
        Proposals.read(Proposals.FOLDER.resolve(proposal + ".yaml")));
  }

  private static Opinion sealedFirst() throws Exception {
    return of(
        "wet-room-on-an-upper-timber-floor",
        "tiles-before-the-seal-is-dry-and-seal-under-the-compound");
  }

  @Test
  void a_proposal_of_the_recommended_way_says_so_and_is_worked_out_as_it_is() throws Exception {
    Opinion opinion = sealedFirst();
    assertThat(opinion.scenario()).isEqualTo("Wet room on an upper timber floor");
    assertThat(opinion.proposal()).isEqualTo("Sealed first, then levelled");
    assertThat(opinion.verdict()).isEqualTo(Verdict.OUTSIDE_GUIDANCE);
    assertThat(opinion.way()).isEqualTo("rigid board overlay");
    assertThat(opinion.title()).isNotEmpty().isEqualTo(opinion.recommended());
    assertThat(opinion.isRecommended()).isTrue();
    assertThat(opinion.faults()).isEqualTo(6);
    // 3 of bed, 10 of board, 2 of coating, 5 of compound, 2 of bed and 6 of tile.
    assertThat(opinion.heights().orElseThrow().aboveOldFloor().mean()).isCloseTo(28, within(1e-9));
    assertThat(opinion.massKgPerM2()).isBetween(35.0, 60.0);
    assertThat(opinion.stiffness())
        .extracting(Opinion.Stiffness::name)
        .containsExactly(
            "deck ratio after",
            "joist ratio after",
            "bending use",
            "shear use",
            "bearing use",
            "floor frequency");
    assertThat(opinion.stiffness())
        .allSatisfy(
            one -> {
              assertThat(one.value()).isPositive();
              assertThat(one.text()).isNotBlank();
            });
  }

  @Test
  void each_layer_is_told_with_what_it_is_taken_for_and_what_is_found_of_it() throws Exception {
    List<Opinion.Layer> layers = sealedFirst().layers();
    assertThat(layers).extracting(Opinion.Layer::order).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
    assertThat(layers)
        .extracting(Opinion.Layer::part)
        .containsExactly(
            "board-primer",
            "board-bed",
            "rigid-board",
            "cement-tanking",
            "leveller-primer",
            "fibre-leveller",
            "tile-bed",
            "tile");
    Opinion.Layer coating = layers.get(3);
    assertThat(coating.label()).isEqualTo("layer 4");
    assertThat(coating.kind()).isEqualTo("waterproof coating");
    assertThat(coating.asked()).isEqualTo("Waterproof cement coating");
    assertThat(coating.thickness()).isEqualTo(LayerThickness.even(2));
    assertThat(coating.said()).isEqualTo("2 mm");
    // Left too short a time, and in the wrong place: so it does not agree as well.
    assertThat(coating.items())
        .extracting(Opinion.Item::id)
        .containsExactly("too-soon", "layer-out-of-turn", "say-corners-banded");
    assertThat(coating.judgement()).isEqualTo(Judgement.SHORT_OF);
    // What is not said comes before what agrees, and counts for nothing.
    Opinion.Layer compound = layers.get(5);
    assertThat(compound.items())
        .extracting(Opinion.Item::id)
        .containsExactly(
            "next-compound-over-seal",
            "next-not-soaked",
            "say-leveller-class",
            "say-wait",
            "say-gaps-shut");
    assertThat(compound.judgement().isFault()).isTrue();
    // The bed under the tiles does not say how thick it is: 2 mm are taken.
    assertThat(layers.get(6).said()).isEmpty();
    assertThat(layers.get(6).thickness().mean()).isEqualTo(2);
    assertThat(layers.get(5).said()).isEqualTo("5 mm");
  }

  @Test
  void what_is_about_no_layer_is_about_the_whole_the_worst_first() throws Exception {
    Opinion opinion = sealedFirst();
    assertThat(opinion.whole())
        .extracting(Opinion.Item::id)
        .containsExactly(
            "work-out-of-turn", "say-grout-class", "say-perimeter", "say-pour-temperature");
    Opinion.Item order = opinion.whole().get(0);
    assertThat(order.judgement()).isEqualTo(Judgement.WRONG_ORDER);
    assertThat(order.text()).isEqualTo("The order of work has 'grout' before 'lay the tiles'.");
    assertThat(order.consequence()).startsWith("What is done first is then in the way");
    assertThat(order.remedy()).isEqualTo("First 'lay the tiles', then 'grout'.");
    assertThat(order.because()).extracting(one -> one.rule().id()).containsExactly("CHECK-08");
    Opinion.Item grout = opinion.whole().get(1);
    assertThat(grout.layer()).isEmpty();
    assertThat(grout.consequence()).isEmpty();
    assertThat(grout.remedy()).isEmpty();
  }

  @Test
  void hold_points_are_put_right_first_and_what_is_about_one_door_says_which() throws Exception {
    assertThat(sealedFirst().remedies())
        .extracting(RemedyNote::id)
        .containsExactly("wet-room-signed-off", "timber-looked-into", "fall-former-on-timber");
    assertThat(sealedFirst().remedies())
        .extracting(RemedyNote::hold)
        .containsExactly(true, true, false);
    Opinion screws =
        of("utility-room-over-a-cellar-on-old-boards", "a-board-fixed-with-the-wrong-screw");
    assertThat(screws.remedies())
        .extracting(RemedyNote::id)
        .contains("pour-stops-at-a-line @kitchen door", "fix-loose-boards")
        .doesNotHaveDuplicates();
    RemedyNote line =
        screws.remedies().stream()
            .filter(one -> one.id().equals("pour-stops-at-a-line @kitchen door"))
            .findFirst()
            .orElseThrow();
    assertThat(line.title()).isEqualTo("End the pour before kitchen door");
    assertThat(line.text()).startsWith("Its leaf may not be cut");
    assertThat(line.because()).extracting(one -> one.rule().id()).containsExactly("DOOR-24");
    assertThat(screws.layers().get(2).items())
        .singleElement()
        .satisfies(
            item ->
                assertThat(item.text()).startsWith("A screw of 50 mm comes out below the deck"));
  }

  @Test
  void what_is_missing_is_about_the_whole_though_it_has_a_name() throws Exception {
    Opinion opinion = of("wet-room-on-a-concrete-slab", "a-wet-room-without-tanking");
    assertThat(opinion.whole())
        .singleElement()
        .satisfies(
            item -> {
              assertThat(item.judgement()).isEqualTo(Judgement.MISSING);
              assertThat(item.layer()).isEqualTo("Waterproof cement coating");
            });
    assertThat(opinion.layers()).allMatch(layer -> !layer.judgement().isFault());
    assertThat(opinion.stiffness()).as("no timber, no stiffness").isEmpty();
    assertThat(opinion.faults()).isEqualTo(1);
  }

  @Test
  void another_way_than_the_recommended_one_is_told_apart() throws Exception {
    Opinion opinion =
        of(
            "utility-room-over-a-cellar-on-old-boards",
            "plywood-and-a-membrane-where-a-rigid-board-is-recommended");
    assertThat(opinion.isRecommended()).isFalse();
    assertThat(opinion.title()).isNotEmpty().isNotEqualTo(opinion.recommended());
    assertThat(opinion.recommended()).contains("rigid board");
  }

  @Test
  void where_nothing_may_be_built_a_proposal_is_no_way_and_reaches_no_height() throws Exception {
    Opinion opinion = of("pantry-with-rotten-joist-ends", "a-board-fixed-with-the-wrong-screw");
    assertThat(opinion.verdict()).isEqualTo(Verdict.STOP);
    assertThat(opinion.recommended()).isEmpty();
    assertThat(opinion.isRecommended()).isFalse();
    assertThat(opinion.layers()).hasSize(7);
  }

  private static Opinion.Item item(Judgement judgement) {
    return new Opinion.Item(judgement, "", "an-id", "a text", "", "", List.of());
  }

  private static Opinion.Layer layer(Judgement... judgements) {
    return new Opinion.Layer(
        1,
        "layer 1",
        "tile",
        "tile",
        "",
        LayerThickness.even(9),
        "",
        List.of(judgements).stream().map(OpinionTest::item).toList());
  }

  @Test
  void faults_are_counted_in_the_layers_and_in_the_whole() {
    Opinion opinion =
        new Opinion(
            "a floor",
            "a proposal",
            Verdict.SOUND,
            "",
            "",
            "",
            false,
            List.of(
                layer(Judgement.AGREES),
                layer(Judgement.MUST_NOT, Judgement.NOT_SAID),
                layer(Judgement.SHORT_OF, Judgement.WRONG_ORDER)),
            List.of(item(Judgement.MISSING), item(Judgement.NOT_SAID)),
            List.of(),
            List.of(),
            Optional.empty(),
            0,
            List.of());
    assertThat(opinion.faults()).isEqualTo(4);
    assertThat(layer(Judgement.NOT_SAID, Judgement.AGREES).judgement()).isEqualTo(Judgement.AGREES);
    assertThat(layer(Judgement.NOT_SAID).judgement()).isEqualTo(Judgement.NOT_SAID);
    assertThat(layer(Judgement.MUST_NOT, Judgement.SHORT_OF).judgement())
        .isEqualTo(Judgement.MUST_NOT);
  }
}
