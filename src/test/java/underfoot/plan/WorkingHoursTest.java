package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Work goes on in working hours only; the spans below were counted by hand on a calendar. */
class WorkingHoursTest {
  private static final Set<DayOfWeek> WEEK = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

  /** Eight hours from eight o'clock, Monday to Friday, from Monday 1 March 2027. */
  private final WorkingHours usual = new WorkingHours(LocalDate.of(2027, 3, 1), true, 8, 8, WEEK);

  @Test
  void what_fits_into_a_day_is_done_in_it() {
    assertThat(usual.work(0, 8, false)).isEqualTo(new WorkingHours.Span(0, 8));
    assertThat(usual.at(8)).isEqualTo(LocalDateTime.of(2027, 3, 1, 16, 0));
  }

  @Test
  void what_does_not_fit_goes_on_next_morning() {
    assertThat(usual.work(6, 4, false)).isEqualTo(new WorkingHours.Span(6, 26));
  }

  @Test
  void a_weekend_lies_between_friday_and_monday() {
    // Begun on Friday at 12:00, six hours: four on Friday, two on Monday.
    WorkingHours.Span span = usual.work(4 * 24 + 4, 6, false);
    assertThat(usual.at(span.start())).isEqualTo(LocalDateTime.of(2027, 3, 5, 12, 0));
    assertThat(usual.at(span.end())).isEqualTo(LocalDateTime.of(2027, 3, 8, 10, 0));
  }

  @Test
  void what_must_be_done_in_one_go_waits_for_a_morning_with_room_for_it() {
    assertThat(usual.work(6, 4, true)).isEqualTo(new WorkingHours.Span(24, 28));
    assertThat(usual.work(6, 2, true)).isEqualTo(new WorkingHours.Span(6, 8));
  }

  @Test
  void one_go_longer_than_a_day_begins_in_the_morning_and_runs_on() {
    assertThat(usual.work(3, 11, true)).isEqualTo(new WorkingHours.Span(24, 35));
  }

  @Test
  void a_start_on_a_day_off_moves_to_the_next_working_day() {
    WorkingHours saturday = new WorkingHours(LocalDate.of(2027, 3, 6), true, 8, 8, WEEK);
    assertThat(saturday.at(saturday.work(0, 1, false).start()))
        .isEqualTo(LocalDateTime.of(2027, 3, 8, 8, 0));
  }

  @Test
  void no_work_takes_no_time() {
    assertThat(usual.work(20, 0, false)).isEqualTo(new WorkingHours.Span(20, 20));
  }

  @Test
  void the_hours_worked_within_a_span_are_the_hours_asked_for() {
    long seed = 20270301L;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double hours = 1 + random.nextInt(24);
      Set<DayOfWeek> days = EnumSet.of(DayOfWeek.of(1 + random.nextInt(7)));
      days.add(DayOfWeek.of(1 + random.nextInt(7)));
      WorkingHours working = new WorkingHours(LocalDate.of(2027, 3, 1), true, 8, hours, days);
      double from = random.nextInt(400) / 2.0;
      double work = 0.5 + random.nextInt(80) / 2.0;
      WorkingHours.Span span = working.work(from, work, false);
      double counted = 0;
      // Half-hour steps: all times here are whole half hours.
      for (double at = span.start(); at < span.end() - 1e-6; at += 0.5) {
        double day = Math.floor(at / 24 + 1e-9);
        boolean works =
            at - day * 24 < hours - 1e-6
                && days.contains(LocalDate.of(2027, 3, 1).plusDays((long) day).getDayOfWeek());
        counted += works ? 0.5 : 0;
      }
      assertThat(span.start()).as("seed %d, %d", seed, i).isGreaterThanOrEqualTo(from - 1e-6);
      assertThat(counted).as("seed %d, %d: %s", seed, i, span).isCloseTo(work, within(1e-6));
    }
  }
}
