package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.StartedFrom;
import underfoot.working.BayLimits;
import underfoot.working.MovementBays;

/** The field along one way of turning the tiles, with the places worth starting from. */
final class Scene {
  final TileTask task;
  final Field field;
  final Pattern pattern;
  final Movement movement;
  private final Count count;
  private final boolean turned;

  /** Tiles and walls that starts have looked at so far. */
  private double looked;

  final List<Double> centredX = new ArrayList<>();
  final List<Double> centredY = new ArrayList<>();

  Scene(TileTask task, double base, boolean swap) {
    this.task = task;
    Pattern.Kind kind = task.kind();
    double turn = base + Math.toRadians(kind.turnDegrees()) + (swap ? Math.PI / 2 : 0);
    pattern = Pattern.of(kind, task.length(), task.width(), task.joint());
    Field whole = Field.of(task.room(), task.gap(), turn, task.doors());
    Envelope around = whole.shape().getEnvelopeInternal();
    movement = whole.shape().isEmpty() ? Movement.NONE : bays(around);
    List<Polygon> strips = movement.cut(pattern, around, turn);
    field =
        strips.isEmpty() ? whole : Field.of(task.room(), task.gap(), turn, task.doors(), strips);
    count = new Count(field, pattern, task.weights(), movement);
    Envelope straight =
        Field.of(task.room(), task.gap(), base, List.of()).shape().getEnvelopeInternal();
    boolean lengthAlong = task.length() > task.width() != swap;
    boolean across =
        lengthAlong
            ? straight.getHeight() > straight.getWidth() + TileLayout.MM
            : straight.getWidth() > straight.getHeight() + TileLayout.MM;
    boolean oblong = Math.abs(task.length() - task.width()) > Field.SLIP;
    // In herringbone tiles lie both ways.
    turned = oblong && kind != Pattern.Kind.HERRINGBONE && across;
  }

  private Movement bays(Envelope around) {
    if (task.baySide().isEmpty()) {
      return Movement.NONE;
    }
    OptionalDouble area =
        task.bayArea().isPresent()
            ? OptionalDouble.of(task.bayArea().getAsDouble() / 1e6)
            : OptionalDouble.empty();
    // Joints run along the tiles, so it is the bounds along the tiles that are divided.
    MovementBays.Values bays =
        MovementBays.of(
            around.getWidth() / 1000,
            around.getHeight() / 1000,
            new BayLimits(task.baySide().getAsDouble() / 1000, area));
    return Movement.even(around, bays.along(), bays.across(), task.movementWidth());
  }

  double tileX() {
    return pattern.tiles().get(0).w();
  }

  double tileY() {
    return pattern.tiles().get(0).h();
  }

  boolean oblique() {
    return pattern.kind().turnDegrees() != 0 || pattern.kind() == Pattern.Kind.HERRINGBONE;
  }

  List<Double> middleX(double middle) {
    return middle(middle, tileX());
  }

  List<Double> middleY(double middle) {
    return middle(middle, tileY());
  }

  /** A tile or a joint on a middle line. */
  private List<Double> middle(double middle, double tile) {
    if (pattern.kind() == Pattern.Kind.HERRINGBONE) {
      return List.of(middle);
    }
    return List.of(middle - tile / 2, middle + pattern.joint() / 2);
  }

  /** What has been looked at so far: tiles at walls, and the walls. */
  double looked() {
    return looked;
  }

  private int offCentre(double x, double y) {
    if (oblique()) {
      return matches(x, centredX, pattern.periodX()) && matches(y, centredY, pattern.periodY())
          ? 0
          : 2;
    }
    return offX(x) + offY(y);
  }

  private int offX(double x) {
    return matches(x, centredX, pattern.periodX() / pattern.kind().rows()) ? 0 : 1;
  }

  private int offY(double y) {
    return matches(y, centredY, pattern.periodY()) ? 0 : 1;
  }

  private static boolean matches(double at, List<Double> wanted, double period) {
    for (double one : wanted) {
      double off = (at - one) / period;
      if (Math.abs(off - Math.rint(off)) * period < 1e-4) {
        return true;
      }
    }
    return false;
  }

  Start start(StartedFrom way, String door, double x, double y) {
    Tally tally = count.at(x, y);
    looked += tally.cut() + field.edges().size();
    int off = offCentre(x, y);
    double points =
        tally.points(task.weights())
            + off * task.weights().offCentre()
            + (turned ? task.weights().across() : 0);
    Option option =
        new Option(
            way,
            door,
            turned,
            tally.whole(),
            tally.cut(),
            tally.boxed(),
            tally.narrow(),
            tally.narrowAtDoor(),
            tally.slivers(),
            tally.least(),
            off,
            points);
    return new Start(this, x, y, tally, option);
  }

  /** The best of the ways of putting a tile or a joint on each of two middles. */
  Start best(StartedFrom way, String door, List<Double> xs, List<Double> ys) {
    Start best = null;
    for (double x : xs) {
      for (double y : ys) {
        Start tried = start(way, door, x, y);
        if (best == null || Start.BETTER.compare(tried, best) < 0) {
          best = tried;
        }
      }
    }
    return best;
  }
}
