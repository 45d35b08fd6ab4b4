package underfoot.working;

/**
 * How fast a kind of screed dries from one face.
 *
 * @param firstDepthMm depth that dries at the first rate, mm
 * @param daysPerMm time for each mm down to that depth, days
 * @param daysPerMmBeyond time for each mm beyond it, days
 */
public record DryingRates(double firstDepthMm, double daysPerMm, double daysPerMmBeyond) {
  /** Refuses numbers that are not above 0. */
  public DryingRates {
    Need.positive("first depth", firstDepthMm);
    Need.positive("days per mm", daysPerMm);
    Need.positive("days per mm beyond", daysPerMmBeyond);
  }
}
