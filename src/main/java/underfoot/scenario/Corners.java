package underfoot.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Rectangles as people say them, written as the corners that a scenario has. */
public final class Corners {
  private static final Pattern SIDES =
      Pattern.compile("(.+?)\\s*(?:\\bx\\b|×|\\bby\\b|\\*)\\s*(.+)", Pattern.CASE_INSENSITIVE);

  /** Two sides, and how far along and across the nearest corner is. */
  private static final Pattern AT =
      Pattern.compile(
          "(.+?)\\s*(?:\\bx\\b|×|\\bby\\b|\\*)\\s*(.+?),?\\s+(?:at|from)\\s+(.+?)\\s*(?:,|\\band\\b)\\s*(.+)",
          Pattern.CASE_INSENSITIVE);

  /** Two opposite corners. */
  private static final Pattern FROM_TO =
      Pattern.compile(
          "(?:from\\s+)?(.+?)\\s*,\\s*(.+?)\\s+to\\s+(.+?)\\s*,\\s*(.+)", Pattern.CASE_INSENSITIVE);

  private static final Pattern BARE = Pattern.compile("-?[0-9]*\\.?[0-9]+");
  private static final Pattern UNIT = Pattern.compile("[^-0-9./ ].*$");

  private Corners() {}

  /**
   * Corners of a rectangle whose place is told: {@code 1.2 m x 0.5 m at 0.4 m, 0 m}, or {@code 0.4
   * m, 0 m to 1.6 m, 0.5 m}. A number without a unit has that of the last one that has.
   *
   * @param kind of the fact: all corners of {@link Kind#POINTS}, two of a {@link Kind#RECTANGLE}
   * @param words what was said
   * @return the corners as a scenario has them; empty if the words are not of such a form
   */
  public static Optional<String> placed(Kind kind, String words) {
    String text = Words.squeeze(words);
    if (kind != Kind.POINTS && kind != Kind.RECTANGLE || text.startsWith("[")) {
      return Optional.empty();
    }
    Matcher at = AT.matcher(text);
    Matcher fromTo = FROM_TO.matcher(text);
    try {
      if (at.matches()) {
        double[] mm = lengths(at);
        return written(kind, mm[2], mm[3], mm[2] + mm[0], mm[3] + mm[1]);
      }
      if (fromTo.matches()) {
        double[] mm = lengths(fromTo);
        return written(kind, mm[0], mm[1], mm[2], mm[3]);
      }
    } catch (NotAQuantity e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static double[] lengths(Matcher four) throws NotAQuantity {
    double[] mm = new double[4];
    String unit = "";
    for (int i = 4; i > 0; i--) { // "1.2 x 0.5 m": one unit said for both
      String one = four.group(i).strip();
      Matcher own = UNIT.matcher(one);
      if (own.find()) {
        unit = own.group();
      }
      boolean bare = BARE.matcher(one).matches();
      mm[i - 1] = Quantity.parse(bare ? one + ' ' + unit : one, Dimension.LENGTH).value();
    }
    return mm;
  }

  private static Optional<String> written(Kind kind, double x, double y, double toX, double toY) {
    return Optional.of(
        kind == Kind.RECTANGLE
            ? "[" + corner(x, y) + ", " + corner(toX, toY) + "]"
            : "["
                + String.join(", ", corner(x, y), corner(toX, y), corner(toX, toY), corner(x, toY))
                + "]");
  }

  private static String corner(double x, double y) {
    return "[" + mm(x) + ", " + mm(y) + "]";
  }

  static String mm(double length) {
    return length == Math.rint(length)
        ? String.format(Locale.ROOT, "%.0f mm", length)
        : String.format(Locale.ROOT, "%s mm", Math.round(length * 1000) / 1000.0);
  }

  /** All corners as a scenario has them. */
  static String of(List<Point> outline) {
    return outline.stream()
        .map(p -> corner(p.x(), p.y()))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** Corners of a room told by its sides or its corners. */
  static String ofRoom(String text) {
    List<String> sides = sides(text);
    if (sides.isEmpty()) {
      return text;
    }
    String x = sides.get(0);
    String y = sides.get(1);
    return "[[0 m, 0 m], [" + x + ", 0 m], [" + x + ", " + y + "], [0 m, " + y + "]]";
  }

  /** The two sides of a thing said at once, each with its unit; empty if the text is not so. */
  static List<String> sides(String words) {
    String text = Words.squeeze(words);
    Matcher sides = SIDES.matcher(text);
    if (text.startsWith("[") || !sides.matches()) {
      return List.of();
    }
    String y = sides.group(2).strip();
    String x = sides.group(1).strip();
    if (BARE.matcher(x).matches()) {
      // "3.6 x 2.4 m": one unit said for both.
      x = (x + ' ' + y.replaceFirst("^[-0-9./ ]+", "")).strip();
    }
    return List.of(x, y);
  }
}
