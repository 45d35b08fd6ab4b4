package underfoot.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit.
 *
 * @param value the value in the dimension's base unit (for money: in the currency it was written
 *     in)
 * @param dimension what it measures
 * @param unit the symbol of the unit it was written in, the first one if it was written in several
 * @param text the quantity as written, spaces and unit signs made uniform, such as {@code 12 ft 6
 *     in}
 */
public record Quantity(double value, Dimension dimension, String unit, String text) {

  /** No quantity of a floor needs more; beyond it a number is a slip of the hand. */
  private static final double MOST = 1e12;

  private static final double FINEST = 1e5;

  /** Signs between two numbers that make a range of them. */
  private static final String RANGE = "-±+";

  /** What may stand before the n of a fall, and of a share of a span. */
  private static final Map<Dimension, Pattern> BEFORE_N =
      Map.of(
          Dimension.GRADIENT, Pattern.compile("1 ?: ?|1 in "),
          Dimension.SPAN_SHARE, Pattern.compile("(?i)(?:1|l|span) ?/ ?"));

  private static final Pattern EXPONENT = Pattern.compile("[eE][+-]?[0-9]{1,3}(?![0-9])");

  /**
   * Reads a quantity: a decimal number or a fraction, then a unit, as in {@code 20 mm}, {@code 3/4
   * in}, {@code 1 1/2 in}, {@code 12 ft 6 in}, {@code 65 %}, {@code £700}.
   *
   * @param text what was written
   * @param dimension what it must measure
   * @return the quantity, its value in the base unit
   * @throws NotAQuantity if the text is not a quantity of this dimension; the message says why, in
   *     plain words
   */
  public static Quantity parse(String text, Dimension dimension) throws NotAQuantity {
    return new Parser(text, dimension).parse();
  }

  /**
   * Reads a quantity that may be a bare number.
   *
   * @param text what was written
   * @param dimension what it must measure
   * @param unit the unit of a number without one
   * @return the quantity
   * @throws NotAQuantity as {@link #parse(String, Dimension)}
   */
  public static Quantity parse(String text, Dimension dimension, String unit) throws NotAQuantity {
    try {
      return parse(parse(text, Dimension.NUMBER).text() + " " + unit, dimension);
    } catch (NotAQuantity notBare) {
      return parse(text, dimension);
    }
  }

  /**
   * A number and what is counted, whatever it is: {@code 20 kg}, {@code 3 sheets}.
   *
   * @param number the number as written
   * @param of the words after it; may be empty
   */
  public record Count(double number, String of) {}

  /**
   * Reads a number and the words after it.
   *
   * @throws NotAQuantity if the text does not begin with a number
   */
  public static Count count(String text) throws NotAQuantity {
    return new Parser(text, Dimension.NUMBER).count();
  }

  @Override
  public String toString() {
    return text;
  }

  /** Reads one text from left to right. */
  private static final class Parser {
    private final String written;
    private final String s;
    private final Dimension dimension;
    private int at;

    Parser(String text, Dimension dimension) {
      this.written = text;
      this.s = uniform(text);
      this.dimension = dimension;
    }

    Quantity parse() throws NotAQuantity {
      if (s.isEmpty()) {
        throw fault("nothing is written, but " + dimension.phrase() + " is needed", "");
      }
      if (dimension == Dimension.MONEY) {
        Quantity sum = currencyFirst();
        if (sum != null) {
          return sum;
        }
      }
      if (dimension == Dimension.GRADIENT && s.endsWith("%")) {
        return gradient(new Parser(written, Dimension.RATIO).parse());
      }
      if (BEFORE_N.containsKey(dimension)) {
        Matcher before = BEFORE_N.get(dimension).matcher(s);
        at = before.lookingAt() ? before.end() : 0;
      }
      double total = 0;
      String firstUnit = null;
      Unit before = null;
      boolean negative = false;
      StringBuilder canonical = new StringBuilder();
      do {
        int start = at;
        if (firstUnit == null) {
          negative = sign();
        }
        double number = number(start);
        String digits = s.substring(start, at).trim();
        if (digits.startsWith("+")) {
          digits = digits.substring(1).trim();
        }
        spaces();
        String unitText = unitText();
        if (dimension.units().isEmpty()) {
          if (!unitText.isEmpty() || at < s.length()) {
            throw fault(quoted() + " has a unit, but a plain number is needed", digits);
          }
          return new Quantity(signed(negative, number), dimension, "", digits);
        }
        Unit unit = unit(unitText, digits);
        if (before != null && (unit.factor() >= before.factor() || unit.offset() != 0)) {
          throw fault(quoted() + " is not one quantity", "");
        }
        before = unit;
        if (firstUnit == null) {
          firstUnit = unit.symbol();
          total = (signed(negative, number) + unit.offset()) * unit.factor();
        } else {
          total += signed(negative, number * unit.factor());
          canonical.append(' ');
        }
        canonical.append(digits).append(' ').append(unit.symbol());
        spaces();
      } while (at < s.length());
      // No length is known to a hundred-thousandth of a millimetre; 1.338582677 in is 34 mm.
      boolean length = dimension == Dimension.LENGTH;
      double fine = length ? Math.rint(total * FINEST) / FINEST : total;
      return new Quantity(fine, dimension, firstUnit, canonical.toString());
    }

    Count count() throws NotAQuantity {
      boolean negative = sign();
      double number = signed(negative, number(at));
      return new Count(number, s.substring(at).trim());
    }

    private Quantity gradient(Quantity percent) throws NotAQuantity {
      if (!(percent.value() > 0)) {
        throw fault(quoted() + " does not fall", "");
      }
      return new Quantity(100 / percent.value(), dimension, "%", percent.text());
    }

    /** A sum of money with its currency in front, or null if the text does not begin with one. */
    private Quantity currencyFirst() throws NotAQuantity {
      int end = 0;
      while (end < s.length() && !isDigit(s.charAt(end)) && s.charAt(end) != '-') {
        end++;
      }
      Unit currency = dimension.unit(s.substring(0, end).trim());
      if (currency == null) {
        return null;
      }
      at = end;
      boolean negative = sign();
      double number = number(end);
      String digits = s.substring(end, at).trim();
      if (at < s.length()) {
        throw fault(quoted() + " is not one sum of money", digits + " " + currency.symbol());
      }
      return new Quantity(
          signed(negative, number), dimension, currency.symbol(), digits + " " + currency.symbol());
    }

    private boolean sign() {
      if (at < s.length() && (s.charAt(at) == '-' || s.charAt(at) == '+')) {
        boolean negative = s.charAt(at) == '-';
        at++;
        spaces();
        return negative;
      }
      return false;
    }

    private double number(int start) throws NotAQuantity {
      int first = at;
      double number = decimal();
      if (at == first) {
        throw fault(notANumber(), "");
      }
      if (at < s.length() && s.charAt(at) == ',') {
        throw comma(start);
      }
      int whole = at;
      if (at < s.length() && s.charAt(at) == '/') {
        at++;
        number = over(number, start);
      } else {
        // A fraction after a whole number: "1 1/2" or "1-1/2".
        if (at < s.length() && s.charAt(at) == '-') {
          at++;
        }
        spaces();
        int top = at;
        double numerator = decimal();
        if (at > top && at < s.length() && s.charAt(at) == '/') {
          at++;
          number += over(numerator, start);
        } else {
          at = whole;
        }
      }
      if (!(number <= MOST)) {
        throw fault(quoted() + " is larger than any floor could need", "");
      }
      return number;
    }

    private double over(double numerator, int start) throws NotAQuantity {
      int first = at;
      double denominator = decimal();
      if (at == first || denominator == 0) {
        throw fault(quoted() + " holds a fraction without a proper lower part", "");
      }
      return numerator / denominator;
    }

    /** Digits with at most one decimal point, and at least one digit; else nothing is consumed. */
    private double decimal() {
      int start = at;
      boolean digit = false;
      boolean point = false;
      while (at < s.length()) {
        char c = s.charAt(at);
        if (isDigit(c)) {
          digit = true;
        } else if (c == '.' && !point) {
          point = true;
        } else {
          break;
        }
        at++;
      }
      if (!digit) {
        at = start;
        return Double.NaN;
      }
      Matcher exponent = EXPONENT.matcher(s).region(at, s.length());
      at = exponent.lookingAt() ? exponent.end() : at;
      return Double.parseDouble(s.substring(start, at));
    }

    private NotAQuantity comma(int start) {
      String point = s.substring(0, at) + "." + s.substring(at + 1);
      String none = s.substring(0, at) + s.substring(at + 1);
      boolean thousands = Words.mayBeThousands(s.substring(at + 1));
      return fault(
          quoted() + " has a comma in its number; decimals are written with a point",
          thousands ? none + ", or " + point : point);
    }

    /** The unit that begins here: up to the next number, or to the end. */
    private String unitText() {
      int start = at;
      if (at < s.length() && (s.charAt(at) == '\'' || s.charAt(at) == '"')) {
        at++;
        if (at < s.length() && s.charAt(at) == '\'' && s.charAt(at - 1) == '\'') {
          at++;
        }
        return s.substring(start, at);
      }
      while (at < s.length()) {
        if (isDigit(s.charAt(at)) && numberBeginsHere(start)) {
          break;
        }
        at++;
      }
      return s.substring(start, at).trim();
    }

    /** Whether a digit within a unit's text begins a new number ("12 ft 6 in", "12ft6in"). */
    private boolean numberBeginsHere(int start) {
      if (at == start) {
        return false;
      }
      if (s.charAt(at - 1) == ' ') {
        return true;
      }
      boolean last = at + 1 == s.length() || !isLetterOrDigit(s.charAt(at + 1));
      return !last && dimension.unit(s.substring(start, at).trim()) != null;
    }

    private Unit unit(String unitText, String digits) throws NotAQuantity {
      if (unitText.isEmpty()) {
        throw fault(quoted() + " has no unit", "");
      }
      Unit unit = dimension.unit(unitText);
      if (unit != null) {
        return unit;
      }
      for (Dimension other : Dimension.values()) {
        if (other != dimension && other.unit(unitText) != null) {
          throw fault(
              quoted() + " is " + other.phrase() + ", but " + dimension.phrase() + " is needed",
              "");
        }
      }
      if (RANGE.indexOf(unitText.charAt(0)) >= 0 || unitText.equals("to")) {
        throw fault(quoted() + " is a range, but one value is needed", "");
      }
      String near = Nearest.to(unitText.toLowerCase(Locale.ROOT), dimension.spellings());
      throw fault(
          Words.quote(unitText) + " is not a unit of " + dimension.word(),
          near.isEmpty() ? "" : digits + " " + dimension.unit(near).symbol());
    }

    private String notANumber() {
      String lower = s.toLowerCase(Locale.ROOT);
      for (String about : new String[] {"about ", "approx", "circa ", "ca ", "~", "<", ">", "≈"}) {
        if (lower.startsWith(about)) {
          return quoted() + " is not one plain value; write the value itself";
        }
      }
      return quoted() + " does not begin with a number";
    }

    private NotAQuantity fault(String message, String suggestion) {
      return new NotAQuantity(message, suggestion);
    }

    private String quoted() {
      return Words.quote(written.trim());
    }

    private void spaces() {
      while (at < s.length() && s.charAt(at) == ' ') {
        at++;
      }
    }

    private static boolean isDigit(char c) {
      return c >= '0' && c <= '9';
    }

    private static boolean isLetterOrDigit(char c) {
      return Character.isLetterOrDigit(c);
    }

    private static double signed(boolean negative, double number) {
      return negative && number != 0 ? -number : number;
    }

    /** Makes signs and spaces uniform: typographic minus, primes, fractions and hard spaces. */
    private static String uniform(String text) {
      StringBuilder out = null;
      for (int i = 0; i < text.length(); i++) {
        char c = text.charAt(i);
        String to =
            switch (c) {
              case '\u2212', '\u2013' -> "-";
              case '\u2032', '\u2019', '\u2018' -> "'";
              case '\u2033', '\u201d', '\u201c' -> "\"";
              case '\u00b7', '\u22c5' -> ".";
              case '\u00a0', '\u2009', '\u202f', '\t', '\n', '\r' -> " ";
              case '\u00bd' -> " 1/2";
              case '\u00bc' -> " 1/4";
              case '\u00be' -> " 3/4";
              case '\u215b' -> " 1/8";
              case '\u215c' -> " 3/8";
              case '\u215d' -> " 5/8";
              case '\u215e' -> " 7/8";
              default -> null;
            };
        if (to != null && out == null) {
          out = new StringBuilder(text.length() + 8).append(text, 0, i);
        }
        if (out != null) {
          out.append(to == null ? String.valueOf(c) : to);
        }
      }
      return Words.squeeze(out == null ? text : out.toString());
    }
  }
}
