package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/** What stands on joists, by sums written out again. Joists 47 by 195 C16 at 400 mm over 4.0 m. */
class ItemLoadsTest {
  private static final double G = 9.80665;

  private static Facts measured(String items) {
    Scenario scenario =
        Measured.scenario(
            "room:",
            "  use: living area",
            "  outline: [[0 m, 0 m], [5 m, 0 m], [5 m, 3.9 m], [0 m, 3.9 m]]",
            "items: " + items,
            "subfloor:",
            "  deck: chipboard",
            "  thickness: 22 mm",
            "  carried by: {kind: timber joists, breadth: 47 mm, depth: 195 mm, grade: C16,"
                + " centres: 400 mm, clear span: 3.9 m, bearing: 100 mm, direction: along y}");
    return Measured.of(scenario, "base family: timber", "base: chipboard");
  }

  @Test
  @DisplayName(
      "A bath along the joists in the middle brings its weight less the people it displaces")
  void bath() {
    Facts facts =
        measured("[{item: bath, mass: 350 kg, at: [[1.0 m, 1.1 m], [1.7 m, 2.8 m]], feet: 4}]");
    // 350 kg less 1.5 kN/m2 on 1.7 by 0.7 m; two of four feet on one joist, 700 mm apart.
    double load = (350 * G - 1500 * 1.7 * 0.7) / 2;
    double moment = load * (4000 / 4.0 - 1700 / 8.0);
    assertThat(facts.number("item moment")).isCloseTo(moment / 1e6, within(1e-4));
    // Its far end is 2850 mm from the middle of the bearing beneath its near end.
    double reaction = load * (4000 - (1150 + 850)) / 4000;
    assertThat(facts.number("item reaction")).isCloseTo(reaction / 1000, within(1e-6));
    assertThat(facts.number("foot load", "bath")).isCloseTo(350 * G / 4 / 1000, within(1e-9));
    double use = 1.5 * moment / (47 * 195 * 195 / 6.0) / (16 * 0.8 * 1.1 / 1.3) * 100;
    assertThat(facts.number("bending use with items before") - facts.number("bending use before"))
        .isCloseTo(use, within(0.02));
    assertThat(facts.number("joist deflection with items before"))
        .isCloseTo(
            facts.number("joist deflection before") + facts.number("joist deflection of the items"),
            within(1e-9));
  }

  @Test
  @DisplayName("Where nobody says where a thing stands it is put where it is worst")
  void unplaced() {
    String bath = "[{item: bath, mass: 350 kg, feet: 4%s}]";
    double placed = 0;
    for (double y = 0; y <= 2.1; y += 0.3) {
      String at = String.format(", at: [[1.0 m, %.1f m], [1.7 m, %.1f m]]", y, y + 1.7);
      placed = Math.max(placed, measured(String.format(bath, at)).number("item moment"));
    }
    assertThat(measured(String.format(bath, "")).number("item moment"))
        .isGreaterThanOrEqualTo(placed);
  }

  @Test
  @DisplayName("Things on one joist are summed, and things on joists of their own are not")
  void summed() {
    String range =
        "{item: range, mass: 300 kg, at: [[0.2 m, 1.7 m], [0.8 m, 2.3 m]], feet: spread}";
    String near = "{item: safe, mass: 300 kg, at: [[0.2 m, 2.4 m], [0.8 m, 3.0 m]], feet: spread}";
    String far = "{item: safe, mass: 300 kg, at: [[4.2 m, 2.4 m], [4.8 m, 3.0 m]], feet: spread}";
    double alone = measured("[" + range + "]").number("item moment");
    double beside = measured("[" + range + ", " + far + "]").number("item moment");
    double together = measured("[" + range + ", " + near + "]").number("item moment");
    assertThat(beside).isCloseTo(alone, within(1e-9));
    assertThat(together).isGreaterThan(1.5 * alone);
    assertThat(measured("[" + range + ", " + near + "]").number("heavy items together"))
        .isEqualTo(600);
  }

  @Test
  @DisplayName("A thing that weighs less than the people it leaves no room for brings nothing")
  void light() {
    Facts facts =
        measured("[{item: shelving, mass: 150 kg, at: [[1 m, 1 m], [2 m, 2 m]], feet: spread}]");
    assertThat(facts.number("item moment")).isZero();
    assertThat(facts.number("bending use with items before"))
        .isCloseTo(facts.number("bending use before"), within(1e-9));
  }

  @Test
  @DisplayName("What a thing is called tells its kind, the longest name first")
  void named() {
    Facts facts = measured("[{item: old cast-iron bath, mass: 400 kg}, {item: great thing}]");
    assertThat(facts.find("heavy item kind", "old cast-iron bath").text())
        .isEqualTo("cast-iron bath");
    assertThat(facts.find("heavy item kind", "great thing")).isNull();
  }

  @Test
  @DisplayName("A deck dips under 2.0 kN on one spot as its kind, thickness and centres have it")
  void spot() {
    Facts facts = measured("none");
    // Chipboard 22 mm, E 3000: the plate on two supports, 0.72 of it where the deck runs on.
    double rigidity = 3000 * Math.pow(22, 3) / 12;
    double dip = 0.72 * 0.01695 * 2000 * 400 * 400 / rigidity;
    assertThat(facts.number("deck dip under one spot before")).isCloseTo(dip, within(1e-6));
    assertThat(facts.number("deck point ratio before"))
        .isCloseTo(400 / (dip * 1.33 / 2.0), within(1e-3));
  }
}
