package underfoot.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A typed quantity")
class UnitsTest {

  @ParameterizedTest(name = "{1} is {2}")
  @DisplayName("is read in every unit of the contract, metric and imperial")
  @CsvSource({
    "LENGTH, 47 mm, 47",
    "LENGTH, 4.7cm, 47",
    "LENGTH, 3.2 m, 3200",
    "LENGTH, 16 in, 406.4",
    "LENGTH, 9 ft, 2743.2",
    "LENGTH, 9 ft 4 in, 2844.8",
    "LENGTH, 9 ft 4 1/2 in, 2857.5",
    "LENGTH, 1 1/2 in, 38.1",
    "LENGTH, 1-1/2 in, 38.1",
    "LENGTH, 3/4 in, 19.05",
    "LENGTH, 500 µm, 0.5",
    "LENGTH, 500 μm, 0.5",
    "LENGTH, 500 um, 0.5",
    "LENGTH, -5 mm, -5",
    "LENGTH, −5 mm, -5",
    "LENGTH, .5 m, 500",
    "LENGTH, 1.2e3 mm, 1200",
    "STRESS, 8000 N/mm2, 8000",
    "STRESS, 8000 N/mm², 8000",
    "STRESS, 11 GPa, 11000",
    "STRESS, 1.6e6 psi, 11031.6117",
    "PRESSURE, 1.5 kN/m2, 1.5",
    "PRESSURE, 40 psf, 1.91521",
    "AREA_MASS, 226 kg/m2, 226",
    "MASS_PER_DEPTH, 1.7 kg/m2, 1.7",
    "MASS_PER_DEPTH, 1.7 kg/m2 per mm, 1.7",
    "DENSITY, 1.6 kg/L, 1.6",
    "TEMPERATURE, -3 C, -3",
    "TEMPERATURE, 23 °C, 23",
    "TEMPERATURE, 50 F, 10",
    "LENGTH, 47 MM, 47",
    "MASS_PER_DEPTH, 1.7 kg/m² per mm, 1.7",
    "BENDING_STIFFNESS, 5.81e6 N·m², 5.81e6",
    "TEMPERATURE_DIFFERENCE, 5 K, 5",
    "TEMPERATURE_DIFFERENCE, 5 K/day, 5",
    "RATIO, 65%, 65",
    "SPEED, 10 km/h, 10",
    "TIME, 24 h, 24",
    "HEAT_FLUX, 100 W/m2, 100",
    "CONDUCTIVITY, 1.2 W/mK, 1.2",
    "RESISTANCE, 0.15 m2K/W, 0.15",
    "BENDING_STIFFNESS, 5.81e6 N.m2, 5.81e6",
    "BENDING_STIFFNESS, 5.81e6 N.m2/m, 5.81e6",
    "ANGLE, 45 deg, 45",
    "SPAN_SHARE, 360, 360",
    "SPAN_SHARE, L/360, 360",
    "SPAN_SHARE, span/360, 360",
    "GRADIENT, 50, 50",
    "GRADIENT, 1:50, 50",
    "GRADIENT, 2 %, 50",
    "GRADIENT, 1 in 50, 50"
  })
  void reads(Dimension dimension, String text, double expected) throws NotAQuantity {
    assertThat(Quantity.parse(text, dimension).value())
        .isCloseTo(expected, offset(1e-5 * Math.abs(expected)));
  }

  @ParameterizedTest(name = "'{1}' {2}")
  @DisplayName("is refused with the reason where it is not one")
  @CsvSource({
    "LENGTH, 47, has no unit",
    "LENGTH, '', nothing is written",
    "LENGTH, 47 kg/m2, 'is a mass on each square metre, but a length is needed'",
    "LENGTH, '2,4 m', decimals are written with a point",
    "LENGTH, 1/0 in, without a proper lower part",
    "LENGTH, NaN, does not begin with a number",
    "LENGTH, Infinity mm, does not begin with a number",
    "LENGTH, 1e400 mm, is larger than any floor could need",
    "LENGTH, 1e308 m, is larger than any floor could need",
    "LENGTH, 1e m, is not a unit of length",
    "LENGTH, 0x10 mm, is not a unit of length",
    "LENGTH, mm, does not begin with a number",
    "STRESS, 5 kPa, 'is a load on an area, but a strength or stiffness is needed'",
    "SPAN_SHARE, L/, does not begin with a number",
    "GRADIENT, 0 %, does not fall",
    "GRADIENT, 1:2:3, 'has a unit, but a plain number is needed'"
  })
  void refuses(Dimension dimension, String text, String reason) {
    assertThatThrownBy(() -> Quantity.parse(text, dimension))
        .isInstanceOf(NotAQuantity.class)
        .hasMessageContaining(reason);
  }
}
