package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Polygon;

/** The start that is found against every start that there is, in rooms small enough for that. */
class BestStartTest {
  private static TileTask task(
      Polygon room, Pattern.Kind kind, double length, double width, Weights weights) {
    return new TileTask(
        room,
        List.of(),
        kind,
        length,
        width,
        2,
        4,
        false,
        weights,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        6,
        20000,
        400_000,
        6_400_000);
  }

  private static Weights weights(double narrow, double sliver, double kerf) {
    return new Weights(1, 1, narrow, 0, sliver, 0, 0, 0.5, 0.25, 50, kerf);
  }

  /** The fewest points of starts a half millimetre apart, tiles lying either way. */
  private static double sweep(TileTask task) {
    double best = Double.MAX_VALUE;
    for (double turn : new double[] {0, Math.PI / 2}) {
      Field field = Field.of(task.room(), task.gap(), turn, List.of());
      Pattern pattern = Pattern.of(task.kind(), task.length(), task.width(), task.joint());
      Count count = new Count(field, pattern, task.weights(), Movement.NONE);
      for (double x = 0; x < pattern.periodX(); x += 0.5) {
        for (double y = 0; y < pattern.periodY(); y += 0.5) {
          best = Math.min(best, count.at(x, y).points(task.weights()));
        }
      }
    }
    return best;
  }

  /**
   * Where walls, sizes, joints and limits are whole millimetres, what a start comes to changes on
   * whole and half millimetres only, so that the best of those is the best of all.
   */
  @ParameterizedTest
  @EnumSource(
      value = Pattern.Kind.class,
      names = {"GRID", "HALF_OFFSET"})
  void no_start_of_all_is_better_than_the_one_found(Pattern.Kind kind) {
    Random random = new Random(29 + kind.ordinal());
    for (int round = 0; round < 10; round++) {
      double w = 150 + random.nextInt(60);
      double h = 120 + random.nextInt(60);
      double x = 40 + random.nextInt((int) w - 80);
      double y = 40 + random.nextInt((int) h - 80);
      List<Polygon> rooms =
          List.of(
              Rooms.of(0, 0, w, 0, w, h, 0, h),
              Rooms.of(0, 0, w, 0, w, y, x, y, x, h, 0, h),
              Rooms.of(0, 0, x, 0, x, y, w, y, w, h, 0, h));
      double size = 38 + 4 * random.nextInt(4);
      TileTask task =
          task(
              rooms.get(round % 3),
              kind,
              size,
              size - 16,
              weights(random.nextInt(4), 5 + random.nextInt(10), 2 * random.nextInt(3)));
      TileSetOut out = TileLayout.of(task).orElseThrow();
      assertThat(out.every()).isTrue();
      assertThat(out.chosen().points())
          .as("round %d: %s", round, task)
          .isCloseTo(sweep(task), within(1e-6));
      assertThat(out.tiles()).isEqualTo(out.whole() + out.boxed());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Pattern.Kind.class,
      names = {"GRID", "HALF_OFFSET"})
  void what_is_off_the_middle_is_weighed_against_what_it_saves(Pattern.Kind kind) {
    Random random = new Random(5);
    for (int round = 0; round < 8; round++) {
      double w = 160 + random.nextInt(60);
      double h = 130 + random.nextInt(60);
      Polygon room = Rooms.of(0, 0, w, 0, w, h, 0, h);
      Weights weights = new Weights(1, 1, 2, 0, 9, 3, 0, 0.5, 0.25, 50, 2);
      TileTask task = task(room, kind, 46, 46, weights);
      // Centred: the middle of the field lies in the middle of a tile or of a joint.
      Field field = Field.of(room, 4, 0, List.of());
      Pattern pattern = Pattern.of(kind, 46, 46, 2);
      Count count = new Count(field, pattern, weights, Movement.NONE);
      List<Double> xs = new ArrayList<>(centred(w / 2));
      if (kind == Pattern.Kind.HALF_OFFSET) {
        // Then it is the next row that is centred.
        centred(w / 2 + 24).forEach(xs::add);
      }
      List<Double> ys = centred(h / 2);
      double best = Double.MAX_VALUE;
      for (double x = 0; x < 48; x += 0.5) {
        for (double y = 0; y < 48; y += 0.5) {
          int off = (xs.contains(x) ? 0 : 1) + (ys.contains(y) ? 0 : 1);
          best = Math.min(best, count.at(x, y).points(weights) + off * 3);
        }
      }
      TileSetOut out = TileLayout.of(task).orElseThrow();
      assertThat(out.chosen().points()).as("round %d", round).isCloseTo(best, within(1e-6));
    }
  }

  /** A doorway wants its middle centred, and of the other direction a whole row or the middle. */
  @Test
  void what_is_off_the_middle_of_a_doorway_is_weighed_against_what_it_saves() {
    Random random = new Random(8);
    for (int round = 0; round < 12; round++) {
      double w = 160 + random.nextInt(60);
      double h = 130 + random.nextInt(60);
      Polygon room = Rooms.of(0, 0, w, 0, w, h, 0, h);
      int wall = round % 4;
      Field.Opening door = Rooms.door(room, wall, 20 + random.nextInt(30), 40);
      boolean upright = wall % 2 == 1;
      Weights weights = new Weights(1, 1, 2, 0, 9, 4, 0, 0.5, 0.25, 50, 2);
      Field field = Field.of(room, 4, 0, List.of(door));
      Pattern pattern = Pattern.of(Pattern.Kind.GRID, 46, 46, 2);
      Count count = new Count(field, pattern, weights, Movement.NONE);
      List<Double> xs = new ArrayList<>(centred(upright ? w / 2 : door.middle().x));
      List<Double> ys = new ArrayList<>(centred(upright ? door.middle().y : h / 2));
      double whole = wall == 0 || wall == 3 ? 4 : (wall == 1 ? w : h) - 50;
      (upright ? xs : ys).add(whole % 48);
      double best = Double.MAX_VALUE;
      for (double x = 0; x < 48; x += 0.5) {
        for (double y = 0; y < 48; y += 0.5) {
          int off = (xs.contains(x) ? 0 : 1) + (ys.contains(y) ? 0 : 1);
          best = Math.min(best, count.at(x, y).points(weights) + off * 4);
        }
      }
      TileTask task =
          new TileTask(
              room,
              List.of(door),
              Pattern.Kind.GRID,
              46,
              46,
              2,
              4,
              true,
              weights,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              6,
              20000,
              400_000,
              6_400_000);
      TileSetOut out = TileLayout.of(task).orElseThrow();
      assertThat(out.every()).isTrue();
      assertThat(out.chosen().points()).as("round %d", round).isCloseTo(best, within(1e-6));
    }
  }

  /** Where tiles may begin so that a tile of 46, or a joint of 2, has its middle at a place. */
  private static List<Double> centred(double middle) {
    return List.of((middle - 23 + 480) % 48, (middle + 1) % 48);
  }

  /** Points of starts taken at random. */
  private static double sample(TileTask task, double turn, int many) {
    Random random = new Random(77);
    Field field = Field.of(task.room(), task.gap(), turn, List.of());
    Pattern pattern = Pattern.of(task.kind(), task.length(), task.width(), task.joint());
    Count count = new Count(field, pattern, task.weights(), Movement.NONE);
    double best = Double.MAX_VALUE;
    for (int n = 0; n < many; n++) {
      double x = random.nextDouble() * pattern.periodX();
      double y = random.nextDouble() * pattern.periodY();
      best = Math.min(best, count.at(x, y).points(task.weights()));
    }
    return best;
  }

  @Test
  void where_walls_run_aslant_hardly_any_start_is_better() {
    Random random = new Random(1711);
    for (int i = 0; i < 2; i++) {
      TileTask task = task(Rooms.any(random), Pattern.Kind.GRID, 300, 300, weights(3, 20, 3));
      TileSetOut out = TileLayout.of(task).orElseThrow();
      assertThat(out.every()).isFalse();
      assertThat(out.chosen().points())
          .isLessThanOrEqualTo(sample(task, Math.toRadians(out.direction()), 2000) + 1);
    }
  }

  /** Stairs of forty steps. */
  private static Polygon stairs() {
    List<Double> xy = new ArrayList<>(List.of(0.0, 0.0, 4000.0, 0.0));
    for (int step = 0; step < 40; step++) {
      double x = 4000 - 97 * step;
      double y = 500 + 83 * step;
      xy.addAll(List.of(x, y, x - 97, y));
    }
    xy.addAll(List.of(120.0, 3900.0, 0.0, 3900.0));
    return Rooms.of(xy.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** How many cut tiles were looked at, taking those of the start in the middle for each start. */
  private static double effort(TileSetOut out) {
    int cut =
        out.options().stream()
            .filter(one -> one.way() == TileSetOut.StartedFrom.ROOM)
            .findFirst()
            .orElseThrow()
            .cut();
    return (double) out.tried() * cut;
  }

  @Test
  void in_a_room_of_many_corners_not_every_start_is_tried_but_a_good_one_is_found() {
    TileTask task = task(stairs(), Pattern.Kind.GRID, 300, 300, weights(3, 20, 3));
    TileSetOut out = TileLayout.of(task).orElseThrow();
    assertThat(out.every()).isFalse();
    // 400 000 for the places, a third of that all over the repeat, and what improving takes.
    assertThat(effort(out)).isBetween(520_000.0, 640_000.0);
    assertThat(out.chosen().points()).isLessThanOrEqualTo(sample(task, 0, 1000));
    // In herringbone half of it for the places.
    TileSetOut other =
        TileLayout.of(task(stairs(), Pattern.Kind.HERRINGBONE, 300, 200, weights(3, 20, 3)))
            .orElseThrow();
    assertThat(other.every()).isFalse();
    assertThat(effort(other)).isBetween(320_000.0, 440_000.0);
  }

  @Test
  void where_walls_run_aslant_a_third_of_the_effort_goes_all_over_the_repeat() {
    Polygon room = Rooms.of(0, 0, 3000, 300, 2500, 2800, 200, 2500);
    TileSetOut out =
        TileLayout.of(task(room, Pattern.Kind.GRID, 300, 300, weights(3, 20, 3))).orElseThrow();
    assertThat(out.every()).isFalse();
    assertThat(effort(out)).isBetween(133_000.0, 180_000.0);
  }

  /** Beside a widened joint nothing is promised, but the places on both sides of it are tried. */
  @Test
  void with_a_movement_joint_hardly_any_start_is_better() {
    Random random = new Random(61);
    for (int round = 0; round < 6; round++) {
      double w = 400 + random.nextInt(60);
      double h = 120 + random.nextInt(60);
      Polygon room = Rooms.of(0, 0, w, 0, w, h, 0, h);
      Weights weights = weights(2, 9, 2);
      TileTask task =
          new TileTask(
              room,
              List.of(),
              Pattern.Kind.GRID,
              46,
              46,
              2,
              4,
              false,
              weights,
              OptionalDouble.of(250),
              OptionalDouble.empty(),
              6,
              20000,
              400_000,
              6_400_000);
      Field field = Field.of(room, 4, 0, List.of());
      Movement movement = Movement.even(field.shape().getEnvelopeInternal(), 2, 1, 6);
      Count count = new Count(field, Pattern.of(Pattern.Kind.GRID, 46, 46, 2), weights, movement);
      double best = Double.MAX_VALUE;
      for (double x = 0; x < 48; x += 0.5) {
        for (double y = 0; y < 48; y += 0.5) {
          best = Math.min(best, count.at(x, y).points(weights));
        }
      }
      TileSetOut out = TileLayout.of(task).orElseThrow();
      assertThat(out.movement()).hasSize(1);
      assertThat(out.every()).isFalse();
      assertThat(out.chosen().points()).as("round %d", round).isLessThanOrEqualTo(best + 1e-6);
    }
  }

  @Test
  void tiles_that_would_cover_a_floor_are_its_area_over_a_tile_with_its_joint() {
    TileTask task =
        task(Rooms.of(0, 0, 3020, 0, 3020, 1020, 0, 1020), Pattern.Kind.GRID, 300, 100, null);
    assertThat(task.roughly()).isCloseTo(100, within(1e-9));
  }
}
