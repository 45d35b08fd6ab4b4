package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The part of a room that tiles or boards may cover: the room less a gap at every wall, seen along
 * the tiles' own axes.
 *
 * @param shape the part, mm, along the tiles' axes
 * @param edges its edges
 * @param turn the direction of the tiles' first axis in the room, radians
 */
public record Field(Geometry shape, List<Edge> edges, double turn) {
  /** Lengths that differ by less are the same, mm. */
  static final double SLIP = 1e-6;

  static final GeometryFactory SHAPES = new GeometryFactory();

  /** Copies the list. */
  public Field {
    edges = List.copyOf(edges);
  }

  /**
   * One edge.
   *
   * @param x1 its beginning, mm
   * @param y1 its beginning, mm
   * @param x2 its end, mm
   * @param y2 its end, mm
   * @param nx the direction into the field
   * @param ny the direction into the field
   * @param wall which wall of the room it runs along; -1 for none
   * @param door whether it lies in a doorway
   */
  public record Edge(
      double x1, double y1, double x2, double y2, double nx, double ny, int wall, boolean door) {
    /** Its length, mm. */
    public double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }

    private static Edge between(
        double x1, double y1, double x2, double y2, int wall, boolean door) {
      double length = Math.hypot(x2 - x1, y2 - y1);
      // The field lies to the left.
      return new Edge(x1, y1, x2, y2, (y1 - y2) / length, (x2 - x1) / length, wall, door);
    }

    boolean alongX() {
      return Math.abs(y2 - y1) < SLIP;
    }

    boolean alongY() {
      return Math.abs(x2 - x1) < SLIP;
    }
  }

  /**
   * A doorway as it lies in a wall of the room.
   *
   * @param name its name
   * @param wall which wall of the outline
   * @param from one side of the opening, mm in the room
   * @param to the other side, mm in the room
   */
  public record Opening(String name, int wall, Coordinate from, Coordinate to) {
    private List<Object> parts() {
      return List.of(name, wall, from, to);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Opening that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
      return parts().hashCode();
    }

    /** Its middle. */
    public Coordinate middle() {
      return new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
    }
  }

  /**
   * The field of a room.
   *
   * @param room the floor, mm; may have holes
   * @param gap left at every wall, mm, 0 or more
   * @param turn the direction of the tiles' first axis, radians
   * @param doors the doorways whose place is known
   * @return the field; its shape is empty where nothing is left
   */
  public static Field of(Polygon room, double gap, double turn, List<Opening> doors) {
    return of(room, gap, turn, doors, List.of());
  }

  /** The field of a room that is cut apart by movement joints. */
  static Field of(
      Polygon room, double gap, double turn, List<Opening> doors, List<Polygon> strips) {
    Geometry inner = shrunk(room, gap);
    for (Polygon strip : strips) {
      inner = inner.difference(strip);
    }
    AffineTransformation turned = AffineTransformation.rotationInstance(-turn);
    List<Edge> edges = new ArrayList<>();
    Walls walls = new Walls(room, gap);
    for (int i = 0; i < inner.getNumGeometries(); i++) {
      if (inner.getGeometryN(i) instanceof Polygon part) {
        ring(part.getExteriorRing(), false, walls, turned, doors, edges);
        for (int k = 0; k < part.getNumInteriorRing(); k++) {
          ring(part.getInteriorRingN(k), true, walls, turned, doors, edges);
        }
      }
    }
    return new Field(tidy(turned.transform(inner)), edges, turn);
  }

  /** A floor less a gap at every edge, with its corners kept square. */
  static Geometry shrunk(Geometry room, double gap) {
    if (gap <= 0) {
      return room;
    }
    if (room instanceof Polygon box && box.isRectangle()) {
      return Boxes.shrunk(box, gap);
    }
    BufferParameters mitred = new BufferParameters();
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    mitred.setMitreLimit(20);
    return BufferOp.bufferOp(room, -gap, mitred);
  }

  private static void ring(
      LinearRing ring,
      boolean hole,
      Walls walls,
      AffineTransformation turned,
      List<Opening> doors,
      List<Edge> edges) {
    Coordinate[] c = ring.getCoordinates();
    // The field lies to the left of each edge.
    if (Orientation.isCCW(c) == hole) {
      Coordinate[] back = new Coordinate[c.length];
      for (int i = 0; i < c.length; i++) {
        back[i] = c[c.length - 1 - i];
      }
      c = back;
    }
    for (int i = 0; i + 1 < c.length; i++) {
      if (c[i].distance(c[i + 1]) > SLIP) {
        split(c[i], c[i + 1], walls.of(c[i], c[i + 1]), turned, doors, edges);
      }
    }
  }

  /** Cuts an edge where doorways begin and end. */
  private static void split(
      Coordinate a,
      Coordinate b,
      int wall,
      AffineTransformation turned,
      List<Opening> doors,
      List<Edge> edges) {
    double length = a.distance(b);
    double ux = (b.x - a.x) / length;
    double uy = (b.y - a.y) / length;
    List<Double> cuts = new ArrayList<>(List.of(0.0, length));
    List<double[]> openings = new ArrayList<>();
    for (Opening door : doors) {
      if (door.wall() == wall && wall >= 0) {
        double s = (door.from().x - a.x) * ux + (door.from().y - a.y) * uy;
        double t = (door.to().x - a.x) * ux + (door.to().y - a.y) * uy;
        double low = Math.max(0, Math.min(s, t));
        double high = Math.min(length, Math.max(s, t));
        if (high - low > 1) {
          openings.add(new double[] {low, high});
          cuts.add(low);
          cuts.add(high);
        }
      }
    }
    cuts.sort(Double::compare);
    for (int i = 0; i + 1 < cuts.size(); i++) {
      double s = cuts.get(i);
      double t = cuts.get(i + 1);
      if (t - s > SLIP) {
        double middle = (s + t) / 2;
        boolean door = openings.stream().anyMatch(o -> o[0] < middle && middle < o[1]);
        Coordinate from = turn(turned, a.x + s * ux, a.y + s * uy);
        Coordinate to = turn(turned, a.x + t * ux, a.y + t * uy);
        edges.add(Edge.between(from.x, from.y, to.x, to.y, wall, door));
      }
    }
  }

  private static Coordinate turn(AffineTransformation turned, double x, double y) {
    Coordinate to = turned.transform(new Coordinate(x, y), new Coordinate());
    return new Coordinate(tidy(to.x), tidy(to.y));
  }

  private static Geometry tidy(Geometry shape) {
    Geometry copy = shape.copy();
    copy.apply(
        (Coordinate c) -> {
          c.x = tidy(c.x);
          c.y = tidy(c.y);
        });
    copy.geometryChanged();
    return copy;
  }

  /** A length to a tenth of a nanometre, so that turning there and back leaves whole numbers. */
  private static double tidy(double length) {
    return Math.rint(length * 1e7) / 1e7;
  }

  /** Whether every edge runs along one of the axes. */
  boolean square() {
    return edges.stream().allMatch(edge -> edge.alongX() || edge.alongY());
  }

  /** A place in the room as it is seen along the tiles' axes. */
  public Coordinate in(Coordinate place) {
    return turn(AffineTransformation.rotationInstance(-turn), place.x, place.y);
  }

  /** A place along the tiles' axes as it lies in the room. */
  public Coordinate out(double x, double y) {
    return turn(AffineTransformation.rotationInstance(turn), x, y);
  }
}
