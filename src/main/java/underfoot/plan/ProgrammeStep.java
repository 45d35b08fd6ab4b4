package underfoot.plan;

import java.util.List;

/**
 * A step of the work.
 *
 * @param id the id by which {@code why} explains it
 * @param step what is done
 * @param startHour when it begins, hours from the start of the work
 * @param hours how long it takes or holds up the next
 * @param because why it takes so long
 */
public record ProgrammeStep(
    String id, String step, double startHour, double hours, List<Justification> because)
    implements Advice.Decision {
  /** Copies the list. */
  public ProgrammeStep {
    because = List.copyOf(because);
  }

  @Override
  public String heading() {
    return step;
  }
}
