package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Digits are those of Java's own decimal numbers, whatever the number. */
class DigitsTest {
  private static final int MANY = 200_000;

  @ParameterizedTest
  @CsvSource({
    "2.5, 2, 2.5",
    "2.505, 2, 2.5",
    "2.515, 2, 2.52",
    "-0.004, 2, 0",
    "-2.5, 0, -3",
    "0.5, 0, 1",
    "100, 2, 100",
    "1e12, 2, 1000000000000",
    "0.1, 1, 0.1",
    "9.999, 2, 10"
  })
  void a_number_is_rounded_to_at_most_so_many_places(double value, int places, String digits) {
    assertThat(Digits.rounded(value, places)).isEqualTo(digits);
  }

  @ParameterizedTest
  @CsvSource({
    "0.012345, 3, 0.0123", "0.0999999, 3, 0.1", "0.01, 3, 0.01", "47460917, 6, 47460900",
    "999999.7, 6, 1000000", "1.2e-7, 6, 0.00000012", "0, 3, 0", "-0.55551, 3, -0.556"
  })
  void a_number_is_rounded_to_so_many_figures(double value, int figures, String digits) {
    assertThat(Digits.significant(value, figures)).isEqualTo(digits);
  }

  @ParameterizedTest
  @CsvSource({"437, 2, 437.00", "1.005, 2, 1.01", "0.004, 2, 0.00", "12.3, 2, 12.30"})
  void a_sum_keeps_its_places(double value, int places, String digits) {
    assertThat(Digits.fixed(value, places)).isEqualTo(digits);
  }

  @Test
  void they_are_those_of_decimal_numbers_of_any_length() {
    Random random = new Random(20261128);
    for (int i = 0; i < MANY; i++) {
      double value = some(random);
      int places = random.nextInt(5);
      assertThat(Digits.rounded(value, places))
          .as("%s to %d places", value, places)
          .isEqualTo(plain(new BigDecimal(value).setScale(places, RoundingMode.HALF_UP)));
      int figures = 1 + random.nextInt(7);
      assertThat(Digits.significant(value, figures))
          .as("%s to %d figures", value, figures)
          .isEqualTo(plain(new BigDecimal(value).round(new MathContext(figures))));
      double sum = Math.abs(value);
      assertThat(Digits.fixed(sum, 2)).isEqualTo(String.format(Locale.ROOT, "%.2f", sum));
    }
  }

  /** Numbers of all sizes, short decimals among them, and some that lie on a half. */
  private static double some(Random random) {
    double size = Math.pow(10, random.nextInt(14) - 6);
    double value = (random.nextDouble() - 0.5) * size;
    return switch (random.nextInt(4)) {
      case 0 -> value;
      case 1 -> Math.rint(value * 1000) / 1000;
      case 2 -> Math.rint(value * 8) / 8;
      default -> Math.floor(value) + 0.005 + random.nextInt(100) / 100.0;
    };
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
