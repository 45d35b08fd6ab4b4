package underfoot.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them. */
public final class Texts {
  private static final MathContext THREE_FIGURES = new MathContext(3);
  private static final double MM_PER_M = 1000;

  private Texts() {}

  /**
   * A number with its unit, to at most two decimals, or three figures if that is more; words for
   * what is no number.
   */
  public static String of(double number, String unit) {
    if (!Double.isFinite(number)) {
      return Double.isNaN(number) ? "unknown" : "without end";
    }
    BigDecimal exact = new BigDecimal(number);
    BigDecimal round =
        Math.abs(number) < 1 ? exact.round(THREE_FIGURES) : exact.setScale(2, RoundingMode.HALF_UP);
    String digits = round.signum() == 0 ? "0" : round.stripTrailingZeros().toPlainString();
    return digits + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A length of rooms, given in mm and told in m. */
  public static String metres(double mm) {
    return of(mm / MM_PER_M, "m");
  }
}
