package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** From every layer of the floor that may stay, ways are worked out and set beside each other. */
class WaysFromEveryLayerTest {
  private static final String ROOM =
      """
      scenario: A floor
      practice: uk
      room: {use: hall, outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 2 m], [0 m, 2 m]], storey: ground floor, dwelling: house}
      building: {built: 2004}
      tile: {material: porcelain, length: 300 mm, width: 300 mm, thickness: 9 mm, edges: rectified, pattern: grid}
      heating: none
      """;
  private static final String JOISTS =
      "subfloor: {carried by: {kind: timber joists, breadth: 47 mm, depth: 220 mm, grade: C24,"
          + " centres: 400 mm, clear span: 2.4 m}, services below: none, timber moisture: 11 %,"
          + " condition: {rot: no, damp: no, springy: no}, as found: [";
  private static final String BOARDS =
      "{kind: tongue-and-groove boards, thickness: 21 mm, loose: no}";
  private static final String SHEET = "{kind: plywood, thickness: 18 mm, fixed: screwed}";
  private static final String TILES =
      "{kind: ceramic tiles, thickness: 8 mm, bed: 3 mm, hollow: none}";

  private static Assessment advise(String... layers) throws ScenarioFaults {
    return advised(JOISTS + String.join(", ", layers) + "]}\n");
  }

  private static Assessment advised(String subfloor) throws ScenarioFaults {
    Scenario floor =
        Floors.reader().read("floor.yaml", (ROOM + subfloor).getBytes(StandardCharsets.UTF_8));
    return Floors.advisor().advise(floor);
  }

  private static List<Assessment> every(Assessment floor) {
    List<Assessment> every = new ArrayList<>(floor.others());
    every.add(floor);
    return every;
  }

  private static Assessment from(Assessment floor, int layer) {
    return every(floor).stream()
        .filter(one -> one.facts().number(FoundFloor.START) == layer)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void ways_are_worked_out_from_the_tiles_from_the_sheet_and_from_the_boards() throws Exception {
    Assessment floor = advise(BOARDS, SHEET, TILES);
    assertThat(every(floor)).hasSize(3);
    for (int layer = 0; layer < 3; layer++) {
      assertThat(from(floor, layer).buildUps()).as("from layer %s", layer).isNotEmpty();
    }
    assertThat(advise(BOARDS).others()).as("a bare deck has one start").isEmpty();
    assertThat(advise(BOARDS, "{kind: plywood, thickness: 4 mm}").others())
        .as("a thin sheet comes up whatever is built")
        .isEmpty();
  }

  @Test
  void each_is_as_high_and_as_heavy_as_it_is_without_what_comes_up() throws Exception {
    Assessment floor = advise(BOARDS, SHEET, TILES);
    Facts bare = same(advise(BOARDS), "rigid board overlay");
    Facts stripped = same(from(floor, 0), "rigid board overlay");
    assertThat(bare.number("rise") - stripped.number("rise")).isEqualTo(18 + 8 + 3, within(1e-6));
    double up = stripped.number("mass taken up");
    assertThat(bare.number("mass added") - stripped.number("mass added"))
        .isEqualTo(up, within(1e-6));
    assertThat(up).as("18 mm of plywood and 11 mm of tiles and bed, kg/m2").isBetween(25.0, 45.0);
    assertThat(stripped.number("joist ratio after"))
        .as("joists carry what they would carry had it never lain there")
        .isEqualTo(bare.number("joist ratio after"), within(1e-6));
  }

  private static Facts same(Assessment floor, String way) {
    return floor.buildUps().stream()
        .filter(one -> one.way().equals(way))
        .findFirst()
        .orElseThrow()
        .facts();
  }

  @Test
  void a_sound_sheet_is_not_taken_up_where_a_way_no_less_usual_leaves_it() throws Exception {
    Assessment floor = advise(BOARDS, SHEET);
    assertThat(floor.facts().number(FoundFloor.START)).isEqualTo(1);
    Facts boards = same(from(floor, 0), "foam-core board overlay");
    assertThat(boards.text("torn out without need")).isEqualTo("yes");
    assertThat(floor.chosen().orElseThrow().facts().text("torn out without need")).isEqualTo("no");
  }

  @Test
  void what_carries_the_floor_is_left_while_something_stands_on_it() throws Exception {
    String screed =
        "subfloor: {carried by: slab on the ground, floor humidity: 60 %%, condition: {cracks: none,"
            + " weak surface: no, damp: no, residue: none}, as found: [{kind: insulation,"
            + " thickness: 50 mm}, {kind: \"cement:sand screed\", thickness: 70 mm, age: 9 years}%s]}\n";
    Assessment floor = advised(screed.formatted(""));
    assertThat(floor.others()).isEmpty();
    Assessment tiled = advised(screed.formatted(", " + TILES));
    assertThat(every(tiled)).as("on the tiles and on the screed, never on the slab").hasSize(2);
  }

  @Test
  void the_advice_sets_them_beside_each_other_by_what_is_taken_up_or_left() throws Exception {
    Assessment floor = advise(BOARDS, SHEET, TILES);
    Advice advice = AdviceMaker.make(floor, List.of(), Consequences.none());
    assertThat(advice.alternatives())
        .extracting(Advice.Alternative::title)
        .anyMatch(title -> title.contains("with plywood taken up first"))
        .anyMatch(title -> title.contains("with ceramic tiles left where they are"))
        .doesNotHaveDuplicates();
    assertThat(advice.alternatives())
        .as("a new deck is the same from wherever one begins")
        .filteredOn(one -> one.title().startsWith("a new deck"))
        .hasSizeLessThan(2);
  }

  @Test
  void where_nothing_stands_on_the_old_tiles_it_is_told_what_rules_that_out() throws Exception {
    String slab =
        "subfloor: {carried by: slab on the ground, as found:"
            + " [{kind: ceramic tiles, thickness: 20 mm, bed: 25 mm, hollow: %s}]}\n";
    Advice hollow =
        AdviceMaker.make(advised(slab.formatted("some")), List.of(), Consequences.none());
    assertThat(hollow.alternatives())
        .filteredOn(one -> one.standing() == Advice.Standing.RULED_OUT)
        .extracting(Advice.Alternative::title)
        .contains("new tiles over the old ones, with ceramic tiles left where they are");
    assertThat(hollow.summary()).contains("takes").contains("kg/m2 off");
    Advice gone = AdviceMaker.make(advised(slab.formatted("much")), List.of(), Consequences.none());
    assertThat(gone.alternatives())
        .as("tiles that come up whatever is built are no layer to begin from")
        .noneMatch(one -> one.title().contains("left where they are"));
  }
}
