package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** The step that is told between parts of a room is that of what is built there. */
class StepBetweenPartsTest {
  private static final int FLOORS = Integer.getInteger("stepped", 12);
  private static final long SEED = Long.getLong("seed", 17L);
  private static final double HAIR = 0.06;

  @Test
  void each_part_is_told_the_step_that_is_left_at_its_line() throws Exception {
    List<String> wrong = new ArrayList<>();
    int steps = 0;
    for (Scenario floor : floors()) {
      Assessment room = Floors.advisor().advise(floor);
      double level = room.chosen().map(one -> one.facts().number("rise")).orElse(Double.NaN);
      for (ZonePart part : room.zones()) {
        if (Double.isNaN(part.step())) {
          continue;
        }
        assertThat(part.step()).isCloseTo(part.level() - level, within(HAIR));
        Fact told = part.assessment().factsOfChosen().find("step left at the line");
        double said = told == null ? 0 : told.number();
        if (Math.abs(said - part.step()) > HAIR) {
          wrong.add(floor.name() + ", " + part.name() + ": " + said + " told, " + part.step());
        }
        steps += said == 0 ? 0 : 1;
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(steps).as("steps looked at").isPositive();
  }

  private static List<Scenario> floors() throws Exception {
    RandomFloors random = new RandomFloors(Floors.advisor().knowledge().facts(), SEED);
    List<Scenario> floors = new ArrayList<>();
    while (floors.size() < FLOORS) {
      String text = random.nextUnusual();
      try {
        Scenario made = Floors.reader().read("made up", text.getBytes(StandardCharsets.UTF_8));
        if (!made.zones().isEmpty()) {
          floors.add(made);
        }
      } catch (ScenarioFaults contradiction) {
        // another, then
      }
    }
    return floors;
  }
}
