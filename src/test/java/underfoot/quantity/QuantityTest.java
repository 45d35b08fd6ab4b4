package underfoot.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A quantity")
class QuantityTest {

  /**
   * Factors as printed in NIST Special Publication 811 (2008), Appendix B.8, all from memory but
   * exact by definition where seven digits or fewer are shown for inch, foot, yard, mile, pound and
   * ounce; the temperature formula is that of its Appendix B.8, "degree Fahrenheit".
   */
  @ParameterizedTest(name = "1 {1} of {0} is {2} {3}")
  @CsvSource({
    "length, in, 25.4, mm",
    "length, ft, 304.8, mm",
    "length, yd, 914.4, mm",
    "area, ft2, 0.09290304, m2",
    "area, in2, 0.00064516, m2",
    "area, yd2, 0.8361274, m2",
    "volume, ft3, 28.31685, L",
    "volume, UK gal, 4.54609, L",
    "volume, US gal, 3.785412, L",
    "speed, mph, 1.609344, km/h",
    "speed, m/s, 3.6, km/h",
    "speed, ft/min, 0.018288, km/h",
    "mass, lb, 0.4535924, kg",
    "mass, oz, 0.02834952, kg",
    "mass, stone, 6.350293, kg",
    "load, psf, 0.04788026, kN/m2",
    "stress, psi, 0.006894757, N/mm2",
    "force, lbf, 0.004448222, kN",
    "density, lb/ft3, 0.01601846, kg/L",
    "heat flux, W/ft2, 10.76391, W/m2",
    "heat flux, Btu/h ft2, 3.154591, W/m2",
    "time, days, 24, h",
    "time, weeks, 168, h",
  })
  @DisplayName("is converted by the published factor")
  void published_factors(String name, String unit, double factor, String base) throws Exception {
    Dimension dimension = Dimension.named(name).orElseThrow();
    assertThat(dimension.base()).isEqualTo(base);
    assertThat(Quantity.parse("1 " + unit, dimension).value())
        .isCloseTo(factor, within(factor * 5e-7));
  }

  @Test
  @DisplayName("of time takes a month for a twelfth of 365.25 days")
  void months() throws Exception {
    assertThat(Quantity.parse("1 month", Dimension.TIME).value()).isEqualTo(30.4375 * 24);
    assertThat(Quantity.parse("1 year", Dimension.TIME).value()).isEqualTo(12 * 30.4375 * 24);
  }

  @ParameterizedTest(name = "{0} is {1} C")
  @CsvSource({"32 F, 0", "212 °F, 100", "-40 F, -40", "68 deg F, 20", "20 °C, 20", "273.15 K, 0"})
  @DisplayName("of temperature is converted with its zero point")
  void temperatures(String text, double celsius) throws Exception {
    assertThat(Quantity.parse(text, Dimension.TEMPERATURE).value())
        .isCloseTo(celsius, within(1e-9));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "length | 20 mm | 20 | 20 mm",
        "length | 20mm | 20 | 20 mm",
        "length | .5 m | 500 | .5 m",
        "length | 3/4 in | 19.05 | 3/4 in",
        "length | 1 1/2 in | 38.1 | 1 1/2 in",
        "length | 1-1/2 in | 38.1 | 1-1/2 in",
        "length | 1½\" | 38.1 | 1 1/2 in",
        "length | 12 ft 6 in | 3810 | 12 ft 6 in",
        "length | 12ft6in | 3810 | 12 ft 6 in",
        "length | 12' 6\" | 3810 | 12 ft 6 in",
        "length | 12′ 6 1/2″ | 3822.7 | 12 ft 6 1/2 in",
        "length | -1 ft 6 in | -457.2 | -1 ft 6 in",
        "length | 2 m 40 cm | 2400 | 2 m 40 cm",
        "length | −7 mm | -7 | -7 mm",
        "length | +7 MM | 7 | 7 mm",
        "length | 3 Metres | 3000 | 3 m",
        "area | 8.6 m² | 8.6 | 8.6 m2",
        "area | 10 sq m | 10 | 10 m2",
        "area | 100 sq ft | 9.290304 | 100 ft2",
        "length | 1e3 mm | 1000 | 1e3 mm",
        "ratio | 65% | 65 | 65 %",
        "ratio | 75 % RH | 75 | 75 %",
        "time | 1 h 30 min | 1.5 | 1 h 30 min",
        "time | 10 days | 240 | 10 days",
        "mass | 2 t | 2000 | 2 t",
        "load | 1.5 kN/m2 | 1.5 | 1.5 kN/m2",
        "load | 1.5 kPa | 1.5 | 1.5 kN/m2",
        "money | 700 GBP | 700 | 700 GBP",
        "money | £700 | 700 | 700 GBP",
        "money | EUR 12.50 | 12.5 | 12.50 EUR",
        "money | 700 pounds | 700 | 700 GBP",
        "number | 38 | 38 | 38",
        "number | 3/4 | 0.75 | 3/4",
      })
  @DisplayName("is read as people write it")
  void forms(String dimension, String text, double value, String canonical) throws Exception {
    Quantity quantity = Quantity.parse(text, Dimension.named(dimension).orElseThrow());
    assertThat(quantity.value()).isCloseTo(value, within(1e-9));
    assertThat(quantity.text()).isEqualTo(canonical);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "length | 21 | \"21\" has no unit | ``",
        "length | 1,5 mm | \"1,5 mm\" has a comma in its number; decimals are written with a point"
            + " | 1.5 mm",
        "length | 1,200 mm | \"1,200 mm\" has a comma in its number; decimals are written with a"
            + " point | 1200 mm, or 1.200 mm",
        "length | 20 kg | \"20 kg\" is a mass, but a length is needed | ``",
        "mass | 20 m | \"20 m\" is a length, but a mass is needed | ``",
        "length | 20 milimetres | \"milimetres\" is not a unit of length | 20 mm",
        "length | 18-22 mm | \"18-22 mm\" is a range, but one value is needed | ``",
        "length | 20 mm +/- 1 mm | \"mm +/-\" is not a unit of length | ``",
        "length | ~20 mm | \"~20 mm\" is not one plain value; write the value itself | ``",
        "length | thick | \"thick\" does not begin with a number | ``",
        "length | 1/0 in | \"1/0 in\" holds a fraction without a proper lower part | ``",
        "length | 6 in 12 ft | \"6 in 12 ft\" is not one quantity | ``",
        "length | 99999999999999 m | \"99999999999999 m\" is larger than any floor could need | ``",
        "length | NaN mm | \"NaN mm\" does not begin with a number | ``",
        "number | 38 mm | \"38 mm\" has a unit, but a plain number is needed | 38",
        "money | 700 | \"700\" has no unit | ``",
      })
  @DisplayName("that is none says why, and how to write it where that is clear")
  void faults(String dimension, String text, String message, String suggestion) {
    assertThatThrownBy(() -> Quantity.parse(text, Dimension.named(dimension).orElseThrow()))
        .isInstanceOfSatisfying(
            NotAQuantity.class,
            fault -> {
              assertThat(fault.getMessage()).isEqualTo(message);
              assertThat(fault.suggestion()).isEqualTo(suggestion);
            });
  }

  @Test
  @DisplayName("reads back from its own text, in every unit")
  void round_trip() throws Exception {
    long seed = 20260301;
    Random random = new Random(seed);
    for (Dimension dimension : Dimension.values()) {
      for (Unit unit : dimension.units()) {
        for (int i = 0; i < 50; i++) {
          String number = String.format(Locale.ROOT, "%.3f", random.nextDouble() * 1000);
          Quantity once = Quantity.parse(number + " " + unit.symbol(), dimension);
          Quantity again = Quantity.parse(once.text(), dimension);
          assertThat(again).as("seed %d", seed).isEqualTo(once);
          for (String spelling : unit.spellings()) {
            assertThat(Quantity.parse(number + " " + spelling, dimension))
                .as("seed %d: %s", seed, spelling)
                .isEqualTo(once);
          }
        }
      }
    }
  }

  /** Pounds, differences of temperature, angles, and a mass on an area that is told per mm. */
  private static final Set<String> SHARED =
      Set.of("pound", "pounds", "K", "k", "kelvin", "degrees", "kg/m2", "kg/m²");

  @Test
  @DisplayName("of no dimension is spelt so that another dimension would take it, but for a few")
  void no_spelling_is_shared() {
    for (Dimension one : Dimension.values()) {
      for (Dimension other : Dimension.values()) {
        for (String spelling : one.spellings()) {
          if (one != other && !SHARED.contains(spelling)) {
            assertThat(other.unit(spelling)).as("%s in %s", spelling, other).isNull();
          }
        }
      }
    }
  }
}
