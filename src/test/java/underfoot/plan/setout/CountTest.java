package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What starts come to, counted by hand on tiles of 100 by 100 without joints. */
class CountTest {
  private static final Pattern GRID = Pattern.of(Pattern.Kind.GRID, 100, 100, 0);

  /** As usual, but the saw takes nothing away. */
  private static final Weights NO_KERF = new Weights(1, 1, 3, 6, 20, 6, 10, 0.5, 0.25, 50, 0);

  private static Tally tally(
      Polygon room, Weights weights, double ox, double oy, Field.Opening... doors) {
    Field field = Field.of(room, 0, 0, List.of(doors));
    return new Count(field, GRID, weights, Movement.NONE).at(ox, oy);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "30, 0", "0, 30", "30, 30"})
  void the_piece_in_a_corner_is_cut_from_an_offcut_of_the_upright_wall(double ox, double oy) {
    // Two whole tiles by one, a column 30 wide and a row 30 high, which meet in one of the corners:
    // two uprights from one tile (the piece in the corner is one of them), two levels from one.
    Tally tally = tally(Rooms.of(0, 0, 230, 0, 230, 130, 0, 130), Rooms.WEIGHTS, ox, oy);
    assertThat(tally.whole()).isEqualTo(2);
    assertThat(tally.cut()).isEqualTo(4);
    assertThat(tally.boxed()).isEqualTo(2);
    assertThat(tally.narrow()).isEqualTo(4);
    assertThat(tally.slivers()).isZero();
    assertThat(tally.least()).isCloseTo(30, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "-1, 1", "1, -1", "-1, -1"})
  void a_tile_round_the_corner_of_a_wall_is_a_tile_of_its_own(int byX, int byY) {
    // 300 by 300 less 170 by 170: one tile keeps an L, one is cut upright, one level. An upright
    // and
    // a level cut do not come from one tile.
    Polygon room = Rooms.of(0, 0, 300, 0, 300, 130, 130, 130, 130, 300, 0, 300);
    Polygon over = (Polygon) AffineTransformation.scaleInstance(byX, byY).transform(room);
    Tally tally = tally(over, Rooms.WEIGHTS, 0, 0);
    assertThat(tally.whole()).isEqualTo(5);
    assertThat(tally.cut()).isEqualTo(3);
    assertThat(tally.boxed()).isEqualTo(3);
    assertThat(tally.least()).isCloseTo(30, within(1e-9));
  }

  @Test
  void two_pieces_come_from_one_tile_if_the_saw_leaves_them() {
    // 48.5 and 48.5 and 3 for the saw are a tile; a tenth more on either is not.
    assertThat(tally(Rooms.of(0, 0, 197, 0, 197, 100, 0, 100), Rooms.WEIGHTS, 48.5, 0).boxed())
        .isEqualTo(1);
    assertThat(tally(Rooms.of(0, 0, 197.2, 0, 197.2, 100, 0, 100), Rooms.WEIGHTS, 48.6, 0).boxed())
        .isEqualTo(2);
  }

  @Test
  void wide_pieces_are_paired_with_narrow_ones() {
    // At the right 60, 30, 20 and 70 of a tile: 70 with 20 and 60 with 30.
    Polygon room =
        Rooms.of(
            0, 0, 160, 0, 160, 100, 130, 100, 130, 200, 120, 200, 120, 300, 170, 300, 170, 400, 0,
            400);
    Tally tally = tally(room, Rooms.WEIGHTS, 0, 0);
    assertThat(tally.whole()).isEqualTo(4);
    assertThat(tally.cut()).isEqualTo(4);
    assertThat(tally.boxed()).isEqualTo(2);
    assertThat(tally.slivers()).isEqualTo(1);
    assertThat(tally.narrow()).isEqualTo(1);
    assertThat(tally.least()).isCloseTo(20, within(1e-9));
  }

  @Test
  void a_wall_and_the_doorway_in_it_are_one_cut() {
    Polygon room = Rooms.of(0, 0, 130, 0, 130, 200, 0, 200);
    // The doorway goes from the middle of one tile to the middle of the next.
    Tally tally = tally(room, Rooms.WEIGHTS, 0, 0, Rooms.door(room, 1, 50, 100));
    assertThat(tally.whole()).isEqualTo(2);
    assertThat(tally.cut()).isEqualTo(2);
    assertThat(tally.boxed()).isEqualTo(1);
    assertThat(tally.narrow()).isEqualTo(2);
    assertThat(tally.narrowAtDoor()).isEqualTo(2);
    assertThat(tally(room, Rooms.WEIGHTS, 0, 0).narrowAtDoor()).isZero();
    // A doorway in the lower half alone: only one of the pieces lies in it.
    assertThat(tally(room, Rooms.WEIGHTS, 0, 0, Rooms.door(room, 1, 0, 100)).narrowAtDoor())
        .isEqualTo(1);
    // Cuts of 60 in a doorway are not narrow.
    Polygon wider = Rooms.of(0, 0, 160, 0, 160, 200, 0, 200);
    assertThat(tally(wider, Rooms.WEIGHTS, 0, 0, Rooms.door(wider, 1, 50, 100)).narrowAtDoor())
        .isZero();
  }

  @ParameterizedTest
  @CsvSource({"60, 0, 0", "50, 0, 0", "40, 2, 0", "20, 0, 2"})
  void between_two_walls_a_tile_is_as_narrow_as_they_leave_it(
      double width, int narrow, int slivers) {
    // From -20: 80 of each tile at the left wall, and the right wall takes from that.
    Tally tally = tally(Rooms.of(0, 0, width, 0, width, 200, 0, 200), Rooms.WEIGHTS, -20, 0);
    assertThat(tally.whole()).isZero();
    assertThat(tally.cut()).isEqualTo(2);
    assertThat(tally.boxed()).isEqualTo(2);
    assertThat(tally.least()).isCloseTo(width, within(1e-9));
    assertThat(tally.narrow()).isEqualTo(narrow);
    assertThat(tally.slivers()).isEqualTo(slivers);
  }

  @Test
  void cuts_aslant_come_from_one_tile_only_at_one_angle() {
    // Each end halves a tile from corner to corner.
    Polygon leaning = Rooms.of(0, 0, 400, 0, 500, 100, 100, 100);
    assertThat(tally(leaning, NO_KERF, 0, 0).boxed()).isEqualTo(1);
    assertThat(tally(leaning, NO_KERF, 0, 0).whole()).isEqualTo(3);
    assertThat(tally(leaning, NO_KERF, 0, 0).least()).isCloseTo(100 / Math.sqrt(2), within(1e-9));
    assertThat(tally(leaning, Rooms.WEIGHTS, 0, 0).boxed()).isEqualTo(2);
    Polygon tapering = Rooms.of(0, 0, 500, 0, 400, 100, 100, 100);
    assertThat(tally(tapering, NO_KERF, 0, 0).boxed()).isEqualTo(2);
    assertThat(tally(tapering, NO_KERF, 0, 0).whole()).isEqualTo(3);
    Polygon other = Rooms.of(100, 0, 500, 0, 400, 100, 0, 100);
    assertThat(tally(other, NO_KERF, 0, 0).boxed()).isEqualTo(1);
  }

  @Test
  void a_row_that_many_walls_cross_is_counted_piece_by_piece() {
    // A comb: 13 tiles along the back, seven teeth of three.
    List<Double> xy = new ArrayList<>(List.of(0.0, 0.0, 1300.0, 0.0));
    for (int tooth = 6; tooth >= 0; tooth--) {
      double left = 200 * tooth;
      xy.addAll(List.of(left + 100, 400.0, left, 400.0));
      if (tooth > 0) {
        xy.addAll(List.of(left, 100.0, left - 100, 100.0));
      }
    }
    Tally tally =
        tally(
            Rooms.of(xy.stream().mapToDouble(Double::doubleValue).toArray()), Rooms.WEIGHTS, 0, 0);
    assertThat(tally.whole()).isEqualTo(13 + 21);
    assertThat(tally.cut()).isZero();
    assertThat(tally.boxed()).isZero();
    assertThat(tally.least()).isInfinite();
  }

  @Test
  void points_are_what_everything_counts_together() {
    // 13 tiles, 5 cuts, 2 narrow at 3, 1 at a door at 6, 4 slivers at 20.
    assertThat(new Tally(10, 5, 3, 2, 1, 4, 30).points(Rooms.WEIGHTS)).isEqualTo(110);
  }

  @ParameterizedTest
  @EnumSource(Pattern.Kind.class)
  void tiles_that_walls_cross_come_row_by_row(Pattern.Kind kind) {
    Field field = Field.of(Rooms.withChimneyBreast(), 5, 0, List.of());
    Pattern pattern = Pattern.of(kind, 300, 150, 3);
    List<Touched> touched = new Count(field, pattern, Rooms.WEIGHTS, Movement.NONE).touched(37, 41);
    for (int k = 1; k < touched.size(); k++) {
      Touched one = touched.get(k - 1);
      Touched next = touched.get(k);
      assertThat(
              one.j < next.j
                  || one.j == next.j && (one.i < next.i || one.i == next.i && one.tile < next.tile))
          .isTrue();
    }
  }

  /**
   * In rooms with square walls the boxes are counted once more from the shapes that are left of the
   * tiles: a rectangle as high as its tile, or in its corner, is cut upright; one as wide as its
   * tile is cut level; of the same sort are cuts that lie the same way in a tile.
   */
  @ParameterizedTest
  @EnumSource(
      value = Pattern.Kind.class,
      names = {"GRID", "HALF_OFFSET", "THIRD_OFFSET", "HERRINGBONE"})
  void boxes_are_those_that_the_pieces_left_of_tiles_can_be_cut_from(Pattern.Kind kind) {
    Random random = new Random(11 + kind.ordinal());
    for (int round = 0; round < 12; round++) {
      Field field = Field.of(Rooms.square(random), 5, 0, List.of());
      Pattern pattern = Pattern.of(kind, 400 + random.nextInt(200), 200 + random.nextInt(100), 3);
      double ox = random.nextDouble() * 500;
      double oy = random.nextDouble() * 500;
      Count count = new Count(field, pattern, Rooms.WEIGHTS, Movement.NONE);
      int boxes = 0;
      Map<String, List<Double>> straight = new TreeMap<>();
      Map<String, Double> whole = new TreeMap<>();
      for (Touched one : count.touched(ox, oy)) {
        Pattern.Tile tile = pattern.tiles().get(one.tile);
        double x = ox + tile.x() + one.i * pattern.along()[0] + one.j * pattern.up()[0];
        double y = oy + tile.y() + one.i * pattern.along()[1] + one.j * pattern.up()[1];
        Envelope all = new Envelope(x, x + tile.w(), y, y + tile.h());
        Geometry left = Field.SHAPES.toGeometry(all).intersection(field.shape());
        Envelope box = left.getEnvelopeInternal();
        boolean rectangle = Math.abs(box.getArea() - left.getArea()) < 1e-3;
        boolean sideX = same(box.getMinX(), all.getMinX()) != same(box.getMaxX(), all.getMaxX());
        boolean sideY = same(box.getMinY(), all.getMinY()) != same(box.getMaxY(), all.getMaxY());
        boolean fullX = same(box.getWidth(), all.getWidth());
        boolean fullY = same(box.getHeight(), all.getHeight());
        if (rectangle && sideX && (fullY || sideY)) {
          String sort = tile.w() > tile.h() ? "across the length" : "across the width";
          straight.computeIfAbsent(sort, s -> new ArrayList<>()).add(box.getWidth());
          whole.put(sort, tile.w());
        } else if (rectangle && sideY && fullX) {
          String sort = tile.h() > tile.w() ? "across the length" : "across the width";
          straight.computeIfAbsent(sort, s -> new ArrayList<>()).add(box.getHeight());
          whole.put(sort, tile.h());
        } else {
          boxes++;
        }
      }
      for (Map.Entry<String, List<Double>> sort : straight.entrySet()) {
        boxes += boxes(sort.getValue(), whole.get(sort.getKey()) - Rooms.WEIGHTS.kerf());
      }
      assertThat(count.at(ox, oy).boxed()).as("%s, round %d", kind, round).isEqualTo(boxes);
    }
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) < 1e-6;
  }

  /** The widest again and again with the widest that goes with it. */
  private static int boxes(List<Double> widths, double together) {
    List<Double> left = new ArrayList<>(widths);
    left.sort(null);
    int boxes = 0;
    while (!left.isEmpty()) {
      double widest = left.remove(left.size() - 1);
      boxes++;
      for (int k = left.size() - 1; k >= 0; k--) {
        if (widest + left.get(k) <= together + 1e-6) {
          left.remove(k);
          break;
        }
      }
    }
    return boxes;
  }
}
