package underfoot.working;

/** How many tiles, with their joints, cover a square metre. */
public final class TilesPerArea extends Working {
  /** Makes the working. */
  public TilesPerArea() {
    super(
        new Sheet(
            "tiles-per-area",
            "How many tiles, with their joints, cover a square metre",
            "Geometry of a grid of tiles",
            "length=600 mm",
            "width=600 mm",
            "joint=3 mm"),
        CommonKeys.TILE_LENGTH,
        CommonKeys.TILE_WIDTH,
        CommonKeys.JOINT);
  }

  /**
   * Works out 1000000/((L + j)(W + j)).
   *
   * @param lengthMm length of a tile, mm, above 0
   * @param widthMm width of a tile, mm, above 0
   * @param jointMm joint width, mm, 0 or more
   * @return tiles for each m2, not rounded, no waste
   * @throws IllegalArgumentException outside those ranges
   */
  public static double of(double lengthMm, double widthMm, double jointMm) {
    double joint = Need.notNegative("joint", jointMm);
    return 1e6
        / ((Need.positive("length", lengthMm) + joint) * (Need.positive("width", widthMm) + joint));
  }

  @Override
  Result work(Inputs in) {
    double count = of(in.number("length"), in.number("width"), in.number("joint"));
    return new Result.Draft(in)
        .let("L", in.number("length"), "mm")
        .let("W", in.number("width"), "mm")
        .let("j", in.number("joint"), "mm")
        .value("count", count, "per m2")
        .step("count = 1000000/((L + j)*(W + j))")
        .note("Net: no cuts, breakage or spares.")
        .done(this);
  }
}
