package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.From;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.MaterialItem;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.Workings;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Justification;
import underfoot.plan.QuantityLine;
import underfoot.quantity.Dimension;
import underfoot.scenario.FactDefinition;
import underfoot.working.Refused;
import underfoot.working.Result;
import underfoot.working.Working;

/** Questions that are worked out on the numbers of the floor. */
final class WorkedQuestions {
  private static final String OF_FACT = "the ";
  private static final double PER_CENT = 100;
  private static final double SAME = 1e-6;

  private final LessonSheet sheet;
  private final PriceBook prices;
  private final Facts facts;
  private final Figures figures;
  private final List<Question> questions = new ArrayList<>();

  private WorkedQuestions(LessonSheet sheet, PriceBook prices) {
    this.sheet = sheet;
    this.prices = prices;
    this.facts = sheet.assessment().factsOfChosen();
    this.figures = sheet.knowledge().figures();
  }

  static List<Question> of(LessonSheet sheet, PriceBook prices) {
    WorkedQuestions all = new WorkedQuestions(sheet, prices);
    Workings workings = Workings.standard();
    for (LessonBook.Item item : sheet.book().workings()) {
      all.working(item, workings.named(item.field("working")));
    }
    if (sheet.advice().builds()) {
      for (LessonBook.Item item : sheet.book().sums()) {
        if (!item.list("times").isEmpty()) {
          all.product(item);
        }
      }
      all.packs();
    }
    return all.questions;
  }

  /** Something a number is made of: how it is shown, its number, and the figure it is, if one. */
  private record Term(String shown, double number, Figure figure) {}

  /** A fact or a figure by how a lesson file names it; null if this floor has none. */
  private Term term(String named) {
    if (named.startsWith("'") && named.endsWith("'")) {
      return new Term(named.substring(1, named.length() - 1), Double.NaN, null);
    }
    if (!named.startsWith(OF_FACT)) {
      Figure figure = figures.get(named);
      return new Term(figure.text(), figure.value(), figure);
    }
    Fact fact = facts.find(named.substring(OF_FACT.length()));
    if (fact == null) {
      return null;
    }
    return new Term(shown(fact), fact.number(), null);
  }

  /** A fact as a working takes it: in the unit of the trade if the scenario used another. */
  private String shown(Fact fact) {
    FactDefinition definition = sheet.assessment().scenario().book().find(fact.key()).orElse(null);
    Dimension dimension = definition == null ? null : definition.dimension();
    boolean stated = fact.from() == From.SCENARIO && fact.hasNumber() && dimension != null;
    return stated ? Texts.of(fact.number(), dimension.base()) : fact.text();
  }

  private boolean fits(LessonBook.Item item) {
    String where = item.field("where");
    return where.isEmpty() || item.list("is").contains(facts.text(where));
  }

  private void working(LessonBook.Item item, Working working) {
    if (!fits(item)) {
      return;
    }
    Map<String, String> given = new LinkedHashMap<>();
    List<Figure> used = new ArrayList<>();
    String ask = item.field("ask");
    for (String pair : item.list("keys")) {
      String[] parts = pair.split(" = ", 2);
      Term term = term(parts[1]);
      if (term == null) {
        return;
      }
      given.put(parts[0], term.shown());
      ask = LessonSheet.fill(ask, parts[0], term.shown());
      if (term.figure() != null) {
        used.add(term.figure());
      }
    }
    Result result;
    try {
      result = working.read(given);
    } catch (Refused beyond) {
      return; // this floor's numbers are outside what the working takes
    }
    double number = result.value(item.field("result"));
    Fact same = facts.find(item.field("same as"));
    if (!item.field("same as").isEmpty()
        && (same == null || Math.abs(same.number() - number) > SAME)) {
      return;
    }
    List<String> steps = new ArrayList<>();
    for (int i = 0; i + 2 < result.steps().size(); i += 3) {
      steps.add(
          sheet.say(
              "lesson-step",
              "formula",
              result.steps().get(i),
              "numbers",
              result.steps().get(i + 1),
              "outcome",
              result.steps().get(i + 2)));
    }
    List<Justification> because = sheet.citing(item.field("about"));
    questions.add(
        sheet
            .draft(item)
            .ask(ask)
            .number(number, within(item), steps)
            .answer(amount(number, item))
            .because(because.subList(0, Math.min(2, because.size())))
            .figures(used)
            .source(result.source())
            .made());
  }

  private static String amount(double number, LessonBook.Item item) {
    boolean one = number == 1 && !item.field("one").isEmpty();
    return Texts.of(number, item.field(one ? "one" : "unit"));
  }

  private static double within(LessonBook.Item item) {
    String text = item.field("within");
    return Double.parseDouble(text.substring(0, text.indexOf('%')).strip()) / PER_CENT;
  }

  private void product(LessonBook.Item item) {
    List<String> layers = item.list("layer");
    Layer layer = layer(layers);
    if (!layers.isEmpty() && layer == null) {
      return;
    }
    double result = 1;
    List<String> terms = new ArrayList<>();
    String ask = item.field("ask");
    for (String named : item.list("times")) {
      Term term = term(named);
      if (term == null || Double.isNaN(term.number())) {
        return;
      }
      // The number is taken as it is shown, so that the sheet can be worked by hand.
      double shown = Double.parseDouble(term.shown().split(" ")[0]);
      result *= shown;
      terms.add(term.shown());
      ask = LessonSheet.fill(ask, named.replaceFirst("^the ", ""), term.shown());
    }
    List<Justification> because =
        layer == null ? sheet.citing(item.field("about")) : layer.reasons();
    String all = Texts.of(result, item.field("unit"));
    String step = sheet.say("lesson-product", "terms", String.join(" × ", terms), "result", all);
    questions.add(
        sheet
            .draft(item)
            .ask(ask)
            .number(result, within(item), List.of(step))
            .answer(all)
            .because(because)
            .figures(LessonSheet.figures(because))
            .made());
  }

  private Layer layer(List<String> ids) {
    for (Layer layer : sheet.advice().layers()) {
      if (ids.contains(layer.id())) {
        return layer;
      }
    }
    return null;
  }

  // --- packs

  private void packs() {
    List<Question> byDepth = new ArrayList<>();
    List<Question> byArea = new ArrayList<>();
    for (MaterialItem item : sheet.knowledge().materials().all()) {
      boolean depth = item.by() == MaterialItem.By.DEPTH;
      if (depth || item.by() == MaterialItem.By.AREA) {
        String kind =
            depth ? "packs-by-depth" : item.rate().isEmpty() ? "packs-of-pieces" : "packs-by-area";
        packs(item, sheet.book().sum(kind), depth).ifPresent((depth ? byDepth : byArea)::add);
      }
    }
    questions.addAll(sheet.drawn(byDepth, 1));
    questions.addAll(sheet.drawn(byArea, 1));
  }

  private Optional<Question> packs(MaterialItem item, LessonBook.Item sum, boolean depth) {
    Layer layer = layer(item.forLayers());
    List<QuantityLine> lines =
        sheet.advice().consequences().quantities().stream()
            .filter(line -> line.item().equals(item.item()) && line.packs() > 0)
            .toList();
    PriceBook.Price price = prices.find(item.item()).orElse(null);
    Fact area = facts.find("area");
    if (layer == null || lines.size() != 1 || price == null || area == null) {
      return Optional.empty();
    }
    Term waste = item.waste().isEmpty() ? new Term("0 %", 0, null) : term(item.waste());
    Term rate = item.rate().isEmpty() ? new Term("1 " + item.unit(), 1, null) : term(item.rate());
    if (waste == null || rate == null) {
      return Optional.empty();
    }
    String thickness = Texts.of(layer.thickness().mean(), "mm");
    List<String> terms = new ArrayList<>(List.of(area.text()));
    double amount = shown(area.text());
    if (depth) {
      amount *= shown(thickness);
      terms.add(thickness);
    }
    amount *= rate.number() * (1 + waste.number() / PER_CENT);
    if (!item.rate().isEmpty()) {
      terms.add(rate.shown());
    }
    terms.add("(1 + " + waste.shown() + ")");
    int count = (int) Math.ceil(amount / price.pack() - 1e-9);
    if (count != lines.get(0).packs()) {
      return Optional.empty(); // rounding to what is shown would change the answer
    }
    String pack = Texts.of(price.pack(), item.unit());
    String total = Texts.of(amount, item.unit());
    List<Figure> used = new ArrayList<>();
    for (Term one : List.of(rate, waste)) {
      if (one.figure() != null) {
        used.add(one.figure());
      }
    }
    String ask =
        LessonSheet.fill(
            sum.field("ask"),
            "item",
            Texts.capital(item.item()),
            "pack",
            pack,
            "rate",
            rate.shown(),
            "thickness",
            thickness,
            "area",
            area.text(),
            "waste",
            waste.shown());
    String product =
        sheet.say("lesson-product", "terms", String.join(" × ", terms), "result", total);
    String up =
        sheet.say(
            "lesson-round-up",
            "amount",
            total,
            "pack",
            pack,
            "exact",
            Texts.of(amount / price.pack(), ""),
            "count",
            Integer.toString(count));
    return Optional.of(
        sheet
            .draft(sum)
            .ask(ask)
            .number(count, within(sum), List.of(product, up))
            .answer(amount(count, sum))
            .because(layer.reasons())
            .figures(used)
            .made());
  }

  private static double shown(String text) {
    return Double.parseDouble(text.split(" ")[0]);
  }
}
