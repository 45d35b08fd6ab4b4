package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import underfoot.plan.setout.TileSetOut.StartedFrom;

/** Tries starts. */
final class Search {
  /** About so many cut tiles are looked at before the search is thinned out. */
  private static final double EFFORT = 400_000;

  /** Where starts are tried all over the repeat, that takes this part of the effort. */
  private static final double SAMPLED = 3;

  private static final int[][] STEPS = {
    {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}
  };

  /** Points that differ by less are the same. */
  private static final double ROUNDING = 1e-5;

  private static final int IMPROVED = 8;

  private final Scene scene;
  private final TileTask task;
  long tried;
  boolean every;
  private Start best;

  Search(Scene scene) {
    this.task = scene.task;
    this.scene = scene;
  }

  /** Searches for a start that is better than those there are. */
  Optional<Start> run(List<Start> known) {
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
    while (step >= TileLayout.MM / 2) {
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
