package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.Surveys;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.scenario.Scenario;

/**
 * What can be worked out once the layers of a build-up are known: its height and weight, what they
 * do to a timber floor, to heating, to screws, and what is left under the doors.
 */
public final class StackMeasures {
  private StackMeasures() {}

  /**
   * Works a build-up out.
   *
   * @param scenario the floor
   * @param surveys the levels of floors, worked out once
   * @param stack its layers
   * @param standing its place on the scale of standings, 0 being the usual way
   * @param figures where figures are looked up
   * @param facts what is held so far
   * @return measured facts about this build-up
   */
  public static List<Fact> of(
      Scenario scenario, Surveys surveys, Stack stack, int standing, Figures figures, Facts facts) {
    List<Fact> all = new ArrayList<>();
    Facts known = Facts.over(facts);
    MeasuredFacts first = new MeasuredFacts();
    heights(stack, figures, known, first);
    weights(stack, figures, known, first);
    lifts(stack, figures, known, first);
    first.add(
        "standing order",
        standing,
        "",
        "its place on the scale of standings",
        new TracedFacts(figures, known));
    take(first.list(), all, known);
    take(StackStructure.of(stack, figures, known), all, known);
    take(StackScrews.of(stack, figures, known), all, known);
    take(StackTiles.of(figures, known), all, known);
    take(StackHeat.of(stack, figures, known), all, known);
    take(StackDoors.of(scenario, surveys, stack, figures, known), all, known);
    return all;
  }

  private static void take(List<Fact> found, List<Fact> all, Facts known) {
    all.addAll(found);
    known.addAll(found);
  }

  private static void heights(Stack stack, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    List<String> terms = new ArrayList<>();
    for (StackLayer layer : stack.layers()) {
      if (layer.thickness().max() > 0) {
        LayerWorth.useThickness(layer, figures, facts, basis);
        terms.add(layer.kind().name() + " " + Texts.of(layer.thickness().mean(), "mm"));
      }
    }
    String sum = "sum of the layers' thicknesses: " + String.join(" + ", terms);
    double gone = 0;
    if (stack.replacesDeck()) {
      double old = basis.factIfHeld("deck thickness", "");
      if (old > 0) {
        gone = old;
        sum += " − " + Texts.of(old, "mm") + " of deck taken up";
      }
    }
    for (StackLayer layer : stack.layers()) {
      if (layer.kind().sunk()) {
        gone += layer.thickness().mean();
        sum += " − " + Texts.of(layer.thickness().mean(), "mm") + " let in between the joists";
      }
    }
    double takenUp = basis.factIfHeld("depth taken up", "");
    if (takenUp > 0) {
      gone += takenUp;
      sum += " − " + Texts.of(takenUp, "mm") + " of old floor taken up";
    }
    double stripped = basis.factIfHeld("old layers taken up", "");
    if (stripped > 0) {
      gone += stripped;
      sum += " − " + Texts.of(stripped, "mm") + " of old layers taken up";
    }
    LayerThickness rise = stack.rise();
    found.add("rise least", rise.min() - gone, "mm", sum + ", the least of each", basis);
    found.add("rise", rise.mean() - gone, "mm", sum, basis);
    found.add("rise most", rise.max() - gone, "mm", sum + ", the most of each", basis);
  }

  private static void weights(Stack stack, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double mass = 0;
    List<String> terms = new ArrayList<>();
    for (StackLayer layer : stack.layers()) {
      double one = LayerWorth.massKgPerM2(layer, figures);
      if (one > 0) {
        basis.use(figures.get(layer.kind().mass()));
        LayerWorth.useThickness(layer, figures, facts, basis);
        terms.add(layer.kind().name() + " " + Texts.of(one, ""));
      }
      mass += one;
    }
    TracedFacts ofUp = new TracedFacts(figures, facts);
    double up = ofUp.factIfHeld("mass taken up", "");
    String how = "mass for each millimetre × mean thickness: " + String.join(" + ", terms);
    Fact laid = found.add(up > 0 ? "mass laid" : "mass added", mass, "kg/m2", how, basis);
    if (up > 0) {
      found.add(
          "mass added",
          mass - up,
          "kg/m2",
          "what is laid less what is taken up: " + laid.text() + " − " + Texts.of(up, "kg/m2"),
          ofUp.use(laid));
    }
    TracedFacts ofLoad = new TracedFacts(figures, facts).use(laid);
    double gravity = ofLoad.figure("standard-gravity");
    found.add(
        "dead load added",
        mass * gravity / 1000,
        "kN/m2",
        "mass × g / 1000: " + Texts.of(mass, "") + " × " + Texts.of(gravity, "") + " / 1000",
        ofLoad);
  }

  private static void lifts(Stack stack, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!stack.poured() || !basis.hasFigure("leveller-lift-most")) {
      return;
    }
    double most = basis.fact("pour most");
    double lift = basis.figure("leveller-lift-most");
    found.add(
        "pour lifts",
        Math.ceil(most / lift),
        "",
        "deepest pour / most at one time, rounded up: "
            + Texts.of(most, "")
            + " / "
            + Texts.of(lift, "mm"),
        basis);
  }
}
