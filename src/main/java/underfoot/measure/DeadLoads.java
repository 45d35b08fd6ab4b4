package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** What a timber floor spans, and what it carries before a build-up. */
public final class DeadLoads {
  private DeadLoads() {}

  /**
   * Works out the span, the loads before a build-up, and what joists do under the imposed load
   * alone, which no build-up changes.
   */
  static List<Fact> of(Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts ofSpan = new TracedFacts(figures, facts);
    double clear = ofSpan.fact("joist span");
    double bearing = ofSpan.fact("joist bearing");
    found.add(
        "effective span",
        clear + bearing,
        "mm",
        "clear span + bearing: " + Texts.of(clear, "mm") + " + " + Texts.of(bearing, "mm"),
        ofSpan);
    if (facts.find("joist depth") != null) {
      TracedFacts ofUse = new TracedFacts(figures, facts);
      double imposed = ofUse.figureFor("imposed-load", ofUse.word("use"));
      found.add("imposed load", imposed, "kN/m2", "by the use of the room", ofUse);
    }
    deadLoad(figures, facts, found);
    return found.list();
  }

  private static void deadLoad(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    String deck = deckMaterial(basis, facts);
    double gravity = basis.figure("standard-gravity");
    double thickness = basis.fact("deck thickness");
    double breadth = basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    String grade = gradeStem(basis);
    if (!basis.complete() || deck.isEmpty()) {
      return;
    }
    double deckMass = basis.figure("mass-of-" + deck) * thickness;
    double density = basis.figure(grade + "mean-density");
    double joistMass = density * 1000 * breadth / 1000 * depth / 1000 / (centres / 1000);
    double ceiling = basis.figure("ceiling-dead-load");
    double held = basis.factIfHeld("mass left on the deck", "");
    double left = Double.isNaN(held) ? 0 : held;
    double load = (deckMass + left + joistMass) * gravity / 1000 + ceiling;
    found.add(
        "dead load before",
        load,
        "kN/m2",
        "(deck + joists) × g / 1000 + ceiling: ("
            + Texts.of(deckMass + left, "")
            + " + "
            + Texts.of(joistMass, "")
            + ") kg/m2 × "
            + Texts.of(gravity, "")
            + " / 1000 + "
            + Texts.of(ceiling, ""),
        basis);
  }

  /** The deck as the names of figures have it; empty where it is no timber deck. */
  static String deckMaterial(TracedFacts basis, Facts facts) {
    for (String name : List.of("base", "base beneath")) {
      Fact fact = facts.find(name);
      if (fact != null && basis.hasFigure("mass-of-" + TracedFacts.inFigureName(fact.text()))) {
        basis.use(fact);
        return TracedFacts.inFigureName(fact.text());
      }
    }
    return "";
  }

  /** Load of the old deck, kN/m2; NaN where its material or thickness is not known. */
  public static double deckLoadKnPerM2(TracedFacts basis, Facts facts) {
    String deck = deckMaterial(basis, facts);
    double thickness = basis.fact("deck thickness");
    return deck.isEmpty()
        ? Double.NaN
        : basis.figure("mass-of-" + deck) * thickness * basis.figure("standard-gravity") / 1000;
  }

  /** How the names of the figures for the joists' timber begin. */
  static String gradeStem(TracedFacts basis) {
    return "timber-" + TracedFacts.inFigureName(basis.word("joist grade")) + "-";
  }
}
