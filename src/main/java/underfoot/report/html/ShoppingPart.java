package underfoot.report.html;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.measure.Texts;
import underfoot.plan.Cost;
import underfoot.plan.Justification;
import underfoot.plan.ShoppingLine;
import underfoot.report.CostText;
import underfoot.report.ShoppingText;

/** What to buy, shelf by shelf as on the list for the shop, with what it costs and why. */
final class ShoppingPart extends HtmlParts {
  private final Optional<Cost> cost;
  private final Map<String, Double> costs = new LinkedHashMap<>();
  private final Map<String, List<Justification>> because = new HashMap<>();

  ShoppingPart(HtmlParts page) {
    super(page);
    this.cost = after.cost();
    cost.ifPresent(all -> all.lines().forEach(line -> costs.put(line.item(), line.cost())));
    after.quantities().forEach(line -> because.put(line.item(), line.because()));
  }

  void write() {
    if (cost.isPresent()) {
      table.open("table-materials", "col-thing", "col-buy", "col-cost");
    } else {
      table.open("table-materials", "col-thing", "col-buy");
    }
    String across = cost.isPresent() ? "3" : "2";
    ShoppingText.shelves(after.shopping())
        .forEach(
            (shelf, lines) -> {
              out.open("tr", "class", "shelf");
              out.element("th", Texts.capital(shelf), "scope", "rowgroup", "colspan", across);
              out.end("tr");
              lines.forEach(this::line);
            });
    cost.ifPresent(this::total);
    table.close();
    faint("list-sheets-first");
  }

  private void line(ShoppingLine line) {
    out.open("tr");
    out.open("th", "scope", "row");
    box(ShoppingText.what(line), true);
    String purpose = ShoppingText.purpose(line, speech);
    if (!purpose.isEmpty()) {
      out.open("span", "class", "for faint").own(purpose).close("span");
    }
    Optional.ofNullable(because.get(line.item())).ifPresent(chains::of);
    out.close("th");
    table.number(ShoppingText.buy(line, speech));
    if (cost.isPresent()) {
      Double sum = costs.remove(line.item());
      table.number(sum == null ? "–" : Texts.cents(sum));
    }
    out.end("tr");
  }

  /** What is paid for besides, and the sum; invented prices are called so beside it. */
  private void total(Cost all) {
    for (Cost.Line line : all.lines()) {
      if (costs.containsKey(line.item())) {
        sum(line.item(), Texts.cents(line.cost()), "");
      }
    }
    sum(
        speech.say("total", "currency", CostText.unit(all, speech)),
        all.whole() ? Texts.cents(all.total()) : "–",
        "total");
  }

  private void sum(String what, String amount, String styled) {
    out.open("tr", "class", styled);
    out.element("th", what, "scope", "row", "colspan", "2");
    out.open("td", "class", "n").element("strong", amount).close("td");
    out.end("tr");
  }
}
