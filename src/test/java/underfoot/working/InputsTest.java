package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Workings;

@DisplayName("What is typed for a working")
class InputsTest {
  private static Result run(String name, String... pairs) {
    Map<String, String> keys = new LinkedHashMap<>();
    for (String pair : pairs) {
      keys.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
    }
    return Workings.standard().named(name).read(keys);
  }

  @Test
  @DisplayName("is told again in the unit of its key, whatever unit it was typed in")
  void shownAgain() {
    Result cuts = run("cuts", "run=300 cm", "tile=0.6 m", "joint=3 mm", "gap=0 mm");
    assertThat(cuts.inputs())
        .containsEntry("run", new Measure(3, "m"))
        .containsEntry("tile", new Measure(600, "mm"));
    Result deck =
        run(
            "deck-deflection",
            "thickness=1.8 cm,15 mm",
            "modulus=3.3 GPa,6000 N/mm2",
            "centres=450 mm",
            "load=2 kN/m2");
    assertThat(deck.inputs())
        .containsEntry("thickness", List.of(new Measure(18, "mm"), new Measure(15, "mm")))
        .containsEntry("modulus", List.of(new Measure(3300, "N/mm2"), new Measure(6000, "N/mm2")));
  }

  @Test
  @DisplayName("is taken at both ends of its range, in any unit, and not beyond")
  void ends() {
    // A run of 1 mm to 1000 m, told in m.
    assertThatThrownBy(() -> run("cuts", "run=0.9 mm", "tile=1 mm", "joint=0 mm", "gap=0 mm"))
        .hasMessageContaining("is out of range");
    assertThat(run("cuts", "run=1 mm", "tile=1 mm", "joint=0 mm", "gap=0 mm").value("cut"))
        .isEqualTo(0.5);
    assertThat(run("cuts", "run=1000 m", "tile=1 mm", "joint=0 mm", "gap=0 mm").value("full"))
        .isEqualTo(999_998);
    assertThatThrownBy(() -> run("cuts", "run=1001 m", "tile=1 mm", "joint=0 mm", "gap=0 mm"))
        .hasMessageContaining("is out of range");
    // Hours above nought, at most 100000.
    assertThatThrownBy(() -> run("cure-time", "hours=0 h", "reference=20 C", "temperature=20 C"))
        .hasMessageContaining("is out of range");
    assertThat(
            run("cure-time", "hours=100000 h", "reference=20 C", "temperature=20 C").value("hours"))
        .isEqualTo(100_000);
  }

  @Test
  @DisplayName("may be ten thousand values and no more")
  void manyValues() {
    String most = String.join(",", Collections.nCopies(10_000, "6@20"));
    assertThat(run("cure-time", "history=" + most, "reference=20 C").value("equivalent-age"))
        .isEqualTo(60_000);
    assertThatThrownBy(() -> run("cure-time", "history=" + most + ",6@20", "reference=20 C"))
        .hasMessageContaining("more than 10000 values");
    String row = String.join(",", Collections.nCopies(5000, "0"));
    assertThat(
            run("levelling-volume", "grid=" + row + ";" + row, "dx=1 m", "dy=1 m", "datum=1 mm")
                .value("area"))
        .isEqualTo(4999);
    assertThatThrownBy(
            () ->
                run(
                    "levelling-volume",
                    "grid=" + row + ";" + row + ",0",
                    "dx=1 m",
                    "dy=1 m",
                    "datum=1 mm"))
        .hasMessageContaining("more than 10000 values");
  }

  @Test
  @DisplayName("is refused by the number of the value that is empty, and of the row that is ragged")
  void whichValue() {
    assertThatThrownBy(() -> run("straightedge-gap", "positions=0,,9", "heights=0,1,2"))
        .hasMessageContaining("value 2 of 3 is empty");
    assertThatThrownBy(
            () -> run("levelling-volume", "grid=1,2;1,2;3", "dx=1 m", "dy=1 m", "datum=1 mm"))
        .hasMessageContaining("row 3 has 1 heights, row 1 has 2");
  }

  @Test
  @DisplayName("is told the keys there are, with their units, where no key is near")
  void unknownKeys() {
    assertThatThrownBy(() -> run("cuts", "colour=red"))
        .hasMessage(
            "\"colour\" is not a key of cuts; its keys are run (m), tile (mm), joint (mm), gap"
                + " (mm)");
    assertThatThrownBy(() -> run("fall", "colour=red"))
        .hasMessageEndingWith("gradient, run (m), length (m), width (m), drain");
    assertThatThrownBy(() -> run("fall", "gradient=50"))
        .hasMessageContaining("run: is missing (or give length with width and drain)");
  }

  @Test
  @DisplayName("may be a profile of two hundred metres, wherever it begins, and no longer")
  void longProfiles() {
    assertThat(run("straightedge-gap", "positions=-100000,100000", "heights=0,0").value("gap"))
        .isZero();
    assertThat(run("straightedge-gap", "positions=300000,300100", "heights=0,0").value("gap"))
        .isZero();
    assertThatThrownBy(() -> run("straightedge-gap", "positions=-100000,100001", "heights=0,0"))
        .hasMessageContaining("covers more than 200 m");
  }
}
