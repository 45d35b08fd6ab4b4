package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The figures of the workings")
class DefaultsTest {
  private static Defaults figures(String... lines) {
    StringBuilder yaml = new StringBuilder();
    for (String line : lines) {
      String[] parts = line.split(": ");
      yaml.append(parts[0]).append(": {value: \"").append(parts[1]).append("\", status: quoted}\n");
    }
    return Defaults.read(
        new ByteArrayInputStream(yaml.toString().getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  @DisplayName("are read by their names, in the units the formulas take")
  void byName() {
    assertThat(figures("straightedge-usual-length: 2 m").straightedgeMm()).isEqualTo(2000);
    assertThat(figures("floor-frequency-simple-check: 8 Hz").simpleVibrationCheckAboveHz())
        .isEqualTo(8);
    assertThat(figures("heated-floor-excess-occupied: 9 K").occupiedFloorExcessK()).isEqualTo(9);
    assertThat(figures("cement-least-curing-temperature: 5 C").leastCuringC()).isEqualTo(5);
    assertThat(figures("fall-gentlest: 1:80", "fall-steepest: 1:35").falls())
        .isEqualTo(new FallLimits(80, 35));
    assertThat(
            figures(
                    "evaporation-band-1-from: 0.25 kg/m2h",
                    "evaporation-band-2-from: 0.5 kg/m2h",
                    "evaporation-band-3-from: 1 kg/m2h")
                .evaporationBands())
        .isEqualTo(new EvaporationBands(0.25, 0.5, 1));
    assertThat(
            figures("bay-heated-longest-side: 8 m", "bay-heated-largest-area: 40 m2").heatedBays())
        .isEqualTo(new BayLimits(8, OptionalDouble.of(40)));
    assertThat(figures("bay-unheated-longest-side: 10 m").unheatedBays())
        .isEqualTo(new BayLimits(10, OptionalDouble.empty()));
    assertThat(
            figures(
                    "cement-screed-first-heating: 21 days",
                    "calcium-sulfate-screed-first-heating: 7 days")
                .heatingStart())
        .isEqualTo(new HeatingStart(21, 7));
    for (String screed : new String[] {"cement-screed", "calcium-sulfate-screed"}) {
      Defaults drying =
          figures(
              screed + "-drying-first-depth: 5 cm",
              screed + "-drying-rate-first: 1 day/mm",
              screed + "-drying-rate-beyond: 2 days/mm");
      assertThat(
              screed.startsWith("cement") ? drying.cementDrying() : drying.calciumSulfateDrying())
          .isEqualTo(new DryingRates(50, 1, 2));
    }
  }

  @Test
  @DisplayName("give the classes of timber by their moduli, a shear modulus being no class")
  void timber() {
    Defaults defaults =
        figures(
            "timber-c16-modulus: 8000 N/mm2",
            "timber-c16-shear-modulus: 500 N/mm2",
            "timber-c16-bending-strength: 16 N/mm2",
            "timber-c16-shear-strength: 3.2 N/mm2",
            "timber-c16-mean-density: 0.37 kg/L",
            "deck-modulus: 1 N/mm2",
            "timber-creep-factor: 1 N/mm2");
    assertThat(defaults.grades())
        .containsExactly(new TimberGrade("C16", 8000, 500, 16, 3.2, 0.37, "quoted"));
    TimberGrade shipped =
        Defaults.read().grades().stream()
            .filter(grade -> grade.name().equals("C24"))
            .findFirst()
            .orElseThrow();
    // EN 338: C24 has E0,mean 11 kN/mm2 and fm,k 24 N/mm2.
    assertThat(shipped.modulus()).isEqualTo(11_000);
    assertThat(shipped.bendingStrength()).isEqualTo(24);
  }

  @Test
  @DisplayName("give the stocked screws from the shortest to the longest")
  void screws() {
    assertThat(
            figures("stocked-screw-30: 30 mm", "other: 9 mm", "stocked-screw-16: 16 mm")
                .stockedScrewsMm())
        .containsExactly(16.0, 30.0);
  }

  @Test
  @DisplayName("leave no working out, and each is found by its own name")
  void everyWorking() {
    Workings workings = new Workings(Defaults.read());
    assertThat(Workings.standard().all()).hasSize(22);
    workings.all().forEach(one -> assertThat(workings.named(one.name())).isSameAs(one));
    for (Fall.Drain drain : Fall.Drain.values()) {
      assertThat(Fall.Drain.named(drain.words())).isEqualTo(drain);
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Fall.Drain.named("ceiling"));
  }

  @Test
  @DisplayName("of a plane give its height at any place")
  void planes() {
    BestPlane.Values plane =
        BestPlane.of(
            java.util.List.of(new Reading(0, 0, 1), new Reading(1, 0, 3), new Reading(0, 1, 6)));
    // 1 + 2x + 5y.
    assertThat(plane.heightAt(2, 3)).isCloseTo(20, offset(1e-9));
  }
}
