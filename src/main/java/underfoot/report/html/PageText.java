package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/** Words and numbers as the page writes them. */
final class PageText {

  private final Phrases phrases;

  PageText(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The phrase book. */
  Phrases phrases() {
    return phrases;
  }

  String say(String id, String... filling) {
    return phrases.say(id, filling);
  }

  boolean has(String id) {
    return phrases.has(id);
  }

  /** A length to the nearest millimetre. */
  static String whole(double number) {
    return Texts.of(Math.rint(number), "mm");
  }

  static String number(double number) {
    return Texts.of(Math.round(number * 10) / 10.0, "");
  }
}
