package underfoot.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.Doorway;
import underfoot.measure.LevelSurvey;
import underfoot.measure.Measured;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.PourSurface;
import underfoot.scenario.Scenario;

/** The floor before a leaf that may not be cut, against a profile worked out by hand. */
class WedgeTest {
  private static final Figures FIGURES = Measured.knowledge().figures();

  private static Fact fact(String name, String about, double number) {
    return Fact.measured(name, about, number + " mm", number, "given", List.of());
  }

  private static Facts wedge(
      double gapLeft, Facts facts, Optional<Doorway> doorway, PourSurface pour) {
    facts.add(fact("gap left", "d", gapLeft));
    facts.add(fact("tile bed depth", "", 4));
    facts.add(fact("pour most", "", 8));
    MeasuredFacts found = new MeasuredFacts();
    new Wedge("d", FIGURES, facts, found).work(doorway, Optional.ofNullable(pour));
    return new Facts().addAll(found.list());
  }

  private static Facts door() {
    Facts facts = new Facts();
    facts.add(fact("door width", "d", 800));
    return facts;
  }

  @Test
  void without_readings_the_wedge_is_reckoned_from_the_deepest_pour() {
    double clearance = FIGURES.get("door-clearance").number();
    double fall = FIGURES.get("wedge-fall-most").value();
    Facts found = wedge(clearance - 3, door(), Optional.empty(), null);
    assertThat(found.number("drop before the leaf", "d")).isEqualTo(3);
    assertThat(found.number("zero line", "d")).isEqualTo(800);
    assertThat(found.number("stop line", "d")).isCloseTo(800 + 3 / fall * 1000, within(1e-9));
    assertThat(found.number("wedge most", "d")).isEqualTo(4 + 8);
  }

  @Test
  void a_leaf_that_clears_the_floor_needs_no_wedge() {
    double clearance = FIGURES.get("door-clearance").number();
    assertThat(wedge(clearance, door(), Optional.empty(), null).all()).isEmpty();
  }

  @Test
  void a_door_of_unknown_width_has_no_lines_but_still_a_drop() {
    Facts found = wedge(0, new Facts(), Optional.empty(), null);
    assertThat(found.number("drop before the leaf", "d"))
        .isEqualTo(FIGURES.get("door-clearance").number());
    assertThat(found.find("stop line", "d")).isNull();
  }

  @Test
  void with_readings_the_bed_at_the_stop_line_is_as_deep_as_the_pour_there() {
    // The floor falls from the door into the room by 2 mm a metre; the pour is level.
    Scenario scenario =
        Measured.scenario(
            "room: {use: living area, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]],"
                + " doors: [{name: d, wall: 0, from: 1 m, width: 800 mm, opens: into the room}]}",
            "levels: {wanted: level, readings: [[0 m, 0 m, 0 mm], [4 m, 0 m, 0 mm], [4 m, 3 m, -6"
                + " mm], [0 m, 3 m, -6 mm]]}");
    LevelSurvey survey = LevelSurvey.of(scenario).orElseThrow();
    Facts facts = Measured.stated(scenario);
    PourSurface pour = survey.surface(true, 3).orElseThrow();
    Optional<Doorway> doorway = Doorway.of(scenario, survey, facts, "d");
    double clearance = FIGURES.get("door-clearance").number();
    double fall = FIGURES.get("wedge-fall-most").value();
    Facts found = wedge(clearance - 2, facts, doorway, pour);
    double stop = 0.8 + 2 / fall;
    assertThat(found.number("stop line", "d")).isCloseTo(stop * 1000, within(1e-6));
    assertThat(found.number("wedge most", "d")).isCloseTo(4 + 3 + 2 * stop, within(1e-6));
  }

  @Test
  void a_chimney_breast_before_the_door_takes_the_room_away() {
    Scenario scenario =
        Measured.scenario(
            "room: {use: living area, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [2 m, 3 m], [2"
                + " m, 1.2 m], [1 m, 1.2 m], [1 m, 3 m], [0 m, 3 m]], doors: [{name: d, wall: 0,"
                + " from: 1.1 m, width: 800 mm}]}",
            "levels: {readings: [[0 m, 0 m, 0 mm], [4 m, 0 m, 1 mm], [4 m, 3 m, 0 mm], [0 m, 3 m, 0"
                + " mm]]}");
    LevelSurvey survey = LevelSurvey.of(scenario).orElseThrow();
    Doorway doorway = Doorway.of(scenario, survey, Measured.stated(scenario), "d").orElseThrow();
    assertThat(doorway.way().room()).isCloseTo(1200, within(1e-6));
  }
}
