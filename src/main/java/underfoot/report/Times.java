package underfoot.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/** Times and sums as people read them. */
public final class Times {
  private static final double HOURS_TOLD = 48;
  private static final double HOURS_A_DAY = 24;
  private static final double TENTHS = 10;
  private static final long QUARTER = 15 * 60;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.UK);
  private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

  private Times() {}

  /** A time as people plan it: half hours up to two days, then tenths of a day. */
  public static String hours(double hours) {
    if (hours < HOURS_TOLD) {
      return Texts.of(Math.ceil(hours * 2 - 1e-9) / 2, "h");
    }
    return Texts.of(Math.ceil(hours / HOURS_A_DAY * TENTHS - 1e-9) / TENTHS, "days");
  }

  /** A day, such as {@code Wed 14 Jan 2026}. */
  public static String day(LocalDateTime on) {
    return DAY.format(on);
  }

  /** A day without its year, such as {@code 14 Jan}. */
  public static String dayAndMonth(LocalDateTime on) {
    return SHORT.format(on);
  }

  /** A moment, such as {@code Wed 14 Jan, 13:30}, to the next quarter of an hour. */
  public static String moment(LocalDateTime on) {
    long over = (on.getMinute() * 60L + on.getSecond()) % QUARTER;
    return MOMENT.format(over == 0 ? on : on.plusSeconds(QUARTER - over));
  }

  /** The day something comes, or after how long where days have no dates. */
  public static String when(Phrases phrases, Optional<LocalDateTime> on, double hour) {
    return on.map(Times::day).orElseGet(() -> phrases.say("after-hours", "time", hours(hour)));
  }

  /** A sum of money. */
  public static String money(double sum, String currency) {
    return String.format(Locale.ROOT, "%.2f %s", sum, currency);
  }
}
