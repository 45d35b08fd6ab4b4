package underfoot.buildup;

import underfoot.knowledge.Because;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;

/**
 * A step of the programme with the time it takes or holds up the next. Of several for one step the
 * longest holds.
 *
 * @param because why
 * @param step the id of the step's text
 * @param figure the time at the reference temperature of the data sheet
 * @param cures whether it runs faster or slower with temperature
 */
public record Wait(Because because, String step, Figure figure, boolean cures)
    implements Conclusion {
  /** What a cure is hastened or slowed by, as facts name it. */
  public static final String SPEED = "cure factor";

  /** Whether the temperature of this floor hastens or slows it. */
  public boolean isScaled(Facts facts) {
    return cures && facts.number(SPEED) > 0;
  }

  /** How long it takes on this floor, h. */
  public double hours(Facts facts) {
    return figure.number() / (isScaled(facts) ? facts.number(SPEED) : 1);
  }
}
