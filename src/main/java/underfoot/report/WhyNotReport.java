package underfoot.report;

import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice.Say;
import underfoot.plan.Refusal;

/** Why a material is not what is recommended, as plain text. */
public final class WhyNotReport {
  private WhyNotReport() {}

  /** Writes it. */
  public static void write(Refusal refusal, Phrases phrases, TextPage page) {
    page.bold(refusal.asked() + " / " + refusal.scenario());
    page.para(refusal.text());
    if (!refusal.reasons().isEmpty()) {
      page.heading(
          phrases.say(
              switch (refusal.standing()) {
                case "recommended" -> "heading-why-recommended";
                case "second choice" -> "heading-weighed";
                case "not asked for" -> "heading-tried";
                case "class asked", "class short", "class more" -> "heading-why-class";
                case "may be chosen", "as described", "held" -> "heading-with-it";
                default -> "heading-refused";
              }));
      for (Say say : refusal.reasons()) {
        page.item(say.text() + " " + TextReport.ids(say.because()));
      }
    }
    if (!refusal.failed().isEmpty()) {
      page.heading(phrases.say("heading-failed"));
      for (Refusal.Failed one : refusal.failed()) {
        page.item(
            phrases.say(
                one.assumed() ? "fact-assumed" : "fact-stated",
                "fact",
                one.fact(),
                "value",
                one.value()));
      }
    }
    if (!refusal.askedFor().isEmpty()) {
      page.blank();
      page.para(phrases.say("asked-for-by", "rules", String.join(", ", refusal.askedFor())));
    }
    openings(refusal, phrases, page);
    refusal
        .way()
        .ifPresent(
            way -> {
              page.blank();
              page.faint(BuildUpLine.numbers(way, phrases));
            });
    page.blank();
    page.faint(phrases.say("ask-why"));
  }

  private static void openings(Refusal refusal, Phrases phrases, TextPage page) {
    boolean asks =
        List.of("second choice", "ruled out", "not asked for", "class short", "floor stopped")
            .contains(refusal.standing());
    if (refusal.changes().isEmpty()) {
      if (asks && refusal.way().isPresent()) {
        page.blank();
        page.para(phrases.say("no-opening"));
      }
      return;
    }
    page.heading(
        phrases.say(
            switch (refusal.standing()) {
              case "second choice" -> "heading-openings-first";
              case "not asked for" -> "heading-what-asks";
              case "class short" -> "heading-would-do";
              default -> "heading-openings";
            }));
    for (Refusal.Opening one : refusal.changes()) {
      page.item(
          phrases.say(
              one.way().isEmpty() ? "opening-then-none" : "opening-then",
              "change",
              one.text(),
              "way",
              one.way()));
    }
  }
}
