package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.working.ScrewLength;

/** The longest screw through boards over a timber deck that stays inside that deck. */
final class StackScrews {
  private static final Set<String> SCREWED_INTO = Set.of("timber", "floating");

  private StackScrews() {}

  static List<Fact> of(Stack stack, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!SCREWED_INTO.contains(basis.wordIfHeld("base family"))) {
      return found.list();
    }
    int boarded = 0;
    for (int i = 0; i < stack.layers().size(); i++) {
      if (stack.layers().get(i).isBoard() && !stack.layers().get(i).replacesDeck()) {
        boarded = i + 1;
      }
    }
    if (boarded == 0) {
      return found.list();
    }
    double overlay = 0;
    double deck = Double.NaN;
    List<String> terms = new ArrayList<>();
    for (StackLayer layer : stack.layers()) {
      if (layer.replacesDeck()) {
        deck = layer.thickness().min();
        LayerWorth.useThickness(layer, figures, facts, basis);
      } else if (stack.layers().indexOf(layer) < boarded && layer.thickness().min() > 0) {
        overlay += layer.thickness().min();
        LayerWorth.useThickness(layer, figures, facts, basis);
        terms.add(layer.kind().name() + " " + Texts.of(layer.thickness().min(), "mm"));
      }
    }
    Fact thickness =
        found.add(
            "overlay thickness",
            overlay,
            "mm",
            "what a screw passes above the deck: " + String.join(" + ", terms),
            basis);
    TracedFacts ofScrew = new TracedFacts(figures, facts).use(thickness);
    double depth = Double.isNaN(deck) ? ofScrew.fact("deck thickness") : deck;
    if (!ofScrew.complete()) {
      return found.list();
    }
    screw(overlay, depth, ofScrew, figures, found);
    return found.list();
  }

  private static void screw(
      double overlay, double deck, TracedFacts basis, Figures figures, MeasuredFacts found) {
    double washer = basis.figure("board-screw-washer");
    double clear = basis.figure("screw-tip-clearance");
    List<Double> stock = new ArrayList<>();
    for (Figure one : figures.startingWith("stocked-screw-")) {
      stock.add(one.number());
    }
    if (!(overlay + deck + washer > clear)) {
      return;
    }
    ScrewLength.Values values = ScrewLength.of(overlay, deck, washer, clear, stock);
    String how =
        "overlay + deck + washer − clearance: "
            + Texts.of(overlay, "")
            + " + "
            + Texts.of(deck, "")
            + " + "
            + Texts.of(washer, "")
            + " − "
            + Texts.of(clear, "mm");
    found.add("screw longest", values.longestMm(), "mm", how, basis);
    if (values.chooseMm().isEmpty()) {
      return;
    }
    double choose = values.chooseMm().getAsDouble();
    basis.use(figures.get("stocked-screw-" + Math.round(choose)));
    found.add(
        "board screw",
        choose,
        "mm",
        "the longest stocked length of at most " + Texts.of(values.longestMm(), "mm"),
        basis);
    found.add(
        "board screw grip",
        values.gripMm(),
        "mm",
        "length − washer − overlay: "
            + Texts.of(choose, "")
            + " − "
            + Texts.of(washer, "")
            + " − "
            + Texts.of(overlay, "mm"),
        basis);
  }
}
