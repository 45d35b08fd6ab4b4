package underfoot.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/** Times as people read them. */
public final class TimeText {
  private static final double HOURS_TOLD = 48;
  private static final double HALF_HOURS_TOLD = 10;
  private static final double HOURS_A_DAY = 24;
  private static final double HALVES = 2;
  private static final long QUARTER = 15 * 60;

  // Java's own names of days and months change with the country and are slow to load.
  private static final Map<Long, String> DAYS =
      named("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
  private static final Map<Long, String> MONTHS =
      named("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
  private static final DateTimeFormatter SHORT =
      new DateTimeFormatterBuilder()
          .appendValue(ChronoField.DAY_OF_MONTH)
          .appendLiteral(' ')
          .appendText(ChronoField.MONTH_OF_YEAR, MONTHS)
          .toFormatter(Locale.ROOT);
  private static final DateTimeFormatter WEEKDAY =
      new DateTimeFormatterBuilder()
          .appendText(ChronoField.DAY_OF_WEEK, DAYS)
          .appendLiteral(' ')
          .append(SHORT)
          .toFormatter(Locale.ROOT);
  private static final DateTimeFormatter DAY =
      new DateTimeFormatterBuilder()
          .append(WEEKDAY)
          .appendPattern(" yyyy")
          .toFormatter(Locale.ROOT);
  private static final DateTimeFormatter MOMENT =
      new DateTimeFormatterBuilder()
          .append(WEEKDAY)
          .appendPattern(", HH:mm")
          .toFormatter(Locale.ROOT);

  private TimeText() {}

  private static Map<Long, String> named(String... names) {
    Map<Long, String> byNumber = new HashMap<>();
    for (String name : names) {
      byNumber.put(byNumber.size() + 1L, name);
    }
    return byNumber;
  }

  /** A time as people plan it: half hours of a short time, hours up to two days, then half days. */
  public static String hours(double hours) {
    if (hours < HOURS_TOLD) {
      double parts = hours < HALF_HOURS_TOLD ? HALVES : 1;
      return Texts.of(Math.ceil(hours * parts - 1e-9) / parts, "h");
    }
    return Texts.of(Math.ceil(hours / HOURS_A_DAY * HALVES - 1e-9) / HALVES, "days");
  }

  /** A day, such as {@code Wed 14 Jan 2026}. */
  public static String day(LocalDateTime on) {
    return DAY.format(on);
  }

  /** A day of the week and its date without the year, such as {@code Wed 14 Jan}. */
  public static String weekday(LocalDateTime on) {
    return WEEKDAY.format(on);
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
    return on.map(TimeText::day)
        .orElseGet(
            () ->
                hour <= 0
                    ? phrases.say("at-once")
                    : phrases.say("after-hours", "time", hours(hour)));
  }
}
