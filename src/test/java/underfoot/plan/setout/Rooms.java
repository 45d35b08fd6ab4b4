package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Rooms to set out in, and what is asked of them. */
final class Rooms {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  static final Weights WEIGHTS = new Weights(1, 1, 3, 6, 20, 6, 10, 0.5, 0.25, 50, 3);

  private Rooms() {}

  static Polygon of(double... xy) {
    return SHAPES.createPolygon(ring(xy));
  }

  static Polygon with(Polygon room, double... hole) {
    return SHAPES.createPolygon(
        (LinearRing) room.getExteriorRing().copy(), new LinearRing[] {ring(hole)});
  }

  private static LinearRing ring(double... xy) {
    Coordinate[] c = new Coordinate[xy.length / 2 + 1];
    for (int i = 0; i < c.length; i++) {
      int k = 2 * i % xy.length;
      c[i] = new Coordinate(xy[k], xy[k + 1]);
    }
    return SHAPES.createLinearRing(c);
  }

  /** A room with a column standing in it. */
  static Polygon withColumn() {
    return with(
        of(0, 0, 3000, 0, 3000, 2500, 0, 2500), 1000, 1000, 1400, 1000, 1400, 1300, 1000, 1300);
  }

  /** An L-shaped room with a chimney breast and two doors. */
  static Polygon withChimneyBreast() {
    return of(
        0, 0, 4200, 0, 4200, 2400, 2600, 2400, 2600, 3900, 1700, 3900, 1700, 3550, 600, 3550, 600,
        3900, 0, 3900);
  }

  static TileTask task(
      Polygon room,
      List<Field.Opening> doors,
      Pattern.Kind kind,
      double length,
      double width,
      double joint,
      double gap) {
    return new TileTask(
        room,
        doors,
        kind,
        length,
        width,
        joint,
        gap,
        !doors.isEmpty(),
        WEIGHTS,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        6,
        20000,
        400_000,
        6_400_000);
  }

  static Field.Opening door(Polygon room, int wall, double from, double width) {
    Coordinate[] c = room.getExteriorRing().getCoordinates();
    double length = c[wall].distance(c[wall + 1]);
    double ux = (c[wall + 1].x - c[wall].x) / length;
    double uy = (c[wall + 1].y - c[wall].y) / length;
    return new Field.Opening(
        "door " + wall,
        wall,
        new Coordinate(c[wall].x + from * ux, c[wall].y + from * uy),
        new Coordinate(c[wall].x + (from + width) * ux, c[wall].y + (from + width) * uy));
  }

  /** A room whose walls all run along the axes: a rectangle with steps cut from its corners. */
  static Polygon square(Random random) {
    double w = 1000 + random.nextInt(2500);
    double h = 1000 + random.nextInt(2000);
    List<double[]> c = new ArrayList<>();
    double[][] corners = {{0, 0, 1, 1}, {w, 0, -1, 1}, {w, h, -1, -1}, {0, h, 1, -1}};
    for (int i = 0; i < 4; i++) {
      double[] k = corners[i];
      if (random.nextBoolean()) {
        c.add(k);
        continue;
      }
      double dx = k[2] * (100 + random.nextInt((int) (w / 2.5)));
      double dy = k[3] * (100 + random.nextInt((int) (h / 2.5)));
      double[] a = {k[0] + dx, k[1]};
      double[] b = {k[0] + dx, k[1] + dy};
      double[] d = {k[0], k[1] + dy};
      boolean upFirst = i % 2 == 0;
      c.add(upFirst ? d : a);
      c.add(b);
      c.add(upFirst ? a : d);
    }
    return of(c);
  }

  private static Polygon of(List<double[]> places) {
    double[] xy = new double[2 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      xy[2 * i] = places.get(i)[0];
      xy[2 * i + 1] = places.get(i)[1];
    }
    return of(xy);
  }

  /** A room of any shape whose corners are seen from its middle. */
  static Polygon any(Random random) {
    int corners = 3 + random.nextInt(7);
    List<double[]> c = new ArrayList<>();
    double size = 800 + random.nextInt(2500);
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
      double far = size * (0.5 + 0.5 * random.nextDouble());
      c.add(new double[] {far * Math.cos(angle), far * Math.sin(angle)});
    }
    return of(c);
  }
}
