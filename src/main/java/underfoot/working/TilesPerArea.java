package underfoot.working;

import java.util.List;

/** How many tiles, with their joints, cover a square metre. */
public final class TilesPerArea implements Working {

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
  public String name() {
    return "tiles-per-area";
  }

  @Override
  public String purpose() {
    return "How many tiles, with their joints, cover a square metre";
  }

  @Override
  public List<Key> keys() {
    return List.of(TileKeys.length(), TileKeys.width(), TileKeys.joint());
  }

  @Override
  public List<String> example() {
    return List.of("length=600 mm", "width=600 mm", "joint=3 mm");
  }

  @Override
  public String source() {
    return "Geometry of a grid of tiles";
  }

  @Override
  public Result work(Inputs in) {
    double count = of(in.number("length"), in.number("width"), in.number("joint"));
    String j = Show.number(in.number("joint"));
    return new Result.Draft()
        .step(
            "count = 1000000/((L + j)*(W + j))",
            "1000000/(("
                + Show.number(in.number("length"))
                + " + "
                + j
                + ")*("
                + Show.number(in.number("width"))
                + " + "
                + j
                + "))",
            "count = " + Show.number(count) + " per m2")
        .value("count", count, "per m2")
        .note("Net: no cuts, breakage or spares.")
        .done(this, in);
  }
}
