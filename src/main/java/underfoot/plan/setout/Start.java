package underfoot.plan.setout;

import java.util.Comparator;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.StartedFrom;

/** A start and what it comes to. */
record Start(Scene scene, double x, double y, Tally tally, Option option) {
  /** Fewer points; then the wider cut; then fewer cuts; then the named way before a found one. */
  static final Comparator<Start> BETTER =
      Comparator.comparingDouble((Start one) -> Math.rint(one.option().points() * 1e6))
          .thenComparing(one -> one.option().way() == StartedFrom.FOUND)
          .thenComparingDouble(one -> -Math.min(1e9, Math.rint(one.option().least() * 1e3)))
          .thenComparingInt(one -> one.option().cut());
}
