package underfoot.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Numbers as people read them. */
public final class Texts {
  private static final MathContext THREE_FIGURES = new MathContext(3);

  private Texts() {}

  /** A number with its unit, to at most two decimals, or three figures if that is more. */
  public static String of(double number, String unit) {
    String digits;
    if (number != 0 && Math.abs(number) < 1) {
      digits = new BigDecimal(number).round(THREE_FIGURES).toPlainString();
    } else {
      digits = String.format(Locale.ROOT, "%.2f", number);
    }
    if (digits.contains(".")) {
      digits = digits.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return (digits.equals("-0") ? "0" : digits) + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A length of rooms, given in mm and told in m. */
  public static String metres(double mm) {
    return of(mm / 1000, "m");
  }
}
