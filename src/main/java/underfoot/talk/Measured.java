package underfoot.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import underfoot.knowledge.Sayings;
import underfoot.quantity.Dimension;

/**
 * A number said, with its unit if one was said.
 *
 * @param from the first token
 * @param to the token after the last
 * @param first the number, or the smaller end of a range, with its unit; without one if none was
 * @param second the other side of a pair, the other end of a range; empty if there is none
 * @param form one, pair, range or square
 */
record Measured(int from, int to, Amount first, Amount second, Form form) {
  /** What was said of how many numbers. */
  enum Form {
    ONE,
    PAIR,
    RANGE,
    SQUARE
  }

  /**
   * A number as it was said.
   *
   * @param number the number
   * @param unit its unit; empty if none was said
   * @param more a smaller part in a smaller unit, such as {@code 6 in}; empty if there is none
   */
  record Amount(String number, String unit, String more) {
    Amount in(String otherUnit) {
      return unit.isEmpty() ? new Amount(number, otherUnit, more) : this;
    }

    String text() {
      return (number + ' ' + unit + ' ' + more).strip();
    }
  }

  /** Whether a unit was said that measures this. */
  boolean measures(Dimension dimension) {
    return first.unit().isEmpty() || dimension.unit(first.unit()) != null;
  }

  /** Finds the numbers of a saying. */
  static final class Finder {
    private final Set<String> times;
    private final Set<String> square;
    private final Set<String> range;
    private final Set<String> between;
    private final List<String> tokens;
    private int at;

    Finder(Sayings sayings, List<String> tokens) {
      this.times = Set.copyOf(sayings.words("times"));
      this.square = Set.copyOf(sayings.words("square"));
      this.range = Set.copyOf(sayings.words("range"));
      this.between = Set.copyOf(sayings.words("between"));
      this.tokens = tokens;
    }

    List<Measured> all() {
      List<Measured> all = new ArrayList<>();
      int i = 0;
      while (i < tokens.size()) {
        int from = i;
        at = i;
        boolean ends = between.contains(token());
        at += ends ? 1 : 0;
        Amount first = amount();
        if (first == null) {
          i++;
          continue;
        }
        Measured said = rest(from, first, ends);
        all.add(said);
        i = said.to();
      }
      return all;
    }

    private Measured rest(int from, Amount first, boolean ends) {
      int end = at;
      if (times.contains(token())) {
        at++;
        Amount second = amount();
        if (second != null) {
          Amount both = first.in(second.unit());
          return new Measured(from, at, both, second.in(both.unit()), Form.PAIR);
        }
      } else if (range.contains(token()) && (ends || !token().equals("and"))) {
        at++;
        Amount second = amount();
        if (second != null) {
          return new Measured(from, at, first.in(second.unit()), second, Form.RANGE);
        }
      }
      at = end;
      if (square.contains(token())) {
        return new Measured(from, at + 1, first, first, Form.SQUARE);
      }
      return new Measured(from, end, first, new Amount("", "", ""), Form.ONE);
    }

    private String token() {
      return at < tokens.size() ? tokens.get(at) : "";
    }

    private static boolean isNumber(String token) {
      return !token.isEmpty() && token.matches("-?[0-9 ./]*[0-9]\\.?");
    }

    private Amount amount() {
      while (token().equals("~")) {
        at++;
      }
      if (!isNumber(token())) {
        return null;
      }
      String number = token();
      at++;
      String unit = unit();
      String more = "";
      if (unit.equals("ft") && isNumber(token()) && !times.contains(after())) {
        String inches = token();
        at++;
        String small = unit();
        more = inches + " in";
        if (!small.isEmpty() && !small.equals("in")) { // no inches after all
          at -= 2;
          more = "";
        }
      } else if (unit.equals("ft") && isNumber(token())) {
        more = token() + " in"; // 8 ft 6 by 12 ft
        at++;
      }
      return new Amount(number, unit, more);
    }

    private String after() {
      return at + 1 < tokens.size() ? tokens.get(at + 1) : "";
    }

    /** The unit that stands here, as the table of units writes it; empty if none does. */
    private String unit() {
      for (int words = 2; words > 0; words--) {
        if (at + words <= tokens.size()) {
          String text = String.join(" ", tokens.subList(at, at + words));
          String symbol = symbol(text);
          boolean place = text.equals("in") && List.of("the", "a", "my", "our").contains(after());
          if (!symbol.isEmpty() && !place && !times.contains(text)) {
            at += words;
            return symbol;
          }
        }
      }
      return "";
    }

    private static String symbol(String text) {
      return Dimension.ofUnit(text)
          .filter(dimension -> dimension != Dimension.MONEY)
          .map(dimension -> dimension.unit(text).symbol())
          .orElse("");
    }
  }
}
