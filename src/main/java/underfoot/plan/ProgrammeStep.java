package underfoot.plan;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Step;

/**
 * A step of the work.
 *
 * @param id the id by which {@code why} explains it
 * @param step what is done
 * @param kind whether hands work or time passes
 * @param startHour when it begins, hours from the start of the work
 * @param hours how long the work or the wait itself is
 * @param endHour when it ends, hours from the start of the work; later than start and hours
 *     together where nights and days off lie between
 * @param begins the date and time it begins; empty without a start date
 * @param ends the date and time it ends; empty without a start date
 * @param critical whether a delay of it delays the day the room is in use
 * @param after what must be put right before it begins, by the ids of the remedies
 * @param because why it takes so long
 */
public record ProgrammeStep(
    String id,
    String step,
    Step.Kind kind,
    double startHour,
    double hours,
    double endHour,
    Optional<LocalDateTime> begins,
    Optional<LocalDateTime> ends,
    boolean critical,
    List<String> after,
    List<Justification> because)
    implements Advice.Decision {
  /** Copies the lists. */
  public ProgrammeStep {
    after = List.copyOf(after);
    because = List.copyOf(because);
  }

  @Override
  public String heading() {
    return step;
  }
}
