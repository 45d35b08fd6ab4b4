package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/**
 * Places where it is worth beginning, worked out by hand: tiles of 100 by 80 with joints of 2, so
 * that along x all comes again after 102 and along y after 82. Cuts are slivers below a quarter and
 * narrow below half, and the saw takes 3.
 */
class PlacesTest {
  private static final Weights WEIGHTS = new Weights(1, 1, 3, 6, 20, 6, 10, 0.5, 0.25, 50, 3);
  private static final Polygon ROOM = Rooms.of(0, 0, 530, 0, 530, 440, 0, 440);

  /**
   * Along x. A tile begins, or ends, at a wall: 0 and 530 less 510, and both less 100. The cut at
   * the left wall is 25 or 50 wide: 27 and 52; at the right wall 505 and 480 less 408. Two cuts at
   * the left wall make one tile, each 48.5 wide: 50.5, and since they may also lie half a repeat
   * apart 101.5; at the right wall 481.5 less 459, and 51 on.
   */
  private static final double[] ALONG_X = {0, 2, 20, 22, 27, 52, 97, 72, 50.5, 101.5, 22.5, 73.5};

  private static TreeSet<Double> alongX(
      Polygon room, Pattern.Kind kind, Movement movement, Double... centred) {
    return Places.alongX(
        Field.of(room, 0, 0, List.of()),
        Pattern.of(kind, 100, 80, 2),
        WEIGHTS,
        movement,
        List.of(centred));
  }

  private static TreeSet<Double> alongY(Polygon room, Movement movement, Double... centred) {
    return Places.alongY(
        Field.of(room, 0, 0, List.of()),
        Pattern.of(Pattern.Kind.GRID, 100, 80, 2),
        WEIGHTS,
        movement,
        List.of(centred));
  }

  private static TreeSet<Double> set(double[] some, double... more) {
    TreeSet<Double> all = new TreeSet<>();
    DoubleStream.concat(DoubleStream.of(some), DoubleStream.of(more)).forEach(all::add);
    return all;
  }

  @Test
  void in_a_room_of_four_walls_they_are_where_cuts_begin_reach_a_limit_or_fit_together() {
    assertThat(alongX(ROOM, Pattern.Kind.GRID, Movement.NONE)).isEqualTo(set(ALONG_X));
    assertThat(alongY(ROOM, Movement.NONE))
        .isEqualTo(set(new double[] {0, 2, 30, 32, 22, 42, 10, 72, 40.5, 81.5, 32.5, 73.5}));
  }

  @Test
  void where_tiles_are_centred_is_one_of_them() {
    // 215 less two repeats; 600 less seven.
    assertThat(alongX(ROOM, Pattern.Kind.GRID, Movement.NONE, 215.0)).isEqualTo(set(ALONG_X, 11));
    assertThat(alongY(ROOM, Movement.NONE, 600.0)).contains(26.0).hasSize(13);
  }

  @Test
  void where_every_second_row_is_half_a_tile_on_they_come_again_after_half_a_repeat() {
    assertThat(alongX(ROOM, Pattern.Kind.HALF_OFFSET, Movement.NONE, 215.0))
        .isEqualTo(
            set(
                new double[] {
                  0, 51, 2, 53, 20, 71, 22, 73, 27, 78, 1, 52, 46, 97, 21, 72, 25, 50.5, 76, 101.5,
                  22.5, 48, 73.5, 99
                },
                11,
                62));
  }

  @Test
  void cuts_at_two_walls_that_face_the_same_way_fit_together_too() {
    Polygon room = Rooms.of(0, 0, 530, 0, 530, 200, 300, 200, 300, 440, 0, 440);
    // The wall at 300 for itself, and with the one at 530: 366.5 less 357, and 51 on.
    assertThat(alongX(room, Pattern.Kind.GRID, Movement.NONE))
        .isEqualTo(set(ALONG_X, 96, 98, 71, 46, 47.5, 98.5, 9.5, 60.5));
  }

  @Test
  void of_a_wall_that_runs_aslant_only_its_ends_count() {
    Polygon room = Rooms.of(0, 0, 530, 0, 0, 440);
    assertThat(alongX(room, Pattern.Kind.GRID, Movement.NONE))
        .isEqualTo(set(new double[] {0, 2, 20, 22, 27, 52, 50.5, 101.5}));
    assertThat(alongY(room, Movement.NONE))
        .isEqualTo(set(new double[] {0, 2, 30, 32, 22, 42, 40.5, 81.5}));
  }

  @Test
  void behind_each_movement_joint_they_lie_further_on_by_what_it_is_wider() {
    // Joints of 6 are 4 wider than those between tiles.
    Movement one = new Movement(new double[] {260}, new double[0], 6);
    assertThat(alongX(ROOM, Pattern.Kind.GRID, one))
        .isEqualTo(set(ALONG_X, 98, 100, 16, 18, 23, 48, 93, 68));
    Movement both = new Movement(new double[] {260}, new double[] {200}, 6);
    assertThat(alongX(ROOM, Pattern.Kind.GRID, both))
        .isEqualTo(set(ALONG_X, 98, 100, 16, 18, 23, 48, 93, 68, 94, 96, 12, 14, 19, 44, 89, 64));
    // No wider than those between tiles.
    Movement thin = new Movement(new double[] {260}, new double[0], 2);
    assertThat(alongX(ROOM, Pattern.Kind.GRID, thin)).isEqualTo(set(ALONG_X));
  }

  @Test
  void places_that_differ_by_less_than_can_be_told_are_one() {
    assertThat(alongX(ROOM, Pattern.Kind.GRID, Movement.NONE, 11.0, 11.0000002, 10.9999998))
        .isEqualTo(set(ALONG_X, 11));
    assertThat(alongX(ROOM, Pattern.Kind.GRID, Movement.NONE, 11.0, 11.0000004, 10.9999996))
        .isEqualTo(set(ALONG_X, 11, 11.0000004, 10.9999996));
    // A hair before the end of a repeat is its beginning.
    assertThat(alongX(ROOM, Pattern.Kind.GRID, Movement.NONE, -3e-7)).isEqualTo(set(ALONG_X));
  }

  @Test
  void of_too_many_some_from_all_over_are_taken() {
    TreeSet<Double> ten = set(new double[] {0, 1, 2, 3, 4, 5, 6, 7, 8, 9});
    assertThat(Places.thinned(ten, 0.5)).containsExactly(0.0, 2.0, 4.0, 6.0, 8.0);
    assertThat(Places.thinned(ten, 0.39)).containsExactly(0.0, 3.0, 6.0);
    assertThat(Places.thinned(ten, 0.01)).containsExactly(0.0, 5.0);
    assertThat(Places.thinned(ten, 1.7)).containsExactlyElementsOf(ten);
    assertThat(Places.evenly(10, 4)).containsExactly(0.0, 2.5, 5.0, 7.5);
  }
}
