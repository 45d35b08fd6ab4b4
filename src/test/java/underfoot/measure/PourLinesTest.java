package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import underfoot.scenario.Point;

/** Floor before lines across the ways in, against areas worked out by hand. */
class PourLinesTest {
  /** A room of 6 m by 4 m; wall 0 is the long one below. */
  private static final List<Point> ROOM =
      List.of(new Point(0, 0), new Point(6000, 0), new Point(6000, 4000), new Point(0, 4000));

  private static PourLines of(List<Point> outline, PourLines.Line... lines) {
    return PourLines.of(RoomShape.of(outline).orElseThrow(), outline, List.of(lines), 500);
  }

  private static List<Double> floors(PourLines lines) {
    return lines.doors().stream().map(PourLines.Before::floorM2).toList();
  }

  @Test
  void a_line_cuts_off_the_room_as_far_as_it_lies_in() {
    PourLines lines = of(ROOM, new PourLines.Line(0, 1000, 800, 1500));
    assertThat(lines.doors().get(0).roomMm()).isCloseTo(4000, within(1e-6));
    assertThat(lines.doors().get(0).floorM2()).isCloseTo(6 * 1.5, within(1e-9));
    assertThat(lines.beyond()).isTrue();
  }

  @Test
  void floor_before_two_doors_of_one_wall_is_counted_once() {
    PourLines lines =
        of(ROOM, new PourLines.Line(0, 1000, 800, 1200), new PourLines.Line(0, 4000, 800, 1500));
    assertThat(floors(lines).get(0)).isZero();
    assertThat(floors(lines).get(1)).isCloseTo(6 * 1.5, within(1e-9));
  }

  @Test
  void floor_before_doors_of_walls_that_meet_is_counted_once() {
    PourLines lines =
        of(ROOM, new PourLines.Line(0, 1000, 800, 1500), new PourLines.Line(1, 1000, 800, 1000));
    assertThat(floors(lines).stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(6 * 1.5 + 1 * 4 - 1.5 * 1, within(1e-9));
    assertThat(lines.beyond()).isTrue();
  }

  @Test
  void between_lines_that_meet_nothing_is_left_to_pour() {
    PourLines lines =
        of(ROOM, new PourLines.Line(0, 1000, 800, 2000), new PourLines.Line(2, 1000, 800, 2000));
    assertThat(floors(lines).stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(24, within(1e-9));
    assertThat(lines.beyond()).isFalse();
  }

  @Test
  void a_strip_as_wide_as_a_pour_must_be_is_told_from_one_that_is_narrower() {
    assertThat(of(ROOM, new PourLines.Line(0, 1000, 800, 3499)).beyond()).isTrue();
    assertThat(of(ROOM, new PourLines.Line(0, 1000, 800, 3501)).beyond()).isFalse();
  }

  @Test
  void two_doors_of_one_wall_that_open_into_different_arms_cut_off_an_arm_each() {
    // A tongue of wall between them reaches farther into the room than either line.
    List<Point> arms =
        List.of(
            new Point(0, 0),
            new Point(2000, 0),
            new Point(2000, 2500),
            new Point(3000, 2500),
            new Point(3000, 0),
            new Point(6000, 0),
            new Point(6000, 4000),
            new Point(0, 4000));
    PourLines lines =
        of(arms, new PourLines.Line(0, 500, 800, 1000), new PourLines.Line(4, 500, 800, 1000));
    assertThat(floors(lines).get(0)).isCloseTo(2, within(1e-9));
    assertThat(floors(lines).get(1)).isCloseTo(3, within(1e-9));
  }

  @Test
  void two_hundred_doors_of_a_hall_never_take_more_than_its_floor() {
    List<Point> hall =
        List.of(new Point(0, 0), new Point(60000, 0), new Point(60000, 9000), new Point(0, 9000));
    PourLines lines =
        of(
            hall,
            IntStream.range(0, 200)
                .mapToObj(
                    i -> new PourLines.Line(i % 2 * 2, 300 * (i / 2) * 1.9, 500, 1500 + i % 7 * 10))
                .toArray(PourLines.Line[]::new));
    assertThat(floors(lines).stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(60 * (1.56 + 1.56), within(1e-6));
  }
}
