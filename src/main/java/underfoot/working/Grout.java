package underfoot.working;

import static underfoot.quantity.Dimension.DENSITY;
import static underfoot.quantity.Dimension.LENGTH;

/** How much grout fills the joints of a square metre. */
public final class Grout extends Working {
  /** Makes the working. */
  public Grout() {
    super(
        new Sheet(
            "grout",
            "How much grout a square metre of tiling takes",
            "Geometry of a grid of tiles; the shorter formula is that of makers' data sheets (common"
                + " practice)",
            "length=300 mm",
            "width=300 mm",
            "thickness=8 mm",
            "joint=3 mm",
            "density=1.6 kg/L"),
        CommonKeys.TILE_LENGTH,
        CommonKeys.TILE_WIDTH,
        Key.of("thickness", LENGTH, "mm", 0.5, 500, "thickness of a tile"),
        CommonKeys.JOINT,
        Key.of("density", DENSITY, "kg/L", 0.1, 10, "dry grout per litre of joint"));
  }

  /**
   * What a square metre takes.
   *
   * @param exactKgPerM2 exact for a grid of tiles, kg/m2
   * @param simpleKgPerM2 by the shorter formula of the data sheets, kg/m2
   */
  public record Values(double exactKgPerM2, double simpleKgPerM2) {}

  /**
   * Works out exact = (1 - LW/((L + j)(W + j))) t d and simple = (L + W)/(LW) j t d.
   *
   * @param lengthMm length of a tile, mm, above 0
   * @param widthMm width of a tile, mm, above 0
   * @param thicknessMm thickness of a tile, mm, above 0
   * @param jointMm joint width, mm, 0 or more
   * @param densityKgPerL dry grout for each litre of joint, kg/L, above 0
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(
      double lengthMm, double widthMm, double thicknessMm, double jointMm, double densityKgPerL) {
    Need.positive("length", lengthMm);
    Need.positive("width", widthMm);
    Need.notNegative("joint", jointMm);
    double full = Need.positive("thickness", thicknessMm) * Need.positive("density", densityKgPerL);
    // The same as 1 - LW/((L+j)(W+j)), without taking nearly equal numbers from each other.
    double share =
        jointMm * (lengthMm + widthMm + jointMm) / ((lengthMm + jointMm) * (widthMm + jointMm));
    double simple = (lengthMm + widthMm) / (lengthMm * widthMm) * jointMm;
    return new Values(share * full, simple * full);
  }

  @Override
  Result work(Inputs in) {
    Values values =
        of(
            in.number("length"),
            in.number("width"),
            in.number("thickness"),
            in.number("joint"),
            in.number("density"));
    return new Result.Draft(in)
        .let("L", in.number("length"), "mm")
        .let("W", in.number("width"), "mm")
        .let("j", in.number("joint"), "mm")
        .let("t", in.number("thickness"), "mm")
        .value("exact", values.exactKgPerM2(), "kg/m2")
        .value("simple", values.simpleKgPerM2(), "kg/m2")
        .step("exact = (1 - L*W/((L + j)*(W + j)))*t*density")
        .step("simple = (L + W)/(L*W)*j*t*density")
        .note("Net: no waste. The shorter formula says too much where tiles are small.")
        .done(this);
  }
}
