package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Milestone;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.Schedule;
import underfoot.report.TextPage.Tone;

/** The order of the work with its days, and the days that are waited for, as plain text. */
final class ProgrammeText {
  private static final int HOURS_COLUMN = 9;
  private static final int DATED_COLUMN = 18;

  private ProgrammeText() {}

  /** Writes it: every step with its rules, or the steps that decide alone. */
  static void write(Advice advice, Phrases phrases, TextPage page, boolean all) {
    List<ProgrammeStep> steps =
        advice.consequences().programme().stream().filter(one -> all || one.critical()).toList();
    if (steps.isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-programme"));
    String marked = all ? "programme-marked" : "programme-decides";
    boolean remedies = !advice.remedies().isEmpty();
    page.para(Sentences.programme(steps.get(0), remedies, marked, phrases));
    Sentences.undated(advice, phrases).ifPresent(page::para);
    int wide = steps.get(0).begins().isPresent() ? DATED_COLUMN : HOURS_COLUMN;
    for (ProgrammeStep step : steps) {
      String when =
          step.begins().map(TimeText::moment).orElseGet(() -> TimeText.hours(step.startHour()));
      String what = step.step() + ", " + TimeText.hours(step.hours());
      page.para(
          (all && step.critical() ? "»" : " ")
              + " ".repeat(Math.max(0, wide - when.length()))
              + when
              + " ",
          " ".repeat(wide + 2),
          all ? what + " " + TextReport.ids(step.because()) : what,
          Tone.PLAIN);
    }
    milestones(advice, phrases, page);
  }

  /** The days that are waited for, and how much work it is. */
  static void days(Advice advice, Phrases phrases, TextPage page) {
    List<ProgrammeStep> steps = advice.consequences().programme();
    if (steps.isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-programme"));
    Optional<String> undated = undated(advice, phrases);
    if (steps.get(0).begins().isEmpty() && undated.isEmpty()) {
      page.para(phrases.say("programme-monday"));
    }
    undated.ifPresent(page::para);
    page.para(inShort(advice, phrases) + ' ' + work(advice, phrases));
  }

  /**
   * What the days count from that nobody can date, by its numbers among what is put right first.
   */
  private static Optional<String> undated(Advice advice, Phrases phrases) {
    List<String> numbers = new ArrayList<>();
    int number = 0;
    for (RemedyNote remedy : advice.remedies()) {
      number++;
      if (remedy.undated()) {
        numbers.add(Integer.toString(number));
      }
    }
    if (numbers.isEmpty()) {
      return Optional.empty();
    }
    String id = numbers.size() == 1 ? "programme-undated-number" : "programme-undated-numbers";
    return Optional.of(phrases.say(id, "numbers", Texts.list(numbers)));
  }

  /** The days that are waited for, in one sentence; each by the phrase named. */
  static String milestones(Advice advice, Phrases phrases, String as) {
    StringJoiner days = new StringJoiner("; ");
    for (Milestone one : advice.consequences().schedule().milestones()) {
      days.add(
          phrases.say(
              as,
              "what",
              Texts.lower(one.what()),
              "when",
              TimeText.when(phrases, one.on(), one.hour())));
    }
    return Texts.sentence(Texts.capital(days.toString()));
  }

  /** The same without the year, which the first date has. */
  private static String inShort(Advice advice, Phrases phrases) {
    StringJoiner days = new StringJoiner("; ");
    for (Milestone one : advice.consequences().schedule().milestones()) {
      String when =
          days.length() > 0 && one.on().isPresent()
              ? TimeText.weekday(one.on().get())
              : TimeText.when(phrases, one.on(), one.hour());
      days.add(phrases.say("milestone-in-short", "what", Texts.lower(one.what()), "when", when));
    }
    return Texts.sentence(Texts.capital(days.toString()));
  }

  private static String work(Advice advice, Phrases phrases) {
    double hours = Math.ceil(advice.consequences().schedule().workHours());
    return phrases.say("work-in-all", "hours", Texts.of(hours, "hours"));
  }

  private static void milestones(Advice advice, Phrases phrases, TextPage page) {
    Schedule schedule = advice.consequences().schedule();
    page.para(phrases.say("milestones"));
    for (Milestone one : schedule.milestones()) {
      page.item(
          phrases.say(
              "milestone-line",
              "what",
              Texts.capital(one.what()),
              "when",
              TimeText.when(phrases, one.on(), one.hour())));
    }
    page.para(work(advice, phrases));
  }
}
