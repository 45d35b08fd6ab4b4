package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.ShoppingLine;
import underfoot.report.CostText;
import underfoot.report.HtmlPage;
import underfoot.report.HtmlWriter;
import underfoot.report.ShoppingText;

/** The list for the shop as a page of A4. */
public final class ListPage {
  private ListPage() {}

  /**
   * The page.
   *
   * @param advice the advice
   * @param speech the phrase book
   * @param points the size of its writing, pt
   * @return well-formed XHTML
   */
  public static String of(Advice advice, Phrases speech, double points) {
    String title = speech.say("list-title", "scenario", advice.scenario());
    HtmlWriter out = HtmlPage.paper(title, points);
    out.open("h1").own(title).end("h1");
    if (!advice.builds()) {
      out.element("p", speech.say("nothing-is-built"));
      return HtmlPage.endPaper(out);
    }
    out.own("p", advice.first().headline(), "class", "headline");
    out.open("table", "class", "shopping");
    ShoppingText.shelves(advice.consequences().shopping())
        .forEach(
            (shelf, lines) -> {
              out.open("tr").element("th", Texts.capital(shelf), "colspan", "4").end("tr");
              lines.forEach(line -> line(line, speech, out));
            });
    out.end("table");
    advice
        .consequences()
        .cost()
        .ifPresent(
            cost ->
                out.element("p", speech.say("cost-total", "total", CostText.of(cost, speech))));
    out.element("p", speech.say("list-sheets-first"), "class", "faint");
    return HtmlPage.endPaper(out);
  }

  private static void line(ShoppingLine line, Phrases speech, HtmlWriter out) {
    out.open("tr").open("td").open("span", "class", "box").close("span").close("td");
    out.element("td", ShoppingText.buy(line, speech), "class", "n");
    out.own("td", ShoppingText.what(line));
    out.own("td", ShoppingText.purpose(line, speech), "class", "faint").end("tr");
  }
}
