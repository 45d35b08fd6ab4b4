package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.DeadLoads;
import underfoot.measure.JoistCheck;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;

/** What a build-up's weight and boards do to a timber floor. */
final class StackStructure {
  private StackStructure() {}

  static List<Fact> of(Stack stack, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    if (!facts.text("base family").equals("timber")) {
      return found.list();
    }
    boolean kept = !stack.replacesDeck();
    TracedFacts basis = new TracedFacts(figures, facts);
    double before = basis.fact("dead load before");
    double added = basis.fact("dead load added");
    double gone = 0;
    String how = "dead load before + added: " + Texts.of(before, "") + " + " + Texts.of(added, "");
    if (!kept && basis.complete()) {
      gone = DeadLoads.deckLoadKnPerM2(basis, facts);
      how += " − " + Texts.of(gone, "") + " of deck taken up";
    }
    found.add("dead load after", before + added - gone, "kN/m2", how, basis);
    Facts known = Facts.over(facts).addAll(found.list());
    JoistCheck check = new JoistCheck(figures, known, "after");
    found.list().addAll(check.joists());
    List<JoistCheck.DeckLayer> layers = new ArrayList<>();
    for (StackLayer layer : stack.layers()) {
      if (!layer.kind().modulus().isEmpty() && layer.thickness().min() > 0) {
        layers.add(new JoistCheck.DeckLayer(layer.thickness().min(), layer.kind().modulus()));
      }
    }
    double load = facts.number("dead load added");
    found.list().addAll(check.deck(kept, layers, Double.isNaN(load) ? 0 : load));
    return found.list();
  }
}
