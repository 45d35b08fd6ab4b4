package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.LessonBook.Item;
import underfoot.knowledge.PriceBook;
import underfoot.measure.Texts;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.working.Digits;

/**
 * What the names of a question stand for on one floor. A lesson file gives each as {@code the joist
 * span in m} (a fact), {@code screw-tip-clearance} (a figure), {@code thickness of fibre-leveller},
 * {@code pack of tile adhesive}, {@code drawn 20 to 60 by 5 mm}, or {@code = area * depth in L}. A
 * number is taken as it is printed, so that all can be worked by hand from the sheet.
 */
final class Values {
  private static final int FIGURES = 4;
  private static final Pattern DRAWN =
      Pattern.compile("drawn # to # by # ?(.*)".replace("#", "(\\d+(?:\\.\\d+)?)"));

  private final Map<String, String> shown = new LinkedHashMap<>();
  private final Map<String, Double> numbers = new LinkedHashMap<>();
  private final Map<String, Double> exact = new LinkedHashMap<>();
  private final List<Figure> figures = new ArrayList<>();
  private final Figures known;
  private final List<String> steps = new ArrayList<>();

  private Values(Figures known) {
    this.known = known;
  }

  /**
   * The values of a kind of question.
   *
   * @return empty if the floor has none of something that is named
   */
  static Optional<Values> of(Item kind, Floor floor, PriceBook prices) {
    Values values = new Values(floor.knowledge().figures());
    values.shown.put("door", floor.door());
    for (Map.Entry<String, String> one : kind.named("values").entrySet()) {
      if (!values.take(one.getKey(), one.getValue(), floor, prices)) {
        return Optional.empty();
      }
    }
    return Optional.of(values);
  }

  private boolean take(String name, String source, Floor floor, PriceBook prices) {
    if (source.startsWith("= ")) {
      String[] parts = source.substring(2).split(" in ", 2);
      work(name, parts[0], parts.length > 1 ? parts[1] : "");
      return true;
    }
    Matcher drawn = DRAWN.matcher(source);
    if (drawn.matches()) {
      double least = Double.parseDouble(drawn.group(1));
      double step = Double.parseDouble(drawn.group(3));
      int most = (int) Math.round((Double.parseDouble(drawn.group(2)) - least) / step);
      put(name, least + step * floor.random().nextInt(most + 1), drawn.group(4));
      return true;
    }
    if (source.startsWith("pack of ")) {
      Optional<PriceBook.Price> price = prices.find(source.substring("pack of ".length()));
      price.ifPresent(one -> put(name, one.pack(), ""));
      return price.isPresent();
    }
    if (source.startsWith("thickness of ")) {
      String id = source.substring("thickness of ".length());
      for (StackLayer layer : floor.layers()) {
        if (layer.kind().id().equals(id)) {
          put(name, layer.thickness().mean(), "mm");
          return true;
        }
      }
      return false;
    }
    String[] parts = source.split(" in ", 2);
    String unit = parts.length > 1 ? parts[1] : "";
    if (parts[0].startsWith("the ")) {
      Fact fact = floor.fact(parts[0].substring(4));
      if (fact == null) {
        return false;
      }
      if (fact.hasNumber() && !unit.isEmpty()) {
        put(name, fact.number() / factor(unit), unit);
      } else {
        put(name, fact.text(), fact.number());
      }
      return true;
    }
    Figure figure = known.get(fill(parts[0]).toLowerCase(Locale.ROOT));
    figures.add(figure);
    if (unit.isEmpty()) {
      put(name, figure.text(), figure.value());
    } else {
      put(name, figure.number() / factor(unit), unit);
    }
    return true;
  }

  /** What one of a unit is in the unit that facts are held in. */
  private static double factor(String unit) {
    for (Dimension dimension : Dimension.values()) {
      boolean ours = dimension.units().stream().anyMatch(one -> one.symbol().equals(unit));
      if (ours && dimension != Dimension.TEMPERATURE) {
        try {
          return Quantity.parse("1 " + unit, dimension).value();
        } catch (NotAQuantity e) {
          throw new IllegalStateException(unit + " is no unit", e);
        }
      }
    }
    return 1;
  }

  private void put(String name, double number, String unit) {
    put(name, Texts.of(number, unit), number);
  }

  private void put(String name, String text, double number) {
    shown.put(name, text);
    String first = text.split(" ")[0];
    numbers.put(name, first.matches("-?[0-9]+(\\.[0-9]+)?") ? Double.parseDouble(first) : number);
    exact.put(name, number);
  }

  /** Works a step out and keeps how; gives its number as it is printed. */
  double work(String name, String formula, String unit) {
    double number = Double.parseDouble(Digits.significant(Formula.of(formula, numbers), FIGURES));
    exact.put(name, Formula.of(formula, exact));
    numbers.put(name, number);
    String text = number(number) + (unit.isEmpty() ? "" : " " + unit);
    Map<String, String> words = new LinkedHashMap<>(Formula.WORDS);
    numbers.keySet().forEach(one -> words.put(one, one.replace('_', ' ')));
    Map<String, String> figured = new LinkedHashMap<>(Formula.WORDS);
    numbers.forEach(
        (one, value) -> figured.put(one, Double.isNaN(value) ? shown.get(one) : number(value)));
    String plain = Formula.written(formula, figured);
    String written = Formula.written(formula, words);
    boolean same = plain.equals(number(number));
    steps.add(
        name.replace('_', ' ')
            + " = "
            + written
            + (written.equals(plain) || same ? "" : " = " + plain)
            + " = "
            + text);
    shown.put(name, text);
    return number;
  }

  private static String number(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : plain(number);
  }

  private static String plain(double number) {
    return new java.math.BigDecimal(Double.toString(number)).toPlainString();
  }

  /** Another formula's number, by the numbers as printed. */
  double number(String formula) {
    return Formula.of(formula, numbers);
  }

  /** What a formula comes to if nothing had been rounded on the way. */
  double unrounded(String formula) {
    return Formula.of(formula, exact);
  }

  /** What a formula comes to if one number were off by a share. */
  double shaken(String formula, String name, double share, Map<String, String> sources) {
    Map<String, Double> others = new LinkedHashMap<>(numbers);
    others.computeIfPresent(name, (key, value) -> value * (1 + share));
    sources.forEach(
        (one, source) -> {
          if (source.startsWith("= ")) {
            others.put(one, Formula.of(source.substring(2).split(" in ", 2)[0], others));
          }
        });
    return Formula.of(formula, others);
  }

  /** A text with its places filled, and the figures that it names in braces. */
  String fill(String text) {
    String said = known.filled(text);
    for (Map.Entry<String, String> one : shown.entrySet()) {
      said = said.replace('<' + one.getKey() + '>', one.getValue());
    }
    return said;
  }

  List<String> steps() {
    return List.copyOf(steps);
  }

  List<Figure> figures() {
    return List.copyOf(figures);
  }
}
