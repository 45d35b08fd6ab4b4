package underfoot.buildup;

import underfoot.knowledge.Derivation;
import underfoot.knowledge.Facts;

/**
 * A step of the programme with the time it takes or holds up the next. Of several for one step the
 * longest holds, and times for each square metre come on top, once for each rule and layer.
 *
 * @param because why
 * @param step the id of the step's text
 * @param hours the time at the reference temperature of the data sheet, h; for each square metre
 *     where the pace says so
 * @param pace how the time is to be taken
 */
public record StepTime(Derivation because, String step, double hours, Pace pace)
    implements Conclusion {
  /** What a cure is hastened or slowed by, as facts name it. */
  public static final String SPEED = "cure factor";

  /** How a time is to be taken. */
  public enum Pace {
    /** As it stands. */
    FIXED,
    /** Slower in the cold and faster in the heat. */
    CURES,
    /** For each square metre of the floor. */
    BY_AREA
  }

  /** Whether the temperature of this floor hastens or slows it. */
  public boolean isScaled(Facts facts) {
    return pace == Pace.CURES && facts.number(SPEED) > 0;
  }

  /** How long it takes on this floor, h; for each square metre where the pace says so. */
  public double hours(Facts facts) {
    return hours / (isScaled(facts) ? facts.number(SPEED) : 1);
  }

  @Override
  public int hashCode() {
    return because.hashCode();
  }

  @Override
  public String toString() {
    return Conclusion.line(this, step, hours, pace);
  }
}
