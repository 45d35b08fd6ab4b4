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
import underfoot.working.JoistStress;
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

  /**
   * Works out the span, the loads before a build-up, and what joists do under the imposed load
   * alone, which no build-up changes.
   */
  static List<Fact> loads(Figures figures, Facts facts) {
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
    double load = (deckMass + joistMass) * gravity / 1000 + ceiling;
    found.add(
        "dead load before",
        load,
        "kN/m2",
        "(deck + joists) × g / 1000 + ceiling: ("
            + Texts.of(deckMass, "")
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

  private static String gradeStem(TracedFacts basis) {
    return "timber-" + TracedFacts.inFigureName(basis.word("joist grade")) + "-";
  }

  /** Works out deflection, strength and frequency under the dead load before or after. */
  public List<Fact> joists() {
    if (facts.find("effective span") == null || facts.find("joist grade") == null) {
      return found.list();
    }
    imposed();
    share(total());
    doubled();
    reach();
    inTime();
    strength();
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
    String grade = gradeStem(basis);
    double breadth = joists * basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double span = basis.fact("effective span");
    if (!basis.complete()) {
      return Optional.empty();
    }
    return Worked.with()
        .key("breadth", breadth)
        .key("depth", depth)
        .key("modulus", basis.figure(grade + "modulus"))
        .key("shear-modulus", basis.figure(grade + "shear-modulus"))
        .key("centres", centres)
        .key("load", load)
        .key("span", span)
        .run(new JoistDeflection(List.of()));
  }

  /** The deflection against the structural limit: a share of the span, and a cap. */
  private void share(Fact total) {
    if (total == null) {
      return;
    }
    TracedFacts basis = new TracedFacts(figures, facts).use(total);
    double span = basis.fact("effective span");
    double fraction = basis.figure("joist-deflection-fraction");
    boolean strutted = basis.wordIfHeld("strutting").equals("yes");
    double cap = basis.figure(strutted ? "joist-deflection-cap-strutted" : "joist-deflection-cap");
    double limit = Math.min(fraction * span, cap);
    String shareName =
        when.equals("after") ? "joist deflection share" : "joist deflection share before";
    found.add(
        shareName,
        total.number() / limit * 100,
        "%",
        "deflection / the lesser of "
            + Texts.of(fraction, "")
            + " × span and "
            + Texts.of(cap, "mm")
            + ": "
            + Texts.of(total.number(), "")
            + " / "
            + Texts.of(limit, "mm"),
        basis);
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
    String grade = gradeStem(basis);
    double breadth = joists * basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double bearing = basis.fact("joist bearing");
    double load = basis.fact("dead load " + when) + basis.fact("imposed load");
    if (!basis.complete()) {
      return;
    }
    Worked.with()
        .key("breadth", breadth)
        .key("depth", depth)
        .key("modulus", basis.figure(grade + "modulus"))
        .key("shear-modulus", basis.figure(grade + "shear-modulus"))
        .key("centres", centres)
        .key("load", load)
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

  private void strength() {
    TracedFacts basis = new TracedFacts(figures, facts);
    double dead = basis.fact("dead load " + when);
    double imposed = basis.fact("imposed load");
    double breadth = basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    double centres = basis.fact("joist centres");
    double span = basis.fact("effective span");
    double bearing = basis.fact("joist bearing");
    String grade = gradeStem(basis);
    if (!basis.complete() || !(bearing > 0)) {
      return;
    }
    double load =
        basis.figure("partial-factor-dead") * dead
            + basis.figure("partial-factor-imposed") * imposed;
    double duration = basis.figure("timber-load-duration-factor");
    double material = basis.figure("timber-material-factor");
    double sharing = basis.figure("timber-load-sharing-factor");
    double cracks = basis.figure("timber-crack-factor");
    double bendingStrength =
        basis.figure(grade + "bending-strength") * duration * sharing / material;
    double shearStrength = basis.figure(grade + "shear-strength") * duration * cracks / material;
    double bearingStrength = basis.figure(grade + "bearing-strength") * duration / material;
    JoistStress.Values whole = JoistStress.of(breadth, depth, centres, load, span, bearing);
    double notch = deepestNotch(basis);
    double left = depth - notch;
    String factored =
        "factored load "
            + Texts.of(load, "kN/m2")
            + " on "
            + Texts.of(centres, "mm")
            + ", span "
            + Texts.of(span, "mm")
            + "; ";
    use(
        "bending use",
        whole.bending(),
        bendingStrength,
        factored + "M = wL^2/8, stress = M/Z",
        basis);
    if (left > 0) {
      use(
          "shear use",
          JoistStress.of(breadth, left, centres, load, span, bearing).shear(),
          shearStrength,
          factored
              + "stress = 1.5 V/A"
              + (notch > 0 ? ", A at the deepest notch of " + Texts.of(notch, "mm") : ""),
          basis);
    }
    use(
        "bearing use",
        whole.bearing(),
        bearingStrength,
        factored + "stress = V/(b × bearing)",
        basis);
  }

  private double deepestNotch(TracedFacts basis) {
    double deepest = 0;
    for (String notch : facts.abouts("notch depth")) {
      double depth = basis.factIfHeld("notch depth", notch);
      deepest = Double.isNaN(depth) ? deepest : Math.max(deepest, depth);
    }
    return deepest;
  }

  private void use(String name, double stress, double strength, String how, TracedFacts basis) {
    found.add(
        when.equals("after") ? name : name + " before",
        stress / strength * 100,
        "%",
        how + ": " + Texts.of(stress, "") + " of " + Texts.of(strength, "N/mm2"),
        basis);
  }

  private void frequency() {
    TracedFacts basis = new TracedFacts(figures, facts);
    String grade = gradeStem(basis);
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
      String material = deckMaterial(basis, facts);
      if (!basis.complete() || material.isEmpty()) {
        return deck.list();
      }
      thicknesses.add(thickness);
      moduli.add(deckModulus(basis, material, thickness));
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

  /**
   * The modulus of a deck. Where it goes by thickness, figures are named after the thickness beyond
   * which they hold, such as {@code modulus-of-chipboard-over-13-mm}.
   */
  private double deckModulus(TracedFacts basis, String material, double thickness) {
    String general = "modulus-of-" + material;
    String best = general;
    double bestOver = 0;
    String banded = general + "-over-";
    for (underfoot.knowledge.Figure figure : figures.startingWith(banded)) {
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
