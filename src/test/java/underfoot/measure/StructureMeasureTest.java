package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;
import underfoot.working.LongTermDeflection;

/** Whole timber floors against worked examples. */
class StructureMeasureTest {
  private static Scenario floor(String deck, String thickness, String joists) {
    return Measured.scenario(
        "room: {use: living area}",
        "subfloor:",
        "  deck: " + deck,
        "  thickness: " + thickness,
        "  joists: " + joists);
  }

  private static Facts measured(Scenario scenario) {
    return Measured.of(scenario, "base family: timber", "base: " + deckOf(scenario));
  }

  private static String deckOf(Scenario scenario) {
    return scenario.find("subfloor.deck").orElseThrow().text();
  }

  /** Worked example X-3: 47 × 195, C16, 400 mm centres, 4.0 m between middles of bearings. */
  private static final String EXAMPLE =
      "{breadth: 47 mm, depth: 195 mm, grade: C16, centres: 400 mm, clear span: 3.9 m, bearing: 100 mm}";

  @Test
  @DisplayName(
      "Joist 47 x 195 C16 at 400 mm over 4.0 m sags 8.923 mm under 1.5 kN/m2 (worked example X-3, by"
          + " frame analysis)")
  void imposedDeflection() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    assertThat(facts.number("effective span")).isEqualTo(4000);
    assertThat(facts.number("imposed load")).isEqualTo(1.5);
    assertThat(facts.number("joist imposed deflection")).isCloseTo(8.923, within(0.001));
  }

  @Test
  @DisplayName("Dead load scales X-3's 2.974 mm at 0.5 kN/m2, and the share is of 12 mm (X-4)")
  void totalDeflection() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    double dead = facts.number("dead load before");
    double expected = 8.923 + 2.974 * dead / 0.5;
    assertThat(facts.number("joist deflection before")).isCloseTo(expected, within(0.002));
    // 0.003 x 4.0 m and the cap without strutting are both 12 mm (NHBC Standards 6.4.9).
    assertThat(facts.number("joist deflection share before"))
        .isCloseTo(expected / 12 * 100, within(0.02));
    assertThat(facts.number("joist ratio before")).isCloseTo(4000 / expected, within(0.1));
  }

  @Test
  @DisplayName("X-3 in the long run: 15.287 mm with creep 0.6 and 0.3 of the imposed load")
  void longTerm() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    assertThat(LongTermDeflection.of(2.974, facts.number("joist imposed deflection"), 0.6, 0.3))
        .isCloseTo(15.287, within(0.002));
  }

  @Test
  @DisplayName("Dead load before is deck, joists and ceiling, as added by hand")
  void deadLoad() {
    Facts facts = measured(floor("square-edged boards", "20 mm", EXAMPLE));
    // 20 mm softwood 12.5 kg/m2 (BS 648) taken as 0.63 a mm; joists 370 kg/m3.
    double joists = 370 * 0.047 * 0.195 / 0.4;
    assertThat(facts.number("dead load before"))
        .isCloseTo((0.63 * 20 + joists) * 9.80665 / 1000 + 0.15, within(1e-9));
  }

  @ParameterizedTest(name = "{0} of {1} at {2}: span/{3}")
  @DisplayName("Decks between joists under 2.0 kN/m2 (worked examples P-14, closed form)")
  @CsvSource({
    "chipboard, 18 mm, 450 mm, 676",
    "chipboard, 18 mm, 600 mm, 285",
    "OSB, 18 mm, 600 mm, 426",
    "OSB, 15 mm, 450 mm, 584",
    "square-edged boards, 16 mm, 450 mm, 1151",
  })
  void decks(String deck, String thickness, String centres, double ratio) {
    String joists =
        "{breadth: 47 mm, depth: 195 mm, grade: C16, centres: "
            + centres
            + ", clear span: 3 m, bearing: 90 mm}";
    Facts facts = measured(floor(deck, thickness, joists));
    assertThat(facts.number("deck ratio before")).isCloseTo(ratio, within(0.6));
  }

  @Test
  @DisplayName("Chipboard is taken as less stiff the thicker it is, by the bands of EN 12369-1")
  void chipboardBands() {
    for (String[] pair :
        new String[][] {
          {"12 mm", "3500"},
          {"13 mm", "3500"},
          {"18 mm", "3300"},
          {"22 mm", "3000"},
          {"28 mm", "2600"}
        }) {
      Facts facts = measured(floor("chipboard", pair[0], EXAMPLE));
      double thickness = facts.number("deck thickness");
      double stiffness = Double.parseDouble(pair[1]) * 1000 * Math.pow(thickness, 3) / 12;
      double expected = 384 * stiffness / (5 * 2.0 * Math.pow(400, 3));
      assertThat(facts.number("deck ratio before")).isCloseTo(expected, within(1e-6));
    }
  }

  @Test
  @DisplayName("Bending, shear and bearing are shares of design strength, checked by hand")
  void strength() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    double load = (1.35 * facts.number("dead load before") + 1.5 * 1.5) * 0.4; // N/mm
    double bending = load * 4000 * 4000 / 8 / (47 * 195 * 195 / 6.0) / (16 * 0.8 * 1.1 / 1.3);
    double shear = 1.5 * load * 2000 / (47 * 195) / (3.2 * 0.8 * 0.67 / 1.3);
    // EN 1995-1-1 clause 6.1.5 (from memory): 30 mm of timber beside the support helps to bear.
    double bearing = load * 2000 / (47 * (100 + 30)) / (2.2 * 0.8 / 1.3);
    assertThat(facts.number("bending use before")).isCloseTo(bending * 100, within(1e-6));
    assertThat(facts.number("shear use before")).isCloseTo(shear * 100, within(1e-6));
    assertThat(facts.number("bearing use before")).isCloseTo(bearing * 100, within(1e-6));
  }

  @Test
  @DisplayName("Frequency of the X-3 joist is 10.48 Hz at 50.97 kg/m2 (worked example X-5), scaled")
  void frequency() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    double mass = facts.number("dead load before") * 1000 / 9.80665;
    assertThat(facts.number("floor frequency before"))
        .isCloseTo(10.48 * Math.sqrt(50.97 / mass), within(0.01));
  }

  @Test
  @DisplayName("A notch and a hole are told as shares of depth and span, each by its name")
  void notches() {
    Facts facts =
        measured(
            floor(
                "chipboard",
                "22 mm",
                "{breadth: 47 mm, depth: 200 mm, grade: C16, centres: 400 mm, clear span: 4 m, bearing:"
                    + " 90 mm, notches: [{name: pipe notch, depth: 25 mm, from support: 400 mm}],"
                    + " holes: [{name: cable hole, diameter: 50 mm, from support: 1.6 m}]}"));
    assertThat(facts.number("notch depth share", "pipe notch")).isCloseTo(12.5, within(1e-9));
    assertThat(facts.number("notch place", "pipe notch")).isCloseTo(10, within(1e-9));
    assertThat(facts.number("hole size share", "cable hole")).isCloseTo(25, within(1e-9));
    assertThat(facts.number("hole place", "cable hole")).isCloseTo(40, within(1e-9));
  }

  @Test
  @DisplayName("A deeper notch leaves less of the joist for shear")
  void notchShear() {
    String joists =
        "{breadth: 47 mm, depth: 200 mm, grade: C16, centres: 400 mm, clear span: 4 m, bearing: 90 mm%s}";
    double whole =
        measured(floor("chipboard", "22 mm", joists.formatted(""))).number("shear use before");
    double cut =
        measured(
                floor(
                    "chipboard",
                    "22 mm",
                    joists.formatted(", notches: [{name: n, depth: 40 mm, from support: 400 mm}]")))
            .number("shear use before");
    assertThat(cut).isCloseTo(whole * 200 / 160, within(1e-9));
  }

  @Test
  @DisplayName("What is not known leaves the joists out, and a solid floor has none")
  void leftOut() {
    Facts noSpan =
        measured(
            floor(
                "chipboard",
                "22 mm",
                "{breadth: 47 mm, depth: 195 mm, grade: C16, centres: 400 mm, bearing: 90 mm}"));
    assertThat(noSpan.find("joist ratio before")).isNull();
    assertThat(noSpan.find("deck ratio before")).isNotNull();
    Facts slab = Measured.of(Measured.scenario(), "base family: solid", "base: concrete slab");
    assertThat(slab.all()).noneMatch(fact -> fact.name().startsWith("joist ratio"));
  }

  @Test
  @DisplayName("An assumed depth shows in the chain of what was worked out from it")
  void assumedDepth() {
    Scenario scenario =
        floor(
            "chipboard",
            "22 mm",
            "{breadth: 47 mm, grade: C16, centres: 400 mm, clear span: 3.9 m, bearing: 100 mm}");
    Facts facts = Measured.stated(scenario);
    Measures.of(scenario, new Surveys(), Measured.knowledge().figures(), facts);
    assertThat(facts.find("joist ratio before")).isNull();
    Fact assumed =
        new Fact(
            "subfloor.joists.depth",
            "joist depth",
            "",
            "195 mm",
            195,
            underfoot.knowledge.From.ASSUMED,
            "",
            java.util.List.of(),
            null);
    facts.add(assumed);
    facts.add(Fact.stated("base", "base", "", "chipboard", Double.NaN));
    facts.add(Fact.stated("base family", "base family", "", "timber", Double.NaN));
    Measures.of(scenario, new Surveys(), Measured.knowledge().figures(), facts);
    assertThat(facts.find("joist ratio before").uses()).contains(assumed);
  }

  @Test
  @DisplayName("Strutting lifts the cap from 12 to 14 mm on a long span (NHBC Standards 6.4.9)")
  void cap() {
    String joists =
        "{breadth: 47 mm, depth: 220 mm, grade: C24, centres: 400 mm, clear span: 4.9 m, bearing: 100"
            + " mm%s}";
    Facts bare = measured(floor("chipboard", "22 mm", joists.formatted("")));
    Facts strutted = measured(floor("chipboard", "22 mm", joists.formatted(", strutting: yes")));
    assertThat(bare.number("joist deflection share before"))
        .isCloseTo(bare.number("joist deflection before") / 12 * 100, within(1e-9));
    assertThat(strutted.number("joist deflection share before"))
        .isCloseTo(strutted.number("joist deflection before") / 14 * 100, within(1e-9));
  }

  @Test
  @DisplayName("A second joist beside each halves what bends, but for its own weight")
  void doubled() {
    Facts facts = measured(floor("chipboard", "22 mm", EXAMPLE));
    assertThat(facts.number("joist ratio if doubled before"))
        .isCloseTo(2 * facts.number("joist ratio before"), within(1e-6));
  }
}
