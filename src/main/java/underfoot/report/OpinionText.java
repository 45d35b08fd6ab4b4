package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import underfoot.buildup.Judgement;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Heights;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Opinion;
import underfoot.report.TextPage.Tone;

/**
 * What is said of a proposal as plain text: the answer, the layers, what is missing, the numbers.
 */
public final class OpinionText {
  private static final String INDENT = "   ";
  private static final String USE = " use";

  private final Opinion opinion;
  private final Phrases phrases;
  private final TextPage page;

  private OpinionText(Opinion opinion, Phrases phrases, TextPage page) {
    this.opinion = opinion;
    this.phrases = phrases;
    this.page = page;
  }

  /**
   * Writes it.
   *
   * @param opinion what is said of the proposal
   * @param phrases the phrase book
   * @param page where it is written
   */
  public static void write(Opinion opinion, Phrases phrases, TextPage page) {
    new OpinionText(opinion, phrases, page).write();
  }

  private void write() {
    page.bold(
        phrases.say("check-title", "proposal", opinion.proposal(), "scenario", opinion.scenario()));
    page.blank();
    long faults = opinion.faults();
    String id =
        faults == 0
            ? opinion.isRecommended() ? "check-sound" : "check-sound-otherwise"
            : faults == 1 ? "check-one-fault" : "check-faults";
    page.para(
        "",
        "",
        phrases.say(id, "count", Long.toString(faults)),
        faults == 0 ? Tone.GOOD : Tone.DANGER);
    way();
    page.heading(phrases.say("check-layers"));
    opinion.layers().forEach(this::layer);
    whole();
    numbers();
    remedies();
    dangers();
    page.blank();
    page.faint(phrases.say("check-ask"));
  }

  private void way() {
    if (opinion.way().isEmpty()) {
      return;
    }
    page.para(
        phrases.say(
            opinion.isRecommended() || opinion.recommended().isEmpty()
                ? "check-way"
                : "check-other-way",
            "way",
            opinion.title(),
            "recommended",
            opinion.recommended()));
    if (opinion.verdict() == Verdict.OUTSIDE_GUIDANCE) {
      page.para(phrases.say("check-outside"));
    }
  }

  private void layer(Opinion.Layer layer) {
    String name = layer.kind();
    if (!layer.label().equals("layer " + layer.order())) {
      name += " (" + layer.label() + ")";
    }
    double mm = layer.thickness().mean();
    if (!layer.said().isEmpty()) {
      name += ", " + layer.said();
    } else if (mm > 0) {
      name += ", " + phrases.say("check-taken-as", "thickness", Texts.mm(mm));
    }
    page.para(
        TextPage.numbered(layer.order()),
        INDENT,
        Texts.capital(name) + " - " + words(layer.judgement()),
        tone(layer.judgement()));
    List<String> open = new ArrayList<>();
    for (Opinion.Item item : layer.items()) {
      if (item.judgement() == Judgement.NOT_SAID) {
        open.add(item.text() + " " + TextReport.ids(item.because()));
      } else {
        told(INDENT, item, layer.judgement());
      }
    }
    if (!open.isEmpty()) {
      page.para(
          INDENT,
          INDENT,
          phrases.say("check-not-said", "what", String.join("; ", open)),
          Tone.PLAIN);
    }
  }

  /** A finding, what goes wrong, and what to do. The judgement is told if the heading has not. */
  private void told(String first, Opinion.Item item, Judgement heading) {
    String rest = " ".repeat(TextPage.length(first));
    String judgement =
        item.judgement() == heading ? "" : Texts.capital(words(item.judgement())) + ": ";
    page.para(
        first, rest, judgement + item.text() + " " + TextReport.ids(item.because()), Tone.PLAIN);
    if (!item.consequence().isEmpty()) {
      page.para(rest, rest, phrases.say("check-or-else", "what", item.consequence()), Tone.PLAIN);
    }
    if (!item.remedy().isEmpty()) {
      page.para(rest, rest, phrases.say("check-do", "what", item.remedy()), Tone.PLAIN);
    }
  }

  private void whole() {
    found("check-missing", Judgement.MISSING::equals)
        .forEach(
            item -> {
              page.para(" - ", INDENT, item.layer(), Tone.BOLD);
              told(INDENT, item, Judgement.MISSING);
            });
    found("check-whole", one -> one.isFault() && one != Judgement.MISSING)
        .forEach(item -> told(" - ", item, null));
    found("check-advised", Judgement.ADVISED::equals)
        .forEach(item -> told(" - ", item, Judgement.ADVISED));
    found("check-open", Judgement.NOT_SAID::equals)
        .forEach(
            item -> page.item(Texts.capital(item.text()) + ". " + TextReport.ids(item.because())));
  }

  /** What was found of such a judgement, after its heading if there is any. */
  private List<Opinion.Item> found(String heading, Predicate<Judgement> which) {
    List<Opinion.Item> found =
        opinion.whole().stream().filter(item -> which.test(item.judgement())).toList();
    if (!found.isEmpty()) {
      page.heading(phrases.say(heading));
    }
    return found;
  }

  private void numbers() {
    if (opinion.heights().isEmpty()) {
      return;
    }
    Heights heights = opinion.heights().get();
    page.heading(phrases.say("check-numbers"));
    page.para(Sentences.rise(heights, opinion.massKgPerM2(), phrases));
    heights.doors().forEach(door -> page.item(Sentences.door(door, phrases)));
    stiffness();
  }

  /** What it does to a timber floor; of the ways in which joists are used, the greatest. */
  private void stiffness() {
    Opinion.Stiffness most = null;
    for (Opinion.Stiffness one : opinion.stiffness()) {
      if (!one.name().endsWith(USE)) {
        String id = "check-" + one.name().replace(' ', '-');
        page.item(phrases.say(id, "value", number(one)));
      } else if (most == null || one.value() > most.value()) {
        most = one;
      }
    }
    if (most != null) {
      page.item(phrases.say("check-joist-use", "value", number(most)));
    }
  }

  private static String number(Opinion.Stiffness one) {
    String unit = one.text().contains(" ") ? one.text().substring(one.text().indexOf(' ') + 1) : "";
    double rounded =
        one.value() < 10 ? Math.round(one.value() * 10) / 10.0 : Math.round(one.value());
    return Texts.of(rounded, unit);
  }

  private void remedies() {
    if (opinion.remedies().isEmpty()) {
      return;
    }
    page.heading(phrases.say("check-first"));
    for (RemedyNote remedy : opinion.remedies()) {
      page.item(
          (remedy.hold() ? phrases.say("hold-point") + ": " : "")
              + remedy.title()
              + " "
              + TextReport.ids(remedy.because()));
    }
  }

  private void dangers() {
    if (opinion.dangers().isEmpty()) {
      return;
    }
    page.heading(phrases.say("check-dangers"));
    for (CautionNote danger : opinion.dangers()) {
      page.item(danger.title() + ". " + danger.text() + " " + TextReport.ids(danger.because()));
    }
  }

  private String words(Judgement judgement) {
    return phrases.say("judgement-" + judgement.word().replace(' ', '-'));
  }

  private static Tone tone(Judgement judgement) {
    if (judgement.isFault()) {
      return Tone.DANGER;
    }
    return judgement == Judgement.AGREES ? Tone.GOOD : Tone.BOLD;
  }
}
