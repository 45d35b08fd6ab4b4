package underfoot.working;

/**
 * A number with its unit.
 *
 * @param value the number, unrounded and finite
 * @param unit the unit as written in the contract; empty for a pure number
 */
public record Measure(double value, String unit) {
  /** Refuses numbers that are not finite, and turns minus nought into nought. */
  public Measure {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number");
    }
    value = value == 0 ? 0 : value;
  }

  @Override
  public String toString() {
    return Show.number(value) + (unit.isEmpty() ? "" : " " + unit);
  }
}
