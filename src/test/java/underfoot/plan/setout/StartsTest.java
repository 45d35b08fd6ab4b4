package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.StartedFrom;

/**
 * The ways of starting of one room of 3 by 2 m, counted by hand: tiles of 300, no joints, no gap.
 */
class StartsTest {
  private static final Polygon ROOM = Rooms.of(0, 0, 3000, 0, 3000, 2000, 0, 2000);

  private static TileSetOut set(Polygon room, Field.Opening... doors) {
    return set(room, Pattern.Kind.GRID, doors);
  }

  private static TileSetOut set(Polygon room, Pattern.Kind kind, Field.Opening... doors) {
    return TileLayout.of(Rooms.task(room, List.of(doors), kind, 300, 300, 0, 0)).orElseThrow();
  }

  private static Option option(TileSetOut out, StartedFrom way, String door) {
    return out.options().stream()
        .filter(one -> one.way() == way && one.door().equals(door))
        .findFirst()
        .orElseThrow();
  }

  /** Turned by quarters about a place, so that the door lies in each wall once. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void the_ways_of_starting_at_a_doorway_in_any_wall(int quarters) {
    AffineTransformation turn =
        AffineTransformation.rotationInstance(quarters * Math.PI / 2, 700, 400);
    Polygon room = (Polygon) turn.transform(ROOM);
    // Its middle is 1450 along the wall.
    TileSetOut out = set(room, Rooms.door(room, 0, 1000, 900));
    // A whole row at the door, a tile centred on it: 100, nine whole and 200 across, six whole and
    // 200 up. Of the uprights 200 go with no 100 (the saw takes 3), but two of 100 do: 7 and 4; the
    // levels of 200 are 9. 54 + 20 tiles, 23 cuts, 7 of them narrow at 3.
    assertThat(option(out, StartedFrom.DOOR_WHOLE, "door 0"))
        .isEqualTo(
            new Option(StartedFrom.DOOR_WHOLE, "door 0", false, 54, 23, 20, 7, 0, 0, 100, 0, 118));
    // Equal cuts of 250 before and behind: 45 whole, 32 cuts, 7 narrow, and 11 + 18 tiles for the
    // cuts; where the room is turned on its side the four pieces in corners go with the 22 of 250,
    // and 5 of 100 and 5 of 200 are left: 8 + 22.
    int boxed = quarters % 2 == 0 ? 29 : 30;
    assertThat(option(out, StartedFrom.DOOR_EVEN, "door 0"))
        .isEqualTo(
            new Option(
                StartedFrom.DOOR_EVEN,
                "door 0",
                false,
                45,
                32,
                boxed,
                7,
                0,
                0,
                100,
                0,
                98 + boxed));
    // A joint in the middle of the room: ten whole across, 250 and five whole and 250 up. Only one
    // direction is centred on the door: 50 + 20 tiles, 20 cuts and 6 for the other.
    assertThat(option(out, StartedFrom.ROOM, ""))
        .isEqualTo(new Option(StartedFrom.ROOM, "", false, 50, 20, 20, 0, 0, 0, 250, 1, 96));
    // Whole tiles from the corner, the row at the door whole: 60 + 10 tiles, 10 cuts and 6.
    assertThat(out.chosen())
        .isEqualTo(new Option(StartedFrom.FOUND, "", false, 60, 10, 10, 0, 0, 0, 200, 1, 86));
    assertThat(out.options().stream().map(Option::way))
        .containsExactly(
            StartedFrom.FOUND, StartedFrom.ROOM, StartedFrom.DOOR_WHOLE, StartedFrom.DOOR_EVEN);
    assertThat(out.every()).isTrue();
    assertThat(Math.abs(out.direction())).isLessThan(1e-9);
    // The first tile goes by the place 600 straight in from the middle of the door: (1450, 600) as
    // the room lay first. The corners of the grid nearest to it are (1500, 600).
    Coordinate first = turn.transform(new Coordinate(1500, 600), new Coordinate());
    assertThat(out.start().x()).isCloseTo(first.x, within(1e-5));
    assertThat(out.start().y()).isCloseTo(first.y, within(1e-5));
  }

  @Test
  void without_a_doorway_the_room_is_the_middle() {
    TileSetOut out = set(ROOM);
    assertThat(option(out, StartedFrom.ROOM, "").offCentre()).isZero();
    assertThat(option(out, StartedFrom.ROOM, "").points()).isEqualTo(90);
    // From the corner one direction is off the middle: 60 + 10 + 10 + 6.
    assertThat(out.chosen().points()).isEqualTo(86);
    assertThat(out.options().stream().map(Option::way))
        .containsExactly(StartedFrom.FOUND, StartedFrom.ROOM);
  }

  @Test
  void the_doorway_with_the_longest_view_is_the_one_to_centre_on() {
    // Across the room from the right it is 3 m, up from below 2 m.
    Field.Opening below = Rooms.door(ROOM, 0, 1000, 900);
    Field.Opening right = Rooms.door(ROOM, 1, 300, 700);
    for (List<Field.Opening> doors : List.of(List.of(below, right), List.of(right, below))) {
      TileSetOut out = set(ROOM, doors.get(0), doors.get(1));
      assertThat(option(out, StartedFrom.DOOR_WHOLE, "door 1").offCentre()).isZero();
      assertThat(option(out, StartedFrom.DOOR_EVEN, "door 1").offCentre()).isZero();
      assertThat(option(out, StartedFrom.DOOR_WHOLE, "door 0").offCentre()).isPositive();
    }
  }

  @Test
  void a_view_ends_at_the_first_wall_that_it_meets() {
    // Doors opposite each other see 2 m each. A column before one of them leaves it 900 or less, so
    // the other is the one to centre on.
    for (double[] column :
        new double[][] {
          {1400, 900, 0},
          {2400, 1000, 0},
          {1400, 900, 5000},
          {2400, 1000, 5000},
          {1400, 900, -5000},
          {2400, 1000, -5000}
        }) {
      double x = column[0];
      double y = column[1];
      Polygon room =
          (Polygon)
              AffineTransformation.translationInstance(column[2], column[2])
                  .transform(Rooms.with(ROOM, x, y, x + 100, y, x + 100, y + 100, x, y + 100));
      Field.Opening below = Rooms.door(room, 0, 1000, 900);
      Field.Opening above = Rooms.door(room, 2, 100, 900);
      boolean beforeBelow = x < 2000;
      for (List<Field.Opening> doors : List.of(List.of(below, above), List.of(above, below))) {
        TileSetOut out = set(room, doors.get(0), doors.get(1));
        String main = beforeBelow ? "door 2" : "door 0";
        String other = beforeBelow ? "door 0" : "door 2";
        assertThat(option(out, StartedFrom.DOOR_WHOLE, main).offCentre()).isZero();
        assertThat(option(out, StartedFrom.DOOR_WHOLE, other).offCentre()).isPositive();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void the_row_at_the_door_is_whole_with_joints_too(int quarters) {
    // Ten of 300 with joints of 3 across, a tile centred on the door at 1362; up six and 182.
    Polygon room =
        (Polygon)
            AffineTransformation.rotationInstance(quarters * Math.PI / 2, 700, 400)
                .transform(Rooms.of(0, 0, 3027, 0, 3027, 2000, 0, 2000));
    List<Field.Opening> doors = List.of(Rooms.door(room, 0, 962, 800));
    TileSetOut out =
        TileLayout.of(Rooms.task(room, doors, Pattern.Kind.GRID, 300, 300, 3, 0)).orElseThrow();
    Option whole = option(out, StartedFrom.DOOR_WHOLE, "door 0");
    assertThat(whole.whole()).isEqualTo(60);
    assertThat(whole.cut()).isEqualTo(10);
    assertThat(whole.least()).isCloseTo(182, within(1e-6));
    assertThat(whole.offCentre()).isZero();
    assertThat(whole.points()).isCloseTo(80, within(1e-9));
    assertThat(out.tiles()).isEqualTo(70);
  }

  @Test
  void bays_are_no_larger_than_asked() {
    // 81 m2 in bays of at most 45 m2: two, with one joint between them.
    TileTask plain =
        Rooms.task(
            Rooms.of(0, 0, 9000, 0, 9000, 9000, 0, 9000),
            List.of(),
            Pattern.Kind.GRID,
            600,
            600,
            3,
            8);
    TileTask task =
        new TileTask(
            plain.room(),
            plain.doors(),
            plain.kind(),
            600,
            600,
            3,
            8,
            false,
            plain.weights(),
            OptionalDouble.of(20_000),
            OptionalDouble.of(45e6),
            6,
            20_000,
            400_000,
            6_400_000);
    TileSetOut out = TileLayout.of(task).orElseThrow();
    assertThat(out.movement()).hasSize(1);
    TileSetOut.Strip strip = out.movement().get(0);
    double at = strip.x1() == strip.x2() ? strip.x1() : strip.y1();
    assertThat(at).as("near the middle").isBetween(4500 - 310.0, 4500 + 310.0);
    assertThat(out.every()).isFalse();
  }

  /** Nine bays: each joint of 6 lies between two rows of tiles, 3 from either. */
  @Test
  void every_movement_joint_is_drawn_along_the_middle_between_tiles() {
    TileTask task =
        new TileTask(
            Rooms.of(0, 0, 9000, 0, 9000, 9000, 0, 9000),
            List.of(),
            Pattern.Kind.GRID,
            600,
            600,
            3,
            8,
            false,
            Rooms.WEIGHTS,
            OptionalDouble.of(3500),
            OptionalDouble.empty(),
            6,
            20_000,
            400_000,
            6_400_000);
    TileSetOut out = TileLayout.of(task).orElseThrow();
    assertThat(out.movement()).hasSize(4);
    for (TileSetOut.Strip strip : out.movement()) {
      boolean upright = Math.abs(strip.x1() - strip.x2()) < 1e-6;
      double middle = upright ? strip.x1() : strip.y1();
      double below = 0;
      double above = 9000;
      for (TileSetOut.Piece piece : out.pieces()) {
        for (TileSetOut.Ring ring : piece.rings()) {
          for (int i = upright ? 0 : 1; i < ring.xy().length; i += 2) {
            double at = ring.xy()[i];
            below = at <= middle ? Math.max(below, at) : below;
            above = at > middle ? Math.min(above, at) : above;
          }
        }
      }
      assertThat(below).isCloseTo(middle - 3, within(1e-6));
      assertThat(above).isCloseTo(middle + 3, within(1e-6));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Pattern.Kind.class,
      names = {"DIAGONAL", "HERRINGBONE"})
  void patterns_that_stand_aslant_are_centred_both_ways_or_not_at_all(Pattern.Kind kind) {
    TileSetOut out = set(ROOM, kind, Rooms.door(ROOM, 0, 1000, 900));
    assertThat(option(out, StartedFrom.DOOR_EVEN, "door 0").offCentre()).isZero();
    assertThat(out.options()).noneMatch(one -> one.way() == StartedFrom.DOOR_WHOLE);
    assertThat(option(out, StartedFrom.ROOM, "").offCentre()).isEqualTo(2);
    assertThat(out.options()).allMatch(one -> one.offCentre() == 0 || one.offCentre() == 2);
    assertThat(out.every()).isFalse();
  }

  @Test
  void a_tile_is_the_same_whichever_of_its_sides_is_called_its_length() {
    Polygon room = Rooms.withChimneyBreast();
    List<Field.Opening> doors = List.of(Rooms.door(room, 0, 900, 762));
    Option one =
        TileLayout.of(Rooms.task(room, doors, Pattern.Kind.GRID, 450, 300, 3, 8))
            .orElseThrow()
            .chosen();
    Option other =
        TileLayout.of(Rooms.task(room, doors, Pattern.Kind.GRID, 300, 450, 3, 8))
            .orElseThrow()
            .chosen();
    assertThat(other.points()).isCloseTo(one.points(), within(1e-6));
    assertThat(other.turned()).isEqualTo(one.turned());
  }

  @Test
  void a_length_across_the_room_counts_against_a_way() {
    // 3 by 2 m: five by 6.67 of 600 by 300 along, ten by 3.33 across.
    TileSetOut out =
        TileLayout.of(Rooms.task(ROOM, List.of(), Pattern.Kind.GRID, 600, 300, 0, 0)).orElseThrow();
    assertThat(out.chosen().turned()).isFalse();
    assertThat(Math.abs(out.direction())).isLessThan(1e-9);
    Polygon upright = Rooms.of(0, 0, 2000, 0, 2000, 3000, 0, 3000);
    TileSetOut up =
        TileLayout.of(Rooms.task(upright, List.of(), Pattern.Kind.GRID, 600, 300, 0, 0))
            .orElseThrow();
    assertThat(up.chosen().points()).isCloseTo(out.chosen().points(), within(1e-9));
    assertThat(up.chosen().turned()).isFalse();
  }

  @Test
  void a_room_within_its_gaps_holds_no_tile() {
    Polygon narrow = Rooms.of(0, 0, 3000, 0, 3000, 15, 0, 15);
    assertThat(TileLayout.of(Rooms.task(narrow, List.of(), Pattern.Kind.GRID, 300, 300, 3, 8)))
        .isEmpty();
  }

  @Test
  void tiles_run_along_the_wall_of_the_door_and_without_one_along_the_longest_wall() {
    // The lower wall of a triangle of 3, 4 and 5 is 4 m, the slope 5 m.
    Polygon triangle = Rooms.of(0, 0, 4000, 0, 0, 3000);
    double slope = Math.toDegrees(Math.atan2(-3, 4));
    assertThat(set(triangle).direction()).isCloseTo(slope, within(1e-6));
    assertThat(set(triangle, Rooms.door(triangle, 0, 1000, 800)).direction())
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void herringbone_has_no_length_across_the_room() {
    for (Polygon room :
        List.of(ROOM, Rooms.of(0, 0, 2000, 0, 2000, 3000, 0, 3000), Rooms.withChimneyBreast())) {
      Pattern.Kind kind = Pattern.Kind.HERRINGBONE;
      TileSetOut one =
          TileLayout.of(Rooms.task(room, List.of(), kind, 450, 300, 3, 8)).orElseThrow();
      TileSetOut other =
          TileLayout.of(Rooms.task(room, List.of(), kind, 300, 450, 3, 8)).orElseThrow();
      assertThat(other.options()).isEqualTo(one.options());
      assertThat(one.options()).noneMatch(Option::turned);
      Option chosen = one.chosen();
      assertThat(chosen.points())
          .isCloseTo(
              chosen.whole()
                  + chosen.boxed()
                  + chosen.cut()
                  + 3 * chosen.narrow()
                  + 20 * chosen.slivers()
                  + 6 * chosen.offCentre(),
              within(1e-9));
    }
  }

  /** Twelve whole tiles fill a room exactly, three lengths one way and four widths the other. */
  @Test
  void in_a_room_that_is_a_millimetre_longer_than_wide_no_way_is_across() {
    for (double[] lengthAndWidth : new double[][] {{666.75, 500}, {666, 499.75}}) {
      double w = 3 * lengthAndWidth[0];
      double h = 4 * lengthAndWidth[1];
      for (Polygon room :
          List.of(Rooms.of(0, 0, w, 0, w, h, 0, h), Rooms.of(0, 0, h, 0, h, w, 0, w))) {
        for (int k = 0; k < 2; k++) {
          TileTask task =
              Rooms.task(
                  room,
                  List.of(),
                  Pattern.Kind.GRID,
                  lengthAndWidth[k],
                  lengthAndWidth[1 - k],
                  0,
                  0);
          Option chosen = TileLayout.of(task).orElseThrow().chosen();
          assertThat(chosen.turned()).isFalse();
          assertThat(chosen.whole()).isEqualTo(12);
          assertThat(chosen.cut()).isZero();
          // Along one of the walls three or four tiles are not centred, or they all are.
          assertThat(chosen.points()).isEqualTo(12);
        }
      }
    }
  }

  @Test
  void of_walls_that_differ_by_less_than_a_millimetre_the_first_gives_the_direction() {
    double up = Math.sqrt(3000.5 * 3000.5 - 1500 * 1500);
    assertThat(set(Rooms.of(0, 0, 3000, 0, 1500, up)).direction()).isCloseTo(0, within(1e-9));
    up = Math.sqrt(3001.5 * 3001.5 - 1500 * 1500);
    assertThat(Math.abs(set(Rooms.of(0, 0, 3000, 0, 1500, up)).direction())).isGreaterThan(1);
  }

  @Test
  void a_view_ends_at_a_wall_aslant_where_it_meets_it() {
    // Above the middle of the door, at 1500, the wall has fallen by a third of 1500 from 2000.
    for (double[] at : new double[][] {{0, 0}, {700, -450}, {-5000, 1234}}) {
      double x = at[0];
      double y = at[1];
      Polygon room =
          Rooms.of(x, y, x + 3000, y, x + 3000, y + 2000, x + 1200, y + 1400, x, y + 1900);
      Field.Opening door = Rooms.door(room, 0, 1150, 700);
      Count count =
          new Count(
              Field.of(room, 0, 0, List.of(door)),
              Pattern.of(Pattern.Kind.GRID, 300, 300, 0),
              Rooms.WEIGHTS,
              Movement.NONE);
      double best = Double.MAX_VALUE;
      for (double begin : new double[] {1500, 1350}) {
        for (double level : new double[] {750, 600}) {
          best = Math.min(best, count.at(x + begin, y + level).points(Rooms.WEIGHTS));
        }
      }
      TileSetOut out = set(room, door);
      assertThat(option(out, StartedFrom.DOOR_EVEN, "door 0").offCentre()).isZero();
      assertThat(option(out, StartedFrom.DOOR_EVEN, "door 0").points())
          .isCloseTo(best, within(1e-6));
    }
  }

  @Test
  void a_length_across_the_room_is_chosen_where_it_saves_more() {
    // 3.9 by 3.6 m in tiles of 600 by 300: across, 13 by 6 are whole: 78, and 10 for the way they
    // lie. Along, twelve rows end in a cut: 72, 12 cuts and 12 tiles for them.
    Polygon room = Rooms.of(0, 0, 3900, 0, 3900, 3600, 0, 3600);
    Option chosen =
        TileLayout.of(Rooms.task(room, List.of(), Pattern.Kind.GRID, 600, 300, 0, 0))
            .orElseThrow()
            .chosen();
    assertThat(chosen.turned()).isTrue();
    assertThat(chosen.whole()).isEqualTo(78);
    assertThat(chosen.points()).isEqualTo(88);
  }

  @Test
  void of_a_tile_and_a_joint_in_the_middle_that_come_to_the_same_the_wider_cut_is_taken() {
    // One row of 530 in tiles of 100, and only tiles count. A tile in the middle: five whole and
    // two of 15 from a sixth; a joint: four whole and two of 65 from two more.
    Weights tiles = new Weights(1, 0, 0, 0, 0, 0, 0, 0.5, 0.25, 50, 3);
    TileTask task =
        new TileTask(
            Rooms.of(0, 0, 530, 0, 530, 100, 0, 100),
            List.of(),
            Pattern.Kind.GRID,
            100,
            100,
            0,
            0,
            false,
            tiles,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            6,
            20_000,
            400_000,
            6_400_000);
    assertThat(option(TileLayout.of(task).orElseThrow(), StartedFrom.ROOM, ""))
        .isEqualTo(new Option(StartedFrom.ROOM, "", false, 4, 2, 2, 0, 0, 0, 65, 0, 6));
  }
}
