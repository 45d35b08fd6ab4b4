package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.working.DeckDeflection;
import underfoot.working.FloorFrequency;
import underfoot.working.JoistDeflection;
import underfoot.working.JoistSpan;
import underfoot.working.LongTermDeflection;
import underfoot.working.Result;

/**
 * A timber floor's joists and the deck between them, under what they carry now and under a build-up
 * besides. It is a screen: bare joists, simply supported, every layer loose on the next.
 */
public final class JoistCheck {
  private final Figures figures;
  private final Facts facts;
  private final String when;
  private final MeasuredFacts found = new MeasuredFacts();

  /**
   * Prepares a check.
   *
   * @param figures where figures are looked up
   * @param facts what is held; with {@code dead load after} if a build-up is known
   * @param when {@code before} or {@code after}: which dead load counts, and the end of the names
   */
  public JoistCheck(Figures figures, Facts facts, String when) {
    this.figures = figures;
    this.facts = facts;
    this.when = when;
  }

  /** Works out deflection, strength and frequency under the dead load before or after. */
  public List<Fact> joists() {
    if (facts.find("effective span") == null || facts.find("joist grade") == null) {
      return found.list();
    }
    imposed();
    Fact total = total();
    share(total, "joist deflection share");
    found.list().addAll(ItemsOnJoists.deflection(figures, facts, when, total));
    doubled();
    reach();
    inTime();
    found.list().addAll(JoistStrength.of(figures, facts, when));
    frequency();
    return found.list();
  }

  /** Under the imposed load alone. */
  private void imposed() {
    TracedFacts basis = new TracedFacts(figures, facts);
    double load = basis.fact("imposed load");
    Optional<Result> result = deflection(basis, load, 1);
    if (result.isEmpty() || when.equals("after")) {
      return;
    }
    String how = "imposed load alone; " + Worked.how(result.get());
    found.add("joist imposed deflection", result.get().value("deflection"), "mm", how, basis);
    ratio("joist imposed ratio", result.get().value("ratio"), how, basis);
  }

  /** Under dead and imposed load together. */
  private Fact total() {
    TracedFacts basis = new TracedFacts(figures, facts);
    double dead = basis.fact("dead load " + when);
    double load = basis.fact("imposed load");
    Optional<Result> result = deflection(basis, dead + load, 1);
    if (result.isEmpty()) {
      return null;
    }
    String how =
        "dead + imposed load: "
            + Texts.of(dead, "")
            + " + "
            + Texts.of(load, "kN/m2")
            + "; "
            + Worked.how(result.get());
    ratio("joist ratio " + when, result.get().value("ratio"), how, basis);
    return found.add(
        "joist deflection " + when, result.get().value("deflection"), "mm", how, basis);
  }

  private void ratio(String name, double ratio, String how, TracedFacts basis) {
    found.addAs(name, "", whole(ratio), ratio, how, basis);
  }

  /** The n of span/n, cut to whole numbers so that what just misses a limit does not look met. */
  private static String whole(double ratio) {
    return Long.toString((long) Math.floor(ratio));
  }

  private Optional<Result> deflection(TracedFacts basis, double load, int joists) {
    String grade = DeadLoads.gradeStem(basis);
    double breadth = joists * basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double span = basis.fact("effective span");
    if (!basis.complete()) {
      return Optional.empty();
    }
    return joist(basis, grade, breadth, depth, centres, load)
        .key("span", span)
        .run(new JoistDeflection(List.of()));
  }

  /** A joist and its load, as each working of how it bends asks for them. */
  private static Worked joist(
      TracedFacts basis, String grade, double breadth, double depth, double centres, double load) {
    return Worked.with()
        .key("breadth", breadth)
        .key("depth", depth)
        .key("modulus", basis.figure(grade + "modulus"))
        .key("shear-modulus", basis.figure(grade + "shear-modulus"))
        .key("centres", centres)
        .key("load", load);
  }

  /** The deflection against the structural limit: a share of the span, and a cap. */
  private void share(Fact total, String name) {
    if (total != null) {
      found.list().addAll(BuildingLimit.share(figures, facts, when, total, name));
    }
  }

  /** What a second joist beside each, or one between each two, would bring. */
  private void doubled() {
    TracedFacts basis = new TracedFacts(figures, facts);
    double dead = basis.fact("dead load " + when);
    double load = basis.fact("imposed load");
    deflection(basis, dead + load, 2)
        .ifPresent(
            result ->
                ratio(
                    "joist ratio if doubled " + when,
                    result.value("ratio"),
                    "a second joist of the same size and class beside each, or one midway between"
                        + " each two; "
                        + Worked.how(result),
                    basis));
  }

  /** How far joists like these reach before they bend more than a tile stands. */
  private void reach() {
    for (String tile : List.of("ceramic", "stone")) {
      reach("clear span for " + tile + " " + when, tile, 1);
      reach("clear span for " + tile + " if doubled " + when, tile, 2);
    }
  }

  private void reach(String name, String tile, int joists) {
    TracedFacts basis = new TracedFacts(figures, facts);
    String grade = DeadLoads.gradeStem(basis);
    double breadth = joists * basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double bearing = basis.fact("joist bearing");
    double load = basis.fact("dead load " + when) + basis.fact("imposed load");
    if (!basis.complete()) {
      return;
    }
    joist(basis, grade, breadth, depth, centres, load)
        .key("limit", basis.figure("tile-ratio-" + tile))
        .run(new JoistSpan(List.of()))
        .ifPresent(
            result -> {
              double clear = result.value("span") * 1000 - bearing;
              found.addAs(
                  name,
                  "",
                  Texts.metres(clear),
                  clear,
                  Worked.how(result) + "; less the bearing of " + Texts.of(bearing, "mm"),
                  basis);
            });
  }

  /** What the joists come to bend in the course of years. */
  private void inTime() {
    TracedFacts basis = new TracedFacts(figures, facts);
    double dead = basis.fact("dead load " + when);
    double live = basis.fact("imposed load");
    Optional<Result> permanent = deflection(basis, dead, 1);
    Optional<Result> passing = deflection(basis, live, 1);
    if (permanent.isEmpty() || passing.isEmpty()) {
      return;
    }
    double creep = basis.figure("timber-creep-factor");
    double share = basis.figure("imposed-load-always-there");
    double atOnce = permanent.get().value("deflection");
    double underUse = passing.get().value("deflection");
    found.add(
        "joist deflection in time " + when,
        LongTermDeflection.of(atOnce, underUse, creep, share),
        "mm",
        "dead part × (1 + creep) + imposed part × (1 + share × creep): "
            + Texts.of(atOnce, "")
            + " × (1 + "
            + Texts.of(creep, "")
            + ") + "
            + Texts.of(underUse, "")
            + " × (1 + "
            + Texts.of(share, "")
            + " × "
            + Texts.of(creep, "")
            + ")",
        basis);
  }

  private void frequency() {
    TracedFacts basis = new TracedFacts(figures, facts);
    String grade = DeadLoads.gradeStem(basis);
    double dead = basis.fact("dead load " + when);
    double span = basis.fact("effective span");
    double centres = basis.fact("joist centres");
    double gravity = basis.figure("standard-gravity");
    Optional<Result> joist = deflection(basis, 1, 1);
    if (joist.isEmpty()) {
      return;
    }
    double modulus = basis.figure(grade + "modulus");
    double stiffness = modulus * joist.get().value("second-moment") / centres / 1000;
    Worked.with()
        .key("span", span)
        .key("stiffness", stiffness)
        .key("mass", dead * 1000 / gravity)
        .run(new FloorFrequency(basis.figure("floor-frequency-simple-check")))
        .ifPresent(
            result ->
                found.add(
                    when.equals("after") ? "floor frequency" : "floor frequency before",
                    result.value("frequency"),
                    "Hz",
                    "EI of the joists for each metre of width, mass of the dead load; "
                        + Worked.how(result),
                    basis));
  }

  /**
   * A layer that stiffens the deck between joists.
   *
   * @param thicknessMm its least thickness, mm
   * @param modulusFigure the name of the figure for its modulus
   */
  public record DeckLayer(double thicknessMm, String modulusFigure) {}

  /**
   * Works out how far the deck bends between joists.
   *
   * @param kept whether the old deck stays
   * @param layers layers laid loose upon it, or in its place
   * @param addedKnPerM2 dead load of the build-up, kN/m2
   */
  public List<Fact> deck(boolean kept, List<DeckLayer> layers, double addedKnPerM2) {
    MeasuredFacts deck = new MeasuredFacts();
    TracedFacts basis = new TracedFacts(figures, facts);
    double centres = basis.fact("joist centres");
    double load = basis.figure("deck-check-load") + addedKnPerM2;
    List<Double> thicknesses = new ArrayList<>();
    List<Double> moduli = new ArrayList<>();
    if (kept) {
      double thickness = basis.fact("deck thickness");
      String material = DeadLoads.deckMaterial(basis, facts);
      if (!basis.complete() || material.isEmpty()) {
        return deck.list();
      }
      thicknesses.add(thickness);
      moduli.add(DeckThickness.modulus(basis, figures, material, thickness));
    }
    for (DeckLayer layer : layers) {
      thicknesses.add(layer.thicknessMm());
      moduli.add(basis.figure(layer.modulusFigure()));
    }
    if (addedKnPerM2 > 0) {
      basis.fact("dead load added");
    }
    if (thicknesses.isEmpty() || !basis.complete()) {
      return deck.list();
    }
    deck.list().addAll(new DeckSpot(figures, facts, when).of(kept, layers));
    deck.list().addAll(DeckThickness.of(figures, facts, when, load));
    Worked.with()
        .key("thickness", numbers(thicknesses))
        .key("modulus", numbers(moduli))
        .key("centres", centres)
        .key("load", load)
        .run(new DeckDeflection())
        .ifPresent(
            result -> {
              String how = Worked.how(result);
              deck.addAs(
                  "deck ratio " + when,
                  "",
                  whole(result.value("ratio")),
                  result.value("ratio"),
                  how,
                  basis);
              deck.add("deck deflection " + when, result.value("deflection"), "mm", how, basis);
            });
    return deck.list();
  }

  private static double[] numbers(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
