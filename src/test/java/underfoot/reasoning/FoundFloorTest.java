package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Remedy;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Facts;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** Floors told layer by layer, and rooms whose floor is otherwise in some parts. */
class FoundFloorTest {
  private static final String ROOM =
      """
      scenario: A floor
      practice: uk
      room: {use: hall, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]], storey: ground floor, dwelling: house}
      building: {built: 2004}
      tile: {material: porcelain, length: 300 mm, width: 300 mm, thickness: 9 mm, edges: pressed, pattern: grid}
      heating: none
      """;
  private static final String SLAB =
      "subfloor: {deck: concrete slab, thickness: 150 mm, age: 20 years, floor humidity: 65 %,"
          + " condition: {cracks: none, weak surface: no, damp: no, residue: none}}\n";
  private static final String ZONE =
      "zones: [{name: part, outline: [[%s m, 0 m], [%s m, 0 m], [%s m, 3 m], [%s m, 3 m]],"
          + " surface: %s mm, deck: concrete slab, thickness: 150 mm, age: 20 years,"
          + " floor humidity: 65 %%, condition: {cracks: none, weak surface: no, damp: no,"
          + " residue: none}}]\n";

  private static Scenario read(String yaml) throws ScenarioFaults {
    return Floors.reader().read("floor.yaml", yaml.getBytes(StandardCharsets.UTF_8));
  }

  private static Scenario zoned(double from, double to, double surface) throws ScenarioFaults {
    return read(ROOM + SLAB + ZONE.formatted(from, to, to, from, surface));
  }

  /** What the only part of a room was found to lack, mm. */
  private static double lacking(Scenario scenario) {
    Facts facts = advise(scenario).zones().get(0).assessment().facts();
    return facts.number("level to make up");
  }

  private static Assessment advise(Scenario scenario) {
    return Floors.advisor().advise(scenario);
  }

  @Test
  void what_comes_up_lies_above_what_stays_on_a_hundred_floors_made_up_of_any_layers()
      throws Exception {
    FactDefinition kind =
        Floors.advisor().knowledge().facts().find("subfloor.as found[].kind").orElseThrow();
    Random random = new Random(17);
    for (int floor = 0; floor < 100; floor++) {
      List<String> layers = new ArrayList<>();
      layers.add("{kind: tongue-and-groove boards, thickness: 18 mm}");
      int more = random.nextInt(5);
      for (int i = 0; i < more; i++) {
        String of = kind.of().get(random.nextInt(kind.of().size()));
        layers.add("{kind: \"%s\", thickness: %s mm}".formatted(of, 2 + random.nextInt(20)));
      }
      Assessment advice =
          advise(
              read(
                  ROOM
                      + "subfloor: {carried by: timber joists, as found: ["
                      + String.join(", ", layers)
                      + "]}\n"));
      Facts facts = advice.factsOfChosen();
      List<String> names = FoundLayers.names(facts);
      assertThat(names).as("%s", layers).hasSize(layers.size());
      boolean up = false;
      for (String name : names) {
        boolean stays = FoundLayers.stays(facts, name);
        assertThat(up && stays).as("%s stays on what comes up: %s", name, layers).isFalse();
        up |= !stays;
      }
    }
  }

  @Test
  void a_slab_that_carries_the_floor_and_is_named_among_its_layers_is_never_taken_up()
      throws Exception {
    String slab = "{kind: concrete slab, thickness: 150 mm}";
    for (String carrier : List.of("slab in the air", "slab on the ground", "precast planks")) {
      for (String covering : List.of("carpet", "thermoplastic tiles", "laminate")) {
        Assessment advice =
            advise(
                read(
                    ROOM
                        + "subfloor: {carried by: %s, as found: [%s, {kind: %s, thickness: 5 mm}]}\n"
                            .formatted(carrier, slab, covering)));
        Facts facts = advice.factsOfChosen();
        List<String> names = FoundLayers.names(facts);
        assertThat(FoundLayers.stays(facts, names.get(0))).as(carrier + covering).isTrue();
        assertThat(FoundLayers.stays(facts, names.get(1))).as(carrier + covering).isFalse();
        for (BuildUp way : advice.buildUps()) {
          assertThat(way.facts().number("old layers taken up")).as(way.way()).isLessThan(6);
        }
      }
    }
  }

  @Test
  void a_floor_told_layer_by_layer_is_answered_as_the_same_floor_told_in_short() throws Exception {
    Assessment told =
        advise(
            read(
                ROOM
                    + "subfloor: {carried by: timber joists,"
                    + " as found: [{kind: plywood, thickness: 9 mm}]}\n"));
    Assessment inShort =
        advise(
            read(ROOM + "subfloor: {carried by: timber joists, deck: plywood, thickness: 9 mm}\n"));
    assertThat(told.verdict()).isEqualTo(inShort.verdict());
    assertThat(told.chosen().map(BuildUp::way)).isEqualTo(inShort.chosen().map(BuildUp::way));
  }

  @Test
  void every_deck_is_judged_under_a_covering_as_it_is_bare() throws Exception {
    FactDefinition kind =
        Floors.advisor().knowledge().facts().find("subfloor.as found[].kind").orElseThrow();
    int decks = 0;
    for (String deck : kind.of()) {
      for (int thickness : List.of(6, 9, 18, 22)) {
        String floor =
            ROOM.replace("dwelling:", "stairs: no, dwelling:")
                + "subfloor: {carried by: %s, as found: [{kind: \"%s\", thickness: %s mm}%s]}\n";
        boolean timber =
            Floors.advisor().knowledge().kinds().of("found layer", deck).stream()
                .anyMatch(
                    one -> one.called().equals("found part") && one.value().equals("an overlay"));
        String on = timber ? "timber joists" : "slab on the ground";
        Assessment bare = advise(read(floor.formatted(on, deck, thickness, "")));
        Assessment covered =
            advise(
                read(floor.formatted(on, deck, thickness, ", {kind: laminate, thickness: 8 mm}")));
        String what = thickness + " mm of " + deck;
        assertThat(covered.chosen().map(BuildUp::way))
            .as(what)
            .isEqualTo(bare.chosen().map(BuildUp::way));
        assertThat(stops(covered)).as(what).isEqualTo(stops(bare));
        assertThat(first(covered)).as(what).containsAll(first(bare));
        decks++;
      }
    }
    assertThat(decks).isGreaterThan(100);
  }

  private static Set<String> stops(Assessment floor) {
    return floor.of(StopFinding.class).stream()
        .map(one -> one.wording() + ' ' + one.verdict())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> first(Assessment floor) {
    return floor.of(Remedy.class).stream()
        .map(Remedy::wording)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void what_comes_up_comes_off_the_height() throws Exception {
    String boards = "{kind: tongue-and-groove boards, thickness: 21 mm}";
    String start = ROOM + "subfloor: {carried by: timber joists, as found: [" + boards;
    Assessment bare = advise(read(start + "]}\n"));
    Assessment carpeted = advise(read(start + ", {kind: carpet, thickness: 12 mm}]}\n"));
    double without = bare.chosen().orElseThrow().facts().number("rise");
    double with = carpeted.chosen().orElseThrow().facts().number("rise");
    assertThat(without - with).isEqualTo(12, within(1e-6));
  }

  @Test
  void the_parts_of_a_room_have_its_area_together() throws Exception {
    Random random = new Random(3);
    for (int i = 0; i < 10; i++) {
      double from = random.nextInt(10) / 10.0;
      double to = from + 0.5 + random.nextInt(20) / 10.0;
      Assessment room = advise(zoned(from, to, random.nextInt(40) - 20));
      double part = room.zones().get(0).assessment().facts().number("area");
      assertThat(part).isEqualTo((to - from) * 3, within(1e-6));
      assertThat(room.facts().number("area") + part).isEqualTo(12, within(1e-6));
    }
  }

  @Test
  void parts_end_at_one_level_or_the_step_that_is_left_is_told() throws Exception {
    for (int surface : List.of(-30, -10, -4, 0, 5, 12, 35)) {
      ZonePart part = advise(zoned(0, 1, surface)).zones().get(0);
      assertThat(part.step()).as("surface %s", surface).isEqualTo(0, within(0.05));
    }
    ZonePart deep = advise(zoned(0, 1, -80)).zones().get(0);
    assertThat(deep.step()).isLessThan(-10);
    assertThat(deep.assessment().of(Remedy.class))
        .anyMatch(one -> one.wording().equals("shape-the-step"));
  }

  @Test
  void a_small_step_over_a_limit_of_levels_changes_how_a_part_is_made_up() throws Exception {
    assertThat(FiredRules.of(advise(zoned(0, 1, -1.9)))).contains("ZONE-03");
    assertThat(FiredRules.of(advise(zoned(0, 1, -2))))
        .contains("ZONE-01")
        .doesNotContain("ZONE-03", "ZONE-13");
    assertThat(FiredRules.of(advise(zoned(0, 1, -40)))).contains("ZONE-01");
    assertThat(FiredRules.of(advise(zoned(0, 1, -40.1))))
        .contains("ZONE-13")
        .doesNotContain("ZONE-01");
    assertThat(FiredRules.of(advise(zoned(0, 1, 40.1)))).contains("ZONE-12");
    assertThat(FiredRules.of(advise(zoned(0, 1, 1.9)))).doesNotContain("ZONE-12");
    Scenario timber = Floors.read("zones-of-timber");
    double lacking = lacking(timber);
    assertThat(lacking).isPositive();
    String most = (-30 - (25 - lacking)) + " mm";
    String more = (-30.2 - (25 - lacking)) + " mm";
    assertThat(FiredRules.of(advise(Floors.change(timber, "zones[].surface", most))))
        .contains("ZONE-02");
    assertThat(FiredRules.of(advise(Floors.change(timber, "zones[].surface", more))))
        .doesNotContain("ZONE-02");
  }

  @Test
  void a_part_outside_the_room_and_one_that_covers_it_all_are_refused() {
    assertThatThrownBy(() -> zoned(3.5, 4.5, 0))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining("reaches outside the room");
    assertThatThrownBy(() -> zoned(0, 4, 0))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining("cover the whole room");
  }
}
