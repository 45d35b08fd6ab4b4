package underfoot.report;

import java.util.List;
import java.util.stream.Collectors;
import underfoot.buildup.Severity;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.FirstThings.DoNow;
import underfoot.report.TextPage.Tone;

/** What stands on the first screen of every form: what to do now, what must be cleared, what hurts. */
public final class FirstText {
  private FirstText() {}

  /** The names of what can kill or hurt, the gravest first; empty if there is nothing. */
  public static String dangers(Advice advice) {
    List<String> names =
        advice.cautions().stream()
            .filter(one -> one.severity() == Severity.DANGER)
            .map(CautionNote::title)
            .map(Texts::lower)
            .toList();
    return String.join("; ", names);
  }

  /** The gates that are not among what to do now; empty if there are none. */
  public static String gates(Advice advice) {
    return advice.first().alsoFirst().stream().collect(Collectors.joining("; "));
  }

  static void write(Advice advice, Phrases phrases, TextPage page) {
    int number = 0;
    for (DoNow one : advice.first().doNow()) {
      if (number == 0) {
        page.heading(phrases.say("heading-do-now"));
      }
      page.para(TextPage.numbered(++number), "   ", one.text(), Tone.PLAIN);
    }
    String gates = gates(advice);
    if (!gates.isEmpty()) {
      page.para(phrases.say("also-gates", "titles", gates));
    }
    String dangers = dangers(advice);
    if (!dangers.isEmpty()) {
      page.para("", "", phrases.say("dangers-here", "titles", dangers), Tone.DANGER);
    }
  }
}
