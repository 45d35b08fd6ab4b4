package underfoot.lesson;

import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Arithmetic as a lesson file writes it: numbers, names, {@code + - * / ^}, brackets, and {@code
 * sqrt ln exp abs up down min max}, where up and down are to the next whole number.
 */
final class Formula {
  private static final double HAIR = 1e-9;
  private static final Map<String, DoubleUnaryOperator> OF_ONE =
      Map.of(
          "sqrt", Math::sqrt,
          "ln", Math::log,
          "exp", Math::exp,
          "abs", Math::abs,
          "up", x -> Math.ceil(x - HAIR),
          "down", x -> Math.floor(x + HAIR));

  /** How people call what is reckoned. */
  static final Map<String, String> WORDS =
      Map.of(
          "sqrt", "square root of ",
          "up", "rounded up ",
          "down", "rounded down ",
          "abs", "difference ",
          "min", "the lesser of ",
          "max", "the greater of ");

  private static final Map<String, DoubleBinaryOperator> OF_TWO =
      Map.of("min", Math::min, "max", Math::max);

  private final String text;
  private final Map<String, Double> values;
  private int at;

  private Formula(String text, Map<String, Double> values) {
    this.text = text;
    this.values = values;
  }

  /**
   * Works a formula out.
   *
   * @param text the formula
   * @param values what its names stand for
   * @throws IllegalArgumentException if it is no formula, or a name stands for nothing
   */
  static double of(String text, Map<String, Double> values) {
    Formula formula = new Formula(text.replace(" ", ""), values);
    double result = formula.sum();
    if (formula.at < formula.text.length()) {
      throw formula.fault("an operator");
    }
    return result;
  }

  private IllegalArgumentException fault(String needed) {
    return new IllegalArgumentException(
        "in the formula '" + text + "' " + needed + " belongs at character " + (at + 1));
  }

  private boolean takes(char c) {
    boolean here = at < text.length() && text.charAt(at) == c;
    at += here ? 1 : 0;
    return here;
  }

  private double sum() {
    double sum = product();
    while (true) {
      if (takes('+')) {
        sum += product();
      } else if (takes('-')) {
        sum -= product();
      } else {
        return sum;
      }
    }
  }

  private double product() {
    double product = power();
    while (true) {
      if (takes('*')) {
        product *= power();
      } else if (takes('/')) {
        product /= power();
      } else {
        return product;
      }
    }
  }

  private double power() {
    double base = atom();
    return takes('^') ? Math.pow(base, power()) : base;
  }

  private double atom() {
    if (takes('-')) {
      return -power();
    }
    if (takes('(')) {
      return closed(sum());
    }
    int from = at;
    while (at < text.length() && isNumber(text.charAt(at))) {
      at++;
    }
    if (at > from) {
      return Double.parseDouble(text.substring(from, at));
    }
    while (at < text.length() && isName(text.charAt(at))) {
      at++;
    }
    String name = text.substring(from, at);
    if (OF_ONE.containsKey(name) && takes('(')) {
      return OF_ONE.get(name).applyAsDouble(closed(sum()));
    }
    if (OF_TWO.containsKey(name) && takes('(')) {
      double first = sum();
      if (!takes(',')) {
        throw fault("a comma");
      }
      return OF_TWO.get(name).applyAsDouble(first, closed(sum()));
    }
    Double value = values.get(name);
    if (value == null) {
      at = from;
      throw fault("a number or a name that is known");
    }
    return value;
  }

  private double closed(double inner) {
    if (!takes(')')) {
      throw fault("a closing bracket");
    }
    return inner;
  }

  private static boolean isNumber(char c) {
    return c >= '0' && c <= '9' || c == '.';
  }

  static boolean isName(char c) {
    return Character.isLetterOrDigit(c) || c == '_';
  }

  /** The formula as people write it, each name in the words given for it. */
  static String written(String text, Map<String, String> words) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); ) {
      int end = i;
      while (end < text.length() && isName(text.charAt(end))) {
        end++;
      }
      if (end > i) {
        String name = text.substring(i, end);
        out.append(words.getOrDefault(name, name));
        i = end;
      } else {
        char c = text.charAt(i++);
        out.append(c == '*' ? "×" : c == '-' ? "−" : String.valueOf(c));
      }
    }
    return out.toString();
  }
}
