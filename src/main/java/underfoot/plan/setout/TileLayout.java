package underfoot.plan.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.StartedFrom;

/**
 * Finds where tiles begin. What a start comes to changes only where an edge of the pattern meets a
 * wall, where a cut reaches a limit, or where two cuts begin to fit into one tile; so in a room
 * whose walls stand square to each other it is enough to look at these places, and no start
 * anywhere is better than the best of them. Where walls run aslant or the pattern is turned, starts
 * are tried all over the repeat and the best are improved step by step.
 */
public final class TileLayout {
  /** A millimetre: lengths that differ by less are taken for one where walls are compared. */
  static final double MM = 1;

  /**
   * So many ways of starting at doors are always tried; of many more those that can be afforded.
   */
  private static final int FEW = 8;

  private final TileTask task;

  private TileLayout(TileTask task) {
    this.task = task;
  }

  /**
   * Sets tiles out.
   *
   * @param task what is asked
   * @return empty where there are more tiles than are set out one by one, or no room for any
   */
  public static Optional<TileSetOut> of(TileTask task) {
    if (task.roughly() > task.most()) {
      return Optional.empty();
    }
    return new TileLayout(task).find();
  }

  private Optional<TileSetOut> find() {
    List<View> views = View.of(task);
    double base = View.base(task, views);
    List<Start> starts = new ArrayList<>();
    long tried = 0;
    boolean every = true;
    boolean square = Math.abs(task.length() - task.width()) < Field.SLIP;
    List<Boolean> swaps =
        square || task.kind() == Pattern.Kind.HERRINGBONE ? List.of(false) : List.of(false, true);
    for (boolean swap : swaps) {
      Scene scene = new Scene(task, base, swap);
      if (scene.field.shape().isEmpty()) {
        return Optional.empty();
      }
      starts.addAll(named(scene, views));
      Search search = new Search(scene);
      search.run(starts).ifPresent(starts::add);
      tried += search.tried + starts.size();
      every &= search.every;
    }
    // The better way of turning the tiles stands for each way of starting.
    List<Start> kept = new ArrayList<>();
    for (Start start : starts.stream().sorted(Start.BETTER).toList()) {
      boolean known =
          kept.stream()
              .anyMatch(
                  one ->
                      one.option().way() == start.option().way()
                          && one.option().door().equals(start.option().door()));
      // A found start is worth telling only where it is the best.
      boolean same = start.option().way() == StartedFrom.FOUND && !kept.isEmpty();
      if (!known && !same) {
        kept.add(start);
      }
    }
    Start chosen = kept.get(0);
    List<Option> options = kept.stream().map(Start::option).toList();
    Scene scene = chosen.scene();
    return Optional.of(
        new TilePieces(task, scene.field, scene.pattern, scene.movement, chosen.x(), chosen.y())
            .setOut(base, anchor(views, scene), options, tried, every));
  }

  /** The place by which the first tile goes: near the main door, or the middle of the room. */
  private Coordinate anchor(List<View> views, Scene scene) {
    if (task.fromDoor() && !views.isEmpty()) {
      View main = views.get(0);
      double in = Math.min(main.length() / 2, Math.max(task.length(), task.width()) * 2);
      double share = in / main.length();
      return new Coordinate(
          main.from().x + share * (main.to().x - main.from().x),
          main.from().y + share * (main.to().y - main.from().y));
    }
    return scene.field.out(
        scene.field.shape().getInteriorPoint().getX(),
        scene.field.shape().getInteriorPoint().getY());
  }

  private List<Start> named(Scene scene, List<View> views) {
    List<Start> starts = new ArrayList<>();
    Envelope around = scene.field.shape().getEnvelopeInternal();
    List<Double> roomX = scene.middleX(around.centre().x);
    List<Double> roomY = scene.middleY(around.centre().y);
    boolean first = true;
    List<Runnable> later = new ArrayList<>();
    for (View view : views) {
      Coordinate from = scene.field.in(view.from());
      Coordinate to = scene.field.in(view.to());
      String door = view.door().name();
      boolean main = first;
      first = false;
      double mx = (from.x + to.x) / 2;
      double my = (from.y + to.y) / 2;
      if (scene.oblique()) {
        wanted(scene, main, scene.middleX(mx), scene.middleY(my));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      } else if (Math.abs(from.x - to.x) < 1e-3) {
        List<Double> rows = List.of(to.y > from.y ? from.y : from.y - scene.tileY());
        wanted(scene, main, scene.middleX(mx), rows);
        wanted(scene, main, List.of(), scene.middleY(my));
        later.add(
            () -> starts.add(scene.best(StartedFrom.DOOR_WHOLE, door, scene.middleX(mx), rows)));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      } else if (Math.abs(from.y - to.y) < 1e-3) {
        List<Double> rows = List.of(to.x > from.x ? from.x : from.x - scene.tileX());
        wanted(scene, main, rows, scene.middleY(my));
        wanted(scene, main, scene.middleX(mx), List.of());
        later.add(
            () -> starts.add(scene.best(StartedFrom.DOOR_WHOLE, door, rows, scene.middleY(my))));
        later.add(
            () ->
                starts.add(
                    scene.best(StartedFrom.DOOR_EVEN, door, scene.middleX(mx), scene.middleY(my))));
      }
    }
    if (scene.centredX.isEmpty()) {
      scene.centredX.addAll(roomX);
      scene.centredY.addAll(roomY);
    }
    for (int i = 0; i < later.size() && (i < FEW || scene.looked() < task.effort() / 2); i++) {
      later.get(i).run();
    }
    starts.add(scene.best(StartedFrom.ROOM, "", roomX, roomY));
    return starts;
  }

  private void wanted(Scene scene, boolean main, List<Double> xs, List<Double> ys) {
    if (main && task.fromDoor()) {
      scene.centredX.addAll(xs);
      scene.centredY.addAll(ys);
    }
  }
}
