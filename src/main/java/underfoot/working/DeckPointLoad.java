package underfoot.working;

import java.util.List;

/**
 * How far a deck dips between two joists under a load on one spot.
 *
 * <p>Source: P L^3/(48 E I) of the strip that bends with the load. For a sheet the width of that
 * strip is 1.23 L, from the plate on two long supports (0.01695 P L^2/D, Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, from memory), times the fourth root of its
 * stiffness across over that along.
 */
public final class DeckPointLoad {
  private static final double PLATE = 0.01695;

  private DeckPointLoad() {}

  /**
   * A layer of the deck.
   *
   * @param thicknessMm thickness, mm
   * @param modulus modulus of elasticity in the direction of the span, N/mm2
   * @param widthMm width that bends with the load, mm
   */
  public record Strip(double thicknessMm, double modulus, double widthMm) {}

  /** The width of a sheet that bends with the load. */
  public static double sheetWidth(double centresMm, double acrossOverAlong) {
    return centresMm / (48 * PLATE) * Math.pow(acrossOverAlong, 0.25);
  }

  /**
   * Works out the dip of layers laid loose one on another.
   *
   * @param strips the layers
   * @param centresMm joist spacing, mm
   * @param loadKn the load, kN
   * @param continuity share of the dip of one span that is left where the deck runs on over joists
   * @return deflection, mm
   */
  public static double of(List<Strip> strips, double centresMm, double loadKn, double continuity) {
    double stiffness =
        strips.stream()
            .mapToDouble(
                strip ->
                    Need.positive("modulus", strip.modulus())
                        * Beam.secondMoment(strip.widthMm(), strip.thicknessMm()))
            .sum();
    double one = loadKn * 1000 * Math.pow(Need.positive("centres", centresMm), 3);
    return continuity * one / (48 * stiffness);
  }
}
