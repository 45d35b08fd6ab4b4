package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

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
}
