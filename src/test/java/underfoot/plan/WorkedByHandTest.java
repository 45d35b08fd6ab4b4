package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Stack;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Measured;
import underfoot.reasoning.BuildUp;
import underfoot.scenario.Scenario;

/** Programmes, amounts, costs and rooms of made-up build-ups, worked out by hand. */
class WorkedByHandTest {
  private static final Knowledge KNOWLEDGE = Measured.knowledge();
  private static final Derivation RULE = because("RULE-01");

  private static Derivation because(String id) {
    return new Derivation(new RuleNote(id, "a rule", "a reason", "common-practice"), List.of());
  }

  private static Facts facts(Object... namesAndNumbers) {
    Facts facts = new Facts();
    for (int i = 0; i < namesAndNumbers.length; i += 2) {
      String name = (String) namesAndNumbers[i];
      Object value = namesAndNumbers[i + 1];
      double number = value instanceof Number n ? n.doubleValue() : Double.NaN;
      facts.add(Fact.stated(name, name, "", value.toString(), number));
    }
    return facts;
  }

  private static StepTime wait(String step, double hours, StepTime.Pace pace) {
    return new StepTime(RULE, step, hours, pace);
  }

  // --- programme

  private static Timetable timetable(Facts facts, StepTime... waits) {
    return Timetable.of(KNOWLEDGE, facts, List.of(waits));
  }

  private static Timetable.Timed step(Timetable timetable, String id) {
    return timetable.steps().stream()
        .filter(one -> one.step().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_layer_asked_for_twice_takes_its_time_once_and_two_layers_take_it_twice() {
    LayerKind ply = KNOWLEDGE.layers().get("ply-overlay");
    LayerKind board = KNOWLEDGE.layers().get("rigid-board");
    Facts room = facts("area", 10.0);
    StepTime one = timed(new Laid(because("WHY-01"), ply, ""));
    StepTime again = timed(new Laid(because("WHY-02"), ply, ""));
    StepTime other = timed(new Laid(because("WHY-01"), board, ""));
    assertThat(step(timetable(room, one), "step-lay-board").hours()).isEqualTo(5);
    assertThat(step(timetable(room, one, again), "step-lay-board").hours()).isEqualTo(5);
    assertThat(step(timetable(room, one, again, other), "step-lay-board").hours()).isEqualTo(10);
  }

  private static StepTime timed(Laid laid) {
    Derivation rule = new Derivation(RULE.rule(), List.of(laid));
    return new StepTime(rule, "step-lay-board", 0.5, StepTime.Pace.BY_AREA);
  }

  @Test
  void steps_follow_one_another_and_waits_that_run_from_another_step_hold_nothing_up() {
    Timetable found =
        timetable(
            facts("area", 10.0),
            wait("step-grout", 2, StepTime.Pace.FIXED),
            wait("wait-tile-bed", 24, StepTime.Pace.FIXED),
            wait("step-lay-tiles", 0.5, StepTime.Pace.BY_AREA),
            wait("step-lay-tiles", 3, StepTime.Pace.FIXED),
            wait("step-lay-tiles", 1, StepTime.Pace.FIXED),
            wait("wait-full-use", 168, StepTime.Pace.FIXED),
            wait("wait-light-use", 12, StepTime.Pace.FIXED),
            wait("step-seal-joints", 1, StepTime.Pace.FIXED));
    // Day and night where no hours are said: tiles 3 + 0.5 × 10 = 8 h, bed to 32, grout to 34.
    assertThat(step(found, "step-lay-tiles").span()).isEqualTo(new WorkingHours.Span(0, 8));
    assertThat(step(found, "step-lay-tiles").hours()).isEqualTo(8);
    assertThat(step(found, "step-lay-tiles").because()).hasSize(3);
    assertThat(step(found, "wait-tile-bed").span()).isEqualTo(new WorkingHours.Span(8, 32));
    assertThat(step(found, "step-grout").span()).isEqualTo(new WorkingHours.Span(32, 34));
    assertThat(step(found, "step-seal-joints").span()).isEqualTo(new WorkingHours.Span(34, 35));
    // Light use runs from the grout, full use from the tiles.
    assertThat(step(found, "wait-light-use").span()).isEqualTo(new WorkingHours.Span(34, 46));
    assertThat(step(found, "wait-full-use").span()).isEqualTo(new WorkingHours.Span(8, 176));
    assertThat(found.inUseAfter()).isEqualTo(176);
    assertThat(found.workHours()).isEqualTo(11);
    assertThat(found.steps()).extracting(one -> one.span().start()).isSorted();
    // Full use hangs on the tiles alone.
    assertThat(found.steps())
        .filteredOn(Timetable.Timed::critical)
        .extracting(one -> one.step().id())
        .containsExactly("step-lay-tiles", "wait-full-use");
  }

  @Test
  void without_a_step_that_puts_the_room_in_use_the_last_end_counts_and_all_before_it() {
    Timetable found =
        timetable(
            facts("area", 10.0),
            wait("step-lay-tiles", 4, StepTime.Pace.FIXED),
            wait("wait-tile-bed", 24, StepTime.Pace.FIXED),
            wait("step-grout", 2, StepTime.Pace.FIXED),
            wait("wait-light-use", 12, StepTime.Pace.FIXED),
            wait("wait-grout", 1, StepTime.Pace.FIXED));
    assertThat(found.inUseAfter()).isEqualTo(42);
    assertThat(found.steps())
        .filteredOn(Timetable.Timed::critical)
        .extracting(one -> one.step().id())
        .containsExactly("step-lay-tiles", "wait-tile-bed", "step-grout", "wait-light-use");
    Timetable none = timetable(facts());
    assertThat(none.inUseAfter()).isZero();
    assertThat(none.workHours()).isZero();
    assertThat(none.steps()).isEmpty();
  }

  @Test
  void curing_goes_by_the_warmth_and_areas_by_the_room_or_by_what_is_taken_for_it() {
    Facts cold = facts("area", 10.0, "cure factor", 0.5);
    Timetable found =
        timetable(
            cold,
            wait("step-lay-tiles", 0.25, StepTime.Pace.BY_AREA),
            wait("wait-tile-bed", 24, StepTime.Pace.CURES),
            wait("wait-tile-bed", 30, StepTime.Pace.FIXED));
    assertThat(step(found, "wait-tile-bed").hours()).isEqualTo(48);
    assertThat(step(found, "wait-tile-bed").used()).containsExactly(cold.find("cure factor"));
    assertThat(step(found, "step-lay-tiles").hours()).isEqualTo(2.5);
    assertThat(step(found, "step-lay-tiles").used()).containsExactly(cold.find("area"));
    Timetable unknown =
        timetable(
            facts(),
            wait("step-lay-tiles", 0.25, StepTime.Pace.BY_AREA),
            wait("wait-tile-bed", 24, StepTime.Pace.CURES));
    // 12 m2 are taken where the area is not known.
    assertThat(step(unknown, "step-lay-tiles").hours()).isEqualTo(3);
    assertThat(step(unknown, "step-lay-tiles").used())
        .containsExactly(KNOWLEDGE.figures().get("area-taken-for-times"));
    assertThat(step(unknown, "wait-tile-bed").hours()).isEqualTo(24);
    assertThat(step(unknown, "wait-tile-bed").used()).isEmpty();
  }

  @Test
  void hands_work_in_working_hours_and_what_is_done_in_one_go_waits_for_a_morning() {
    Facts hours =
        facts(
            "hours a day",
            8,
            "working days",
            "monday, tuesday, wednesday, thursday, friday",
            "start date",
            "2027-03-05");
    Timetable found =
        timetable(
            hours,
            wait("step-lay-board", 6, StepTime.Pace.FIXED),
            wait("step-pour-leveller", 4, StepTime.Pace.FIXED),
            wait("wait-leveller", 24, StepTime.Pace.FIXED));
    // Friday 5 March: boards from 8 to 14; the pour does not fit and waits for Monday.
    assertThat(step(found, "step-lay-board").span()).isEqualTo(new WorkingHours.Span(0, 6));
    assertThat(step(found, "step-pour-leveller").span()).isEqualTo(new WorkingHours.Span(72, 76));
    assertThat(step(found, "wait-leveller").span()).isEqualTo(new WorkingHours.Span(76, 100));
    assertThat(step(found, "step-lay-board").used())
        .containsExactly(hours.find("hours a day"), hours.find("working days"));
    assertThat(step(found, "wait-leveller").used()).isEmpty();
    assertThat(found.working().dated()).isTrue();
    assertThat(found.working().at(72).toLocalDate()).isEqualTo(LocalDate.of(2027, 3, 8));
    assertThat(timetable(facts()).working().dated()).isFalse();
  }

  @ParameterizedTest(name = "{0} h as {1}")
  @CsvSource({
    "0, 0 h",
    "7.2, 8 h",
    "47, 47 h",
    "47.9, 48 h",
    "48, 2 days",
    "49, 2.1 days",
    "240, 10 days"
  })
  void times_are_told_in_hours_up_to_two_days_and_then_in_tenths_of_days(
      double hours, String text) {
    assertThat(Planner.span(hours)).isEqualTo(text);
  }

  // --- amounts and cost

  private static StackLayer layer(String id, double mm) {
    LayerKind kind = new LayerKind(id, id, id, id, 1, "none", "", "", "", false, List.of(), "", "");
    return new StackLayer(kind, LayerThickness.even(mm), List.of(new Laid(RULE, kind, "")));
  }

  private static SetOuts.Laid nothingSetOut(Facts facts) {
    return new SetOuts.Laid(Optional.empty(), "", Map.of(), facts);
  }

  private static Amount amount(Facts facts, String item, StackLayer... layers) {
    return Amounts.of(KNOWLEDGE, new Stack(List.of(layers)), facts, nothingSetOut(facts)).stream()
        .filter(one -> one.item().item().equals(item))
        .findFirst()
        .orElse(null);
  }

  private static double figure(String name) {
    return KNOWLEDGE.figures().get(name).value();
  }

  @Test
  void amounts_go_by_area_depth_bed_perimeter_and_joints_with_their_waste() {
    Facts room =
        facts(
            "area",
            12.0,
            "perimeter",
            14_000,
            "tile waste",
            10,
            "longest edge",
            300,
            "shortest edge",
            300,
            "tile thickness",
            8,
            "tile joint",
            3);
    double mixed = 1 + figure("waste-of-mixed-products") / 100;
    double boards = 1 + figure("waste-of-boards") / 100;
    assertThat(amount(room, "timber primer", layer("board-primer", 0)).amount())
        .isCloseTo(12 * figure("use-of-primer") * mixed, within(1e-9));
    assertThat(amount(room, "levelling compound", layer("plain-leveller", 7)).amount())
        .isCloseTo(12 * 7 * figure("use-of-levelling-powder") * mixed, within(1e-9));
    // 3 mm of bed by 1 m2 takes 3 times the powder of a millimetre.
    assertThat(amount(room, "tile adhesive", layer("tile-bed", 3)).amount())
        .isCloseTo(12 * 3 * figure("use-of-adhesive-powder") * mixed, within(1e-9));
    assertThat(amount(room, "edge strip", layer("tile", 8)).amount())
        .isCloseTo(14 * boards, within(1e-9));
    assertThat(amount(room, "sealant", layer("tile", 8)).amount())
        .isCloseTo(14 * figure("use-of-sealant") * mixed, within(1e-9));
    assertThat(amount(room, "tiles", layer("tile", 8)).amount()).isCloseTo(13.2, within(1e-9));
    // Joint of a 300 mm tile, 3 mm wide and 8 mm deep: (1 - 300²/303²) × 8 L/m2.
    double litres = (1 - 300.0 * 300 / (303.0 * 303)) * 8;
    Amount grout = amount(room, "grout", layer("tile", 8));
    assertThat(grout.amount())
        .isCloseTo(12 * litres * figure("density-of-grout-powder") * mixed, within(1e-9));
    assertThat(grout.used())
        .contains(
            room.find("longest edge"),
            room.find("shortest edge"),
            room.find("tile thickness"),
            room.find("tile joint"),
            room.find("area"),
            KNOWLEDGE.figures().get("density-of-grout-powder"),
            KNOWLEDGE.figures().get("waste-of-mixed-products"));
    assertThat(grout.whole()).isTrue();
    assertThat(amount(room, "edge strip", layer("tile", 8)).used())
        .contains(room.find("perimeter"))
        .doesNotContain(room.find("area"));
    assertThat(amount(room, "tiles", layer("tile", 8)).used()).contains(room.find("tile waste"));
  }

  @Test
  void
      without_an_area_amounts_are_for_a_square_metre_and_what_cannot_be_told_is_listed_all_the_same() {
    Facts none = facts();
    Amount primer = amount(none, "timber primer", layer("board-primer", 0));
    assertThat(primer.whole()).isFalse();
    assertThat(primer.amount())
        .isCloseTo(
            figure("use-of-primer") * (1 + figure("waste-of-mixed-products") / 100), within(1e-9));
    for (String untold : List.of("edge strip", "sealant", "grout")) {
      assertThat(amount(none, untold, layer("tile", 8)).amount()).as(untold).isNaN();
      assertThat(amount(none, untold, layer("tile", 8)).whole()).as(untold).isFalse();
    }
    assertThat(amount(none, "tiles", layer("tile", 8)).amount()).isEqualTo(1);
    assertThat(amount(none, "levelling compound", layer("plain-leveller", 0))).isNull();
    // The edge strip goes by the walls, which may be known without the area, or taken from it.
    assertThat(amount(facts("perimeter", 9000), "edge strip", layer("tile", 8)).whole()).isTrue();
    Amount taken = amount(facts("area", 9.0), "edge strip", layer("tile", 8));
    assertThat(taken.amount())
        .isCloseTo(
            figure("round-the-room") * 3 * (1 + figure("waste-of-boards") / 100), within(1e-9));
    assertThat(taken.whole()).isTrue();
  }

  private static BuildUp buildUp(Facts facts, List<StepTime> waits, StackLayer... layers) {
    return new BuildUp("a way", List.of(), new Stack(List.of(layers)), facts, List.copyOf(waits));
  }

  private static Planner planner(String... lines) throws Exception {
    String book = "currency: GBP\n" + String.join("\n", lines) + "\n";
    return new Planner(PriceBook.own("own.yaml", book.getBytes(), KNOWLEDGE.materials()));
  }

  /** What a tiled room of 12 m2 must tell for grout, edge strip and sealant to be counted. */
  private static Facts tiled() {
    return facts(
        "area",
        12.0,
        "perimeter",
        14_000,
        "longest edge",
        300,
        "shortest edge",
        300,
        "tile thickness",
        8,
        "tile joint",
        3);
  }

  /** One pack of each is enough for that room: 15 together. */
  private static final String[] JOINTS = {
    "grout: {pack: 1000 kg, price: 4.00 GBP}",
    "edge strip: {pack: 1000 m, price: 5.00 GBP}",
    "sealant: {pack: 100000 mL, price: 6.00 GBP}"
  };

  private static Planner plannerWithJoints(String... lines) throws Exception {
    return planner(Stream.concat(Stream.of(lines), Stream.of(JOINTS)).toArray(String[]::new));
  }

  @Test
  void a_build_up_costs_its_whole_packs_its_labour_and_what_is_kept_back() throws Exception {
    Scenario floor = Measured.scenario();
    Facts held = tiled();
    held.addAll(facts("tile waste", 10, "ready within", 20).all());
    held.add(Fact.stated("budget", "budget", "", "500 GBP", 500));
    BuildUp buildUp =
        buildUp(
            held,
            List.of(
                wait("step-lay-tiles", 8.5, StepTime.Pace.FIXED),
                wait("wait-tile-bed", 24, StepTime.Pace.FIXED)),
            layer("tile", 8));
    // 13.2 m2 of tiles are 14 packs of 1 m2 at 30: 420; nine begun hours at 25: 225; 15 for joints.
    Planner planner =
        plannerWithJoints(
            "tiles: {pack: 1 m2, price: 30.00 GBP}", "labour: {pack: 1 h, price: 25.00 GBP}");
    double share = figure("contingency") / 100;
    Facts found = new Facts().addAll(planner.of(floor, KNOWLEDGE, buildUp, List.of()));
    assertThat(found.number("cost")).isCloseTo(660 * (1 + share), within(1e-6));
    assertThat(found.find("cost").text())
        .isEqualTo(String.format(java.util.Locale.ROOT, "%.2f GBP", 660 * (1 + share)));
    assertThat(found.number("over budget")).isCloseTo(660 * (1 + share) - 500, within(1e-6));
    assertThat(found.number("over budget before contingency")).isCloseTo(160, within(1e-6));
    assertThat(found.find("over budget before contingency").how())
        .isEqualTo("660.00 GBP against 500 GBP");
    assertThat(found.find("over budget before contingency").text()).isEqualTo("160.00 GBP");
    assertThat(found.number("hours until use")).isCloseTo(32.5, within(1e-9));
    assertThat(found.find("hours until use").text()).isEqualTo("33 h");
    assertThat(found.number("work hours")).isCloseTo(8.5, within(1e-9));
    assertThat(found.find("work hours").text()).isEqualTo("9 h");
    assertThat(found.number("late by")).isCloseTo(12.5, within(1e-9));
    assertThat(found.find("late by").how()).isEqualTo("33 h against 20");
    Cost cost =
        planner
            .cost(
                floor,
                KNOWLEDGE,
                buildUp,
                List.of(),
                Timetable.of(KNOWLEDGE, held, buildUp.of(StepTime.class)))
            .orElseThrow();
    assertThat(cost.lines()).extracting(Cost.Line::cost).startsWith(420.0, 4.0, 5.0, 6.0, 225.0);
    assertThat(cost.lines())
        .extracting(Cost.Line::item)
        .startsWith("tiles", "grout", "edge strip", "sealant", "labour");
    assertThat(cost.contingency()).isCloseTo(660 * share, within(1e-6));
  }

  @Test
  void what_is_within_budget_and_time_is_over_by_nothing_and_other_money_is_not_compared()
      throws Exception {
    Planner planner =
        plannerWithJoints(
            "tiles: {pack: 2 m2, price: 30.00 GBP}", "labour: {pack: 1 h, price: 25.00 GBP}");
    Facts held = tiled();
    held.addAll(facts("ready within", 900).all());
    held.add(Fact.stated("budget", "budget", "", "5000 GBP", 5000));
    List<StepTime> waits = List.of(wait("step-lay-tiles", 8, StepTime.Pace.FIXED));
    Facts found =
        new Facts()
            .addAll(
                planner.of(
                    Measured.scenario(),
                    KNOWLEDGE,
                    buildUp(held, waits, layer("tile", 8)),
                    List.of()));
    // 12 m2 are six packs of two: 180, 8 hours: 200, and 15 for joints.
    assertThat(found.number("cost"))
        .isCloseTo(395 * (1 + figure("contingency") / 100), within(1e-6));
    assertThat(found.number("over budget")).isZero();
    assertThat(found.number("late by")).isZero();
    Facts euros = tiled();
    euros.add(Fact.stated("budget", "budget", "", "5 EUR", 5));
    Facts other =
        new Facts()
            .addAll(
                planner.of(
                    Measured.scenario(),
                    KNOWLEDGE,
                    buildUp(euros, List.of(), layer("tile", 8)),
                    List.of()));
    assertThat(other.find("over budget")).isNull();
    assertThat(other.find("hours until use")).isNull();
    assertThat(other.find("cost")).isNotNull();
    assertThat(other.find("foreign currency").text()).isEqualTo("GBP");
    // Without a price or an area there is no cost.
    Planner pieces = planner("screws: {pack: 1 pieces, price: 30.00 GBP}");
    Facts unpriced =
        new Facts()
            .addAll(
                pieces.of(
                    Measured.scenario(),
                    KNOWLEDGE,
                    buildUp(held, waits, layer("tile", 8)),
                    List.of()));
    assertThat(unpriced.find("cost")).isNull();
    assertThat(unpriced.find("over budget")).isNull();
    assertThat(unpriced.find("unpriced").text()).isEqualTo("tiles, grout, edge strip, sealant");
    assertThat(unpriced.find("priced part").number()).isZero();
    assertThat(unpriced.find("late by")).isNotNull();
    Facts noArea =
        new Facts()
            .addAll(
                planner.of(
                    Measured.scenario(),
                    KNOWLEDGE,
                    buildUp(facts(), waits, layer("tile", 8)),
                    List.of()));
    assertThat(noArea.find("cost")).isNull();
    assertThat(noArea.find("late by")).isNull();
  }

  // --- the room as it is drawn

  @Test
  void a_room_is_drawn_with_its_corners_doors_and_readings() {
    Scenario scenario =
        Measured.scenario(
            "room: {use: hall, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [1 m, 2 m]], doors:"
                + " [{name: a, wall: 0, from: 1 m, width: 800 mm}, {name: b, wall: 2, from: 500 mm,"
                + " width: 900 mm}, {name: c, wall: 1, width: 900 mm}]}",
            "levels: {readings: [[0 m, 0 m, 1 mm], [4 m, 0 m, 2 mm], [4 m, 3 m, 3 mm]]}");
    RoomPlan plan = SetOuts.room(scenario, Measured.stated(scenario)).orElseThrow();
    assertThat(plan.corners()).hasSize(4);
    assertThat(plan.corners().get(3)).containsExactly(1000, 2000);
    assertThat(plan.readings()).hasSize(3);
    assertThat(plan.readings().get(1)).containsExactly(4000, 0, 2);
    // The third door has no place.
    assertThat(plan.doors()).extracting(RoomPlan.Door::name).containsExactly("a", "b");
    RoomPlan.Door a = plan.doors().get(0);
    assertThat(List.of(a.x1(), a.y1(), a.x2(), a.y2())).containsExactly(1000.0, 0.0, 1800.0, 0.0);
    // Wall 2 runs from (4000, 3000) by (-3000, -1000), 3162.28 mm long.
    RoomPlan.Door b = plan.doors().get(1);
    double length = Math.hypot(3000, 1000);
    assertThat(b.x1()).isCloseTo(4000 - 500 * 3000 / length, within(1e-9));
    assertThat(b.y1()).isCloseTo(3000 - 500 * 1000 / length, within(1e-9));
    assertThat(b.x2()).isCloseTo(4000 - 1400 * 3000 / length, within(1e-9));
    assertThat(b.y2()).isCloseTo(3000 - 1400 * 1000 / length, within(1e-9));
    assertThat(SetOuts.room(Measured.scenario(), new Facts())).isEmpty();
    assertThat(
            SetOuts.room(
                Measured.scenario(
                    "room: {use: hall, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m]]}"),
                new Facts()))
        .isPresent();
  }

  private static SetOuts.Laid setOut(Facts facts) {
    Scenario room =
        Measured.scenario(
            "room: {use: hall, outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 2 m], [0 m, 2 m]]}");
    return new SetOuts().of(room, KNOWLEDGE, buildUp(facts, List.of(), layer("tile", 8)));
  }

  @Test
  void tiles_are_set_out_where_pattern_sizes_joint_and_gap_are_known_and_else_it_is_said_why() {
    Object[] all = {
      "laid pattern",
      "grid",
      "tile length",
      300,
      "tile width",
      300,
      "least joint",
      3,
      "edge gap",
      6,
      "tile breakage",
      10
    };
    SetOuts.Laid laid = setOut(facts(all));
    // 2988 by 1988 mm within the gaps: 300 with 3 mm joints, ten and seven rows at the least.
    assertThat(laid.tiles()).isPresent();
    assertThat(laid.whyNoTiles()).isEmpty();
    long tiles = laid.tiles().get().tiles();
    assertThat(tiles).isBetween(66L, 77L);
    assertThat(SetOuts.toOrder(laid.tiles().get(), 10))
        .isEqualTo((long) Math.ceil(tiles * 1.1 - 1e-9));
    assertThat(SetOuts.toOrder(laid.tiles().get(), Double.NaN)).isEqualTo(tiles);
    Facts told = new Facts().addAll(laid.measured());
    assertThat(told.number("tiles needed")).isEqualTo(tiles);
    assertThat(told.find("tiles needed").uses()).hasSize(4);
    assertThat(told.find("slivers in the set-out")).isNotNull();
    for (int i = 0; i < 10; i += 2) {
      List<Object> some = new ArrayList<>(List.of(all));
      some.remove(i);
      some.remove(i);
      SetOuts.Laid without = setOut(facts(some.toArray()));
      assertThat(without.tiles()).as((String) all[i]).isEmpty();
      assertThat(without.whyNoTiles()).isEqualTo("set-out-no-pattern");
      assertThat(without.measured()).isEmpty();
    }
    List<Object> mosaic = new ArrayList<>(List.of(all));
    mosaic.remove(0);
    mosaic.remove(0);
    mosaic.add("tile format");
    mosaic.add("mosaic");
    assertThat(setOut(facts(mosaic.toArray())).whyNoTiles()).isEqualTo("set-out-mosaic-sheets");
    List<Object> tiny = new ArrayList<>(List.of(all));
    tiny.set(3, 5);
    tiny.set(5, 5);
    assertThat(setOut(facts(tiny.toArray())).whyNoTiles()).isEqualTo("set-out-too-many");
    List<Object> noRoom = new ArrayList<>(List.of(all));
    noRoom.set(9, 1500);
    assertThat(setOut(facts(noRoom.toArray())).whyNoTiles()).isEqualTo("set-out-no-room");
    // A wanted joint wider than the least is taken, a narrower one is not.
    List<Object> wide = new ArrayList<>(List.of(all));
    wide.add("wanted joint");
    wide.add(5);
    assertThat(setOut(facts(wide.toArray())).tiles().orElseThrow().joint()).isEqualTo(5);
    wide.set(wide.size() - 1, 2);
    assertThat(setOut(facts(wide.toArray())).tiles().orElseThrow().joint()).isEqualTo(3);
    SetOuts.Laid noOutline =
        new SetOuts()
            .of(Measured.scenario(), KNOWLEDGE, buildUp(facts(all), List.of(), layer("tile", 8)));
    assertThat(noOutline.whyNoTiles()).isEqualTo("set-out-no-outline");
  }
}
