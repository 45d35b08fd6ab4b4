package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * Marks screws: an outer row round each board, and within it lines no further apart than asked.
 * Over floorboards a line falls on every floorboard, its screws by turns left, in the middle and
 * right of it.
 */
final class Screws {
  private final BoardTask task;
  private final boolean alongX;

  Screws(BoardTask task, boolean alongX) {
    this.task = task;
    this.alongX = alongX;
  }

  List<double[]> of(List<BoardPlan.Piece> pieces) {
    List<double[]> all = new ArrayList<>();
    Quadtree placed = new Quadtree();
    for (BoardPlan.Piece piece : pieces) {
      for (double[] at : in(piece)) {
        if (task.fixing().onJoints()) {
          if (taken(at, placed)) {
            continue;
          }
          placed.insert(new Envelope(new Coordinate(at[0], at[1])), at);
        }
        all.add(at);
      }
    }
    return all;
  }

  /** A washer on a joint holds both boards, so one near by is not set again. */
  private boolean taken(double[] at, Quadtree placed) {
    double near = task.fixing().spacing() / 3;
    Envelope around = new Envelope(new Coordinate(at[0], at[1]));
    around.expandBy(near);
    for (Object one : placed.query(around)) {
      double[] other = (double[]) one;
      if (Math.hypot(other[0] - at[0], other[1] - at[1]) < near) {
        return true;
      }
    }
    return false;
  }

  private List<double[]> in(BoardPlan.Piece piece) {
    BoardTask.Fixing fixing = task.fixing();
    boolean narrow = task.deck().isPresent() && task.deck().get().narrow();
    boolean linesAcrossX = narrow && !task.deck().get().alongX();
    boolean linesAcrossY = narrow && task.deck().get().alongX();
    List<Double> xs =
        places(piece.x1(), piece.x2(), task.room().getEnvelopeInternal().getMinX(), linesAcrossX);
    List<Double> ys =
        places(piece.y1(), piece.y2(), task.room().getEnvelopeInternal().getMinY(), linesAcrossY);
    double over = fixing.onJoints() ? task.joint() / 2 + 0.5 : 0.5 - fixing.edgeLeast();
    Predicate<Coordinate> inside = within(shape(piece), over);
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < xs.size(); i++) {
      for (int k = 0; k < ys.size(); k++) {
        double x = xs.get(i);
        double y = ys.get(k);
        boolean edgeX = i == 0 || i == xs.size() - 1;
        boolean edgeY = k == 0 || k == ys.size() - 1;
        if (edgeX && edgeY) {
          // Corners split: the screw moves in along the longer side.
          double in = fixing.corner();
          if (alongX) {
            x = i == 0 ? Math.max(x, piece.x1() + in) : Math.min(x, piece.x2() - in);
          } else {
            y = k == 0 ? Math.max(y, piece.y1() + in) : Math.min(y, piece.y2() - in);
          }
        } else if (linesAcrossX && !edgeX) {
          x += ((k % 3) - 1) * task.deck().get().width() / 4;
        } else if (linesAcrossY && !edgeY) {
          y += ((i % 3) - 1) * task.deck().get().width() / 4;
        }
        if (inside.test(new Coordinate(x, y))) {
          all.add(new double[] {x, y});
        }
      }
    }
    return all;
  }

  /** Whether a place lies in a shape made wider all round by so much; narrower if below 0. */
  private static Predicate<Coordinate> within(Geometry shape, double by) {
    if (shape.isRectangle()) { // no screw stands beyond a corner, where the wider shape is round
      Envelope bounds = new Envelope(shape.getEnvelopeInternal());
      bounds.expandBy(by);
      return bounds::covers;
    }
    PreparedGeometry wider = PreparedGeometryFactory.prepare(shape.buffer(by));
    return place -> wider.covers(Field.SHAPES.createPoint(place));
  }

  private static Geometry shape(BoardPlan.Piece piece) {
    Geometry shape = null;
    for (TileSetOut.Ring ring : piece.rings()) {
      Coordinate[] c = new Coordinate[ring.xy().length / 2 + 1];
      for (int i = 0; i < c.length; i++) {
        int k = 2 * i % ring.xy().length;
        c[i] = new Coordinate(ring.xy()[k], ring.xy()[k + 1]);
      }
      Polygon part = Field.SHAPES.createPolygon(c);
      shape = shape == null ? part : shape.difference(part);
    }
    return shape;
  }

  /** The lines of screws in one direction. */
  private List<Double> places(double from, double to, double room, boolean onFloorboards) {
    BoardTask.Fixing fixing = task.fixing();
    double inset = fixing.onJoints() ? 0 : Math.min(fixing.edge(), (to - from) / 2);
    TreeSet<Double> lines = new TreeSet<>();
    lines.add(from + inset);
    lines.add(to - inset);
    if (onFloorboards) {
      BoardTask.Deck deck = task.deck().get();
      double clear = deck.width() / 3;
      for (double at = room + deck.first() - deck.pitch() / 2; at < to; at += deck.pitch()) {
        if (at > from + inset + clear && at < to - inset - clear) {
          lines.add(at);
        }
      }
    }
    List<Double> all = new ArrayList<>();
    Double last = null;
    for (double line : lines) {
      if (last != null) {
        int parts = (int) Math.max(1, Math.ceil((line - last) / fixing.spacing() - 1e-9));
        for (int i = 1; i < parts; i++) {
          all.add(last + (line - last) * i / parts);
        }
      }
      all.add(line);
      last = line;
    }
    return all;
  }
}
