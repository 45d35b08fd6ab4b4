package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/**
 * Where screws go, worked out by hand: at most 300 mm apart, 15 mm in from the edge, 51 mm from
 * corners along the board's length, nowhere less than 10 mm from an edge.
 */
class ScrewsTest {
  private static final BoardTask.Fixing SCREWS = new BoardTask.Fixing(300, 15, 10, 51, false);
  private static final BoardTask.Fixing WASHERS = new BoardTask.Fixing(300, 15, 10, 51, true);

  /** The room begins at 90, 190: a board of 1200 by 800 lies in its corner with a gap of 10. */
  private static final Polygon ROOM = Rooms.of(90, 190, 4000, 190, 4000, 3000, 90, 3000);

  private static BoardTask task(BoardTask.Fixing fixing, Optional<BoardTask.Deck> deck) {
    return new BoardTask(
        ROOM, ROOM, List.of(), 1200, 800, 3, 10, deck, 50, 300, 200, 0.34, fixing, 3, 5000);
  }

  private static BoardPlan.Piece piece(double x1, double y1, double x2, double y2) {
    TileSetOut.Ring ring = new TileSetOut.Ring(new double[] {x1, y1, x2, y1, x2, y2, x1, y2});
    return new BoardPlan.Piece(1, "A", List.of(ring), x1, y1, x2, y2, false);
  }

  private static List<String> places(List<double[]> screws) {
    return screws.stream().map(s -> Math.round(s[0] * 10) + "/" + Math.round(s[1] * 10)).toList();
  }

  /** Every one of the first with every one of the second, in tenths of a millimetre. */
  private static List<String> grid(double[] xs, double[] ys) {
    List<double[]> all = new ArrayList<>();
    for (double x : xs) {
      for (double y : ys) {
        all.add(new double[] {x, y});
      }
    }
    return places(all);
  }

  @Test
  void a_board_on_a_deck_that_is_not_known_has_even_rows_and_no_screw_in_a_corner() {
    // 1170 in four parts of 292.5; 770 in three of 256.67.
    List<BoardPlan.Piece> board = List.of(piece(100, 200, 1300, 1000));
    double[] ys = {215, 471.667, 728.333, 985};
    List<String> expected =
        new ArrayList<>(grid(new double[] {115, 1285}, new double[] {ys[1], ys[2]}));
    expected.addAll(grid(new double[] {407.5, 700, 992.5}, ys));
    expected.addAll(grid(new double[] {151, 1249}, new double[] {ys[0], ys[3]}));
    assertThat(places(new Screws(task(SCREWS, Optional.empty()), true).of(board)))
        .containsExactlyInAnyOrderElementsOf(expected);
    // Of a deck of sheets nothing more is asked.
    BoardTask.Deck sheets = new BoardTask.Deck(true, 60, 600, 600, false);
    assertThat(places(new Screws(task(SCREWS, Optional.of(sheets)), true).of(board)))
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void where_the_length_runs_along_y_the_corners_are_passed_along_y() {
    List<BoardPlan.Piece> board = List.of(piece(100, 200, 1300, 1000));
    double[] xs = {115, 407.5, 700, 992.5, 1285};
    List<String> expected = new ArrayList<>(grid(xs, new double[] {471.667, 728.333}));
    expected.addAll(grid(new double[] {407.5, 700, 992.5}, new double[] {215, 985}));
    expected.addAll(grid(new double[] {115, 1285}, new double[] {251, 949}));
    assertThat(places(new Screws(task(SCREWS, Optional.empty()), false).of(board)))
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void twice_the_spacing_is_two_parts_and_not_three() {
    List<double[]> screws =
        new Screws(task(SCREWS, Optional.empty()), true).of(List.of(piece(100, 200, 730, 530)));
    assertThat(places(screws))
        .containsExactlyInAnyOrderElementsOf(
            grid(new double[] {151, 415, 679}, new double[] {215, 515}));
  }

  @Test
  void every_floorboard_has_a_line_of_screws_left_in_its_middle_and_right_by_turns() {
    // Floorboards of 150 mm, one each 158 mm. The middles of the first lie at 140, 298, 456 and so
    // on; those at 140 and at 1246 are held by the outer rows at 115 and 1285, 50 mm away or less.
    double[] middles = {298, 456, 614, 772, 930, 1088};
    double[] ys = {215, 471.667, 728.333, 985};
    double[] off = {-37.5, 0, 37.5, -37.5};
    List<double[]> expected = new ArrayList<>();
    for (double middle : middles) {
      for (int k = 0; k < 4; k++) {
        expected.add(new double[] {middle + off[k], ys[k]});
      }
    }
    for (double x : new double[] {115, 1285}) {
      expected.add(new double[] {x, ys[1]});
      expected.add(new double[] {x, ys[2]});
      expected.add(new double[] {x == 115 ? 151 : 1249, ys[0]});
      expected.add(new double[] {x == 115 ? 151 : 1249, ys[3]});
    }
    BoardTask.Deck upright = new BoardTask.Deck(false, 129, 150, 158, true);
    assertThat(
            places(
                new Screws(task(SCREWS, Optional.of(upright)), true)
                    .of(List.of(piece(100, 200, 1300, 1000)))))
        .containsExactlyInAnyOrderElementsOf(places(expected));
    // The same turned by a quarter; the room begins 100 mm further up than along.
    BoardTask.Deck level = new BoardTask.Deck(true, 129, 150, 158, true);
    assertThat(
            places(
                new Screws(task(SCREWS, Optional.of(level)), false)
                    .of(List.of(piece(200, 200, 1000, 1400)))))
        .containsExactlyInAnyOrderElementsOf(
            places(expected.stream().map(s -> new double[] {s[1], s[0] + 100}).toList()));
  }

  @Test
  void a_screw_keeps_ten_millimetres_from_a_notch() {
    // The columns stand at 407.5: a notch at 417.5 leaves just enough, one at 416.5 too little.
    assertThat(upperScrewsAt(417.5)).isEqualTo(2);
    assertThat(upperScrewsAt(416.5)).isZero();
  }

  /** How many screws stand at 407.5 beside a notch that takes all to the right of a place. */
  private static long upperScrewsAt(double notch) {
    TileSetOut.Ring ring =
        new TileSetOut.Ring(
            new double[] {100, 200, 1300, 200, 1300, 600, notch, 600, notch, 1000, 100, 1000});
    BoardPlan.Piece piece = new BoardPlan.Piece(1, "A", List.of(ring), 100, 200, 1300, 1000, true);
    List<double[]> screws = new Screws(task(SCREWS, Optional.empty()), true).of(List.of(piece));
    assertThat(screws).noneMatch(s -> s[0] > notch && s[1] > 600);
    return screws.stream().filter(s -> s[0] == 407.5 && s[1] > 600).count();
  }

  @Test
  void a_piece_narrower_than_both_outer_rows_has_one_in_its_middle() {
    List<double[]> screws =
        new Screws(task(SCREWS, Optional.empty()), true).of(List.of(piece(100, 200, 730, 222)));
    assertThat(screws).hasSize(3).allSatisfy(s -> assertThat(s[1]).isCloseTo(211, within(1e-9)));
  }

  @Test
  void a_washer_on_a_joint_holds_both_boards_and_is_not_set_twice() {
    List<BoardPlan.Piece> two = List.of(piece(100, 200, 500, 800), piece(503, 200, 903, 800));
    // Three columns of three on each; the middle of the joint between them is held once.
    List<double[]> washers = new Screws(task(WASHERS, Optional.empty()), true).of(two);
    List<String> expected =
        new ArrayList<>(grid(new double[] {151, 300, 449, 554, 703, 852}, new double[] {200, 800}));
    expected.addAll(grid(new double[] {100, 300, 500, 703, 903}, new double[] {500}));
    assertThat(places(washers)).containsExactlyInAnyOrderElementsOf(expected);
    // Screws within the boards are set in both: 33 mm apart on either side of the joint.
    assertThat(new Screws(task(SCREWS, Optional.empty()), true).of(two)).hasSize(18);
  }
}
