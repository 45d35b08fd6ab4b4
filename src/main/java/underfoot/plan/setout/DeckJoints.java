package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** The joints of the deck beneath, which those between boards keep off. */
final class DeckJoints {
  private final BoardTask task;
  private final boolean alongX;
  private final Envelope room;

  /**
   * The deck of a task.
   *
   * @param alongX whether the boards' length runs along x
   */
  DeckJoints(BoardTask task, boolean alongX) {
    this.task = task;
    this.alongX = alongX;
    this.room = task.room().getEnvelopeInternal();
  }

  /** Joints of the deck that run the same way as joints across (or along) the boards. */
  List<Double> along(boolean acrossBoards) {
    List<Double> places = new ArrayList<>();
    if (task.deck().isEmpty()) {
      return places;
    }
    BoardTask.Deck deck = task.deck().get();
    // Joints of a deck along x lie at places of y.
    boolean placesAreX = !deck.alongX();
    if (placesAreX != (acrossBoards == alongX)) {
      return places;
    }
    double from = placesAreX ? room.getMinX() : room.getMinY();
    double to = placesAreX ? room.getMaxX() : room.getMaxY();
    for (double at = from + deck.first(); at < to; at += deck.pitch()) {
      if (at > from) {
        places.add(at);
      }
    }
    return places;
  }

  /** How far joints keep off those of the deck: as asked, or as far as the deck's boards allow. */
  double keepOff() {
    double asked = task.offDeck() + task.joint() / 2;
    return task.deck()
        .map(deck -> Math.min(asked, Math.max(0, deck.pitch() / 2 - 1)))
        .orElse(asked);
  }

  /** The joints of the deck as lines within the floor that is covered. */
  List<double[]> lines() {
    List<double[]> lines = new ArrayList<>();
    PreparedGeometry floor = PreparedGeometryFactory.prepare(task.floor());
    Envelope covered = task.floor().getEnvelopeInternal();
    for (boolean acrossBoards : new boolean[] {true, false}) {
      for (double at : along(acrossBoards)) {
        boolean atX = acrossBoards == alongX;
        Coordinate a =
            atX ? new Coordinate(at, covered.getMinY()) : new Coordinate(covered.getMinX(), at);
        Coordinate b =
            atX ? new Coordinate(at, covered.getMaxY()) : new Coordinate(covered.getMaxX(), at);
        Geometry line = Field.SHAPES.createLineString(new Coordinate[] {a, b});
        if (floor.intersects(line)) {
          Geometry within = task.floor().isRectangle() ? line : line.intersection(task.floor());
          for (int i = 0; i < within.getNumGeometries(); i++) {
            Coordinate[] c = within.getGeometryN(i).getCoordinates();
            if (c.length > 1) {
              lines.add(new double[] {c[0].x, c[0].y, c[c.length - 1].x, c[c.length - 1].y});
            }
          }
        }
      }
    }
    return lines;
  }

  /** How near a joint between boards comes to a joint of the deck that runs along it. */
  double off(List<BoardPlan.Piece> pieces, List<Double> rows) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double joint : along(false)) {
      for (double at : rows) {
        nearest = Math.min(nearest, Math.abs(at + task.joint() / 2 - joint) - task.joint() / 2);
      }
    }
    double[] joints = along(true).stream().mapToDouble(Double::doubleValue).toArray();
    Map<Integer, List<BoardPlan.Piece>> byRow = new HashMap<>();
    pieces.forEach(one -> byRow.computeIfAbsent(one.row(), r -> new ArrayList<>()).add(one));
    for (List<BoardPlan.Piece> row : byRow.values()) {
      for (BoardPlan.Piece a : row) {
        for (BoardPlan.Piece b : row) {
          double end = alongX ? a.x2() : a.y2();
          double begin = alongX ? b.x1() : b.y1();
          if (Math.abs(begin - end - task.joint()) < BoardLayout.SAME) {
            nearest = Math.min(nearest, far(joints, (end + begin) / 2) - task.joint() / 2);
          }
        }
      }
    }
    return nearest;
  }

  /** How far the nearest of some places is, mm; they are rising. Infinite where there are none. */
  static double far(double[] places, double from) {
    int at = Arrays.binarySearch(places, from);
    if (at >= 0) {
      return 0;
    }
    int after = -at - 1;
    return Math.min(
        after < places.length ? places[after] - from : Double.POSITIVE_INFINITY,
        after > 0 ? from - places[after - 1] : Double.POSITIVE_INFINITY);
  }
}
