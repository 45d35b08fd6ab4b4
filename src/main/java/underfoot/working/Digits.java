package underfoot.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as decimal digits, halves rounded up (away from nought).
 *
 * <p>Every number of an advice is written once and many are written often. Most are not near a
 * half, and what they round to can be told in whole numbers; the rest goes to {@link BigDecimal},
 * which gives the same digits of all of them.
 */
public final class Digits {
  private static final long[] TENS = tens(11);
  private static final double LARGEST = 1e9;

  /** Nearer to a half than this, a product of doubles cannot tell on which side it lies. */
  private static final double NEAR = 1e-6;

  private Digits() {}

  private static long[] tens(int many) {
    long[] tens = new long[many];
    tens[0] = 1;
    for (int i = 1; i < many; i++) {
      tens[i] = 10 * tens[i - 1];
    }
    return tens;
  }

  /**
   * To at most so many decimals, without noughts at the end: {@code 2.5}, {@code 0}.
   *
   * @param value any finite number
   * @param places how many decimals at most, 0 to 10
   */
  public static String rounded(double value, int places) {
    long whole = whole(value, places);
    if (whole < 0) {
      BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
      return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
    int left = places;
    while (left > 0 && whole % 10 == 0) {
      whole /= 10;
      left--;
    }
    return written(value < 0, whole, left);
  }

  /**
   * To so many significant figures, without noughts at the end: {@code 0.0123}, {@code 47460900}.
   *
   * @param value any finite number
   * @param figures how many figures, at least 1
   */
  public static String significant(double value, int figures) {
    double size = Math.abs(value);
    int places = size == 0 ? 0 : figures - 1 - (int) Math.floor(Math.log10(size));
    if (places >= 0 && places < TENS.length) {
      return rounded(value, places);
    }
    return new BigDecimal(value)
        .round(new MathContext(figures))
        .stripTrailingZeros()
        .toPlainString();
  }

  /**
   * With exactly so many decimals, as sums of money are written: {@code 437.00}. The number is
   * taken by the shortest decimal that names it, so that 1.005 rounds up.
   *
   * @param value any finite number
   * @param places how many decimals, 0 to 10
   */
  public static String fixed(double value, int places) {
    long whole = whole(value, places);
    return whole < 0
        ? BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString()
        : written(value < 0, whole, places);
  }

  /** The number in units of its last place, without its sign; below 0 if that cannot be told. */
  private static long whole(double value, int places) {
    double scaled = Math.abs(value) * TENS[places];
    double floor = Math.floor(scaled);
    double over = scaled - floor;
    return scaled < LARGEST && Math.abs(over - 0.5) > NEAR ? (long) (scaled + 0.5) : -1;
  }

  private static String written(boolean negative, long whole, int places) {
    String digits = Long.toString(whole);
    StringBuilder text = new StringBuilder(digits.length() + 3);
    if (negative && whole > 0) {
      text.append('-');
    }
    int before = digits.length() - places;
    if (before <= 0) {
      text.append("0");
    } else {
      text.append(digits, 0, before);
    }
    if (places > 0) {
      text.append('.');
      text.append("0".repeat(Math.max(0, -before)));
      text.append(digits, Math.max(0, before), digits.length());
    }
    return text.toString();
  }
}
