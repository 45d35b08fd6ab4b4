package underfoot.report;

import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Promise;

/** What every advice keeps, as plain text. */
public final class PromisesText {
  private PromisesText() {}

  /** Writes the list. */
  public static void write(Knowledge knowledge, TextPage page) {
    Phrases phrases = new Phrases(knowledge.wording());
    page.heading(phrases.say("promises-heading"));
    for (Promise promise : knowledge.promises()) {
      page.item(promise.words() + " (" + promise.id() + ").");
    }
    page.para(phrases.say("promises-kept"));
  }
}
