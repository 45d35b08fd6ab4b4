package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;

/** Words of the trade that occur in a text, and what they mean. */
public final class TradeWords {
  private static final String PREFIX = "trade-word-";

  private TradeWords() {}

  /**
   * A word and what it means.
   *
   * @param word the word
   * @param means what it means, in a few words
   */
  public record Meaning(String word, String means) {}

  /** The words that occur in a text, in the order of the rules. */
  public static List<Meaning> in(String text, Phrases phrases) {
    String flat = text.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    List<Meaning> found = new ArrayList<>();
    for (String id : phrases.wording().ids(PREFIX)) {
      Wording.Text row = phrases.wording().get(id);
      List<String> forms = List.of(row.title().split("\\|"));
      if (forms.stream().anyMatch(form -> occurs(form.toLowerCase(Locale.ROOT), flat))) {
        found.add(new Meaning(forms.get(0), phrases.say(id)));
      }
    }
    return found;
  }

  /** Whether words stand in a text, not within others. */
  private static boolean occurs(String form, String text) {
    int at = text.indexOf(form);
    while (at >= 0 && (inWord(text, at - 1) || inWord(text, at + form.length()))) {
      at = text.indexOf(form, at + 1);
    }
    return at >= 0;
  }

  private static boolean inWord(String text, int at) {
    return at >= 0 && at < text.length() && Character.isLetterOrDigit(text.charAt(at));
  }

  /** All of them in one line, such as stands at the end of a text. */
  static String line(List<Meaning> meanings) {
    List<String> said = new ArrayList<>();
    meanings.forEach(one -> said.add(one.word() + ": " + one.means()));
    return String.join("; ", said) + ".";
  }

  /** Writes them at the end of what is on a page. */
  static void write(TextPage page, Phrases phrases) {
    List<Meaning> meanings = in(page.text(), phrases);
    if (!meanings.isEmpty()) {
      page.heading(phrases.say("heading-trade-words"));
      page.para(line(meanings));
    }
  }
}
