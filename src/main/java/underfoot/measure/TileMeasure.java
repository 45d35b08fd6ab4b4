package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;

/** The tile's longest edge, shortest edge, face area and slenderness. */
final class TileMeasure implements Measure {
  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    Fact length = facts.find("tile length");
    Fact width = facts.find("tile width");
    List<Fact> found = new ArrayList<>();
    if (length == null || width == null) {
      return found;
    }
    double longest = Math.max(length.number(), width.number());
    double shortest = Math.min(length.number(), width.number());
    List<Object> uses = List.of(length, width);
    String sides = length.text() + " × " + width.text();
    found.add(
        Fact.measured(
            "longest edge", "", Texts.of(longest, "mm"), longest, "the longer of " + sides, uses));
    found.add(
        Fact.measured(
            "shortest edge",
            "",
            Texts.of(shortest, "mm"),
            shortest,
            "the shorter of " + sides,
            uses));
    double area = longest * shortest / 100;
    found.add(Fact.measured("face area", "", Texts.of(area, "cm2"), area, sides, uses));
    double ratio = longest / shortest;
    found.add(
        Fact.measured(
            "slenderness", "", Texts.of(ratio, "to 1"), ratio, "longer side / shorter side", uses));
    return found;
  }
}
