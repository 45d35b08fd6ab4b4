package underfoot.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers and words as people read them. */
public final class Texts {
  private static final MathContext THREE_FIGURES = new MathContext(3);
  private static final double LARGEST_WHOLE = 1e15;
  private static final double MM_PER_M = 1000;
  private static final double TENTHS = 10;

  private Texts() {}

  /**
   * A number with its unit, to at most two decimals (degrees to one), or three figures if that is
   * more; words for what is no number.
   */
  public static String of(double number, String unit) {
    if (!Double.isFinite(number)) {
      return Double.isNaN(number) ? "unknown" : "without end";
    }
    if (number == Math.rint(number) && Math.abs(number) < LARGEST_WHOLE) {
      return (long) number + (unit.isEmpty() ? "" : " " + unit); // much quicker
    }
    BigDecimal exact = new BigDecimal(number);
    int places = unit.equals("C") ? 1 : 2; // no thermometer on site tells more
    BigDecimal round =
        Math.abs(number) < 1
            ? exact.round(THREE_FIGURES)
            : exact.setScale(places, RoundingMode.HALF_UP);
    String digits = round.signum() == 0 ? "0" : round.stripTrailingZeros().toPlainString();
    return digits + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A length of rooms, given in mm and told in m. */
  public static String metres(double mm) {
    return of(mm / MM_PER_M, "m");
  }

  /** A length to a tenth of a millimetre. */
  public static String mm(double length) {
    return of(Math.round(length * TENTHS) / TENTHS, "mm");
  }

  /** Words as a sentence begins with them. */
  public static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Words as they stand within a sentence: with a small letter, unless they begin a name. */
  public static String lower(String words) {
    boolean plain = words.length() > 1 && !Character.isUpperCase(words.charAt(1));
    return plain ? Character.toLowerCase(words.charAt(0)) + words.substring(1) : words;
  }
}
