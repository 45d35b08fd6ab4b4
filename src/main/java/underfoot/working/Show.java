package underfoot.working;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How numbers and quoted text are shown to a person. */
final class Show {
  private static final int FIGURES = 6;
  private static final double LARGEST_WHOLE = 1e6; // of six figures

  private Show() {}

  /**
   * Six significant figures, no needless noughts: {@code 2.5}, {@code 47460900}, {@code 1.2e-7}.
   */
  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size < LARGEST_WHOLE && value == Math.rint(value)) {
      return Long.toString((long) value); // most numbers are whole, and this is much quicker
    }
    if (size >= 1e-5 && size < 1e12) {
      return Digits.significant(value, FIGURES);
    }
    return String.format(Locale.ROOT, "%.5e", value);
  }

  /** As {@link #number}, in brackets where it is negative, to stand inside a sum. */
  static String term(double value) {
    return value < 0 ? "(" + number(value) + ")" : number(value);
  }

  /** Numbers in a row, at most twelve of them. */
  static String numbers(double[] values) {
    String shown =
        Arrays.stream(values).limit(12).mapToObj(Show::number).collect(Collectors.joining(", "));
    return values.length > 12 ? shown + ", ... (" + values.length + " in all)" : shown;
  }

  /** Words joined as in speech: {@code mm, cm or m}. */
  static String either(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
