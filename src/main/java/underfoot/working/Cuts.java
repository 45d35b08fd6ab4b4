package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;

/** How tiles fall along a run: whole tiles between two equal end cuts. */
public final class Cuts extends Working {
  private static final double SLIP_MM = 1e-9;

  /** Makes the working. */
  public Cuts() {
    super(
        new Sheet(
            "cuts",
            "How many whole tiles fit along a run, and the two equal cuts at its ends",
            "Geometry; tiles are centred so that the end cuts are equal and as large as can be (ANSI"
                + " A108.02 4.3.1 and 4.3.2, quoted; UK practice the same)",
            "run=3000 mm",
            "tile=600 mm",
            "joint=3 mm",
            "gap=6 mm"),
        Key.of("run", LENGTH, "m", 0.001, 1000, "length from wall to wall"),
        Key.of("tile", LENGTH, "mm", 1, 5000, "tile size in that direction"),
        CommonKeys.JOINT,
        Key.of("gap", LENGTH, "mm", 0, 500, "gap left at each wall"));
  }

  /**
   * How tiles fall.
   *
   * @param full whole tiles between the end cuts
   * @param cutMm length of each end cut, mm, never more than a tile
   */
  public record Values(long full, double cutMm) {}

  /**
   * Works out the cut (run - 2 gap - n tile - (n + 1) joint)/2 for the two centrings, a tile on the
   * middle (n odd) or a joint on the middle (n even), each with the largest cut that is no more
   * than a tile; the centring with the larger cut wins.
   *
   * @param runMm length from wall to wall, mm, above 0
   * @param tileMm tile in that direction, mm, above 0
   * @param jointMm joint width, mm, 0 or more
   * @param gapMm gap at each wall, mm, 0 or more
   * @throws IllegalArgumentException outside those ranges, or where the run has no room for two
   *     cuts
   */
  public static Values of(double runMm, double tileMm, double jointMm, double gapMm) {
    Need.positive("run", runMm);
    Need.positive("tile", tileMm);
    Need.notNegative("joint", jointMm);
    Need.notNegative("gap", gapMm);
    double room = runMm - 2 * gapMm;
    double pitch = tileMm + jointMm;
    // The least n of either parity for which the cut is no more than a tile.
    long least = (long) Math.max(0, Math.ceil((room - jointMm - 2 * tileMm - 2 * SLIP_MM) / pitch));
    Values best = null;
    for (long full = least; full <= least + 1; full++) {
      double cut = Math.min(tileMm, (room - full * tileMm - (full + 1) * jointMm) / 2);
      if (cut > SLIP_MM && (best == null || cut > best.cutMm())) {
        best = new Values(full, cut);
      }
    }
    if (best == null) {
      throw new IllegalArgumentException("there is no room for two cuts and a joint between");
    }
    return best;
  }

  @Override
  Result work(Inputs in) {
    double tile = in.number("tile");
    Values values =
        in.blaming("run", () -> of(in.number("run"), tile, in.number("joint"), in.number("gap")));
    double cut = values.cutMm();
    return new Result.Draft(in)
        .value("full", values.full(), "")
        .value("cut", cut, "mm")
        .let("joints", values.full() + 1, "")
        .step(
            "cut = (run - 2*gap - n*tile - (n + 1)*joint)/2, n whole tiles; the centring with the"
                + " larger cut",
            "({run} - 2*{gap} - {full}*{tile} - {joints}*{joint})/2",
            "{full} whole tiles and two cuts of {cut} mm")
        .note((values.full() % 2 == 1 ? "A tile" : "A joint") + " lies on the middle of the run.")
        .noteIf(cut == tile, "The end pieces are whole tiles: nothing is cut.")
        .noteIf(cut < tile / 2, "The cuts are less than half a tile, and no centring gives more.")
        .done(this);
  }
}
