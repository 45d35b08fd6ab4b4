package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;

import java.util.List;

/** How a floor is divided into bays by movement joints. */
public final class MovementBays extends Working {
  /** A limit met within this share of itself is met exactly. */
  private static final double SLIP = 1e-9;

  private final BayLimits heated;
  private final BayLimits unheated;

  /**
   * Makes the working.
   *
   * @param heated limits of a heated floor
   * @param unheated limits of a floor without heating
   */
  public MovementBays(BayLimits heated, BayLimits unheated) {
    super(
        new Sheet(
            "movement-bays",
            "How many bays a floor is divided into by movement joints",
            "UK tile trade association's tiling guide: internal floors and heated floors (published"
                + " and quoted)",
            "length=12 m",
            "width=6 m",
            "heated=yes"),
        Key.of("length", LENGTH, "m", 0.1, 1000, "length of the floor"),
        Key.of("width", LENGTH, "m", 0.1, 1000, "width of the floor"),
        Key.choice("heated", "whether the floor is heated", List.of("yes", "no")));
    this.heated = heated;
    this.unheated = unheated;
  }

  /**
   * How a floor is divided.
   *
   * @param bays number of bays
   * @param along bays along the length
   * @param across bays across the width
   * @param bayLengthM length of a bay, m
   * @param bayWidthM width of a bay, m
   */
  public record Values(long bays, long along, long across, double bayLengthM, double bayWidthM) {}

  /**
   * Finds the fewest equal bays that keep within the limits; of several ways the one with the
   * squarest bays; of two equally square the one with more bays along the length. A limit met
   * exactly passes.
   *
   * @param lengthM length of the floor, m, above 0
   * @param widthM width of the floor, m, above 0
   * @param limits how large a bay may be
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(double lengthM, double widthM, BayLimits limits) {
    long leastAlong = atLeast(Need.positive("length", lengthM) / limits.longestSideM());
    long leastAcross = atLeast(Need.positive("width", widthM) / limits.longestSideM());
    double byArea =
        limits.largestAreaM2().isPresent()
            ? lengthM * widthM / limits.largestAreaM2().getAsDouble()
            : 1;
    Values best = null;
    for (long along = leastAlong; best == null || along * leastAcross <= best.bays(); along++) {
      long across = Math.max(leastAcross, atLeast(byArea / along));
      Values tried = new Values(along * across, along, across, lengthM / along, widthM / across);
      if (best == null || better(tried, best)) {
        best = tried;
      }
    }
    return best;
  }

  private static long atLeast(double share) {
    return Math.max(1, (long) Math.ceil(share * (1 - SLIP)));
  }

  private static boolean better(Values tried, Values best) {
    if (tried.bays() != best.bays()) {
      return tried.bays() < best.bays();
    }
    return squareness(tried) >= squareness(best) * (1 - SLIP);
  }

  private static double squareness(Values values) {
    return Math.min(values.bayLengthM(), values.bayWidthM())
        / Math.max(values.bayLengthM(), values.bayWidthM());
  }

  @Override
  Result work(Inputs in) {
    double length = in.metres("length");
    double width = in.metres("width");
    BayLimits limits = in.word("heated").equals("yes") ? heated : unheated;
    Values values = of(length, width, limits);
    String area =
        limits.largestAreaM2().isPresent()
            ? ", no bay over " + Show.number(limits.largestAreaM2().getAsDouble()) + " m2"
            : "";
    return new Result.Draft(in)
        .let("length", length)
        .let("width", width)
        .let("bay length", values.bayLengthM())
        .let("bay width", values.bayWidthM())
        .let("bay area", values.bayLengthM() * values.bayWidthM())
        .value("bays", values.bays(), "")
        .value("along", values.along(), "")
        .value("across", values.across(), "")
        .step(
            "fewest equal bays along*across, no side over "
                + Show.number(limits.longestSideM())
                + " m"
                + area,
            "{length}/{along} m by {width}/{across} m",
            "{bays}"
                + (values.bays() == 1 ? " bay of " : " bays of ")
                + "{bay length} m by {bay width} m, {bay area} m2")
        .note(
            "For a plain rectangle. Joints in the base, changes of base and doorways come first, and a"
                + " perimeter joint goes all round.")
        .done(this);
  }
}
