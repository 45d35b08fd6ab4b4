package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.working.DeckDeflection;
import underfoot.working.DeckDeflection.Layer;

/**
 * How thick a deck must be, by itself or with plywood over it, to bend no more than tiles stand.
 */
final class DeckThickness {
  private static final int MOST = 60;

  private DeckThickness() {}

  /**
   * Works it out for the centres there are.
   *
   * @param load the load on the deck, kN/m2
   */
  static List<Fact> of(Figures figures, Facts facts, String when, double load) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    double centres = basis.fact("joist centres");
    double limit = basis.fact("bending the tile stands");
    String material = DeadLoads.deckMaterial(basis, facts);
    if (!basis.complete() || material.isEmpty()) {
      return found.list();
    }
    boolean wide = centres > basis.figure("usual-centres");
    double table =
        basis.factIfHeld(wide ? "least deck thickness on wide joists" : "least deck thickness", "");
    String how =
        "the least whole millimetre that bends no more than span/"
            + Texts.of(limit, "")
            + " under "
            + Texts.of(load, "kN/m2")
            + " on joists "
            + Texts.of(centres, "mm")
            + " apart";
    int alone = (int) Math.ceil(Double.isNaN(table) ? 1 : table);
    while (alone < MOST
        && ratio(List.of(layer(basis, figures, material, alone)), centres, load) < limit) {
      alone++;
    }
    if (alone < MOST) {
      found.add(
          "deck thickness that would do " + when,
          alone,
          "mm",
          how + ", and is no less than the table of decks asks",
          basis);
    }
    double thickness = basis.factIfHeld("deck thickness", "");
    if (Double.isNaN(thickness)) {
      return found.list();
    }
    Layer old = layer(basis, figures, material, thickness);
    int over = (int) Math.ceil(basis.figure("ply-overlay-least"));
    double plywood = basis.figure("modulus-of-plywood");
    while (over < MOST && ratio(List.of(old, new Layer(over, plywood)), centres, load) < limit) {
      over++;
    }
    if (over < MOST) {
      found.add(
          "plywood over it that would do " + when, over, "mm", how + ", with the deck", basis);
    }
    return found.list();
  }

  private static double ratio(List<Layer> layers, double centres, double load) {
    return DeckDeflection.of(layers, centres, load).ratio();
  }

  private static Layer layer(
      TracedFacts basis, Figures figures, String material, double thickness) {
    return new Layer(thickness, modulus(basis, figures, material, thickness));
  }

  /**
   * The modulus of a deck. Where it goes by thickness, figures are named after the thickness beyond
   * which they hold, such as {@code modulus-of-chipboard-over-13-mm}.
   */
  static double modulus(TracedFacts basis, Figures figures, String material, double thickness) {
    String general = "modulus-of-" + material;
    String best = general;
    double bestOver = 0;
    String banded = general + "-over-";
    for (Figure figure : figures.startingWith(banded)) {
      double over =
          Double.parseDouble(figure.name().substring(banded.length()).replaceAll("-mm$", ""));
      if (thickness > over && over > bestOver) {
        bestOver = over;
        best = figure.name();
      }
    }
    return basis.figure(best);
  }
}
