package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.StartedFrom;
import underfoot.working.BayLimits;
import underfoot.working.MovementBays;

/**
 * Finds where tiles begin. What a start comes to changes only where an edge of the pattern meets a
 * wall, where a cut reaches a limit, or where two cuts begin to fit into one tile; so in a room
 * whose walls stand square to each other it is enough to look at these places, and no start
 * anywhere is better than the best of them. Where walls run aslant or the pattern is turned, starts
 * are tried all over the repeat and the best are improved step by step.
 */
public final class TileLayout {
  /** About so many cut tiles are looked at before the search is thinned out. */
  private static final double EFFORT = 400_000;

  /** Where starts are tried all over the repeat, that takes this part of the effort. */
  private static final double SAMPLED = 3;

  private static final int[][] STEPS = {
    {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}
  };

  private static final double MM = 1;

  /** Points that differ by less are the same. */
  private static final double ROUNDING = 1e-5;

  private static final int IMPROVED = 8;

  private final TileTask task;

  private TileLayout(TileTask task) {
    this.task = task;
  }

  /**
   * Sets tiles out.
   *
   * @param task what is asked
   * @return empty where there are more tiles than are set out one by one, or no room for any
   */
  public static Optional<TileSetOut> of(TileTask task) {
    if (task.roughly() > task.most()) {
      return Optional.empty();
    }
    return new TileLayout(task).find();
  }

  /** A start and what it comes to. */
  private record Start(Scene scene, double x, double y, Count.Tally tally, Option option) {}

  /** The field along one way of turning the tiles, with the places worth starting from. */
  private final class Scene {
    private final Field field;
    private final Pattern pattern;
    private final Movement movement;
    private final Count count;
    private final LeastPoints floor;
    private final boolean turned;
    private final List<Double> centredX = new ArrayList<>();
    private final List<Double> centredY = new ArrayList<>();

    private Scene(double base, boolean swap) {
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
      floor = new LeastPoints(field, pattern, task.weights());
      Envelope straight =
          Field.of(task.room(), task.gap(), base, List.of()).shape().getEnvelopeInternal();
      boolean lengthAlong = task.length() > task.width() != swap;
      boolean across =
          lengthAlong
              ? straight.getHeight() > straight.getWidth() + MM
              : straight.getWidth() > straight.getHeight() + MM;
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

    private double tileX() {
      return pattern.tiles().get(0).w();
    }

    private double tileY() {
      return pattern.tiles().get(0).h();
    }

    private boolean oblique() {
      return pattern.kind().turnDegrees() != 0 || pattern.kind() == Pattern.Kind.HERRINGBONE;
    }

    private List<Double> middleX(double middle) {
      return middle(middle, tileX());
    }

    private List<Double> middleY(double middle) {
      return middle(middle, tileY());
    }

    /** A tile or a joint on a middle line. */
    private List<Double> middle(double middle, double tile) {
      if (pattern.kind() == Pattern.Kind.HERRINGBONE) {
        return List.of(middle);
      }
      return List.of(middle - tile / 2, middle + pattern.joint() / 2);
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

    /** What every start costs at least, and more for this place along x. */
    private double leastX(double x) {
      return floor.ofTiles()
          + floor.pointsX(x)
          + offX(x) * task.weights().offCentre()
          + (turned ? task.weights().across() : 0);
    }

    /** What a start costs more at least for this place along y. */
    private double leastY(double y) {
      return floor.pointsY(y) + offY(y) * task.weights().offCentre();
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

    private Start start(StartedFrom way, String door, double x, double y) {
      Count.Tally tally = count.at(x, y);
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
    private Start best(StartedFrom way, String door, List<Double> xs, List<Double> ys) {
      Start best = null;
      for (double x : xs) {
        for (double y : ys) {
          Start tried = start(way, door, x, y);
          if (best == null || BETTER.compare(tried, best) < 0) {
            best = tried;
          }
        }
      }
      return best;
    }
  }

  /** Fewer points; then the wider cut; then fewer cuts; then the named way before a found one. */
  private static final Comparator<Start> BETTER =
      Comparator.comparingDouble((Start one) -> Math.rint(one.option().points() * 1e6))
          .thenComparing(one -> one.option().way() == StartedFrom.FOUND)
          .thenComparingDouble(one -> -Math.min(1e9, Math.rint(one.option().least() * 1e3)))
          .thenComparingInt(one -> one.option().cut());

  /** What a door sees: the line straight in from its middle. */
  private record View(Field.Opening door, Coordinate from, Coordinate to) {
    double length() {
      return from.distance(to);
    }
  }

  private Optional<TileSetOut> find() {
    List<View> views = views();
    double base = base(views);
    List<Start> starts = new ArrayList<>();
    long tried = 0;
    boolean every = true;
    boolean square = Math.abs(task.length() - task.width()) < Field.SLIP;
    List<Boolean> swaps =
        square || task.kind() == Pattern.Kind.HERRINGBONE ? List.of(false) : List.of(false, true);
    for (boolean swap : swaps) {
      Scene scene = new Scene(base, swap);
      if (scene.field.shape().isEmpty()) {
        return Optional.empty();
      }
      starts.addAll(named(scene, views));
      Search search = new Search(scene);
      search.run(starts).ifPresent(starts::add);
      tried += search.tried + starts.size();
      every &= search.every;
    }
    // The better way of turning the tiles stands for each way of starting.
    List<Start> kept = new ArrayList<>();
    for (Start start : starts.stream().sorted(BETTER).toList()) {
      boolean known =
          kept.stream()
              .anyMatch(
                  one ->
                      one.option().way() == start.option().way()
                          && one.option().door().equals(start.option().door()));
      // A found start is worth telling only where it is the best.
      boolean same = start.option().way() == StartedFrom.FOUND && !kept.isEmpty();
      if (!known && !same) {
        kept.add(start);
      }
    }
    Start chosen = kept.get(0);
    List<Option> options = kept.stream().map(Start::option).toList();
    return Optional.of(
        new TilePieces(task, chosen.scene().field, chosen.scene().pattern, chosen.scene().movement)
            .lay(
                chosen.x(),
                chosen.y(),
                base,
                anchor(views, chosen.scene()),
                chosen.tally(),
                chosen.scene().count.touched(chosen.x(), chosen.y()),
                options,
                tried,
                every));
  }

  /** The place by which the first tile goes: near the main door, or the middle of the room. */
  private Coordinate anchor(List<View> views, Scene scene) {
    if (task.fromDoor() && !views.isEmpty()) {
      View main = views.get(0);
      double in = Math.min(main.length() / 2, Math.max(task.length(), task.width()) * 2);
      double share = in / main.length();
      return new Coordinate(
          main.from().x + share * (main.to().x - main.from().x),
          main.from().y + share * (main.to().y - main.from().y));
    }
    return scene.field.out(
        scene.field.shape().getInteriorPoint().getX(),
        scene.field.shape().getInteriorPoint().getY());
  }

  /** What each door sees, the longest view first. */
  private List<View> views() {
    List<View> views = new ArrayList<>();
    for (Field.Opening door : task.doors()) {
      double angle = Math.atan2(door.to().y - door.from().y, door.to().x - door.from().x);
      Field field = Field.of(task.room(), task.gap(), angle, task.doors());
      Coordinate middle = field.in(door.middle());
      Field.Edge near = null;
      for (Field.Edge edge : field.edges()) {
        if (edge.door()
            && edge.wall() == door.wall()
            && edge.alongX()
            && Math.min(edge.x1(), edge.x2()) <= middle.x
            && Math.max(edge.x1(), edge.x2()) >= middle.x) {
          near = edge;
        }
      }
      if (near == null) {
        continue;
      }
      double far = Double.NaN;
      for (Field.Edge edge : field.edges()) {
        double low = Math.min(edge.x1(), edge.x2());
        double high = Math.max(edge.x1(), edge.x2());
        if (edge != near && low <= middle.x && high >= middle.x && high - low > Field.SLIP) {
          double y =
              edge.y1()
                  + (middle.x - edge.x1()) / (edge.x2() - edge.x1()) * (edge.y2() - edge.y1());
          double in = (y - near.y1()) * near.ny();
          if (in > Field.SLIP && !(in >= (far - near.y1()) * near.ny())) {
            far = y;
          }
        }
      }
      if (!Double.isNaN(far)) {
        views.add(new View(door, field.out(middle.x, near.y1()), field.out(middle.x, far)));
      }
    }
    views.sort(Comparator.comparingDouble(view -> -Math.rint(view.length())));
    return views;
  }

  /** The direction the tiles run in: that of the main door's wall, else of the longest wall. */
  private double base(List<View> views) {
    Coordinate[] ring = task.room().getExteriorRing().getCoordinates();
    Coordinate a = ring[0];
    Coordinate b = ring[1];
    if (!views.isEmpty()) {
      a = views.get(0).door().from();
      b = views.get(0).door().to();
    } else {
      for (int i = 1; i + 1 < ring.length; i++) {
        if (ring[i].distance(ring[i + 1]) > a.distance(b) + MM) {
          a = ring[i];
          b = ring[i + 1];
        }
      }
    }
    double angle = Math.atan2(b.y - a.y, b.x - a.x);
    double turned = angle - Math.PI / 2 * Math.rint(angle / (Math.PI / 2));
    return Math.abs(turned) < 1e-9 ? 0 : turned;
  }

  private List<Start> named(Scene scene, List<View> views) {
    List<Start> starts = new ArrayList<>();
    Envelope around = scene.field.shape().getEnvelopeInternal();
    List<Double> roomX = scene.middleX(around.centre().x);
    List<Double> roomY = scene.middleY(around.centre().y);
    boolean first = true;
    List<Runnable> later = new ArrayList<>();
    for (View view : views) {
      Coordinate from = scene.field.in(view.from());
      Coordinate to = scene.field.in(view.to());
      String door = view.door().name();
      boolean main = first;
      first = false;
      double mx = (from.x + to.x) / 2;
      double my = (from.y + to.y) / 2;
      if (scene.oblique()) {
        wanted(scene, main, scene.middleX(mx), scene.middleY(my));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      } else if (Math.abs(from.x - to.x) < 1e-3) {
        List<Double> rows = List.of(to.y > from.y ? from.y : from.y - scene.tileY());
        wanted(scene, main, scene.middleX(mx), rows);
        wanted(scene, main, List.of(), scene.middleY(my));
        later.add(
            () -> starts.add(scene.best(StartedFrom.DOOR_WHOLE, door, scene.middleX(mx), rows)));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      } else if (Math.abs(from.y - to.y) < 1e-3) {
        List<Double> rows = List.of(to.x > from.x ? from.x : from.x - scene.tileX());
        wanted(scene, main, rows, scene.middleY(my));
        wanted(scene, main, scene.middleX(mx), List.of());
        later.add(
            () -> starts.add(scene.best(StartedFrom.DOOR_WHOLE, door, rows, scene.middleY(my))));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      }
    }
    if (scene.centredX.isEmpty()) {
      scene.centredX.addAll(roomX);
      scene.centredY.addAll(roomY);
    }
    later.forEach(Runnable::run);
    starts.add(scene.best(StartedFrom.ROOM, "", roomX, roomY));
    return starts;
  }

  private void wanted(Scene scene, boolean main, List<Double> xs, List<Double> ys) {
    if (main && task.fromDoor()) {
      scene.centredX.addAll(xs);
      scene.centredY.addAll(ys);
    }
  }

  /** Tries starts. */
  private final class Search {
    private final Scene scene;
    private long tried;
    private boolean every;
    private Start best;

    private Search(Scene scene) {
      this.scene = scene;
    }

    /** Searches for a start that is better than those there are. */
    private Optional<Start> run(List<Start> known) {
      Start first = known.get(known.size() - 1);
      double enough = known.stream().mapToDouble(one -> one.option().points()).min().getAsDouble();
      TreeSet<Double> xs =
          Places.alongX(scene.field, scene.pattern, task.weights(), scene.movement, scene.centredX);
      TreeSet<Double> ys =
          Places.alongY(scene.field, scene.pattern, task.weights(), scene.movement, scene.centredY);
      double perStart = Math.max(4, first.tally().cut());
      long affordable = (long) Math.max(64, EFFORT / perStart);
      boolean straight = scene.field.square() && scene.pattern.kind() != Pattern.Kind.HERRINGBONE;
      boolean divided = scene.movement.x().length + scene.movement.y().length > 0;
      boolean few = (long) xs.size() * ys.size() <= affordable;
      // Beside a widened joint a cut may be off by what it is widened, so nothing is promised then.
      every = straight && few && !divided;
      double spent = straight ? affordable : affordable / 2.0;
      double share = Math.sqrt(spent / ((double) xs.size() * ys.size()));
      List<Double> someX = Places.thinned(xs, share);
      List<Double> someY = Places.thinned(ys, share);
      List<Start> good = new ArrayList<>();
      if (every) {
        promising(someX, someY, enough);
      } else {
        all(someX, someY, good);
      }
      if (!straight || !few) {
        int more = (int) Math.max(4, Math.sqrt(affordable / SAMPLED));
        all(
            Places.evenly(scene.pattern.periodX(), more),
            Places.evenly(scene.pattern.periodY(), more),
            good);
        for (Start start : List.copyOf(good)) {
          improve(start);
        }
      }
      return Optional.ofNullable(best);
    }

    /** Tries all pairs of places but those that cannot be as good as what is known. */
    private void promising(List<Double> xs, List<Double> ys, double enough) {
      double most = enough + ROUNDING;
      double[] leastY = ys.stream().mapToDouble(scene::leastY).toArray();
      for (double x : xs) {
        double leastX = scene.leastX(x);
        for (int k = 0; k < leastY.length; k++) {
          if (leastX + leastY[k] > most) {
            tried++; // weighed, and found too heavy
          } else {
            most = Math.min(most, attempt(x, ys.get(k)).option().points() + ROUNDING);
          }
        }
      }
    }

    private void all(List<Double> xs, List<Double> ys, List<Start> good) {
      for (double x : xs) {
        for (double y : ys) {
          Start start = attempt(x, y);
          if (good.size() < IMPROVED || BETTER.compare(start, good.get(IMPROVED - 1)) < 0) {
            good.add(start);
            good.sort(BETTER);
            good.subList(Math.min(IMPROVED, good.size()), good.size()).clear();
          }
        }
      }
    }

    private Start attempt(double x, double y) {
      tried++;
      Start start = scene.start(StartedFrom.FOUND, "", x, y);
      if (best == null || BETTER.compare(start, best) < 0) {
        best = start;
      }
      return start;
    }

    private void improve(Start from) {
      Start at = from;
      double step = Math.max(scene.pattern.periodX(), scene.pattern.periodY()) / 32;
      while (step >= MM / 2) {
        Start better = at;
        for (int[] way : STEPS) {
          Start next = attempt(at.x() + way[0] * step, at.y() + way[1] * step);
          if (BETTER.compare(next, better) < 0) {
            better = next;
          }
        }
        if (better == at) {
          step /= 2;
        } else {
          at = better;
        }
      }
    }
  }
}
