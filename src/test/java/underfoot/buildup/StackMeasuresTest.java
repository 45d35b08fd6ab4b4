package underfoot.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Measured;
import underfoot.measure.Surveys;
import underfoot.scenario.Scenario;

/** What a build-up does to a floor, from whole scenarios and layers named one by one. */
class StackMeasuresTest {
  private static final Derivation TEST =
      new Derivation(new RuleNote("TEST-01", "a test", "a test", "common-practice"), List.of());

  private static Laid laid(LayerKind kind) {
    return new Laid(TEST, kind, "");
  }

  private static Laid laid(String id) {
    return laid(Measured.knowledge().layers().get(id));
  }

  private static Facts after(Scenario scenario, List<Laid> layers, String... concluded) {
    Facts facts = Measured.of(scenario, concluded);
    Figures figures = Measured.knowledge().figures();
    Stack stack = new Stack(layers.stream().map(one -> layer(one, facts)).toList());
    return facts.addAll(StackMeasures.of(scenario, new Surveys(), stack, 0, figures, facts));
  }

  /** Layers of fixed thickness, so that the figures of kinds may change without these checks. */
  private static StackLayer layer(Laid laid, Facts facts) {
    LayerThickness thickness =
        switch (laid.kind().id()) {
          case "board-bed" -> LayerThickness.even(3);
          case "rigid-board" -> LayerThickness.even(10);
          case "tile-bed" -> LayerThickness.even(4);
          case "plain-leveller" ->
              new LayerThickness(
                  facts.number("pour least"), facts.number("pour mean"), facts.number("pour most"));
          default -> LayerThickness.even(facts.number("tile thickness"));
        };
    return new StackLayer(laid.kind(), thickness, List.of(laid));
  }

  private static final List<Laid> BOARD_AND_TILE =
      List.of(laid("board-bed"), laid("rigid-board"), laid("tile-bed"), laid("tile"));

  private static Scenario timber(String more) {
    return Measured.scenario(
        "room: {use: living area" + more + "}",
        "subfloor:",
        "  deck: chipboard",
        "  thickness: 18 mm",
        "  joists: {breadth: 47 mm, depth: 195 mm, grade: C16, centres: 450 mm, clear span: 3.9 m,"
            + " bearing: 100 mm}",
        "levels: {gap under 2 m straightedge: 2 mm, wanted: flat}");
  }

  private static final String[] TIMBER = {"base family: timber", "base: chipboard"};

  @Test
  @DisplayName("Rise is the sum of the layers: bed 3, board 10, bed 4, tile 9 mm")
  void rise() {
    Facts facts = after(timber(""), BOARD_AND_TILE, TIMBER);
    assertThat(facts.number("rise")).isEqualTo(26);
    assertThat(facts.find("rise").how()).contains("Tile 9 mm");
    assertThat(facts.find("rise").uses()).contains(facts.find("tile thickness"));
  }

  @Test
  @DisplayName("Mass is mass a millimetre times thickness, and dead load follows by g")
  void mass() {
    Facts facts = after(timber(""), BOARD_AND_TILE, TIMBER);
    Figures figures = Measured.knowledge().figures();
    double mass =
        7 * figures.get("mass-of-adhesive").value()
            + 10 * figures.get("mass-of-cement-board").value()
            + 9 * figures.get("mass-of-tile").value();
    assertThat(facts.number("mass added")).isCloseTo(mass, within(1e-9));
    assertThat(facts.number("dead load added")).isCloseTo(mass * 9.80665 / 1000, within(1e-9));
  }

  @Test
  @DisplayName("A build-up makes joists sag by its own load and no more, and doubles nothing")
  void joists() {
    Facts facts = after(timber(""), BOARD_AND_TILE, TIMBER);
    double before = facts.number("dead load before") + 1.5;
    double after = before + facts.number("dead load added");
    assertThat(facts.number("joist ratio after"))
        .isCloseTo(facts.number("joist ratio before") * before / after, within(1e-6));
    assertThat(facts.number("dead load after"))
        .isCloseTo(
            facts.number("dead load before") + facts.number("dead load added"), within(1e-12));
    assertThat(facts.number("floor frequency")).isLessThan(facts.number("floor frequency before"));
    assertThat(facts.number("bending use")).isGreaterThan(facts.number("bending use before"));
    assertThat(facts.number("joist deflection share"))
        .isGreaterThan(facts.number("joist deflection share before"));
  }

  @Test
  @DisplayName(
      "18 mm chipboard and 15 mm plywood at 450 mm: span/1387 under 2 kN/m2 (worked example P-16)")
  void unbondedLayers() {
    // Plywood of 6000 N/mm2 is 1.5 times the board's modulus of 4000, so a board of equal stiffness
    // is 15 mm times the cube root of 1.5.
    LayerKind board = Measured.knowledge().layers().get("rigid-board");
    double same =
        15 * Math.cbrt(6000.0 / Measured.knowledge().figures().get(board.modulus()).value());
    StackLayer layer =
        new StackLayer(board, LayerThickness.even(same), List.of(laid("rigid-board")));
    Facts facts = Measured.of(timber(""), TIMBER);
    Figures figures = Measured.knowledge().figures();
    facts.addAll(
        StackMeasures.of(timber(""), new Surveys(), new Stack(List.of(layer)), 0, figures, facts));
    double load = 2.0 + facts.number("dead load added");
    assertThat(facts.number("deck ratio after")).isCloseTo(1387 * 2.0 / load, within(1.0));
  }

  @Test
  @DisplayName("A board stiffens the deck between joists but not the joists")
  void deckOnly() {
    Facts facts = after(timber(""), BOARD_AND_TILE, TIMBER);
    double heavier = (2.0 + facts.number("dead load added")) / 2.0;
    // EI adds: 1 + 4000 x 10^3 / (3300 x 18^3), the load being its own weight heavier.
    double stiffer = 1 + 4000 * 1000 / (3300 * Math.pow(18, 3));
    assertThat(facts.number("deck ratio after"))
        .isCloseTo(facts.number("deck ratio before") * stiffer / heavier, within(1e-6));
    assertThat(facts.number("joist ratio after")).isLessThan(facts.number("joist ratio before"));
  }

  @Test
  @DisplayName(
      "The longest screw stays inside the deck: 13 + 18 - 2 mm, so 25 mm with 12 mm of grip")
  void screws() {
    Facts facts = after(timber(""), BOARD_AND_TILE, TIMBER);
    assertThat(facts.number("overlay thickness")).isEqualTo(13);
    assertThat(facts.number("screw longest")).isEqualTo(29);
    assertThat(facts.number("board screw")).isEqualTo(25);
    assertThat(facts.number("board screw grip")).isEqualTo(12);
    assertThat(facts.find("board screw").uses())
        .contains(Measured.knowledge().figures().get("stocked-screw-25"));
  }

  @Test
  @DisplayName("A millimetre more deck and the next stocked screw fits")
  void eitherSideOfAScrew() throws Exception {
    Scenario deeper = timber("").with("subfloor.thickness", "", "19 mm");
    assertThat(after(deeper, BOARD_AND_TILE, TIMBER).number("board screw")).isEqualTo(30);
  }

  @Test
  @DisplayName("No timber deck or no board: no screws")
  void noScrews() {
    assertThat(
            after(timber(""), List.of(laid("tile-bed"), laid("tile")), TIMBER).find("board screw"))
        .isNull();
    assertThat(
            after(Measured.scenario(), BOARD_AND_TILE, "base family: solid", "base: concrete slab")
                .find("overlay thickness"))
        .isNull();
  }

  @Test
  @DisplayName("Resistance is thickness over conductivity, summed (worked example H43's form)")
  void coveringResistance() {
    StackLayer layer =
        new StackLayer(
            kind("layer", "tile", "screed-conductivity"),
            LayerThickness.even(10),
            List.of(laid("tile")));
    assertThat(LayerWorth.resistanceM2KPerW(layer, Measured.knowledge().figures()))
        .isCloseTo(10 / 1000.0 / 1.2, within(1e-12));
  }

  private static LayerKind kind(String id, String family, String conductivity) {
    List<String> acts = family.equals("heating") ? List.of("lay heating") : List.of();
    return new LayerKind(id, id, id, family, 0, "none", "", conductivity, "", false, acts, "", "");
  }

  @Test
  @DisplayName("Only what lies above the heating covers it, and a floor without heating has none")
  void aboveTheHeating() {
    List<StackLayer> layers = new ArrayList<>();
    layers.add(
        new StackLayer(
            kind("under", "board", "screed-conductivity"), LayerThickness.even(100), List.of()));
    layers.add(new StackLayer(kind("mat", "heating", ""), LayerThickness.even(0), List.of()));
    layers.add(
        new StackLayer(
            kind("over", "tile", "screed-conductivity"), LayerThickness.even(12), List.of()));
    Scenario scenario =
        Measured.scenario(
            "room: {use: living area, storey: upper floor}",
            "heating: {kind: water pipes in screed, output: 60 W/m2}");
    Figures figures = Measured.knowledge().figures();
    Facts warm = Measured.of(scenario, "heated: yes");
    warm.addAll(StackMeasures.of(scenario, new Surveys(), new Stack(layers), 0, figures, warm));
    assertThat(warm.number("covering resistance")).isCloseTo(0.01, within(1e-12));
    // Down = (Ro q + 20 - 20)/1.04 with Ro = 1/10.8 + 0.01 + 0.045/1.2 (EN 1264-2, as H23).
    assertThat(warm.number("heat lost below"))
        .isCloseTo((1 / 10.8 + 0.01 + 0.045 / 1.2) * 60 / 1.04, within(1e-9));
    Facts cold = Measured.of(scenario, "heated: no");
    cold.addAll(StackMeasures.of(scenario, new Surveys(), new Stack(layers), 0, figures, cold));
    assertThat(cold.find("covering resistance")).isNull();
  }

  // --- doors

  private static final String DOOR =
      ", outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]], doors: [{name: hall door, wall: 0,"
          + " from: 0.2 m, width: 800 mm, gap under leaf: 40 mm, floor beyond: 10 mm, opens: %s}]";

  private static Scenario withLevels(String opens, String readings) {
    return Measured.scenario(
        "room: {use: living area" + DOOR.formatted(opens) + "}",
        "levels: {wanted: level, readings: " + readings + "}");
  }

  private static final String SLOPE =
      "[[0 m, 0 m, 0 mm], [4 m, 0 m, 20 mm], [4 m, 3 m, 20 mm], [0 m, 3 m, 0 mm]]";

  @Test
  @DisplayName("Without readings the gap left is the gap less the rise at the most")
  void unsurveyedDoor() {
    Facts facts = after(timber(DOOR.formatted("into the room")), BOARD_AND_TILE, TIMBER);
    assertThat(facts.number("gap left", "hall door")).isEqualTo(14);
    assertThat(facts.number("step at the door", "hall door")).isEqualTo(16);
  }

  @Test
  @DisplayName("Poured level, the door stands where the pour is: from 0.2 m on a slope of 5 mm/m")
  void pouredAtTheDoor() {
    Facts facts =
        after(
            withLevels("out of the room", SLOPE),
            List.of(laid("plain-leveller"), laid("tile-bed"), laid("tile")));
    // Surface at 23 mm; floor in the middle of the opening 3 mm, highest under the leaf 5 mm.
    assertThat(facts.number("pour at the door", "hall door")).isCloseTo(20, within(0.01));
    assertThat(facts.number("gap left", "hall door")).isCloseTo(40 - (23 - 5) - 13, within(0.01));
    assertThat(facts.number("step at the door", "hall door")).isCloseTo(20 + 13 - 10, within(0.01));
    assertThat(facts.number("pour most")).isCloseTo(23, within(0.01));
  }

  @Test
  @DisplayName(
      "Without a pour a leaf that opens inwards meets the floor as it climbs; outwards not")
  void climbingFloor() {
    String rising = "[[0 m, 0 m, 0 mm], [4 m, 0 m, 0 mm], [4 m, 3 m, 30 mm], [0 m, 3 m, 30 mm]]";
    List<Laid> layers = List.of(laid("tile-bed"), laid("tile"));
    Facts inwards = after(withLevels("into the room", rising), layers);
    Facts outwards = after(withLevels("out of the room", rising), layers);
    // 10 mm/m over a leaf of 800 mm.
    assertThat(inwards.number("gap left", "hall door")).isCloseTo(40 - 13 - 8, within(0.02));
    assertThat(outwards.number("gap left", "hall door")).isCloseTo(40 - 13, within(0.02));
  }

  @Test
  @DisplayName("Corners listed the other way round leave the door as it was")
  void otherWayRound() {
    String rising = "[[0 m, 0 m, 0 mm], [4 m, 0 m, 0 mm], [4 m, 3 m, 30 mm], [0 m, 3 m, 30 mm]]";
    List<Laid> layers = List.of(laid("tile-bed"), laid("tile"));
    Scenario clockwise =
        Measured.scenario(
            "room: {use: living area, outline: [[4 m, 0 m], [0 m, 0 m], [0 m, 3 m], [4 m, 3 m]], doors:"
                + " [{name: hall door, wall: 0, from: 3.0 m, width: 800 mm, gap under leaf: 40 mm, opens:"
                + " into the room}]}",
            "levels: {wanted: level, readings: " + rising + "}");
    assertThat(after(clockwise, layers).number("gap left", "hall door"))
        .isCloseTo(40 - 13 - 8, within(0.02));
  }

  @Test
  @DisplayName("The chain of the gap left reaches readings, leaf and layers")
  void chain() {
    Facts facts =
        after(
            withLevels("into the room", SLOPE),
            List.of(laid("plain-leveller"), laid("tile-bed"), laid("tile")));
    assertThat(facts.find("gap left", "hall door").uses())
        .contains(
            facts.find("readings"),
            facts.find("gap under leaf", "hall door"),
            facts.find("rise most"));
  }
}
