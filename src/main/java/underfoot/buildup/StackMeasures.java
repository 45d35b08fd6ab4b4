package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.measure.Texts;
import underfoot.scenario.Scenario;

/**
 * What can be worked out once the layers of a build-up are known: its height, its weight, and what
 * it leaves under the doors.
 */
public final class StackMeasures {
  private StackMeasures() {}

  /**
   * Works a build-up out.
   *
   * @param scenario the floor
   * @param stack its layers
   * @param standing its place on the scale of standings, 0 being the usual way
   * @param figures where figures are looked up
   * @param facts what is held so far
   * @return measured facts about this build-up
   */
  public static List<Fact> of(
      Scenario scenario, Stack stack, int standing, Figures figures, Facts facts) {
    List<Fact> found = new ArrayList<>();
    LayerThickness rise = stack.rise();
    String sum = "sum of the layers' thicknesses";
    found.add(length("rise least", rise.min(), sum));
    found.add(length("rise", rise.mean(), sum));
    found.add(length("rise most", rise.max(), sum));
    double mass = stack.mass(figures);
    Figure gravity = figures.get("standard-gravity");
    found.add(
        Fact.measured(
            "mass added",
            "",
            Texts.of(mass, "kg/m2"),
            mass,
            "each layer's mass for each millimetre times its mean thickness",
            List.of()));
    double load = mass * gravity.value() / 1000;
    found.add(
        Fact.measured(
            "dead load added",
            "",
            Texts.of(load, "kN/m2"),
            load,
            "mass × g / 1000",
            List.of(gravity)));
    found.add(
        Fact.measured(
            "standing order",
            "",
            Integer.toString(standing),
            standing,
            "its place on the scale of standings",
            List.of()));
    for (String door : facts.abouts("door")) {
      Fact gap = facts.find("gap under leaf", door);
      if (gap != null && gap.hasNumber()) {
        double left = gap.number() - rise.max();
        found.add(
            Fact.measured(
                "gap left",
                door,
                Texts.of(left, "mm"),
                left,
                gap.text() + " − " + Texts.of(rise.max(), "mm") + " rise at the most",
                List.of(gap)));
      }
      Fact beyond = facts.find("floor beyond", door);
      if (beyond != null && beyond.hasNumber()) {
        double step = rise.mean() - beyond.number();
        found.add(
            Fact.measured(
                "step at the door",
                door,
                Texts.of(Math.abs(step), "mm"),
                Math.abs(step),
                Texts.of(rise.mean(), "mm") + " rise against " + beyond.text() + " beyond",
                List.of(beyond)));
      }
    }
    return found;
  }

  private static Fact length(String name, double mm, String how) {
    return Fact.measured(name, "", Texts.of(mm, "mm"), mm, how, List.of());
  }
}
