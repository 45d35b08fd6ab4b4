package underfoot.measure;

import java.util.Locale;

/** Numbers as people read them. */
public final class Texts {
  private Texts() {}

  /** A number with its unit, to at most two decimals. */
  public static String of(double number, String unit) {
    String digits = String.format(Locale.ROOT, "%.2f", number);
    digits = digits.replaceAll("0+$", "").replaceAll("\\.$", "");
    return (digits.equals("-0") ? "0" : digits) + (unit.isEmpty() ? "" : " " + unit);
  }
}
