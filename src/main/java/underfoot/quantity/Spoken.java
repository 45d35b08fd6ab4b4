package underfoot.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Amounts as people say them: whole millimetres, half days, whole kilogrammes. Small ones are told
 * finer, so that a layer of 2.5 mm stays one. What was worked out exactly is kept elsewhere.
 */
public final class Spoken {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?<!\\w)(?<!\\.)(\\d+\\.\\d+) (mm|m2|mL|m|L|%|days|kg/m2|kg|hours|h|C)(?![\\w/]| per)");

  /** From what number on a unit is told in wholes; below it, in the parts given. */
  private static final Map<String, Step> STEPS =
      Map.ofEntries(
          Map.entry("mm", new Step(20, 2, 1)),
          Map.entry("%", new Step(10, 10, 1)),
          Map.entry("kg", new Step(10, 10, 1)),
          Map.entry("kg/m2", new Step(10, 10, 1)),
          Map.entry("days", new Step(20, 2, 1)),
          Map.entry("h", new Step(20, 2, 1)),
          Map.entry("hours", new Step(20, 2, 1)),
          Map.entry("C", new Step(0, 1, 1)),
          Map.entry("mL", new Step(0, 1, 1)),
          Map.entry("L", new Step(20, 10, 1)),
          Map.entry("m2", new Step(100, 10, 1)),
          Map.entry("m", new Step(100, 100, 10)));

  private Spoken() {}

  private record Step(double from, int below, int above) {
    double nearest(double number) {
      int parts = Math.abs(number) < from ? below : above;
      return Math.rint(number * parts) / parts;
    }
  }

  /** The amounts of a text rounded as people say them; other words and numbers stay. */
  public static String of(String text) {
    if (text.indexOf('.') < 0) {
      return text;
    }
    Matcher found = AMOUNT.matcher(text);
    StringBuilder out = new StringBuilder();
    while (found.find()) {
      double number = Double.parseDouble(found.group(1));
      double said = STEPS.get(found.group(2)).nearest(number);
      // What would round to nothing is told as it is.
      String digits = said == 0 ? found.group(1) : digits(said);
      found.appendReplacement(out, Matcher.quoteReplacement(digits + " " + found.group(2)));
    }
    return found.appendTail(out).toString();
  }

  private static String digits(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
