package underfoot.plan.setout;

import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Envelope;

/**
 * Joints closed by so little that nobody sees it, where a row of tiles would otherwise be cut a
 * hair short of whole.
 */
public final class ClosedJoints {
  /** A row is closed by so much more than it lacks, so that it ends clear of the gap, mm. */
  private static final double CLEAR = 0.5;

  private ClosedJoints() {}

  /**
   * A better set-out with closer joints; empty if there is none.
   *
   * @param task what was asked
   * @param out what came of it
   * @param give by how much a joint may be closed, mm
   * @param least the least joint in any case, mm
   * @param lay sets tiles out
   */
  public static Optional<TileSetOut> of(
      TileTask task,
      TileSetOut out,
      double give,
      double least,
      Function<TileTask, Optional<TileSetOut>> lay) {
    boolean straight =
        task.kind() != Pattern.Kind.DIAGONAL
            && task.kind() != Pattern.Kind.HERRINGBONE
            && Math.abs(out.direction() % 90) < 1e-6;
    if (!straight) {
      return Optional.empty();
    }
    TreeSet<Double> closed = new TreeSet<>();
    Envelope room = task.room().getEnvelopeInternal();
    for (TileSetOut.WallCuts wall : out.walls()) {
      for (TileSetOut.Size size : wall.sizes()) {
        // The start of a row is fixed by the room, or by a door that it is set out from.
        DoubleStream runs =
            DoubleStream.concat(
                DoubleStream.of(room.getWidth(), room.getHeight()),
                out.start().reaches().stream()
                    .filter(reach -> reach.wall() == wall.wall())
                    .mapToDouble(TileSetOut.Reach::distance));
        for (double run : runs.toArray()) {
          for (double tile : new double[] {task.length(), task.width()}) {
            double lacking = tile - size.mm();
            double joints = Math.floor(run / (tile + task.joint()));
            double each = (lacking + CLEAR) / joints;
            if (lacking > 0 && each <= give && task.joint() - each >= least) {
              closed.add(Math.ceil(each * 100) / 100);
            }
          }
        }
      }
    }
    TileSetOut best = null;
    for (double each : closed) {
      Optional<TileSetOut> other = lay.apply(task.withJoint(task.joint() - each));
      double points = best == null ? out.chosen().points() : best.chosen().points();
      if (other.isPresent() && other.get().chosen().points() < points - 1e-6) {
        best = other.get();
      }
    }
    return Optional.ofNullable(best);
  }
}
