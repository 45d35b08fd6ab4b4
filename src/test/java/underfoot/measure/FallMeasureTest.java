package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/** The falls that the advice tells are those of the reference tables. */
class FallMeasureTest {
  @Test
  void a_corner_drain_in_1_2_by_1_5_m_at_1_to_80_falls_24_mm() throws Exception {
    // Reference row W10 (derived): farthest run 1.9209 m, fall 24.01 mm.
    assertThat(facts("corner").number("fall height")).isCloseTo(24.01, within(0.01));
  }

  @Test
  void a_channel_along_the_1_2_m_wall_falls_18_75_mm() throws Exception {
    // Reference row W10 (derived): linear drain on the 1.2 m wall.
    assertThat(facts("short edge").number("fall height")).isCloseTo(18.75, within(0.01));
  }

  @Test
  void the_mortar_of_the_falls_is_as_thick_on_average_as_its_planes_make_it() throws Exception {
    double least = Floors.advisor().knowledge().figures().get("falls-mortar-least").number();
    // To a channel one plane, half its fall on average; to a point a pyramid upside down: a third
    // of it is missing, by the volume of a pyramid.
    for (String drain : List.of("corner", "centre", "long edge", "short edge")) {
      Facts found = facts(drain);
      double fall = found.number("fall height");
      double share = drain.endsWith("edge") ? 1.0 / 2 : 1 - 1.0 / 3;
      assertThat(found.number("falls least")).isEqualTo(least);
      assertThat(found.number("falls mean")).isCloseTo(least + share * fall, within(1e-9));
      assertThat(found.number("falls most")).isCloseTo(least + fall, within(1e-9));
    }
  }

  @Test
  void falls_to_be_formed_enter_the_rise_the_weight_and_the_gap_at_the_door() throws Exception {
    Scenario wet = Floors.read("slab-with-door").with("room.use", "", "wet room");
    BuildUp formed = way(wet.with("room.falls formed", "", "yes"));
    BuildUp forming = way(wet.with("room.falls formed", "", "no"));
    Facts falls = forming.facts();
    double least = falls.number("falls least");
    double mean = falls.number("falls mean");
    double most = falls.number("falls most");
    assertThat(falls.number("rise least") - formed.facts().number("rise least"))
        .isCloseTo(least, within(1e-9));
    assertThat(falls.number("rise") - formed.facts().number("rise")).isCloseTo(mean, within(1e-9));
    assertThat(falls.number("rise most") - formed.facts().number("rise most"))
        .isCloseTo(most, within(1e-9));
    double kgPerMm = Floors.advisor().knowledge().figures().get("mass-of-falls-mortar").value();
    assertThat(falls.number("mass added") - formed.facts().number("mass added"))
        .isCloseTo(mean * kgPerMm, within(1e-6));
    assertThat(
            formed.facts().number("gap left", "hall door") - falls.number("gap left", "hall door"))
        .isCloseTo(most, within(1e-9));
    double beyond = falls.number("floor beyond", "hall door");
    assertThat(falls.number("step at the door", "hall door"))
        .isCloseTo(falls.number("rise most") - beyond, within(1e-9));
  }

  private static BuildUp way(Scenario scenario) {
    return Floors.advisor().advise(scenario).buildUps().stream()
        .filter(one -> one.way().equals("straight onto the base"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void where_a_wheelchair_goes_a_corner_drain_is_reckoned_at_1_to_60() throws Exception {
    // The same run of 1.9209 m, and the bounds of accessible showers.
    Facts found = facts("corner", "yes");
    assertThat(found.number("fall height")).isCloseTo(32.01, within(0.01));
    assertThat(found.number("fall allowed")).isEqualTo(50);
    assertThat(facts("corner").number("fall allowed")).isEqualTo(35);
  }

  private static Facts facts(String drain) throws Exception {
    return facts(drain, "no");
  }

  private static Facts facts(String drain, String accessible) throws Exception {
    Scenario scenario =
        Floors.read("slab")
            .with("room.use", "", "wet room")
            .with("room.drain place", "", drain)
            .with("room.accessible", "", accessible)
            .with("room.outline", "", "[[0 m, 0 m], [1.5 m, 0 m], [1.5 m, 1.2 m], [0 m, 1.2 m]]");
    return Floors.advisor().advise(scenario).facts();
  }
}
