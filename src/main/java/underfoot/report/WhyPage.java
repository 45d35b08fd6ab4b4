package underfoot.report;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.Figure;
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
  private final HtmlWriter out;
  private final Map<Object, String> told = new IdentityHashMap<>();

  private WhyPage(Knowledge knowledge, HtmlWriter out) {
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
    this.out = out;
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
    HtmlWriter out = HtmlPage.begin(title);
    out.block("h1", title).block("p", advice.summary());
    out.block("p", phrases.say("why-legend"), "class", "soft");
    WhyPage page = new WhyPage(knowledge, out);
    int number = 0;
    for (Decision one : decisions) {
      page.decision(one, "chain-" + ++number);
    }
    return HtmlPage.end(out);
  }

  private void decision(Decision one, String id) {
    out.open("section").line().open("h2").text(one.heading() + " ");
    out.element("span", one.id(), "class", "id").end("h2");
    String what = WhyReport.what(one, phrases);
    if (!what.isEmpty()) {
      out.block("p", what);
    }
    out.open("figure", "class", "chain wide").line();
    ChainPicture.draw(one, phrases.say("why-goes-on"), id, out);
    out.end("figure").open("ul", "class", "ladder").line();
    one.because().forEach(this::justification);
    out.end("ul").end("section");
  }

  private void again(Object one) {
    out.text(" - ").element("a", phrases.say("as-shown-above"), "href", "#" + told.get(one));
    out.end("li");
  }

  private void justification(Justification one) {
    boolean known = told.containsKey(one);
    out.open("li", "id", known ? "" : mark(one), "class", "rule");
    out.element("span", one.rule().id(), "class", "id");
    out.text(" " + one.rule().title());
    if (known) {
      again(one);
      return;
    }
    out.open("br").text(phrases.say("why-reason", "reason", one.rule().reason())).open("br");
    out.block("span", WhyReport.source(one, phrases), "class", "soft");
    List<Justification> deeper = WhyReport.deeper(one);
    if (!one.facts().isEmpty() || !one.figures().isEmpty() || !deeper.isEmpty()) {
      out.open("details").element("summary", phrases.say("why-went-by"));
      out.open("ul").line();
      one.facts().forEach(this::premise);
      one.figures().forEach(this::figure);
      deeper.forEach(this::justification);
      out.close("ul").close("details");
    }
    out.end("li");
  }

  private String mark(Object one) {
    String mark = "told-" + (told.size() + 1);
    told.put(one, mark);
    return mark;
  }

  private void premise(Premise fact) {
    boolean deeper = WhyReport.isDeeper(fact);
    boolean known = deeper && told.containsKey(fact);
    out.open("li", "id", deeper && !known ? mark(fact) : "", "class", "fact");
    out.text(WhyReport.said(fact, phrases));
    if (!fact.how().isEmpty()) {
      out.text(" = " + fact.how());
    }
    if (known) {
      again(fact);
      return;
    }
    if (deeper) {
      out.open("ul").line();
      fact.uses().forEach(this::premise);
      fact.figures().forEach(this::figure);
      if (fact.because() != null) {
        justification(fact.because());
      }
      out.close("ul");
    }
    out.end("li");
  }

  private void figure(Figure figure) {
    out.block("li", WhyReport.said(figure, knowledge), "class", "figure");
  }
}
