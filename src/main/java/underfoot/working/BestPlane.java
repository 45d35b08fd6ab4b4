package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.BARE;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The plane that fits a set of heights best, by least squares. */
public final class BestPlane extends Working {
  /** Below this share of their length, readings lie on one line. */
  private static final double ON_A_LINE = 1e-12;

  /** Makes the working. */
  public BestPlane() {
    super(
        new Sheet(
                "best-plane",
                "The plane that fits a set of heights best: its tilt, and how far the floor strays"
                    + " from it",
                "Least squares, textbook closed form",
                "grid=0,3,9;1,2,8;3,5,12",
                "dx=1.5 m",
                "dy=1.2 m")
            .ways(Alternative.of("points"), Alternative.of("grid", "dx", "dy")),
        CommonKeys.joined(
            new Key[] {
              Key.of(
                      "points",
                      LENGTH,
                      "mm",
                      -1e5,
                      1e5,
                      "readings; x and y in m, z in mm",
                      OPTIONAL,
                      BARE)
                  .as(Key.Shape.POINTS)
            },
            CommonKeys.grid(OPTIONAL)));
  }

  /**
   * What a set of readings comes to.
   *
   * @param aMm height of the plane at x = 0, y = 0, mm
   * @param bMmPerM slope along x, mm/m
   * @param cMmPerM slope along y, mm/m
   * @param tiltMmPerM steepest slope, mm/m
   * @param rmsMm root mean square of the residuals over the number of readings, mm
   * @param highestMm largest residual, mm: the highest point above the plane
   * @param lowestMm least residual, mm
   * @param residualsMm each reading less the plane, in order, mm
   */
  public record Values(
      double aMm,
      double bMmPerM,
      double cMmPerM,
      double tiltMmPerM,
      double rmsMm,
      double highestMm,
      double lowestMm,
      List<Double> residualsMm) {

    /** Height of the plane at a place, mm. */
    public double heightAt(double xM, double yM) {
      return aMm + bMmPerM * xM + cMmPerM * yM;
    }
  }

  /**
   * Fits z = a + b x + c y by least squares. Sums are taken about the middle of the readings, so
   * that a far origin costs no accuracy.
   *
   * @param readings three or more readings, not all on one line
   * @throws IllegalArgumentException for fewer than three readings, or readings on one line
   */
  public static Values of(List<Reading> readings) {
    int count = readings.size();
    if (count < 3) {
      throw new IllegalArgumentException("a plane needs three readings or more");
    }
    double midX = readings.stream().mapToDouble(Reading::xM).average().orElseThrow();
    double midY = readings.stream().mapToDouble(Reading::yM).average().orElseThrow();
    double midZ = readings.stream().mapToDouble(Reading::zMm).average().orElseThrow();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xz = 0;
    double yz = 0;
    for (Reading reading : readings) {
      double x = reading.xM() - midX;
      double y = reading.yM() - midY;
      double z = reading.zMm() - midZ;
      xx += x * x;
      xy += x * y;
      yy += y * y;
      xz += x * z;
      yz += y * z;
    }
    double determinant = xx * yy - xy * xy;
    if (!(determinant > ON_A_LINE * (xx + yy) * (xx + yy))) {
      throw new IllegalArgumentException("the readings lie on one line, so no plane is settled");
    }
    double b = (xz * yy - yz * xy) / determinant;
    double c = (yz * xx - xz * xy) / determinant;
    double a = midZ - b * midX - c * midY;
    List<Double> residuals = new ArrayList<>(count);
    double squares = 0;
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    for (Reading reading : readings) {
      double residual =
          reading.zMm() - midZ - b * (reading.xM() - midX) - c * (reading.yM() - midY);
      residuals.add(residual);
      squares += residual * residual;
      highest = Math.max(highest, residual);
      lowest = Math.min(lowest, residual);
    }
    return new Values(
        a,
        b,
        c,
        Math.hypot(b, c),
        Math.sqrt(squares / count),
        highest,
        lowest,
        List.copyOf(residuals));
  }

  /**
   * The readings of a grid: column j of row i stands at x = j dx, y = i dy.
   *
   * @param grid rows of heights, mm
   * @param dxM spacing along a row, m
   * @param dyM spacing of the rows, m
   */
  public static List<Reading> readings(double[][] grid, double dxM, double dyM) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < grid.length; i++) {
      for (int j = 0; j < grid[i].length; j++) {
        readings.add(new Reading(j * dxM, i * dyM, grid[i][j]));
      }
    }
    return readings;
  }

  @Override
  Result work(Inputs in) {
    boolean points = in.has("points");
    List<Reading> readings =
        points
            ? Arrays.stream(in.rows("points")).map(p -> new Reading(p[0], p[1], p[2])).toList()
            : readings(in.rows("grid"), in.metres("dx"), in.metres("dy"));
    Values values = in.blaming(points ? "points" : "grid", () -> of(readings));
    return new Result.Draft(in)
        .let("n", readings.size())
        .value("a", values.aMm(), "mm")
        .value("b", values.bMmPerM(), "mm/m")
        .value("c", values.cMmPerM(), "mm/m")
        .value("tilt", values.tiltMmPerM(), "mm/m")
        .value("rms", values.rmsMm(), "mm")
        .value("highest", values.highestMm(), "mm")
        .value("lowest", values.lowestMm(), "mm")
        .step(
            "z = a + b*x + c*y, the sum of (reading - z)^2 made least",
            "{n} readings, x and y in m, z in mm",
            "z = {a} + "
                + Show.term(values.bMmPerM())
                + "*x + "
                + Show.term(values.cMmPerM())
                + "*y mm")
        .step("tilt = sqrt(b^2 + c^2)")
        .step("rms = sqrt(sum of (reading - z)^2/n)", "n = {n}", "rms = {rms} mm")
        .note("Highest and lowest are distances above and below the plane, not heights.")
        .done(this);
  }
}
