package underfoot.report;

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
        !refusal.standing().equals("recommended") && !refusal.standing().equals("must never");
    if (refusal.changes().isEmpty()) {
      if (asks) {
        page.blank();
        page.para(phrases.say("no-opening"));
      }
      return;
    }
    boolean second = refusal.standing().equals("second choice");
    page.heading(phrases.say(second ? "heading-openings-first" : "heading-openings"));
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
