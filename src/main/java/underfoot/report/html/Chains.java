package underfoot.report.html;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Phrases;
import underfoot.plan.Justification;
import underfoot.plan.Premise;
import underfoot.report.HtmlWriter;

/**
 * Reasons that open to the chain they rest on. A chain that was told in full further up the page is
 * named and led to, not told again.
 */
final class Chains {
  private final HtmlWriter out;
  private final Phrases speech;
  private final Map<Justification, Integer> told = new IdentityHashMap<>();

  Chains(HtmlWriter out, Phrases speech) {
    this.out = out;
    this.speech = speech;
  }

  /** The rules of a decision in a line that opens. */
  void of(List<Justification> because) {
    if (because.isEmpty()) {
      return;
    }
    out.open("details", "class", "chain");
    out.open("summary");
    out.element("span", speech.say("why-mark"), "class", "why");
    for (Justification one : distinct(because)) {
      out.text(" ").element("span", "‹" + one.rule().id() + "›", "class", "id");
    }
    out.close("summary");
    out.open("ul");
    for (Justification one : because) {
      tell(one);
    }
    out.close("ul").end("details");
  }

  private static List<Justification> distinct(List<Justification> because) {
    Map<String, Justification> byId = new java.util.LinkedHashMap<>();
    because.forEach(one -> byId.putIfAbsent(one.rule().id(), one));
    return List.copyOf(byId.values());
  }

  private void tell(Justification one) {
    Integer before = told.get(one);
    out.open("li", "id", before == null ? "r" + (told.size() + 1) : "");
    if (before != null) {
      out.element("a", "‹" + one.rule().id() + "›", "href", "#r" + before, "class", "id");
      out.text(" " + one.rule().reason() + " ");
      out.element("span", speech.say("told-above"), "class", "faint");
      out.end("li");
      return;
    }
    told.put(one, told.size() + 1);
    out.element("span", "‹" + one.rule().id() + "›", "class", "id");
    out.text(" " + one.rule().reason() + ". ");
    out.element(
        "span",
        speech.say("why-source", "source", one.source().title(), "status", one.source().status()),
        "class",
        "faint");
    if (!one.facts().isEmpty() || !one.figures().isEmpty()) {
      out.open("ul", "class", "facts");
      for (Premise premise : one.facts()) {
        premise(premise);
      }
      for (Figure figure : one.figures()) {
        out.open("li");
        out.element("code", figure.name());
        out.text(": " + figure.text() + " ");
        out.element("span", figure.description(), "class", "faint");
        out.end("li");
      }
      out.close("ul");
    }
    if (!one.restsOn().isEmpty()) {
      out.open("details", "class", "rests");
      StringJoiner ids = new StringJoiner(" ");
      distinct(one.restsOn()).forEach(rest -> ids.add("‹" + rest.rule().id() + "›"));
      out.element("summary", speech.say("rests-on", "rules", ids.toString()));
      out.open("ul");
      one.restsOn().forEach(this::tell);
      out.close("ul").close("details");
    }
    out.end("li");
  }

  private void premise(Premise premise) {
    out.open("li");
    out.open("code").own(premise.fact()).close("code");
    out.text(": ");
    out.own(premise.value());
    String from = speech.say("from-" + premise.from().word());
    String where = premise.line() > 0 ? speech.say("why-line", "line", "" + premise.line()) : from;
    out.text(" ").element("span", "(" + where + ")", "class", "faint");
    if (!premise.how().isEmpty()) {
      out.text(" ").open("span", "class", "faint").own(premise.how()).close("span");
    }
    out.end("li");
  }
}
