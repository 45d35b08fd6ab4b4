package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** Where it is worth beginning tiles in one direction, within one repeat of the pattern. */
final class Places {
  private final TreeSet<Double> found = new TreeSet<>();
  private final double period;

  /** Beyond so many walls, pairs of them are passed over: they would outweigh all the rest. */
  private static final int WALLS_IN_PAIRS = 200;

  private Places(double period) {
    this.period = period;
  }

  /** Whether a field has so many walls that not every place is told. */
  static boolean tooManyWalls(Field field) {
    return field.edges().size() > WALLS_IN_PAIRS;
  }

  /** Where what a start comes to can change along x, and where it is centred as wanted. */
  static TreeSet<Double> alongX(
      Field field, Pattern pattern, Weights weights, Movement movement, List<Double> centred) {
    List<double[]> walls = new ArrayList<>();
    TreeSet<Double> corners = new TreeSet<>();
    for (Field.Edge edge : field.edges()) {
      corners.add(edge.x1());
      corners.add(edge.x2());
      if (edge.alongY()) {
        walls.add(new double[] {edge.x1(), edge.nx()});
      }
    }
    double tile = pattern.tiles().get(0).w();
    Places places = new Places(pattern.periodX());
    // Rows that are set on begin at other places.
    double step = places.period / pattern.kind().rows();
    double[] joints = movement.x();
    places.add(walls, tooManyWalls(field), corners, tile, step, weights, joints, movement, pattern);
    centred.forEach(x -> places.add(x, step));
    return places.found;
  }

  /** The same along y. */
  static TreeSet<Double> alongY(
      Field field, Pattern pattern, Weights weights, Movement movement, List<Double> centred) {
    List<double[]> walls = new ArrayList<>();
    TreeSet<Double> corners = new TreeSet<>();
    for (Field.Edge edge : field.edges()) {
      corners.add(edge.y1());
      corners.add(edge.y2());
      if (edge.alongX()) {
        walls.add(new double[] {edge.y1(), edge.ny()});
      }
    }
    double tile = pattern.tiles().get(0).h();
    Places places = new Places(pattern.periodY());
    double[] joints = movement.y();
    places.add(
        walls,
        tooManyWalls(field),
        corners,
        tile,
        places.period,
        weights,
        joints,
        movement,
        pattern);
    centred.forEach(y -> places.add(y, places.period));
    return places.found;
  }

  private void add(
      List<double[]> walls,
      boolean tooMany,
      TreeSet<Double> corners,
      double tile,
      double step,
      Weights weights,
      double[] joints,
      Movement movement,
      Pattern pattern) {
    double extra = movement.extra(pattern);
    int widened = extra > 0 ? movement.x().length + movement.y().length : 0;
    for (double corner : corners) {
      int last = tooMany ? Math.min(widened, before(corner, joints) + 1) : widened;
      for (int m = tooMany ? Math.max(0, last - 2) : 0; m <= last; m++) {
        add(corner - m * extra, step);
        add(corner - m * extra - tile, step);
      }
    }
    double[] limits = {weights.sliverLimit(tile), weights.leastShare() * tile};
    double pair = tile - weights.kerf();
    for (double[] wall : walls) {
      int last = tooMany ? Math.min(widened, before(wall[0], joints) + 1) : widened;
      for (int m = tooMany ? Math.max(0, last - 2) : 0; m <= last; m++) {
        for (double limit : limits) {
          double at = wall[0] - m * extra;
          add(wall[1] > 0 ? at - tile + limit : at - limit, step);
        }
      }
      for (double[] other : tooMany ? List.<double[]>of() : walls) {
        if (other[1] == wall[1]) {
          // Two cuts that both grow fill one tile together.
          double sum = wall[0] + other[0] + (wall[1] > 0 ? pair - 2 * tile : -pair);
          add(sum / 2, step / 2);
        }
      }
    }
  }

  /**
   * How many widened joints lie before a place: in a room of many walls, the only ones it is asked
   * whether they have moved it on, or corners and joints would be multiplied.
   */
  private static int before(double place, double[] joints) {
    int found = Arrays.binarySearch(joints, place);
    return found < 0 ? -found - 1 : found;
  }

  /** Adds a place, and all that lie whole steps from it within the period. */
  private void add(double at, double step) {
    double first = at - Math.floor(at / step + 1e-9) * step;
    for (double next = first; next < period - Field.SLIP; next += step) {
      double place = Math.rint(next * 1e7) / 1e7;
      Double near = found.floor(place + Field.SLIP / 4);
      if (near == null || near < place - Field.SLIP / 4) {
        found.add(place);
      }
    }
  }

  /** So large a share of places as is given, all at most and two at least, from all over them. */
  static List<Double> thinned(TreeSet<Double> places, double share) {
    List<Double> all = List.copyOf(places);
    int keep = (int) Math.min(all.size(), Math.max(2, all.size() * share));
    List<Double> some = new ArrayList<>();
    for (int i = 0; i < keep; i++) {
      some.add(all.get((int) ((long) i * all.size() / keep)));
    }
    return some;
  }

  /** So many places as are asked for, all over a period. */
  static List<Double> evenly(double period, int count) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(period * i / count);
    }
    return places;
  }
}
