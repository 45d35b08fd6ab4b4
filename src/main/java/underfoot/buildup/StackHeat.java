package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.measure.Worked;
import underfoot.working.HeatSplit;

/** How the layers over floor heating hold its heat back. */
final class StackHeat {
  /** What is done where a layer brings heating. */
  private static final String LAYS_HEATING = "lay heating";

  private StackHeat() {}

  static List<Fact> of(Stack stack, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!basis.wordIfHeld("heated").equals("yes")) {
      return found.list();
    }
    List<StackLayer> above = stack.layers();
    List<StackLayer> beneath = List.of();
    for (int i = 0; i < stack.layers().size(); i++) {
      if (heats(stack.layers().get(i))) {
        above = stack.layers().subList(i + 1, stack.layers().size());
        beneath = stack.layers().subList(0, i);
      }
    }
    beneath(stack, beneath, figures, facts, found);
    List<String> terms = new ArrayList<>();
    double resistance = resistance(above, figures, facts, basis);
    for (StackLayer layer : above) {
      if (LayerWorth.resistanceM2KPerW(layer, figures) > 0) {
        terms.add(
            layer.kind().name()
                + " "
                + Texts.of(layer.thickness().mean(), "")
                + "/1000/"
                + Texts.of(figures.get(layer.kind().conductivity()).value(), ""));
      }
    }
    if (terms.isEmpty()) {
      return found.list();
    }
    Fact covering =
        found.add(
            "covering resistance",
            resistance,
            "m2K/W",
            "thickness / conductivity of each layer above the heating: "
                + String.join(" + ", terms),
            basis);
    split(covering, new TracedFacts(figures, facts), found);
    return found.list();
  }

  /** Whether heating lies in a layer: panels, a cable, or a membrane that holds one. */
  private static boolean heats(StackLayer layer) {
    return layer.kind().acts().contains(LAYS_HEATING);
  }

  /** What lacks in insulation right beneath heating that is laid, to what it should have there. */
  private static void beneath(
      Stack stack, List<StackLayer> beneath, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    if (stack.layers().stream().noneMatch(StackHeat::heats)
        || !basis.hasFigure("insulation-under-heating")) {
      return;
    }
    double resistance = resistance(beneath, figures, facts, basis);
    double enough = basis.figure("insulation-under-heating");
    found.add(
        "insulation lacking beneath the heating",
        Math.max(0, enough - resistance),
        "m2K/W",
        "what should be there less thickness / conductivity of the layers beneath the heating: "
            + Texts.of(enough, "")
            + " − "
            + Texts.of(resistance, ""),
        basis);
  }

  /** How several layers together hold heat back, m2K/W; what that rests on goes into the basis. */
  private static double resistance(
      List<StackLayer> layers, Figures figures, Facts facts, TracedFacts basis) {
    double resistance = 0;
    for (StackLayer layer : layers) {
      double one = LayerWorth.resistanceM2KPerW(layer, figures);
      if (one > 0) {
        resistance += one;
        basis.use(figures.get(layer.kind().conductivity()));
        LayerWorth.useThickness(layer, figures, facts, basis);
      }
    }
    return resistance;
  }

  private static void split(Fact covering, TracedFacts basis, MeasuredFacts found) {
    String screed = "screed-over-" + TracedFacts.inFigureName(basis.word("heating"));
    double output = basis.fact("heating output");
    String storey = TracedFacts.inFigureName(basis.word("storey"));
    String use = basis.word("use");
    if (!basis.complete()
        || !basis.hasFigure(screed)
        || !basis.hasFigure("resistance-below-" + storey)) {
      return;
    }
    basis.use(covering);
    Worked.with()
        .key("output", output)
        .key("room", basis.figureFor("heated-room-temperature", use))
        .key("below", basis.figure("temperature-below-" + storey))
        .key("covering-resistance", covering.number())
        .key("screed", basis.figure(screed))
        .key("screed-conductivity", basis.figure("screed-conductivity"))
        .key("resistance-below", basis.figure("resistance-below-" + storey))
        .run(new HeatSplit())
        .ifPresent(
            result -> {
              String how = Worked.how(result);
              found.add("heat lost below", result.value("down"), "W/m2", how, basis);
              found.add("heat up share", result.value("up-share") * 100, "%", how, basis);
            });
  }
}
