package underfoot.working;

/**
 * A height read at a place.
 *
 * @param xM place along one wall, m
 * @param yM place square to it, m
 * @param zMm height, mm, up positive
 */
public record Reading(double xM, double yM, double zMm) {
  /** Refuses numbers that are not finite. */
  public Reading {
    Need.finite("x", xM);
    Need.finite("y", yM);
    Need.finite("z", zMm);
  }
}
