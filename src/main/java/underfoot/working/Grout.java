package underfoot.working;

import java.util.List;

/** How much grout fills the joints of a square metre. */
public final class Grout implements Working {

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
  public String name() {
    return "grout";
  }

  @Override
  public String purpose() {
    return "How much grout a square metre of tiling takes";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        TileKeys.length(),
        TileKeys.width(),
        Key.of("thickness", Dimension.LENGTH, "mm", 0.5, 500, "thickness of a tile"),
        TileKeys.joint(),
        Key.of("density", Dimension.DENSITY, "kg/L", 0.1, 10, "dry grout per litre of joint"));
  }

  @Override
  public List<String> example() {
    return List.of(
        "length=300 mm", "width=300 mm", "thickness=8 mm", "joint=3 mm", "density=1.6 kg/L");
  }

  @Override
  public String source() {
    return "Geometry of a grid of tiles; the shorter formula is that of makers' data sheets (common"
        + " practice)";
  }

  @Override
  public Result work(Inputs in) {
    double length = in.number("length");
    double width = in.number("width");
    double thickness = in.number("thickness");
    double joint = in.number("joint");
    double density = in.number("density");
    Values values = of(length, width, thickness, joint, density);
    String l = Show.number(length);
    String w = Show.number(width);
    String j = Show.number(joint);
    String rest = "*" + Show.number(thickness) + "*" + Show.number(density);
    return new Result.Draft()
        .step(
            "exact = (1 - L*W/((L + j)*(W + j)))*t*density",
            "(1 - " + l + "*" + w + "/((" + l + " + " + j + ")*(" + w + " + " + j + ")))" + rest,
            "exact = " + Show.number(values.exactKgPerM2()) + " kg/m2")
        .step(
            "simple = (L + W)/(L*W)*j*t*density",
            "(" + l + " + " + w + ")/(" + l + "*" + w + ")*" + j + rest,
            "simple = " + Show.number(values.simpleKgPerM2()) + " kg/m2")
        .value("exact", values.exactKgPerM2(), "kg/m2")
        .value("simple", values.simpleKgPerM2(), "kg/m2")
        .note("Net: no waste. The shorter formula says too much where tiles are small.")
        .done(this, in);
  }
}
