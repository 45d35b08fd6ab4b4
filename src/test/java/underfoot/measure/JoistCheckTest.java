package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.working.JoistDeflection;

/** Joists under a build-up of known weight, by the formulas written out again. */
class JoistCheckTest {
  private static final Figures FIGURES = Measured.knowledge().figures();

  // C16 of EN 338 and what the figures say of all timber.
  private static final double MODULUS = 8000;
  private static final double SHEAR = 500;

  /** 47 by 195 C16 at 400 mm over 4.0 m, 100 mm bearing, under so much dead and 1.5 imposed. */
  private static Facts floor(double dead, String... without) {
    Facts facts = new Facts();
    add(facts, "joist breadth", 47);
    add(facts, "joist depth", 195);
    add(facts, "joist centres", 400);
    add(facts, "joist span", 3900);
    add(facts, "joist bearing", 100);
    add(facts, "effective span", 4000);
    add(facts, "imposed load", 1.5);
    add(facts, "deck thickness", 22);
    add(facts, "dead load after", dead);
    add(facts, "dead load before", dead);
    add(facts, "dead load added", 0.5);
    facts.add(Fact.stated("joist grade", "joist grade", "", "C16", Double.NaN));
    facts.add(Fact.stated("base", "base", "", "chipboard", Double.NaN));
    Facts kept = new Facts();
    facts.all().stream().filter(one -> !List.of(without).contains(one.name())).forEach(kept::add);
    return kept;
  }

  private static void add(Facts facts, String name, double number) {
    facts.add(Fact.stated(name, name, "", number + "", number));
  }

  private static Facts joists(Facts facts, String when) {
    return new Facts().addAll(new JoistCheck(FIGURES, facts, when).joists());
  }

  /** Bending and shear of a simply supported joist under an even load, kN/m2. */
  private static double sag(double load, double breadth, double span) {
    double line = load * 400 / 1000;
    double inertia = breadth * 195 * 195 * 195 / 12;
    return 5 * line * Math.pow(span, 4) / (384 * MODULUS * inertia)
        + line * span * span / (8 * 5 / 6.0 * SHEAR * breadth * 195);
  }

  @Test
  void joists_sag_under_dead_and_imposed_load_together() {
    Facts found = joists(floor(1), "after");
    double sag = sag(2.5, 47, 4000);
    assertThat(found.number("joist deflection after")).isCloseTo(sag, within(1e-6));
    assertThat(found.number("joist ratio after")).isCloseTo(4000 / sag, within(1e-6));
    assertThat(found.find("joist ratio after").text())
        .isEqualTo(Integer.toString((int) (4000 / sag)));
    assertThat(found.number("joist ratio if doubled after"))
        .isCloseTo(4000 / sag(2.5, 94, 4000), within(1e-6));
    // 0.003 of the span is 12 mm, and so is the cap without strutting.
    assertThat(found.number("joist deflection share")).isCloseTo(sag / 12 * 100, within(1e-6));
    assertThat(found.find("joist deflection after").how())
        .startsWith("dead + imposed load: 1 + 1.5 kN/m2; ");
  }

  @Test
  void what_the_imposed_load_does_alone_is_told_once_before_any_build_up() {
    Facts before = joists(floor(1), "before");
    double sag = sag(1.5, 47, 4000);
    assertThat(before.number("joist imposed deflection")).isCloseTo(sag, within(1e-6));
    assertThat(before.number("joist imposed ratio")).isCloseTo(4000 / sag, within(1e-6));
    assertThat(before.number("joist deflection share before"))
        .isCloseTo(sag(2.5, 47, 4000) / 12 * 100, within(1e-6));
    Facts after = joists(floor(1), "after");
    assertThat(after.find("joist imposed deflection")).isNull();
    assertThat(after.find("joist imposed ratio")).isNull();
  }

  @Test
  void the_limit_is_a_share_of_a_short_span_and_the_cap_of_a_long_one() {
    Facts facts = floor(1, "effective span");
    add(facts, "effective span", 3000);
    assertThat(joists(facts, "after").number("joist deflection share"))
        .isCloseTo(sag(2.5, 47, 3000) / 9 * 100, within(1e-6));
  }

  @Test
  void joists_creep_under_what_lies_on_them_always() {
    double dead = sag(1, 47, 4000);
    double imposed = sag(1.5, 47, 4000);
    // Creep 0.6, and 0.3 of the imposed load is always there.
    assertThat(joists(floor(1), "after").number("joist deflection in time after"))
        .isCloseTo(dead * 1.6 + imposed * (1 + 0.3 * 0.6), within(1e-6));
  }

  @Test
  void joists_reach_as_far_as_they_bend_no_more_than_a_tile_stands() {
    Facts found = joists(floor(1), "after");
    for (String tile : List.of("ceramic", "stone")) {
      double ratio = FIGURES.get("tile-ratio-" + tile).value();
      for (int joists : new int[] {1, 2}) {
        String name = "clear span for " + tile + (joists == 2 ? " if doubled" : "") + " after";
        double span = found.number(name) + 100;
        assertThat(span / sag(2.5, 47 * joists, span)).as(name).isCloseTo(ratio, within(1e-3));
        assertThat(found.find(name).text()).isEqualTo(Texts.metres(span - 100));
      }
    }
  }

  @Test
  void stresses_are_shares_of_the_design_strengths() {
    Facts found = joists(floor(1), "after");
    double load = (1.35 * 1 + 1.5 * 1.5) * 0.4;
    double bending = load * 4000 * 4000 / 8 / (47 * 195 * 195 / 6.0) / (16 * 0.8 * 1.1 / 1.3);
    double shear = 1.5 * load * 2000 / (47 * 195) / (3.2 * 0.8 * 0.67 / 1.3);
    // EN 1995-1-1 clause 6.1.5 (from memory): 30 mm of timber beside the support helps to bear.
    double bearing = load * 2000 / (47 * (100 + 30)) / (2.2 * 0.8 / 1.3);
    assertThat(found.number("bending use")).isCloseTo(bending * 100, within(1e-6));
    assertThat(found.number("shear use")).isCloseTo(shear * 100, within(1e-6));
    assertThat(found.number("bearing use")).isCloseTo(bearing * 100, within(1e-6));
    assertThat(found.find("shear use").how()).doesNotContain("notch");
  }

  @Test
  void
      the_deepest_of_the_notches_takes_depth_from_shear_and_one_as_deep_as_the_joist_leaves_none() {
    Facts facts = floor(1);
    for (String[] notch : new String[][] {{"pipe", "20"}, {"cable", "45"}, {"bath", "10"}}) {
      facts.add(
          Fact.stated(
              "notch depth", "notch depth", notch[0], notch[1], Double.parseDouble(notch[1])));
    }
    Facts found = joists(facts, "after");
    double whole = joists(floor(1), "after").number("shear use");
    assertThat(found.number("shear use")).isCloseTo(whole * 195 / 150, within(1e-6));
    assertThat(found.find("shear use").how()).contains("A at the deepest notch of 45 mm");
    facts.add(Fact.stated("notch depth", "notch depth", "drain", "195", 195));
    assertThat(joists(facts, "after").find("shear use")).isNull();
    assertThat(joists(facts, "after").find("bending use")).isNotNull();
  }

  @Test
  void the_floor_swings_by_its_stiffness_and_the_mass_of_the_dead_load() {
    double stiffness = MODULUS * 47 * 195.0 * 195 * 195 / 12 / 400 / 1000; // N.m2 a metre
    double mass = 1 * 1000 / 9.80665;
    double expected = Math.PI / (2 * 4.0 * 4.0) * Math.sqrt(stiffness / mass);
    assertThat(joists(floor(1), "after").number("floor frequency"))
        .isCloseTo(expected, within(1e-6));
    assertThat(joists(floor(1), "before").number("floor frequency before"))
        .isCloseTo(expected, within(1e-6));
  }

  @Test
  void what_is_not_known_leaves_out_what_hangs_on_it_and_no_more() {
    for (String missing : List.of("effective span", "joist grade")) {
      assertThat(joists(floor(1, missing), "after").all()).as(missing).isEmpty();
    }
    for (String missing : List.of("joist breadth", "joist depth", "joist centres")) {
      assertThat(joists(floor(1, missing), "after").all()).as(missing).isEmpty();
    }
    Facts noDead = joists(floor(1, "dead load after"), "after");
    assertThat(noDead.all()).isEmpty();
    Facts noBearing = joists(floor(1, "joist bearing"), "after");
    assertThat(noBearing.find("joist deflection after")).isNotNull();
    assertThat(noBearing.find("bending use")).isNull();
    assertThat(noBearing.find("clear span for ceramic after")).isNull();
    Facts onEdge = floor(1, "joist bearing");
    add(onEdge, "joist bearing", 0);
    assertThat(joists(onEdge, "after").find("bearing use")).isNull();
  }

  private static Facts deck(Facts facts, boolean kept, List<JoistCheck.DeckLayer> on, double more) {
    return new Facts().addAll(new JoistCheck(FIGURES, facts, "after").deck(kept, on, more));
  }

  @Test
  void layers_of_a_deck_add_their_stiffness_under_the_load_of_a_deck_and_of_the_build_up() {
    double plywood = FIGURES.get("modulus-of-plywood").number();
    List<JoistCheck.DeckLayer> on = List.of(new JoistCheck.DeckLayer(15, "modulus-of-plywood"));
    double old = 3000 * 1000 * Math.pow(22, 3) / 12; // chipboard over 20 mm
    double added = plywood * 1000 * Math.pow(15, 3) / 12;
    double load = 2.0 + 0.5;
    double both = 5 * load * Math.pow(400, 4) / (384 * (old + added));
    Facts found = deck(floor(1), true, on, 0.5);
    assertThat(found.number("deck deflection after")).isCloseTo(both, within(1e-6));
    assertThat(found.number("deck ratio after")).isCloseTo(400 / both, within(1e-6));
    assertThat(found.find("deck ratio after").text())
        .isEqualTo(Integer.toString((int) (400 / both)));
    assertThat(found.find("deck ratio after").uses())
        .extracting(Object::toString)
        .anyMatch(use -> use.contains("dead load added"));
    double alone = 5 * load * Math.pow(400, 4) / (384 * added);
    assertThat(deck(floor(1), false, on, 0.5).number("deck deflection after"))
        .isCloseTo(alone, within(1e-6));
    // Nothing added: nothing read of it.
    assertThat(deck(floor(1, "dead load added"), true, on, 0).number("deck deflection after"))
        .isCloseTo(both * 2 / 2.5, within(1e-6));
  }

  @Test
  void a_deck_without_layers_centres_thickness_or_known_stuff_has_no_ratio() {
    List<JoistCheck.DeckLayer> on = List.of(new JoistCheck.DeckLayer(15, "modulus-of-plywood"));
    assertThat(deck(floor(1), false, List.of(), 0).all()).isEmpty();
    assertThat(deck(floor(1, "joist centres"), true, on, 0).all()).isEmpty();
    assertThat(deck(floor(1, "deck thickness"), true, on, 0).all()).isEmpty();
    assertThat(deck(floor(1, "base"), true, on, 0).all()).isEmpty();
    assertThat(deck(floor(1, "dead load added"), true, on, 0.5).all()).isEmpty();
  }

  @Test
  void the_load_of_the_old_deck_is_its_thickness_by_its_weight_beneath_another_base_too() {
    double perMm = FIGURES.get("mass-of-chipboard").value();
    Facts facts = floor(1);
    assertThat(DeadLoads.deckLoadKnPerM2(new TracedFacts(FIGURES, facts), facts))
        .isCloseTo(22 * perMm * 9.80665 / 1000, within(1e-9));
    Facts beneath = floor(1, "base");
    assertThat(DeadLoads.deckLoadKnPerM2(new TracedFacts(FIGURES, beneath), beneath)).isNaN();
    beneath.add(Fact.stated("base", "base", "", "vinyl sheet", Double.NaN));
    beneath.add(Fact.stated("base beneath", "base beneath", "", "chipboard", Double.NaN));
    assertThat(DeadLoads.deckLoadKnPerM2(new TracedFacts(FIGURES, beneath), beneath))
        .isCloseTo(22 * perMm * 9.80665 / 1000, within(1e-9));
    TracedFacts basis = new TracedFacts(FIGURES, beneath);
    assertThat(DeadLoads.deckMaterial(basis, beneath)).isEqualTo("chipboard");
    assertThat(basis.uses()).containsExactly(beneath.find("base beneath"));
    assertThat(DeadLoads.deckMaterial(basis, new Facts())).isEmpty();
  }

  @Test
  void loads_before_a_build_up_are_the_span_the_use_and_what_is_there_already() {
    Facts facts = floor(1, "effective span", "imposed load", "dead load before", "dead load after");
    facts.add(Fact.stated("use", "use", "", "hall", Double.NaN));
    Facts found = new Facts().addAll(DeadLoads.of(FIGURES, facts));
    assertThat(found.number("effective span")).isEqualTo(4000);
    assertThat(found.number("imposed load")).isEqualTo(FIGURES.get("imposed-load").number());
    double deck = FIGURES.get("mass-of-chipboard").value() * 22;
    double joists = 370 * 0.047 * 0.195 / 0.4;
    assertThat(found.number("dead load before"))
        .isCloseTo((deck + joists) * 9.80665 / 1000 + 0.15, within(1e-9));
    Facts noJoists = new Facts().addAll(DeadLoads.of(FIGURES, floor(1, "joist depth")));
    assertThat(noJoists.find("imposed load")).isNull();
    assertThat(noJoists.find("dead load before")).isNull();
    Facts strange = new Facts().addAll(DeadLoads.of(FIGURES, floor(1, "base")));
    assertThat(strange.find("dead load before")).isNull();
  }

  @Test
  void the_formula_written_out_here_is_that_of_the_working() {
    assertThat(
            JoistDeflection.of(47, 195, MODULUS, 400, 2.5, 4000, OptionalDouble.of(SHEAR))
                .deflectionMm())
        .isCloseTo(sag(2.5, 47, 4000), within(1e-9));
  }
}
