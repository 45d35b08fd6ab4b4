package underfoot.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/**
 * When hands work: some hours of some days of the week. Times are hours from the start of the work,
 * which is the hour work begins on the first day, whether or not that is a day of work.
 */
final class WorkingHours {
  private static final double HOURS_A_DAY = 24;
  private static final double SLIP = 1e-9;
  private static final long SECONDS_AN_HOUR = 3600;

  private final LocalDate first;
  private final boolean dated;
  private final double begins;
  private final double hours;
  private final Set<DayOfWeek> days;

  /**
   * @param first the first day
   * @param dated whether that day was given, and not only taken
   * @param begins the hour of the day at which work begins, 0 to 24
   * @param hours working hours in a day, above 0, at most 24
   * @param days the days of the week on which hands work; at least one
   */
  WorkingHours(LocalDate first, boolean dated, double begins, double hours, Set<DayOfWeek> days) {
    if (!(hours > 0) || hours > HOURS_A_DAY || days.isEmpty()) {
      throw new IllegalArgumentException("no working hours: " + hours + " h on " + days);
    }
    this.first = first;
    this.dated = dated;
    this.begins = begins;
    this.hours = hours;
    this.days = EnumSet.copyOf(days);
  }

  /** The working hours that the facts tell; whole days and nights where they tell none. */
  static WorkingHours of(Facts facts, Figures figures) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String day : facts.text("working days").split(",\\s*")) {
      if (!day.isBlank()) {
        days.add(DayOfWeek.valueOf(day.strip().toUpperCase(Locale.ROOT)));
      }
    }
    double hours = facts.number("hours a day");
    String start = facts.text("start date");
    LocalDate monday = LocalDate.EPOCH.with(java.time.temporal.ChronoField.DAY_OF_WEEK, 1);
    return new WorkingHours(
        start.isEmpty() ? monday : LocalDate.parse(start),
        !start.isEmpty(),
        figures.get("work-begins-at").number(),
        Double.isNaN(hours) ? HOURS_A_DAY : hours,
        days.isEmpty() ? EnumSet.allOf(DayOfWeek.class) : days);
  }

  /** From when to when something goes on, hours from the start of the work. */
  record Span(double start, double end) {}

  /**
   * The first span in which hands can do so much work.
   *
   * @param from not before this
   * @param work how long it takes them, h
   * @param inOneGo whether it must not be broken off in the evening; what is longer than a working
   *     day then begins in the morning and runs on into the night
   */
  Span work(double from, double work, boolean inOneGo) {
    if (work <= 0) {
      return new Span(from, from);
    }
    double start = next(from);
    if (inOneGo) {
      while (left(start) + SLIP < Math.min(work, hours)) {
        start = next(start + left(start) + SLIP);
      }
      return new Span(start, start + work);
    }
    double at = start;
    double open = work;
    while (open > left(at) + SLIP) {
      open -= left(at);
      at = next(at + left(at) + SLIP);
    }
    return new Span(start, at + open);
  }

  /** The next moment at which hands work, not before {@code from}. */
  private double next(double from) {
    double day = Math.floor(from / HOURS_A_DAY + SLIP);
    double into = Math.max(0, from - day * HOURS_A_DAY);
    while (into + SLIP >= hours || !works(day)) {
      day++;
      into = 0;
    }
    return day * HOURS_A_DAY + into;
  }

  /** How much of the working day is left at a moment at which hands work. */
  private double left(double at) {
    return hours - (at - Math.floor(at / HOURS_A_DAY + SLIP) * HOURS_A_DAY);
  }

  private boolean works(double day) {
    return days.contains(first.plusDays((long) day).getDayOfWeek());
  }

  /** Whether the first day was given, so that days have dates. */
  boolean dated() {
    return dated;
  }

  /** The date and time of a moment. */
  LocalDateTime at(double hour) {
    return first
        .atStartOfDay()
        .plusSeconds(Math.round((begins + hour) * SECONDS_AN_HOUR))
        .withSecond(0);
  }
}
