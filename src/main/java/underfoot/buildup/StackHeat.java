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
  private StackHeat() {}

  static List<Fact> of(Stack stack, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!basis.wordIfHeld("heated").equals("yes")) {
      return found.list();
    }
    int from = Integer.MIN_VALUE;
    for (StackLayer layer : stack.layers()) {
      if (layer.kind().family().equals("heating")) {
        from = layer.kind().place();
      }
    }
    double resistance = 0;
    List<String> terms = new ArrayList<>();
    for (StackLayer layer : stack.layers()) {
      double one = LayerWorth.resistanceM2KPerW(layer, figures);
      if (layer.kind().place() > from && one > 0) {
        resistance += one;
        basis.use(figures.get(layer.kind().conductivity()));
        LayerWorth.useThickness(layer, figures, facts, basis);
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
