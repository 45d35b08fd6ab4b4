package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.quantity.Dimension.MASS_PER_DEPTH;
import static underfoot.working.Key.Trait.ABOVE;
import static underfoot.working.Key.Trait.OPTIONAL;

/** How much levelling compound fills a floor up to a level datum. */
public final class LevellingVolume extends Working {
  /** Makes the working. */
  public LevellingVolume() {
    super(
        new Sheet(
            "levelling-volume",
            "How much levelling compound fills a floor to a level datum",
            "Volume of triangles clipped at zero depth, geometry; 1 mm over 1 m2 is 1 L",
            "grid=0,4,8;2,6,10;4,8,12",
            "dx=1 m",
            "dy=1 m",
            "datum=15 mm",
            "density=1.7 kg/m2"),
        CommonKeys.joined(
            CommonKeys.grid(),
            Key.of("datum", LENGTH, "mm", -1e5, 1e5, "level to fill to, from the same zero"),
            Key.of(
                "density",
                MASS_PER_DEPTH,
                "kg/m2",
                0,
                30,
                "powder for each mm of depth, from the data sheet",
                ABOVE,
                OPTIONAL)));
  }

  /**
   * What lies below a datum over one triangle.
   *
   * @param volumeL volume, L (1 L is 1 mm over 1 m2)
   * @param areaM2 wetted area, m2
   */
  public record Fill(double volumeL, double areaM2) {}

  /**
   * What a grid of heights comes to.
   *
   * @param volumeL volume, L: the mean of both diagonals
   * @param areaM2 wetted area, m2: the mean of both diagonals
   * @param minDepthMm least depth, mm; 0 where part of the floor stands above the datum
   * @param maxDepthMm greatest depth, mm
   * @param meanDepthMm volume over wetted area, mm; 0 where nothing is wetted
   * @param a cells cut from row 0 column 0 to row 1 column 1
   * @param b cells cut the other way
   */
  public record Values(
      double volumeL,
      double areaM2,
      double minDepthMm,
      double maxDepthMm,
      double meanDepthMm,
      Fill a,
      Fill b) {}

  /**
   * Fills one triangle whose depths below the datum run evenly between its corners; what stands
   * above the datum is cut away exactly along the line of no depth.
   *
   * @param areaM2 area of the triangle, m2, 0 or more
   * @param depth1 depth at a corner, mm, negative above the datum
   * @param depth2 depth at the next corner, mm
   * @param depth3 depth at the last corner, mm
   */
  public static Fill triangle(double areaM2, double depth1, double depth2, double depth3) {
    double high = Math.max(depth1, Math.max(depth2, depth3));
    double low = Math.min(depth1, Math.min(depth2, depth3));
    double middle = Math.max(Math.min(depth1, depth2), Math.min(Math.max(depth1, depth2), depth3));
    if (high <= 0) {
      return new Fill(0, 0);
    }
    double whole = areaM2 * (high + middle + low) / 3;
    if (low >= 0) {
      return new Fill(whole, areaM2);
    }
    if (middle <= 0) {
      double wet = areaM2 * (high / (high - middle)) * (high / (high - low));
      return new Fill(wet * high / 3, wet);
    }
    double dry = areaM2 * (low / (low - high)) * (low / (low - middle));
    return new Fill(whole - dry * low / 3, areaM2 - dry);
  }

  /**
   * Fills a grid of heights up to a level datum: each cell is cut into two triangles, clipped at
   * zero depth, once along each diagonal.
   *
   * @param grid rows of heights, mm; at least two rows of at least two
   * @param dxM spacing along a row, m, above 0
   * @param dyM spacing of the rows, m, above 0
   * @param datumMm level to fill to, mm
   * @throws IllegalArgumentException for a grid that is too small or ragged
   */
  public static Values of(double[][] grid, double dxM, double dyM, double datumMm) {
    check(grid);
    double half = Need.positive("dx", dxM) * Need.positive("dy", dyM) / 2;
    double[] volume = new double[2];
    double[] area = new double[2];
    for (int i = 0; i + 1 < grid.length; i++) {
      for (int j = 0; j + 1 < grid[0].length; j++) {
        double d00 = datumMm - grid[i][j];
        double d01 = datumMm - grid[i][j + 1];
        double d10 = datumMm - grid[i + 1][j];
        double d11 = datumMm - grid[i + 1][j + 1];
        Fill[] fills = {
          triangle(half, d00, d01, d11),
          triangle(half, d00, d10, d11),
          triangle(half, d01, d10, d00),
          triangle(half, d01, d10, d11)
        };
        for (int k = 0; k < fills.length; k++) {
          volume[k / 2] += fills[k].volumeL();
          area[k / 2] += fills[k].areaM2();
        }
      }
    }
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (double[] row : grid) {
      for (double height : row) {
        most = Math.max(most, datumMm - height);
        least = Math.min(least, datumMm - height);
      }
    }
    double meanVolume = (volume[0] + volume[1]) / 2;
    double meanArea = (area[0] + area[1]) / 2;
    return new Values(
        meanVolume,
        meanArea,
        Math.max(0, least),
        Math.max(0, most),
        meanArea > 0 ? meanVolume / meanArea : 0,
        new Fill(volume[0], area[0]),
        new Fill(volume[1], area[1]));
  }

  private static void check(double[][] grid) {
    if (grid.length < 2 || grid[0].length < 2) {
      throw new IllegalArgumentException("a grid needs two rows of two heights or more");
    }
    for (double[] row : grid) {
      if (row.length != grid[0].length) {
        throw new IllegalArgumentException("the rows of the grid differ in length");
      }
      for (double height : row) {
        Need.finite("height", height);
      }
    }
  }

  @Override
  Result work(Inputs in) {
    double[][] grid = in.rows("grid");
    if (grid.length < 2 || grid[0].length < 2) {
      throw in.refuse("grid", "needs two rows of two heights or more");
    }
    double dx = in.metres("dx");
    double dy = in.metres("dy");
    Values values = of(grid, dx, dy, in.number("datum"));
    double whole = (grid.length - 1) * dy * (grid[0].length - 1) * dx;
    Result.Draft draft =
        new Result.Draft(in)
            .let("cells", (grid.length - 1) * (grid[0].length - 1))
            .let("dx", dx)
            .let("dy", dy)
            .let("whole", whole)
            .let("area-a", values.a().areaM2())
            .let("area-b", values.b().areaM2())
            .value("volume", values.volumeL(), "L")
            .value("area", values.areaM2(), "m2")
            .value("min-depth", values.minDepthMm(), "mm")
            .value("max-depth", values.maxDepthMm(), "mm")
            .value("mean-depth", values.meanDepthMm(), "mm")
            .value("volume-a", values.a().volumeL(), "L")
            .value("volume-b", values.b().volumeL(), "L")
            .step(
                "depth = datum - height; volume = sum over triangles of wet area * mean depth",
                "datum {datum} mm, {cells} cells of {dx} m by {dy} m, two triangles each, cut both"
                    + " ways",
                "volume-a = {volume-a} L, volume-b = {volume-b} L")
            .step("volume = (volume-a + volume-b)/2")
            .step("mean depth = volume/area", "mean-depth = {mean-depth} mm");
    if (in.has("density")) {
      draft
          .value("mass", values.volumeL() * in.number("density"), "kg")
          .step("mass = volume*density");
    } else {
      draft.note("No density was given, so no mass of powder is worked out.");
    }
    boolean partly = values.areaM2() < whole * (1 - 1e-12);
    return draft
        .noteIf(
            partly,
            "Part of the floor stands above the datum: {area} m2 of {whole} m2 is covered, and the"
                + " edge of the pour runs out to nothing.")
        .noteIf(partly, "Wetted area by diagonal: a {area-a} m2, b {area-b} m2.")
        .note("Net volume; waste and what stays in the bucket are not counted.")
        .done(this);
  }
}
