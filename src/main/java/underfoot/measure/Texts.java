package underfoot.measure;

import java.util.List;
import underfoot.quantity.Words;
import underfoot.working.Digits;

/** Numbers and words as people read them. */
public final class Texts {
  private static final int FIGURES = 3;
  private static final double LARGEST_WHOLE = 1e15;
  private static final double MM_PER_M = 1000;
  private static final double TENTHS = 10;
  private static final int CENTS = 2;

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
    int places = unit.equals("C") ? 1 : 2; // no thermometer on site tells more
    String digits =
        Math.abs(number) < 1 ? Digits.significant(number, FIGURES) : Digits.rounded(number, places);
    return digits + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A sum of money, to the hundredth. */
  public static String money(double sum, String currency) {
    return cents(sum) + " " + currency;
  }

  /** A sum of money without its currency, to the hundredth. */
  public static String cents(double sum) {
    return Digits.fixed(sum, CENTS);
  }

  /** A length of rooms, given in mm and told in m. */
  public static String metres(double mm) {
    return of(mm / MM_PER_M, "m");
  }

  /** A length to a tenth of a millimetre. */
  public static String mm(double length) {
    return of(Math.round(length * TENTHS) / TENTHS, "mm");
  }

  /** A length to the nearest millimetre. */
  public static String whole(double mm) {
    return of(Math.rint(mm), "mm");
  }

  /** Words one after the other as they are said: {@code 1, 2 and 4}. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** From the least to the most in whole numbers; one of them where both are the same. */
  public static String wholes(double least, double most) {
    String from = of(Math.rint(least), "");
    String to = of(Math.rint(most), "");
    return from.equals(to) ? to : from + (least < 0 ? " to " : "–") + to;
  }

  /** A number to a tenth. */
  public static String tenths(double number) {
    return of(Math.round(number * 10) / 10.0, "");
  }

  /** Words as a sentence begins with them. */
  public static String capital(String words) {
    return Words.capital(words);
  }

  /** Words as a sentence of their own: with a full stop, unless they ask something. */
  public static String sentence(String words) {
    return words.isEmpty() || words.endsWith("?") ? words : words + '.';
  }

  /** Words as they stand within a sentence: with a small letter, unless they begin a name. */
  public static String lower(String words) {
    boolean plain = words.length() > 1 && !Character.isUpperCase(words.charAt(1));
    return plain ? Character.toLowerCase(words.charAt(0)) + words.substring(1) : words;
  }
}
