package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.working.DeckPointLoad;
import underfoot.working.DeckPointLoad.Strip;

/** How far a deck dips between joists under a load on one spot, such as a foot or a castor. */
final class DeckSpot {
  private final Figures figures;
  private final Facts facts;
  private final String when;

  DeckSpot(Figures figures, Facts facts, String when) {
    this.figures = figures;
    this.facts = facts;
    this.when = when;
  }

  /** Works it out for the load that tiles are judged under, and for that of the building code. */
  List<Fact> of(boolean kept, List<JoistCheck.DeckLayer> layers) {
    MeasuredFacts found = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    double centres = basis.fact("joist centres");
    List<Strip> strips = new ArrayList<>();
    if (kept) {
      String material = DeadLoads.deckMaterial(basis, facts);
      double thickness = basis.fact("deck thickness");
      if (material.isEmpty() || !basis.complete()) {
        return found.list();
      }
      strips.add(
          new Strip(
              thickness,
              DeckThickness.modulus(basis, figures, material, thickness),
              width(basis, material, centres)));
    }
    for (JoistCheck.DeckLayer layer : layers) {
      String material = layer.modulusFigure().replace("modulus-of-", "");
      strips.add(
          new Strip(
              layer.thicknessMm(),
              basis.figure(layer.modulusFigure()),
              width(basis, material, centres)));
    }
    double continuity = basis.figure("deck-continuity");
    double judged = basis.figure("deck-tile-point-load");
    double dip = DeckPointLoad.of(strips, centres, judged, continuity);
    List<String> terms = new ArrayList<>();
    for (Strip strip : strips) {
      terms.add(
          Texts.of(strip.thicknessMm(), "mm")
              + " thick, "
              + Texts.of(strip.modulus(), "N/mm2")
              + ", "
              + Texts.whole(strip.widthMm())
              + " wide");
    }
    String how =
        Texts.of(continuity, "")
            + " × P L^3/(48 E I) of the strip that bends with the load: "
            + String.join("; ", terms);
    found.addAs(
        "deck point ratio " + when,
        "",
        Long.toString((long) Math.floor(centres / dip)),
        centres / dip,
        how + "; P " + Texts.of(judged, "kN"),
        basis);
    double code = basis.figure("concentrated-floor-load");
    found.add(
        "deck dip under one spot " + when,
        dip * code / judged,
        "mm",
        how + "; P " + Texts.of(code, "kN"),
        basis);
    return found.list();
  }

  /** The width of a layer that bends with the load: boards by number, sheets by their stiffness. */
  private double width(TracedFacts basis, String material, double centres) {
    String boards = "deck-boards-" + material;
    if (figures.has(boards)) {
      double width = basis.factIfHeld("board width", "");
      double one = Double.isNaN(width) ? basis.figure("assumed-board-width") : width;
      return basis.figure(boards) * one;
    }
    String across = "deck-across-" + material;
    return DeckPointLoad.sheetWidth(centres, figures.has(across) ? basis.figure(across) : 1);
  }
}
