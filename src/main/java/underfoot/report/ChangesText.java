package underfoot.report;

import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.ChangeNote;
import underfoot.report.TextPage.Tone;

/** The least changes that would make a way stand, or keep to what was asked, as plain text. */
public final class ChangesText {
  private static final String INDENT = "   ";

  private ChangesText() {}

  /** Writes so many of them at most. */
  static void write(Advice advice, Phrases phrases, TextPage page, int most) {
    List<ChangeNote> changes = advice.consequences().changes();
    Optional<String> note = advice.consequences().changesNote();
    if (changes.isEmpty() && note.isEmpty()) {
      return;
    }
    page.heading(phrases.say(advice.builds() ? "heading-changes-limits" : "heading-changes"));
    for (ChangeNote change : changes.subList(0, Math.min(most, changes.size()))) {
      page.item(phrases.say("change-then", "change", change.text(), "way", change.way()));
      page.para(INDENT, INDENT, BuildUpLine.numbers(change.numbers(), phrases), Tone.FAINT);
    }
    if (!changes.isEmpty()) {
      page.para(phrases.say("changes-proved"));
    }
    first(advice, phrases).ifPresent(page::para);
    note.ifPresent(page::para);
  }

  /** What comes first whichever change is made, besides what is told already. */
  public static Optional<String> first(Advice advice, Phrases phrases) {
    List<String> first = advice.firstWithAnyChange().stream().map(Texts::lower).toList();
    return first.isEmpty()
        ? Optional.empty()
        : Optional.of(phrases.say("changes-first", "first", String.join("; ", first)));
  }
}
