package underfoot.plan;

import java.util.List;

/**
 * How long the work takes, and the days that are waited for.
 *
 * @param workHours hours that hands work, one pair of hands
 * @param inUseAfterHours hours from the start of the work until the room is in full use
 * @param milestones what has come when, the first first
 */
public record Schedule(double workHours, double inUseAfterHours, List<Milestone> milestones) {
  /** Copies the list. */
  public Schedule {
    milestones = List.copyOf(milestones);
  }

  /** Nothing planned. */
  static Schedule none() {
    return new Schedule(0, 0, List.of());
  }
}
