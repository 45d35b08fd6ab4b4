package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import underfoot.plan.setout.TileSetOut.Reach;
import underfoot.plan.setout.TileSetOut.Size;
import underfoot.plan.setout.TileSetOut.Strip;
import underfoot.plan.setout.TileSetOut.WallCuts;

/** The tiles of one start laid by hand. */
class TilePiecesTest {
  /** An L away from the origin, with a column. */
  private static final Polygon L =
      Rooms.with(
          Rooms.of(500, 700, 4500, 700, 4500, 2700, 2500, 2700, 2500, 3700, 500, 3700),
          1500,
          1500,
          1700,
          1500,
          1700,
          1700,
          1500,
          1700);

  private static TileSetOut lay(
      Polygon room,
      Pattern pattern,
      Movement movement,
      double ox,
      double oy,
      double base,
      Coordinate anchor) {
    TileTask task =
        Rooms.task(
            room,
            List.of(),
            pattern.kind(),
            pattern.length(),
            pattern.width(),
            pattern.joint(),
            10);
    List<Polygon> strips = movement.cut(pattern, room.getEnvelopeInternal(), 0);
    Field field = Field.of(room, 10, 0, List.of(), strips);
    return new TilePieces(task, field, pattern, movement, ox, oy)
        .setOut(base, anchor, List.of(), 1, true);
  }

  private static List<WallCuts> walls(double height) {
    // Tiles of 300 by 200 without joints, each row half a tile on, the one from 60 up beginning at
    // 110 along: at the left wall by turns 100 and 250 are left of a tile.
    return lay(
            Rooms.of(0, 0, 1000, 0, 1000, height, 0, height),
            Pattern.of(Pattern.Kind.HALF_OFFSET, 300, 200, 0),
            Movement.NONE,
            110,
            60,
            0,
            new Coordinate(500, 300))
        .walls();
  }

  @Test
  void along_each_wall_the_widths_of_its_cuts_are_told_the_most_frequent_first() {
    List<WallCuts> walls = walls(700);
    assertThat(walls.stream().map(WallCuts::wall)).containsExactly(0, 1, 2, 3);
    // Rows from -140, 60, 260, 460 and 660: 250, 100, 250, 100, 250.
    assertThat(walls.get(3).sizes()).containsExactly(new Size(250, 3), new Size(100, 2));
    assertThat(walls.get(3).least()).isCloseTo(100, within(1e-9));
    assertThat(walls.get(3).most()).isCloseTo(250, within(1e-9));
    // At the right: from 710 and from 860 to 990.
    assertThat(walls.get(1).sizes()).containsExactly(new Size(130, 3), new Size(280, 2));
    // Below 50 of each tile is left, above 30; four tiles in each row.
    assertThat(walls.get(0).sizes()).containsExactly(new Size(50, 4));
    assertThat(walls.get(2).sizes()).containsExactly(new Size(30, 4));
    // A row fewer: two of each, so the wider come first.
    assertThat(walls(650).get(3).sizes()).containsExactly(new Size(250, 2), new Size(100, 2));
  }

  @Test
  void along_a_wall_that_a_joint_meets_nothing_is_cut_and_a_column_is_no_wall() {
    Pattern grid = Pattern.of(Pattern.Kind.GRID, 100, 100, 0);
    TileSetOut out = lay(L, grid, Movement.NONE, 510, 710, 0, new Coordinate(1000, 1000));
    assertThat(out.walls().stream().map(WallCuts::wall)).containsExactly(0, 1, 2, 3, 4, 5);
    for (int wall : new int[] {0, 5}) {
      assertThat(out.walls().get(wall).sizes()).isEmpty();
      assertThat(out.walls().get(wall).least()).isNaN();
      assertThat(out.walls().get(wall).most()).isNaN();
    }
    // To the right wall, from 4410 to 4490 in 20 rows, the last of them cut too.
    assertThat(out.walls().get(1).sizes()).containsExactly(new Size(80, 20));
  }

  @Test
  void movement_joints_are_told_by_their_middles_from_wall_to_wall() {
    Polygon room = Rooms.of(0, 0, 3000, 0, 3000, 2000, 0, 2000);
    Movement movement = new Movement(new double[] {600, 1200}, new double[] {700}, 8);
    Pattern grid = Pattern.of(Pattern.Kind.GRID, 600, 300, 3);
    // Joints along begin at 600 and 1203 and are widened to 8: 600 to 608, and 5 further on 1208 to
    // 1216. Up one begins at 603 or 906: of 700 less a half, 696, the first is nearer.
    assertThat(lay(room, grid, movement, 0, 0, 0, new Coordinate(500, 500)).movement())
        .containsExactly(
            new Strip(604, 0, 604, 2000, 8),
            new Strip(1212, 0, 1212, 2000, 8),
            new Strip(0, 607, 3000, 607, 8));
    // In herringbone they lie where they are wanted.
    Pattern herringbone = Pattern.of(Pattern.Kind.HERRINGBONE, 600, 300, 3);
    assertThat(lay(room, herringbone, movement, 0, 0, 0, new Coordinate(500, 500)).movement())
        .containsExactly(
            new Strip(600, 0, 600, 2000, 8),
            new Strip(1200, 0, 1200, 2000, 8),
            new Strip(0, 700, 3000, 700, 8));
    assertThat(lay(room, grid, Movement.NONE, 0, 0, 0, new Coordinate(500, 500)).movement())
        .isEmpty();
  }

  private static TileSetOut.Start start(double x, double y, double base) {
    Pattern grid = Pattern.of(Pattern.Kind.GRID, 100, 100, 0);
    return lay(L, grid, Movement.NONE, x, y, base, new Coordinate(x + 1, y + 1)).start();
  }

  private static void reaches(TileSetOut.Start start, Reach... expected) {
    assertThat(start.reaches()).hasSize(expected.length);
    for (Reach one : expected) {
      assertThat(start.reaches())
          .anySatisfy(
              reach -> {
                assertThat(reach.wall()).isEqualTo(one.wall());
                assertThat(reach.x()).isCloseTo(one.x(), within(1e-6));
                assertThat(reach.y()).isCloseTo(one.y(), within(1e-6));
                assertThat(reach.distance()).isCloseTo(one.distance(), within(1e-6));
              });
    }
  }

  @Test
  void the_start_is_measured_from_the_first_wall_met_in_each_of_four_directions() {
    TileSetOut.Start beside = start(1000, 1600, 0);
    assertThat(beside.x()).isEqualTo(1000);
    assertThat(beside.y()).isEqualTo(1600);
    // The column is in the way to the right.
    reaches(
        beside,
        new Reach(-1, 1500, 1600, 500),
        new Reach(4, 1000, 3700, 2100),
        new Reach(5, 500, 1600, 500),
        new Reach(0, 1000, 700, 900));
    reaches(
        start(3000, 1000, 0),
        new Reach(1, 4500, 1000, 1500),
        new Reach(2, 3000, 2700, 1700),
        new Reach(5, 500, 1000, 2500),
        new Reach(0, 3000, 700, 300));
    // Lines aslant: up to the left past the inner corner into the other leg.
    double root = Math.sqrt(2);
    reaches(
        start(3000, 1700, Math.PI / 4),
        new Reach(2, 4000, 2700, 1000 * root),
        new Reach(4, 1000, 3700, 2000 * root),
        new Reach(0, 2000, 700, 1000 * root),
        new Reach(0, 4000, 700, 1000 * root));
  }

  @Test
  void the_first_tile_is_the_nearest_whole_one() {
    Pattern grid = Pattern.of(Pattern.Kind.GRID, 100, 100, 0);
    // In the lower right corner the tiles from 4400 on are cut by the gap at the right wall.
    TileSetOut.Start start =
        lay(L, grid, Movement.NONE, 1000, 1600, 0, new Coordinate(4495, 805)).start();
    assertThat(start.x()).isEqualTo(4300);
    assertThat(start.y()).isEqualTo(800);
    assertThat(start.first().xy()).containsExactly(4300, 800, 4400, 800, 4400, 900, 4300, 900);
  }
}
