package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class LeastPointsTest {
  private static final List<Pattern.Kind> STRAIGHT =
      List.of(Pattern.Kind.GRID, Pattern.Kind.HALF_OFFSET, Pattern.Kind.THIRD_OFFSET);

  /** A room with a corner missing, or with a thin pier standing into it. */
  private static Polygon room(Random random) {
    double w = 900 + random.nextInt(4000);
    double h = 900 + random.nextInt(4000);
    double x = 100 + random.nextInt((int) w - 300);
    double y = 100 + random.nextInt((int) h - 300);
    if (random.nextBoolean()) {
      return Rooms.of(0, 0, w, 0, w, y, x, y, x, h, 0, h);
    }
    double wide = Math.min(w - x - 50, 40 + random.nextInt(400));
    return Rooms.of(0, 0, w, 0, w, h, x + wide, h, x + wide, y, x, y, x, h, 0, h);
  }

  @Test
  void no_start_costs_less_than_the_least_that_is_reckoned_for_it() {
    Random random = new Random(7);
    int close = 0;
    int all = 0;
    for (int n = 0; n < 150; n++) {
      double length = 60 + random.nextInt(900);
      double width = 60 + random.nextInt(900);
      Pattern.Kind kind = STRAIGHT.get(n % STRAIGHT.size());
      TileTask task = Rooms.task(room(random), List.of(), kind, length, width, 3, 6);
      Field field = Field.of(task.room(), task.gap(), 0, task.doors());
      Pattern pattern = Pattern.of(kind, length, width, 3);
      Count count = new Count(field, pattern, task.weights(), Movement.NONE);
      LeastPoints least = new LeastPoints(field, pattern, task.weights());
      for (int k = 0; k < 60; k++) {
        double x = random.nextDouble() * pattern.periodX();
        double y = random.nextDouble() * pattern.periodY();
        double points = count.at(x, y).points(task.weights());
        double reckoned = least.ofTiles() + least.pointsX(x) + least.pointsY(y);
        assertThat(reckoned).as("%s %s from %s, %s", kind, task, x, y).isLessThanOrEqualTo(points);
        all++;
        close += reckoned > points / 2 ? 1 : 0;
      }
    }
    // A bound that is never near the truth would leave nothing out.
    assertThat(close).isGreaterThan(all / 4);
  }

  @Test
  void the_least_of_tiles_is_the_area_less_a_joint_beside_every_wall() {
    // 1000 by 1000 of cells of 100 by 100, each 97 by 97 of tile: 940 900 less 4000 of wall by 3.
    Field field = Field.of(Rooms.of(0, 0, 1000, 0, 1000, 1000, 0, 1000), 0, 0, List.of());
    Pattern pattern = Pattern.of(Pattern.Kind.GRID, 97, 97, 3);
    assertThat(new LeastPoints(field, pattern, Rooms.WEIGHTS).ofTiles())
        .isCloseTo(928_900 / 9409.0, within(1e-9));
  }

  @Test
  void the_least_of_cuts_is_what_the_tiles_wholly_beside_each_wall_come_to() {
    // 1000 by 1200 with a bite of 500 by 400 out of its right side; tiles of 100, no joints. From
    // 30 every wall that has the room beyond it leaves 30 (a cut, too narrow: 1 + 3 points), every
    // other 70 (a cut: 1 point).
    Field field =
        Field.of(
            Rooms.of(0, 0, 1000, 0, 1000, 400, 500, 400, 500, 800, 1000, 800, 1000, 1200, 0, 1200),
            0,
            0,
            List.of());
    Pattern pattern = Pattern.of(Pattern.Kind.GRID, 100, 100, 0);
    LeastPoints least = new LeastPoints(field, pattern, Rooms.WEIGHTS);
    // Left: 11 tiles of 4; right: 3, 3 and 3 tiles of 1.
    assertThat(least.pointsX(30)).isCloseTo(53, within(1e-9));
    // Below: 9 tiles of 4; above: 9 of 1; below the bite 4 of 1, above it 4 of 4.
    assertThat(least.pointsY(30)).isCloseTo(65, within(1e-9));
    // On joints nothing is cut.
    assertThat(least.pointsX(0)).isZero();
    assertThat(least.pointsY(100)).isZero();
    // From 20 the cuts on the left are slivers: 1 + 20 points.
    assertThat(least.pointsX(20)).isCloseTo(11 * 21 + 9, within(1e-9));
  }
}
