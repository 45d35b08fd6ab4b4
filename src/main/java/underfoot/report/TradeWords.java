package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
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
    String flat = text.replaceAll("\\s+", " ");
    List<Meaning> found = new ArrayList<>();
    for (String id : phrases.wording().ids(PREFIX)) {
      Wording.Text row = phrases.wording().get(id);
      Pattern forms = Pattern.compile("\\b(?:" + row.title() + ")\\b", Pattern.CASE_INSENSITIVE);
      if (forms.matcher(flat).find()) {
        found.add(new Meaning(row.title().split("\\|")[0], phrases.say(id)));
      }
    }
    return found;
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
