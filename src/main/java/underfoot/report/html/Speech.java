package underfoot.report.html;

import java.util.Locale;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/** Words and numbers as the page writes them. */
final class Speech {
  private static final double HOURS_TOLD = 48;
  private static final double HOURS_A_DAY = 24;

  private final Phrases phrases;

  Speech(Phrases phrases) {
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

  /** A length to a tenth of a millimetre. */
  static String mm(double number) {
    return Texts.of(Math.round(number * 10) / 10.0, "mm");
  }

  /** A length to the nearest millimetre. */
  static String whole(double number) {
    return Texts.of(Math.rint(number), "mm");
  }

  static String number(double number) {
    return Texts.of(Math.round(number * 10) / 10.0, "");
  }

  static String money(double sum, String currency) {
    return String.format(Locale.ROOT, "%.2f %s", sum, currency);
  }

  /** A time as people plan it: half hours up to two days, then tenths of a day. */
  static String hours(double hours) {
    if (hours < HOURS_TOLD) {
      return Texts.of(Math.ceil(hours * 2) / 2, "h");
    }
    return Texts.of(Math.ceil(hours / HOURS_A_DAY * 10) / 10, "days");
  }

  static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
