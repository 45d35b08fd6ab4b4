package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** The walls of a room's outline, found by the place of an edge that lies along one. */
final class Walls {
  /** By how much an edge may miss the place and the direction of its wall, mm in all. */
  private static final double MISS = 0.5;

  private final Coordinate[] corners;
  private final double gap;
  private final STRtree near = new STRtree();

  /**
   * @param room the room
   * @param gap how far inside it the edges lie, mm
   */
  Walls(Polygon room, double gap) {
    this.corners = room.getExteriorRing().getCoordinates();
    this.gap = gap;
    for (int i = 0; i + 1 < corners.length; i++) {
      near.insert(new Envelope(corners[i], corners[i + 1]), i);
    }
    near.build();
  }

  /** The wall that an edge lies along, the first of two that it lies along as well; -1 for none. */
  int of(Coordinate a, Coordinate b) {
    Envelope here = new Envelope(new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2));
    here.expandBy(2 * (gap + MISS)); // so far beyond it, square to it and along it
    List<Integer> walls = new ArrayList<>();
    near.query(here, wall -> walls.add((Integer) wall));
    Collections.sort(walls);
    int best = -1;
    double bestMiss = MISS;
    for (int wall : walls) {
      double miss = miss(corners[wall], corners[wall + 1], a, b);
      if (miss < bestMiss) {
        bestMiss = miss;
        best = wall;
      }
    }
    return best;
  }

  private double miss(Coordinate from, Coordinate to, Coordinate a, Coordinate b) {
    double mx = (a.x + b.x) / 2 - from.x;
    double my = (a.y + b.y) / 2 - from.y;
    double length = from.distance(to);
    double ux = (to.x - from.x) / length;
    double uy = (to.y - from.y) / length;
    double off = Math.abs(mx * -uy + my * ux);
    double along = mx * ux + my * uy;
    double skew = Math.abs((b.x - a.x) * -uy + (b.y - a.y) * ux);
    double beyond = Math.max(0, Math.max(-along, along - length));
    return Math.abs(off - gap) + skew + Math.max(0, beyond - gap);
  }
}
