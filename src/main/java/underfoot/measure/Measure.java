package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;

/** Works out facts on one subject. */
interface Measure {
  /**
   * Works out what it can from the facts held; what it lacks facts for is left out.
   *
   * @param scenario the floor
   * @param figures where figures are looked up
   * @param facts what is held so far
   */
  List<Fact> of(Scenario scenario, Figures figures, Facts facts);
}
