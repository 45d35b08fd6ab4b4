package underfoot.report;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.plan.Premise;

/** Why decisions were made, as a page of HTML: a drawing of each chain, and the chain in words. */
public final class WhyPage {
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final HtmlPage sheet;
  private final Map<Object, String> told = new IdentityHashMap<>();

  private WhyPage(Knowledge knowledge, String title) {
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
    this.sheet = new HtmlPage(title);
  }

  /**
   * The page.
   *
   * @param advice the advice the decisions are of
   * @param decisions which of its decisions are explained
   * @param knowledge where sources and phrases are looked up
   */
  public static String html(Advice advice, List<Decision> decisions, Knowledge knowledge) {
    Phrases phrases = new Phrases(knowledge.wording());
    String title = phrases.say("why-page", "scenario", advice.scenario());
    WhyPage page = new WhyPage(knowledge, title);
    page.sheet.element("h1", title);
    page.sheet.element("p", advice.summary());
    page.sheet.element("p", "soft", phrases.say("why-legend"));
    int number = 0;
    for (Decision one : decisions) {
      page.decision(one, "chain-" + ++number);
    }
    return page.sheet.html();
  }

  private void decision(Decision one, String id) {
    sheet.raw("<section>\n<h2>").text(one.heading()).raw(" <span class=\"id\">");
    sheet.text(one.id()).raw("</span></h2>\n");
    String what = WhyReport.what(one, phrases);
    if (!what.isEmpty()) {
      sheet.element("p", what);
    }
    sheet.raw("<figure class=\"chain\">\n");
    sheet.raw(ChainPicture.svg(one, phrases.say("why-goes-on"), id)).raw("</figure>\n<ul>\n");
    one.because().forEach(this::justification);
    sheet.raw("</ul>\n</section>\n");
  }

  private void again(Object one) {
    sheet.raw(" - <a href=\"#" + told.get(one) + "\">");
    sheet.text(phrases.say("as-shown-above")).raw("</a></li>\n");
  }

  private void justification(Justification one) {
    boolean known = told.containsKey(one);
    sheet.raw("<li" + (known ? "" : " id=\"" + mark(one) + "\"") + "><span class=\"id\">");
    sheet.text(one.rule().id()).raw("</span> ").text(one.rule().title());
    if (known) {
      again(one);
      return;
    }
    sheet.raw("<br>").text(phrases.say("why-reason", "reason", one.rule().reason())).raw("<br>");
    sheet.raw("<span class=\"soft\">");
    sheet.text(
        phrases.say("why-source", "source", one.source().title(), "status", one.source().status()));
    sheet.raw("</span>\n");
    Set<Justification> shown = new LinkedHashSet<>();
    one.facts().forEach(fact -> WhyReport.gather(fact, shown));
    List<Justification> deeper = new ArrayList<>(one.restsOn());
    deeper.removeAll(shown);
    if (!one.facts().isEmpty() || !one.figures().isEmpty() || !deeper.isEmpty()) {
      sheet.raw("<ul>\n");
      one.facts().forEach(this::premise);
      one.figures().forEach(this::figure);
      deeper.forEach(this::justification);
      sheet.raw("</ul>");
    }
    sheet.raw("</li>\n");
  }

  private String mark(Object one) {
    String mark = "told-" + (told.size() + 1);
    told.put(one, mark);
    return mark;
  }

  private void premise(Premise fact) {
    boolean deeper = fact.because() != null || !fact.uses().isEmpty() || !fact.figures().isEmpty();
    boolean known = deeper && told.containsKey(fact);
    sheet.raw("<li" + (deeper && !known ? " id=\"" + mark(fact) + "\"" : "") + ">");
    String from = fact.from().word();
    if (fact.from() == From.SCENARIO) {
      from =
          fact.line() > 0
              ? phrases.say("why-line", "line", Integer.toString(fact.line()))
              : phrases.say("why-left-out");
    }
    sheet.text(fact.fact() + ": " + fact.value() + " (" + from + ")");
    if (!fact.how().isEmpty()) {
      sheet.text(" = " + fact.how());
    }
    if (known) {
      again(fact);
      return;
    }
    if (deeper) {
      sheet.raw("<ul>\n");
      fact.uses().forEach(this::premise);
      fact.figures().forEach(this::figure);
      if (fact.because() != null) {
        justification(fact.because());
      }
      sheet.raw("</ul>");
    }
    sheet.raw("</li>\n");
  }

  private void figure(Figure figure) {
    sheet.raw("<li>");
    sheet.text(
        figure.name()
            + " = "
            + figure.text()
            + ": "
            + figure.description()
            + "; "
            + knowledge.source(figure.source()).title()
            + " ("
            + figure.status()
            + ")"
            + (figure.note().isEmpty() ? "" : ". " + figure.note()));
    sheet.raw("</li>\n");
  }
}
