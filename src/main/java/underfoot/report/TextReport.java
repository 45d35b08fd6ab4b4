package underfoot.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Advice.Say;
import underfoot.plan.Advice.Told;
import underfoot.plan.Cost;
import underfoot.plan.Justification;
import underfoot.reasoning.WhatIf.Otherwise;
import underfoot.report.TextPage.Tone;

/** The advice as plain text, the answer first. */
public final class TextReport {
  private static final int CHANGES_TOLD = 3;
  private static final double TENTHS = 10;

  private static final String INDENT = "   ";

  private final Advice advice;
  private final Phrases phrases;
  private final TextPage page;
  private final Set<String> reasonsTold = new HashSet<>();

  private final boolean findOut;

  private TextReport(Advice advice, Phrases phrases, TextPage page, boolean findOut) {
    this.advice = advice;
    this.phrases = phrases;
    this.page = page;
    this.findOut = findOut;
  }

  /**
   * Writes the advice in as much detail as wanted.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @param detail how much is told
   * @param page where it is written
   */
  public static void write(Advice advice, Phrases phrases, Detail detail, TextPage page) {
    write(advice, phrases, detail, page, true);
  }

  /** The same without what to find out first, for those who are told it apart. */
  public static void writeWithoutFindOut(
      Advice advice, Phrases phrases, Detail detail, TextPage page) {
    write(advice, phrases, detail, page, false);
  }

  private static void write(
      Advice advice, Phrases phrases, Detail detail, TextPage page, boolean findOut) {
    if (detail == Detail.SITE) {
      SiteSheet.write(advice, phrases, page);
    } else if (detail == Detail.FULL) {
      new TextReport(advice, phrases, page, findOut).write();
    } else {
      BriefReport.write(advice, phrases, detail, page, findOut);
    }
  }

  /** The answer in one or two sentences. */
  static void answer(Advice advice, Phrases phrases, TextPage page) {
    page.para("", "", advice.scenario(), Tone.BOLD);
    page.blank();
    page.para("", "", advice.first().headline(), tone(advice.verdict()));
    page.para(phrases.say("verdict-" + advice.verdict().word()));
    page.para(advice.summary());
    FirstText.write(advice, phrases, page);
  }

  private void write() {
    answer(advice, phrases, page);
    stopFindings(advice, phrases, page, one -> told(one.title(), one, one.because()));
    cautions(one -> one.severity() == Severity.DANGER);
    if (advice.builds()) {
      page.heading(phrases.say("heading-build-up"));
      new TextSection(advice, phrases, page).draw();
      double above = advice.heights().aboveOldFloor().mean();
      if (Math.abs(above - advice.heights().rise().mean()) > 1e-6) {
        page.para(phrases.say("levels-from-base", "above", Texts.whole(above)));
      }
      layers();
      FloorTold.write(advice, phrases, page);
    } else {
      page.blank();
      page.para(phrases.say("nothing-is-built"));
      ChangesText.write(advice, phrases, page, Integer.MAX_VALUE);
      alternatives("no-way-stands");
    }
    remedies();
    if (advice.builds()) {
      ChangesText.write(advice, phrases, page, Integer.MAX_VALUE);
    }
    cautions(one -> one.severity() != Severity.DANGER);
    if (findOut) {
      BriefReport.findOut(advice, phrases, page, advice.findOutFirst().size(), false);
    }
    coverage();
    doors(advice, phrases, page);
    consequences();
    assumptions();
    if (advice.builds()) {
      alternatives("heading-alternatives");
    }
    page.blank();
    page.para("", "", phrases.say("ask-why"), Tone.FAINT);
  }

  private static Tone tone(Verdict verdict) {
    return switch (verdict) {
      case SOUND -> Tone.GOOD;
      case SOUND_ONCE_PUT_RIGHT -> Tone.CARE;
      case OUTSIDE_GUIDANCE, STOP -> Tone.DANGER;
    };
  }

  /** The rules of a decision, as they stand at the end of a line. */
  static String ids(List<Justification> because) {
    Set<String> ids = new LinkedHashSet<>();
    because.forEach(one -> ids.add("‹" + one.rule().id() + "›"));
    return String.join(" ", ids);
  }

  /** What stops the work, and what guidance says against it. */
  static void stopFindings(
      Advice advice, Phrases phrases, TextPage page, Function<HaltNote, String> told) {
    for (Verdict verdict : List.of(Verdict.STOP, Verdict.OUTSIDE_GUIDANCE)) {
      List<HaltNote> all =
          advice.stopFindings().stream().filter(one -> one.verdict() == verdict).toList();
      if (!all.isEmpty()) {
        page.heading(phrases.say(verdict == Verdict.STOP ? "heading-stop" : "heading-outside"));
        all.forEach(one -> page.para(" - ", INDENT, told.apply(one), Tone.PLAIN));
      }
    }
  }

  /** A text under its title, unless it begins with it. */
  static String titled(String title, String text) {
    boolean titled = !title.isEmpty() && !text.startsWith(title);
    return titled ? Texts.sentence(title) + " " + text : text;
  }

  private static String told(String title, Told told, List<Justification> because) {
    return titled(title, told.text()) + " " + ids(because);
  }

  private void layers() {
    page.heading(phrases.say("heading-layers"));
    for (Layer layer : advice.layers()) {
      String number = TextPage.numbered(layer.order());
      String name =
          layer.material().isEmpty() || layer.material().equalsIgnoreCase(layer.name())
              ? layer.name()
              : layer.name() + " - " + layer.material();
      page.para(number, INDENT, name, Tone.BOLD);
      Set<String> given = new HashSet<>();
      for (Justification one : layer.reasons()) {
        if (!given.add(one.rule().key())) {
          continue;
        }
        page.para(
            INDENT,
            INDENT,
            phrases.say("layer-why", "reason", reason(one)) + " ‹" + one.rule().id() + "›",
            Tone.PLAIN);
      }
      for (Say say : layer.spec()) {
        page.para(INDENT + "- ", INDENT + "  ", say.text() + " " + ids(say.because()), Tone.PLAIN);
      }
      for (Say say : layer.fixing()) {
        page.para(
            INDENT + "- ",
            INDENT + "  ",
            phrases.say("layer-fixing", "text", say.text()) + " " + ids(say.because()),
            Tone.PLAIN);
      }
    }
  }

  /** A reason, once; afterwards only that it stands above. */
  private String reason(Justification one) {
    String reason = one.rule().reason();
    return reasonsTold.add(reason) ? reason : phrases.say("as-shown-above");
  }

  private void remedies() {
    if (advice.remedies().isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-first"));
    int number = 0;
    for (RemedyNote remedy : advice.remedies()) {
      number++;
      String title =
          remedy.hold() ? phrases.say("hold-point") + ": " + remedy.title() : remedy.title();
      page.para(
          TextPage.numbered(number), INDENT, told(title, remedy, remedy.because()), Tone.PLAIN);
    }
  }

  private void cautions(Predicate<CautionNote> told) {
    Severity last = null;
    for (CautionNote caution : advice.cautions().stream().filter(told).toList()) {
      if (caution.severity() != last) {
        last = caution.severity();
        page.heading(phrases.say("heading-" + last.word()));
      }
      page.para(
          last == Severity.DANGER ? " ! " : " - ",
          INDENT,
          told(caution.title(), caution, caution.because()),
          Tone.PLAIN);
    }
  }

  private void coverage() {
    advice
        .coverage()
        .ifPresent(
            coverage -> {
              page.heading(phrases.say("heading-coverage"));
              page.para(
                  phrases.say("coverage-target", "target", Texts.of(coverage.targetPercent(), "%"))
                      + " "
                      + ids(coverage.because()));
              for (Say say : coverage.check()) {
                page.para(" - ", INDENT, say.text() + " " + ids(say.because()), Tone.PLAIN);
              }
            });
  }

  /** What becomes of the levels and doors. */
  static void doors(Advice advice, Phrases phrases, TextPage page) {
    if (!advice.builds()) {
      return;
    }
    page.heading(phrases.say("heading-heights"));
    page.para(Sentences.rise(advice.heights(), advice.massKgPerM2(), phrases));
    advice.heights().doors().forEach(door -> page.item(Sentences.doorAndStep(door, phrases)));
  }

  private void consequences() {
    advice.consequences().levels().ifPresent(plan -> LevelText.write(plan, phrases, page));
    advice.consequences().setOut().ifPresent(new SetOutText(phrases, page)::write);
    if (!advice.consequences().quantities().isEmpty()) {
      page.heading(phrases.say("heading-quantities"));
      ShoppingText.write(advice.consequences().shopping(), phrases, page);
    }
    ProgrammeText.write(advice, phrases, page, true);
    advice.consequences().cost().ifPresent(this::cost);
  }

  /** What becomes of another value: the first few of many changes; all of them are in the JSON. */
  private String told(Otherwise other) {
    int left = other.differences().size() - CHANGES_TOLD;
    String first =
        left <= 1
            ? other.clause()
            : phrases.say(
                "and-more", "first", other.clause(CHANGES_TOLD), "count", Integer.toString(left));
    return phrases.say("if-it-is", "value", other.value(), "changes", first);
  }

  private void cost(Cost cost) {
    page.heading(phrases.say("heading-cost"));
    for (Cost.Line line : cost.lines()) {
      page.para(
          " - ",
          INDENT,
          line.item() + ": " + Texts.money(line.cost(), cost.currency()),
          Tone.PLAIN);
    }
    page.para(phrases.say("cost-total", "total", CostText.of(cost, phrases)));
  }

  private void assumptions() {
    if (advice.assumptions().isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-assumptions"));
    List<Assumption> idle = new ArrayList<>();
    List<Assumption> untried = new ArrayList<>();
    for (Assumption one : advice.assumptions()) {
      if (one.changes().isEmpty()) {
        (one.wouldChange().isEmpty() ? idle : untried).add(one);
        continue;
      }
      page.para(
          " - ",
          INDENT,
          assumed(one) + (one.look().isEmpty() ? "" : " " + Texts.sentence(one.look())),
          Tone.PLAIN);
      for (Otherwise other : one.changes()) {
        page.para(INDENT + "· ", INDENT + "  ", told(other), Tone.PLAIN);
      }
    }
    if (!idle.isEmpty()) {
      page.para(phrases.say("also-assumed"));
      idle.forEach(one -> page.para(" - ", INDENT, assumed(one), Tone.PLAIN));
    }
    if (!untried.isEmpty()) {
      page.para(phrases.say("also-assumed-untried"));
      untried.forEach(one -> page.para(" - ", INDENT, assumed(one), Tone.PLAIN));
    }
  }

  private String assumed(Assumption one) {
    return phrases.say("assumed", "fact", Texts.capital(one.called()), "value", one.assumed())
        + " "
        + ids(one.because());
  }

  private void alternatives(String heading) {
    if (advice.alternatives().isEmpty()) {
      return;
    }
    page.heading(phrases.say(heading));
    for (Alternative one : advice.alternatives()) {
      String standing = one.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
      page.para(
          " - ",
          INDENT,
          phrases.say("standing-" + standing, "way", one.title())
              + ". "
              + one.text()
              + " "
              + ids(one.because()),
          Tone.PLAIN);
      advice.consequences().ways().stream()
          .filter(way -> way.id().equals(one.id()))
          .forEach(way -> page.para(INDENT, INDENT, BuildUpLine.numbers(way, phrases), Tone.FAINT));
    }
  }
}
