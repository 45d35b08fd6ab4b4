package underfoot.working;

import java.util.Optional;

/** Reckons sums as they are written in the steps of a working; angles are in degrees. */
final class Arithmetic {
  private final String text;
  private int at;

  private Arithmetic(String text) {
    this.text = text.replace(" ", "");
  }

  /** What a sum comes to; empty where the text is no sum. */
  static Optional<Double> of(String text) {
    try {
      Arithmetic sum = new Arithmetic(text);
      double value = sum.sum();
      return sum.at == sum.text.length() ? Optional.of(value) : Optional.empty();
    } catch (NumberFormatException noSum) {
      return Optional.empty();
    }
  }

  private boolean next(String token) {
    boolean there = text.startsWith(token, at);
    at += there ? token.length() : 0;
    return there;
  }

  private double sum() {
    double value = product();
    while (true) {
      if (next("+")) {
        value += product();
      } else if (next("-")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (next("*")) {
        value *= power();
      } else if (next("/")) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  private double power() {
    if (next("-")) {
      return -power();
    }
    double base = one();
    return next("^") ? Math.pow(base, power()) : base;
  }

  private double one() {
    if (next("pi")) {
      return Math.PI;
    }
    if (next("sqrt")) {
      return Math.sqrt(one());
    }
    if (next("exp")) {
      return Math.exp(one());
    }
    if (next("ln")) {
      return Math.log(one());
    }
    if (next("sin")) {
      return Math.sin(Math.toRadians(one()));
    }
    if (next("(")) {
      double value = sum();
      if (!next(")")) {
        throw new NumberFormatException(text);
      }
      return value;
    }
    int from = at;
    while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    if (at < text.length() && text.charAt(at) == 'e' && at > from) {
      at++;
      next("-");
      while (at < text.length() && Character.isDigit(text.charAt(at))) {
        at++;
      }
    }
    return Double.parseDouble(text.substring(from, at));
  }
}
