package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
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

  private static Facts facts(String drain) throws Exception {
    Scenario scenario =
        Floors.read("slab")
            .with("room.use", "", "wet room")
            .with("room.drain place", "", drain)
            .with("room.outline", "", "[[0 m, 0 m], [1.5 m, 0 m], [1.5 m, 1.2 m], [0 m, 1.2 m]]");
    return Floors.advisor().advise(scenario).facts();
  }
}
