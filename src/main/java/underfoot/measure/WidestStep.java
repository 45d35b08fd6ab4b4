package underfoot.measure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * How far apart readings lie: the widest step that is needed to go from reading to reading until
 * all are reached. It is the longest edge of the shortest net over them, which is made of edges of
 * their triangles.
 */
final class WidestStep {
  private WidestStep() {}

  /** The widest step, mm; 0 for a single place. */
  static double of(TriangulatedSurface readings) {
    List<Coordinate> places = readings.vertices();
    if (readings.edges().isEmpty()) {
      return onOneLine(places);
    }
    int[] net = new int[places.size()];
    Arrays.setAll(net, i -> i);
    List<int[]> shortFirst =
        readings.edges().stream()
            .sorted(
                Comparator.comparingDouble(
                    edge -> places.get(edge[0]).distance(places.get(edge[1]))))
            .toList();
    double widest = 0;
    for (int[] edge : shortFirst) {
      int one = root(net, edge[0]);
      int other = root(net, edge[1]);
      if (one != other) {
        net[one] = other;
        widest = places.get(edge[0]).distance(places.get(edge[1]));
      }
    }
    return widest;
  }

  private static int root(int[] net, int place) {
    int at = place;
    while (net[at] != at) {
      net[at] = net[net[at]];
      at = net[at];
    }
    return at;
  }

  private static double onOneLine(List<Coordinate> places) {
    Coordinate first = places.get(0);
    Coordinate end =
        places.stream().max(Comparator.comparingDouble(first::distance)).orElseThrow();
    double[] along = places.stream().mapToDouble(end::distance).sorted().toArray();
    double widest = 0;
    for (int i = 1; i < along.length; i++) {
      widest = Math.max(widest, along[i] - along[i - 1]);
    }
    return widest;
  }
}
