package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Helpers of the strength and long-term checks")
class StrengthTest {

  @Test
  @DisplayName("give the figures of Chudley and Greeno's 50 by 225 joist (references X-1)")
  void chudley() {
    JoistStress.Values values = JoistStress.of(50, 225, 400, 2.25, 5000, 75);
    assertThat(values.reactionN()).isCloseTo(2250, offset(1e-9));
    // Depth required at 7.5 N/mm2 is printed as 212 mm: the same moment on that depth is at its
    // limit.
    assertThat(JoistStress.of(50, 212.13, 400, 2.25, 5000, 75).bending())
        .isCloseTo(7.5, offset(0.001));
    assertThat(values.bending()).isLessThan(7.5);
    // Shear area at least 4753 mm2 at 0.71 N/mm2.
    assertThat(JoistStress.of(50, 4753.5 / 50, 400, 2.25, 5000, 75).shear())
        .isCloseTo(0.71, offset(0.0005));
    // Bearing at least 19 mm at 2.4 N/mm2 (18.75 before rounding).
    assertThat(JoistStress.of(50, 225, 400, 2.25, 5000, 18.75).bearing())
        .isCloseTo(2.4, offset(1e-9));
  }

  @Test
  @DisplayName("grow the deflection as EN 1995-1-1 clause 2.2.3 has it (references X-3)")
  void finalDeflection() {
    assertThat(LongTermDeflection.of(2.974, 8.923, 0.6, 0.3)).isCloseTo(15.287, offset(0.002));
    assertThat(4000 / LongTermDeflection.of(2.974, 8.923, 0.6, 0.3)).isCloseTo(262, offset(0.5));
    assertThatThrownBy(() -> LongTermDeflection.of(1, 1, 0.6, 1.2)).hasMessageContaining("psi2");
  }

  @Test
  @DisplayName("bend a bare joist under 1 kN by 5.739 mm (references X-5)")
  void pointLoad() {
    assertThat(PointLoad.of(47, 195, 8000, 1, 4000)).isCloseTo(5.739, offset(0.001));
  }

  @Test
  @DisplayName("refuse numbers that are not above nought")
  void refusals() {
    assertThatThrownBy(() -> JoistStress.of(50, 0, 400, 2, 4000, 75)).hasMessageContaining("depth");
    assertThatThrownBy(() -> PointLoad.of(47, 195, Double.NaN, 1, 4000))
        .hasMessageContaining("modulus");
  }
}
