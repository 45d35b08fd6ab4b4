package underfoot.working;

/**
 * The rates at which the risk from drying wind and sun steps up.
 *
 * @param low rate from which band 1 begins, kg/m2h
 * @param middle rate from which band 2 begins, kg/m2h
 * @param high rate from which band 3 begins, kg/m2h
 */
public record EvaporationBands(double low, double middle, double high) {
  /** Refuses bands that do not rise. */
  public EvaporationBands {
    if (!(0 < low && low < middle && middle < high)) {
      throw new IllegalArgumentException("evaporation bands must rise from above 0");
    }
  }

  /** The band of a rate: 0 to 3. */
  public int of(double rate) {
    if (rate >= high) {
      return 3;
    }
    if (rate >= middle) {
      return 2;
    }
    return rate >= low ? 1 : 0;
  }
}
