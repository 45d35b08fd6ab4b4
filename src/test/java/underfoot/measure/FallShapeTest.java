package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.scenario.Point;
import underfoot.working.Fall;

/** Runs to a drain in rooms that are no rectangle; the lengths were worked out by hand. */
class FallShapeTest {
  /** An L of two arms, 4 m and 3 m long and 1 m wide. */
  private static final RoomShape ARMS =
      RoomShape.of(
              List.of(
                  new Point(0, 0),
                  new Point(4000, 0),
                  new Point(4000, 1000),
                  new Point(1000, 1000),
                  new Point(1000, 3000),
                  new Point(0, 3000)))
          .orElseThrow();

  private static RoomShape rectangle(double x, double y) {
    return RoomShape.of(List.of(new Point(0, 0), new Point(x, 0), new Point(x, y), new Point(0, y)))
        .orElseThrow();
  }

  @Test
  void the_way_to_a_drain_in_the_far_corner_goes_round_the_corner_between() {
    // From (4000, 0) to the turn at (1000, 1000), and on to (0, 3000).
    double way = Math.hypot(3000, 1000) + Math.hypot(1000, 2000);
    FallShape shape = FallShape.of(ARMS, Fall.Drain.CORNER);
    assertThat(shape.longestRunMm()).isCloseTo(way, within(1.0));
    assertThat(shape.shortestRunMm()).isCloseTo(1000, within(1.0));
  }

  @Test
  void a_channel_along_the_longest_wall_is_far_from_the_end_of_the_other_arm() {
    FallShape shape = FallShape.of(ARMS, Fall.Drain.LONG_EDGE);
    assertThat(shape.longestRunMm()).isCloseTo(3000, within(1.0));
    assertThat(shape.shortestRunMm()).isCloseTo(1000, within(1.0));
  }

  @Test
  void on_a_rectangle_it_comes_to_what_the_formula_for_rectangles_gives() {
    RoomShape room = rectangle(3600, 2400);
    for (Fall.Drain drain : Fall.Drain.values()) {
      Fall.Values formula = Fall.of(60, 3600, 2400, drain);
      FallShape shape = FallShape.of(room, drain);
      assertThat(shape.longestRunMm())
          .as(drain.words())
          .isCloseTo(formula.longestRunMm(), within(1.0));
      assertThat(shape.shortestRunMm())
          .as(drain.words())
          .isCloseTo(formula.shortestRunMm(), within(1.0));
    }
    assertThat(FallShape.isRectangle(room)).isTrue();
    assertThat(FallShape.isRectangle(ARMS)).isFalse();
  }
}
