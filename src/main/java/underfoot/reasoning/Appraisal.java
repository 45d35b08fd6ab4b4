package underfoot.reasoning;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;
import underfoot.measure.Surveys;
import underfoot.scenario.Scenario;

/**
 * Works out, for a build-up that has been laid, what it is also judged and ranked by: what it costs
 * and how long it takes. It is handed to the advisor from above, since plans build on reasoning.
 */
public interface Appraisal {
  /**
   * Measured facts about one build-up.
   *
   * @param parts the other parts of the room, which are built, bought and paid for with it; mostly
   *     none
   */
  List<Fact> of(Scenario scenario, Knowledge knowledge, BuildUp buildUp, List<Assessment> parts);

  /** Measured facts about all build-ups together, which decide by what they may be ranked. */
  default List<Fact> ofAll(List<BuildUp> buildUps) {
    return List.of();
  }

  /** The levels of floors, which it may look at too: worked out once for both. */
  default Surveys surveys() {
    return new Surveys();
  }

  /** Works nothing out. */
  static Appraisal none() {
    return (scenario, knowledge, buildUp, parts) -> List.of();
  }
}
