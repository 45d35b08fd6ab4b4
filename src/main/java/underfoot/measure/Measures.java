package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;

/** All that can be worked out from a scenario alone. */
public final class Measures {
  private static List<Measure> all(Surveys surveys) {
    return List.of(
        new RoomMeasure(surveys),
        new TileMeasure(),
        new LevelMeasure(surveys),
        new ClimateMeasure(),
        new ItemMeasure(),
        new StructureMeasure(),
        new MoistureMeasure(),
        new ReadinessMeasure(),
        new HeatMeasure(),
        new FreeFloorMeasure(),
        new FallMeasure());
  }

  private Measures() {}

  /**
   * Works out what is not yet held. It is asked twice: with the facts that the scenario states, and
   * again once rules have made assumptions of what it does not.
   *
   * @param scenario the floor
   * @param surveys the levels of floors, worked out once
   * @param figures where figures are looked up
   * @param facts what is held so far
   * @return measured facts that were not held before
   */
  public static List<Fact> of(Scenario scenario, Surveys surveys, Figures figures, Facts facts) {
    List<Fact> found = new ArrayList<>();
    for (Measure measure : all(surveys)) {
      for (Fact fact : measure.of(scenario, figures, facts)) {
        if (facts.find(fact.name(), fact.about()) == null) {
          facts.add(fact);
          found.add(fact);
        }
      }
    }
    return found;
  }
}
