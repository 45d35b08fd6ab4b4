package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.Consequences;
import underfoot.report.HtmlWriter;
import underfoot.report.html.HtmlReport.Medium;

/** Writes parts of the page: what they are about, and what they are written with. */
class HtmlParts {
  /** Notes whose ids begin so belong to the list that is ticked on site. */
  static final String CHECK = "check-";

  final Advice advice;
  final Consequences after;
  final Phrases speech;
  final Medium medium;
  final HtmlWriter out;
  final Chains chains;
  final Table table;

  HtmlParts(Advice advice, Phrases speech, Medium medium) {
    this.advice = advice;
    this.after = advice.consequences();
    this.speech = speech;
    this.medium = medium;
    this.out = new HtmlWriter();
    this.chains = new Chains(out, speech);
    this.table = new Table(out, speech);
  }

  /** Parts of the same page. */
  HtmlParts(HtmlParts page) {
    this.advice = page.advice;
    this.after = page.after;
    this.speech = page.speech;
    this.medium = page.medium;
    this.out = page.out;
    this.chains = page.chains;
    this.table = page.table;
  }

  /** An element that says a phrase. */
  HtmlWriter say(String element, String phrase, String... filling) {
    return out.element(element, speech.say(phrase, filling));
  }

  /** A paragraph that says a phrase unobtrusively. */
  void faint(String phrase, String... filling) {
    out.element("p", speech.say(phrase, filling), "class", "faint");
  }

  /** A box to tick, with its label, which only machines read unless it is shown. */
  void box(String label, boolean shown) {
    if (medium == Medium.PAPER) {
      out.open("span", "class", "box").close("span");
      if (shown) {
        out.text(" ").text(label);
      }
      return;
    }
    out.open("label").empty("input", "type", "checkbox");
    out.open("span", "class", shown ? "" : "hidden").own(label).close("span");
    out.close("label");
  }
}
