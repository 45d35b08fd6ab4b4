package underfoot.report.html;

import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.report.FirstText;
import underfoot.report.HtmlPage;
import underfoot.report.HtmlWriter;
import underfoot.report.MadeBy;
import underfoot.report.SiteSheet;

/** The sheet for the site as a page of A4, for a screen and for paper. */
public final class SitePage {
  /** In smaller writing there is room only for the titles of what is put right first. */
  private static final double WHOLE_FROM = 7;

  private final Advice advice;
  private final Phrases speech;
  private final HtmlWriter out;
  private final boolean whole;

  private SitePage(Advice advice, Phrases speech, HtmlWriter out, boolean whole) {
    this.advice = advice;
    this.speech = speech;
    this.out = out;
    this.whole = whole;
  }

  /**
   * The page.
   *
   * @param advice the advice
   * @param speech the phrase book
   * @param tool what made it
   * @param points the size of its writing, pt
   * @return well-formed XHTML
   */
  public static String of(Advice advice, Phrases speech, MadeBy tool, double points) {
    HtmlWriter out =
        HtmlPage.paper(speech.say("sheet-title", "scenario", advice.scenario()), points);
    new SitePage(advice, speech, out, points >= WHOLE_FROM).write(tool);
    return HtmlPage.endPaper(out);
  }

  private void write(MadeBy tool) {
    SiteSheet sheet = SiteSheet.of(advice, speech);
    if (!tool.notice().isEmpty()) {
      out.own("p", tool.notice(), "class", "notice");
    }
    out.open("h1").own(advice.scenario()).end("h1");
    out.open("div", "class", "answer " + advice.verdict().word());
    out.own("p", advice.first().headline(), "class", "headline");
    out.element("p", speech.say("verdict-" + advice.verdict().word()) + ".");
    String dangers = FirstText.dangers(advice);
    if (!dangers.isEmpty()) {
      out.own("p", speech.say("dangers-here", "titles", dangers), "class", "hurts");
    }
    out.end("div");
    list("sheet-before", "gates", sheet.before());
    if (whole) {
      list("heading-first", "", sheet.first());
    } else if (!sheet.firstTitles().isEmpty()) {
      heading("heading-first");
      out.own("p", String.join(" ", sheet.firstTitles()));
    }
    if (!advice.builds()) {
      out.element("p", speech.say("nothing-is-built"));
      list("heading-danger", "dangers", sheet.dangers());
      out.element("p", speech.say("sheet-limits"), "class", "faint");
      return;
    }
    // Two columns that run on: what is short on one side makes room for the rest of it.
    out.open("table", "class", "split").open("tr").open("td", "class", "left");
    heading("heading-build-up");
    out.add(new SectionDrawing(advice, speech).draw());
    list("heading-programme", "", sheet.days());
    list("heading-checklist", "checks", sheet.checks());
    out.close("td").open("td");
    heading("sheet-layers");
    layers(sheet);
    CutDrawing.all(advice.joistCuts(), speech).forEach(out::add);
    list("sheet-measures", "", sheet.measures());
    list("heading-danger", "dangers", sheet.dangers());
    out.close("td").end("tr").end("table");
    out.element("p", speech.say("sheet-limits"), "class", "faint");
  }

  private void heading(String phrase) {
    out.element("h2", speech.say(phrase)).line();
  }

  private void layers(SiteSheet sheet) {
    out.open("table", "class", "layers");
    for (int i = sheet.layers().size() - 1; i >= 0; i--) {
      SiteSheet.LayerLine one = sheet.layers().get(i);
      out.open("tr").element("td", Integer.toString(one.number()));
      out.open("td").open("strong").own(one.name()).close("strong");
      out.text(" " + one.thickness());
      if (!one.key().isEmpty()) {
        out.empty("br").own(one.key());
      }
      out.close("td").end("tr");
    }
    out.end("table");
  }

  private void list(String heading, String styled, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    out.open("div", "class", styled);
    heading(heading);
    out.open("ul");
    for (String line : lines) {
      out.open("li");
      if (styled.equals("checks")) {
        out.open("span", "class", "box").close("span").text(" ");
      }
      out.own(line).end("li");
    }
    out.close("ul").end("div");
  }
}
