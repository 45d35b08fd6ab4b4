package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import underfoot.plan.setout.TileSetOut.StartedFrom;

/** Tries starts. */
final class Search {
  /** Where starts are tried all over the repeat, that takes this part of the effort. */
  private static final double SAMPLED = 3;

  private static final int[][] STEPS = {
    {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}
  };

  private static final int IMPROVED = 8;

  private final Scene scene;
  private final TileTask task;
  long tried;
  boolean every;

  /** Where improving ends, counted in starts tried. */
  private long last;

  private Start best;

  Search(Scene scene) {
    this.task = scene.task;
    this.scene = scene;
  }

  /** Searches for a start that is better than those there are. */
  Optional<Start> run(List<Start> known) {
    Start first = known.get(known.size() - 1);
    TreeSet<Double> xs =
        Places.alongX(scene.field, scene.pattern, task.weights(), scene.movement, scene.centredX);
    TreeSet<Double> ys =
        Places.alongY(scene.field, scene.pattern, task.weights(), scene.movement, scene.centredY);
    // What a start costs: the tiles at walls, and walls that no tile is cut by are looked at too.
    double perStart = Math.max(Math.max(4, first.tally().cut()), scene.field.edges().size() / 4.0);
    long affordable = (long) Math.max(64, task.effort() / perStart);
    boolean straight = scene.field.square() && scene.pattern.kind() != Pattern.Kind.HERRINGBONE;
    boolean divided = scene.movement.x().length + scene.movement.y().length > 0;
    boolean few = (long) xs.size() * ys.size() <= affordable;
    // Beside a widened joint a cut may be off by what it is widened, so nothing is promised then.
    every = straight && few && !divided && !Places.tooManyWalls(scene.field);
    double spent = straight ? affordable : affordable / 2.0;
    double share = Math.sqrt(spent / ((double) xs.size() * ys.size()));
    List<Double> someX = Places.thinned(xs, share);
    List<Double> someY = Places.thinned(ys, share);
    List<Start> good = new ArrayList<>();
    all(someX, someY, good);
    if (!straight || !few) {
      int more = (int) Math.max(4, Math.sqrt(affordable / SAMPLED));
      all(
          Places.evenly(scene.pattern.periodX(), more),
          Places.evenly(scene.pattern.periodY(), more),
          good);
      last = tried + (long) (task.improving() / perStart);
      for (Start start : List.copyOf(good)) {
        improve(start);
      }
    }
    return Optional.ofNullable(best);
  }

  private void all(List<Double> xs, List<Double> ys, List<Start> good) {
    for (double x : xs) {
      for (double y : ys) {
        Start start = attempt(x, y);
        if (good.size() < IMPROVED || Start.BETTER.compare(start, good.get(IMPROVED - 1)) < 0) {
          good.add(start);
          good.sort(Start.BETTER);
          good.subList(Math.min(IMPROVED, good.size()), good.size()).clear();
        }
      }
    }
  }

  private Start attempt(double x, double y) {
    tried++;
    Start start = scene.start(StartedFrom.FOUND, "", x, y);
    if (best == null || Start.BETTER.compare(start, best) < 0) {
      best = start;
    }
    return start;
  }

  private void improve(Start from) {
    Start at = from;
    double step = Math.max(scene.pattern.periodX(), scene.pattern.periodY()) / 32;
    while (step >= TileLayout.MM / 2 && tried < last) {
      Start better = at;
      for (int[] way : STEPS) {
        Start next = attempt(at.x() + way[0] * step, at.y() + way[1] * step);
        if (Start.BETTER.compare(next, better) < 0) {
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
