package underfoot.plan.setout;

import java.util.List;

/**
 * What counts how much when set-outs are compared; a set-out with fewer points is better.
 *
 * @param tile points for each tile taken from a box
 * @param cut points for each tile that is cut
 * @param narrow points for each cut narrower than wanted
 * @param narrowAtDoor points more for such a cut in a doorway
 * @param sliver points for each sliver
 * @param offCentre points for each direction that is not centred as wanted
 * @param across points where the tiles' length runs across the room
 * @param leastShare the least width of a cut, as a share of the tile, 0 to 1
 * @param sliverShare below this share of the tile a cut is a sliver, 0 to 1
 * @param sliverMm and also below this width, mm
 * @param kerf what a cut takes away, mm
 */
public record Weights(
    double tile,
    double cut,
    double narrow,
    double narrowAtDoor,
    double sliver,
    double offCentre,
    double across,
    double leastShare,
    double sliverShare,
    double sliverMm,
    double kerf) {
  private List<Object> parts() {
    return List.of(
        tile,
        cut,
        narrow,
        narrowAtDoor,
        sliver,
        offCentre,
        across,
        leastShare,
        sliverShare,
        sliverMm,
        kerf);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Weights that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** Whether a cut is a sliver. */
  boolean sliver(double width, double whole) {
    return width < sliverLimit(whole) - Field.SLIP;
  }

  /** Whether a cut is narrower than wanted. */
  boolean narrow(double width, double whole) {
    return width < leastShare * whole - Field.SLIP;
  }

  /** The width below which a cut of such a tile is a sliver, mm. */
  double sliverLimit(double whole) {
    return Math.min(sliverMm, sliverShare * whole);
  }
}
