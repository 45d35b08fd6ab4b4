package underfoot.measure;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.ItemBoundable;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds the nearest of many places. */
final class PlaceIndex {
  /** Stands for the place that is asked about, among the numbers of those that are known. */
  private static final int ASKED = -1;

  private final List<Coordinate> places;
  private final STRtree tree = new STRtree();

  /**
   * @param places at least one
   */
  PlaceIndex(List<Coordinate> places) {
    this.places = places;
    for (int i = 0; i < places.size(); i++) {
      tree.insert(new Envelope(places.get(i)), i);
    }
    tree.build();
  }

  /** Which place is nearest, in the list of them; of several that are as near the first. */
  int nearest(double x, double y) {
    Coordinate from = new Coordinate(x, y);
    Envelope around = new Envelope(from);
    int first =
        (int) tree.nearestNeighbour(around, ASKED, (a, b) -> at(a, from).distance(at(b, from)));
    double least = places.get(first).distance(from);
    around.expandBy(least);
    for (Object one : tree.query(around)) {
      int i = (int) one;
      first = i < first && places.get(i).distance(from) <= least ? i : first;
    }
    return first;
  }

  private Coordinate at(ItemBoundable item, Coordinate asked) {
    int i = (int) item.getItem();
    return i == ASKED ? asked : places.get(i);
  }
}
