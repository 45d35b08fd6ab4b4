package underfoot.report;

import underfoot.knowledge.Phrases;
import underfoot.plan.Advice.Say;
import underfoot.plan.Refusal;
import underfoot.report.TextPage.Tone;

/** Why a material is not what is recommended, as plain text. */
public final class WhyNotReport {
  private static final String BULLET = " - ";
  private static final String INDENT = "   ";

  private WhyNotReport() {}

  /** Writes it. */
  public static void write(Refusal refusal, Phrases phrases, TextPage page) {
    page.para("", "", refusal.asked() + " / " + refusal.scenario(), Tone.BOLD);
    page.para(refusal.text());
    if (!refusal.reasons().isEmpty()) {
      page.heading(
          phrases.say(
              switch (refusal.standing()) {
                case "recommended" -> "heading-why-recommended";
                case "second choice" -> "heading-weighed";
                default -> "heading-refused";
              }));
      for (Say say : refusal.reasons()) {
        page.para(BULLET, INDENT, say.text() + " " + TextReport.ids(say.because()), Tone.PLAIN);
      }
    }
    if (!refusal.failed().isEmpty()) {
      page.heading(phrases.say("heading-failed"));
      for (Refusal.Failed one : refusal.failed()) {
        page.para(
            BULLET,
            INDENT,
            phrases.say(
                one.assumed() ? "fact-assumed" : "fact-stated",
                "fact",
                one.fact(),
                "value",
                one.value()),
            Tone.PLAIN);
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
              page.para("", "", BuildUpLine.numbers(way, phrases), Tone.FAINT);
            });
    page.blank();
    page.para("", "", phrases.say("ask-why"), Tone.FAINT);
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
      page.para(
          BULLET,
          INDENT,
          phrases.say(
              one.way().isEmpty() ? "opening-then-none" : "opening-then",
              "change",
              one.text(),
              "way",
              one.way()),
          Tone.PLAIN);
    }
  }
}
