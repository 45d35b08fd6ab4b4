package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import underfoot.plan.setout.TileSetOut.Ring;

/**
 * Plans boards over a deck: rows across the deck's own boards, the joints of each row off those of
 * the row before, off the joints of the deck and, where it can be, out of the doorways.
 */
public final class BoardLayout {
  /** Sizes that differ by less are cut as one, mm. */
  static final double SAME = 1;

  private final BoardTask task;
  private final boolean alongX;
  private final Geometry field;
  private final DeckJoints deck;
  private double staggered = Double.POSITIVE_INFINITY;
  private int atDoors;

  private BoardLayout(BoardTask task, boolean alongX) {
    this.task = task;
    this.alongX = alongX;
    this.field = Field.shrunk(task.floor(), task.gap());
    this.deck = new DeckJoints(task, alongX);
  }

  /**
   * Plans boards.
   *
   * @param task what is asked
   * @return empty where there are more boards than are planned one by one, or no room for any
   */
  public static Optional<BoardPlan> of(BoardTask task) {
    if (task.floor().getArea() / (task.length() * task.width()) > task.most()) {
      return Optional.empty();
    }
    List<Boolean> ways = new ArrayList<>();
    if (task.deck().isPresent() && task.deck().get().narrow()) {
      ways.add(!task.deck().get().alongX());
    } else {
      ways.add(true);
      ways.add(false);
    }
    return ways.stream()
        .map(way -> new BoardLayout(task, way).plan())
        .flatMap(Optional::stream)
        .min(
            Comparator.comparingInt((BoardPlan plan) -> plan.boards())
                .thenComparingInt(plan -> plan.pieces().size()));
  }

  /** Along the boards' length. */
  private double along(Coordinate c) {
    return alongX ? c.x : c.y;
  }

  /** Across the boards. */
  private double across(Coordinate c) {
    return alongX ? c.y : c.x;
  }

  private double low(Envelope e, boolean lengthwise) {
    return lengthwise == alongX ? e.getMinX() : e.getMinY();
  }

  private double high(Envelope e, boolean lengthwise) {
    return lengthwise == alongX ? e.getMaxX() : e.getMaxY();
  }

  private Polygon box(double a1, double c1, double a2, double c2) {
    Coordinate low = alongX ? new Coordinate(a1, c1) : new Coordinate(c1, a1);
    Coordinate high = alongX ? new Coordinate(a2, c2) : new Coordinate(c2, a2);
    return (Polygon) Field.SHAPES.toGeometry(new Envelope(low, high));
  }

  private Optional<BoardPlan> plan() {
    if (field.isEmpty()) {
      return Optional.empty();
    }
    Envelope around = field.getEnvelopeInternal();
    double from = low(around, false);
    double to = high(around, false);
    List<double[]> doors = doors(false, -1e9, 1e9);
    List<Double> rows =
        divided(
            from, to, task.width(), deck.along(false), List.of(), place -> doorCost(place, doors));
    List<BoardPlan.Piece> pieces = new ArrayList<>();
    List<Double> before = List.of();
    for (int row = 0; row <= rows.size(); row++) {
      double bottom = row == 0 ? from : rows.get(row - 1) + task.joint();
      double top = row == rows.size() ? to : rows.get(row);
      before = row(row + 1, bottom, top, before, pieces);
    }
    for (double at : rows) {
      atDoors += doorCost(at, doors) > 0 ? 1 : 0;
    }
    return Optional.of(finish(pieces, rows));
  }

  /** Lays one row; gives its joints. */
  private List<Double> row(
      int number, double bottom, double top, List<Double> before, List<BoardPlan.Piece> pieces) {
    Envelope around = field.getEnvelopeInternal();
    Geometry strip =
        Boxes.common(field, box(low(around, true) - 1, bottom, high(around, true) + 1, top));
    List<double[]> doors = doors(true, bottom, top);
    List<Double> all = new ArrayList<>();
    for (Polygon part : inOrder(strip)) {
      double from = low(part.getEnvelopeInternal(), true);
      double to = high(part.getEnvelopeInternal(), true);
      List<Double> joints =
          divided(
              from, to, task.length(), deck.along(true), before, place -> doorCost(place, doors));
      for (int k = 0; k <= joints.size(); k++) {
        double left = k == 0 ? from : joints.get(k - 1) + task.joint();
        double right = k == joints.size() ? to : joints.get(k);
        Geometry piece = Boxes.common(part, box(left, bottom, right, top));
        for (int g = 0; g < piece.getNumGeometries(); g++) {
          if (piece.getGeometryN(g) instanceof Polygon one && one.getArea() > 1) {
            pieces.add(piece(number, one));
          }
        }
      }
      for (double joint : joints) {
        atDoors += doorCost(joint, doors) > 0 ? 1 : 0;
        for (double other : before) {
          staggered = Math.min(staggered, Math.abs(joint - other) - task.joint());
        }
      }
      all.addAll(joints);
    }
    return all;
  }

  /** The pieces of a row's floor that are worth a board, as one walks along it. */
  private List<Polygon> inOrder(Geometry strip) {
    List<Polygon> parts = new ArrayList<>();
    for (int i = 0; i < strip.getNumGeometries(); i++) {
      if (strip.getGeometryN(i) instanceof Polygon part && part.getArea() >= 1) {
        parts.add(part);
      }
    }
    parts.sort(Comparator.comparingDouble(part -> low(part.getEnvelopeInternal(), true)));
    return parts;
  }

  private BoardPlan.Piece piece(int row, Polygon shape) {
    Envelope e = shape.getEnvelopeInternal();
    double[] xy = new double[2 * (shape.getExteriorRing().getNumPoints() - 1)];
    List<Ring> rings = new ArrayList<>();
    rings.add(ring(shape.getExteriorRing().getCoordinates(), xy));
    for (int k = 0; k < shape.getNumInteriorRing(); k++) {
      Coordinate[] c = shape.getInteriorRingN(k).getCoordinates();
      rings.add(ring(c, new double[2 * (c.length - 1)]));
    }
    boolean notched = shape.getArea() < e.getArea() - SAME;
    return new BoardPlan.Piece(
        row, "", rings, e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY(), notched);
  }

  private static Ring ring(Coordinate[] c, double[] xy) {
    for (int i = 0; 2 * i < xy.length; i++) {
      xy[2 * i] = c[i].x;
      xy[2 * i + 1] = c[i].y;
    }
    return new Ring(xy);
  }

  /** From where to where doorways reach along a row; or across all of them. */
  private List<double[]> doors(boolean acrossRow, double bottom, double top) {
    List<double[]> doors = new ArrayList<>();
    for (Field.Opening door : task.doors()) {
      // A joint across the row meets walls that run along it, and the other way round.
      double a = acrossRow ? along(door.from()) : across(door.from());
      double b = acrossRow ? along(door.to()) : across(door.to());
      double other = acrossRow ? across(door.middle()) : along(door.middle());
      if (other > bottom - task.gap() - 50 && other < top + task.gap() + 50) {
        doors.add(new double[] {Math.min(a, b), Math.max(a, b)});
      }
    }
    return doors;
  }

  /** What a joint that begins at a place costs because it runs into a doorway. */
  private double doorCost(double place, List<double[]> doors) {
    double cost = 0;
    for (double[] door : doors) {
      double at = place + task.joint() / 2;
      cost += at > door[0] && at < door[1] ? task.inDoorway() : 0;
    }
    return cost;
  }

  private List<Double> divided(
      double from,
      double to,
      double longest,
      List<Double> ofDeck,
      List<Double> before,
      DoubleUnaryOperator doors) {
    double off = deck.keepOff();
    double half = task.joint() / 2;
    List<Double> places = new ArrayList<>();
    for (double joint : ofDeck) {
      places.add(joint - off - half);
      places.add(joint + off - half);
    }
    for (double joint : before) {
      places.add(joint - task.stagger() - task.joint());
      places.add(joint + task.stagger() + task.joint());
    }
    double[] decks = ofDeck.stream().mapToDouble(Double::doubleValue).toArray();
    double[] joints = before.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[][] ways = {
      {task.stagger() + task.joint(), task.least()},
      {task.stagger() + task.joint(), 0},
      {task.offDeck() + task.joint(), task.least()},
      {task.offDeck() + task.joint(), 0},
      {0, 0}
    };
    for (double[] way : ways) {
      DoubleUnaryOperator cost =
          place -> {
            double middle = place + half;
            if (DeckJoints.far(decks, middle) < off - Field.SLIP
                || DeckJoints.far(joints, place) < way[0] - Field.SLIP) {
              return Double.POSITIVE_INFINITY;
            }
            return doors.applyAsDouble(place);
          };
      Optional<List<Double>> found =
          Division.of(from, to, longest, way[1], task.joint(), places, cost);
      if (found.isPresent()) {
        return found.get();
      }
    }
    throw new IllegalStateException("no way of dividing " + from + " to " + to);
  }

  private BoardPlan finish(List<BoardPlan.Piece> pieces, List<Double> rows) {
    Map<List<Long>, List<BoardPlan.Piece>> bySize = new LinkedHashMap<>();
    List<BoardPlan.Piece> sorted = new ArrayList<>(pieces);
    sorted.sort(
        Comparator.comparingDouble((BoardPlan.Piece one) -> -Math.rint(length(one)))
            .thenComparingDouble(one -> -Math.rint(width(one)))
            .thenComparing(BoardPlan.Piece::notched));
    for (BoardPlan.Piece one : sorted) {
      long shape = one.notched() ? 1 + bySize.size() : 0;
      bySize
          .computeIfAbsent(
              List.of(Math.round(length(one)), Math.round(width(one)), shape),
              size -> new ArrayList<>())
          .add(one);
    }
    List<BoardPlan.Cut> cuts = new ArrayList<>();
    Map<BoardPlan.Piece, String> marks = new IdentityHashMap<>();
    for (List<BoardPlan.Piece> same : bySize.values()) {
      BoardPlan.Piece first = same.get(0);
      String mark = mark(cuts.size());
      boolean whole =
          !first.notched()
              && length(first) > task.length() - SAME
              && width(first) > task.width() - SAME;
      cuts.add(
          new BoardPlan.Cut(
              mark, length(first), width(first), same.size(), whole, first.notched()));
      same.forEach(one -> marks.put(one, mark));
    }
    List<BoardPlan.Piece> marked = new ArrayList<>();
    for (BoardPlan.Piece one : pieces) {
      marked.add(
          new BoardPlan.Piece(
              one.row(),
              marks.get(one),
              one.rings(),
              one.x1(),
              one.y1(),
              one.x2(),
              one.y2(),
              one.notched()));
    }
    return new BoardPlan(
        task.length(),
        task.width(),
        task.joint(),
        task.gap(),
        alongX,
        marked,
        cuts,
        Packing.boards(
            sorted.stream().map(one -> new double[] {length(one), width(one)}).toList(),
            task.length(),
            task.width(),
            task.kerf()),
        new Screws(task, alongX).of(marked),
        deck.lines(),
        deck.off(marked, rows),
        task.offDeck(),
        staggered,
        task.stagger(),
        atDoors);
  }

  private double length(BoardPlan.Piece one) {
    return alongX ? one.x2() - one.x1() : one.y2() - one.y1();
  }

  private double width(BoardPlan.Piece one) {
    return alongX ? one.y2() - one.y1() : one.x2() - one.x1();
  }

  /** A to Z, then AA and so on. */
  static String mark(int number) {
    String last = String.valueOf((char) ('A' + number % 26));
    return number < 26 ? last : mark(number / 26 - 1) + last;
  }
}
