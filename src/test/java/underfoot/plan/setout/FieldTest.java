package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What is left of a room beside its walls, worked out by hand. */
class FieldTest {
  private static Polygon moved(Polygon room, AffineTransformation how) {
    return (Polygon) how.transform(room);
  }

  /** Away from the origin, straight and turned by the angle of a triangle of 3, 4 and 5. */
  private static Stream<AffineTransformation> ways() {
    return Stream.of(
        new AffineTransformation(1, 0, 500, 0, 1, 700),
        new AffineTransformation(0.8, -0.6, -1500, 0.6, 0.8, 2300),
        new AffineTransformation(0, -1, 9000, 1, 0, -400));
  }

  @ParameterizedTest
  @MethodSource("ways")
  void every_edge_knows_the_wall_that_it_runs_along(AffineTransformation way) {
    Polygon room = moved(Rooms.withChimneyBreast(), way);
    for (double gap : new double[] {0, 10}) {
      for (double turn : new double[] {0, 0.3}) {
        Field field = Field.of(room, gap, turn, List.of());
        assertThat(field.edges()).hasSize(10);
        assertThat(field.edges().stream().map(Field.Edge::wall)).doesNotHaveDuplicates();
        Coordinate[] c = room.getExteriorRing().getCoordinates();
        for (Field.Edge edge : field.edges()) {
          LineSegment wall = new LineSegment(c[edge.wall()], c[edge.wall() + 1]);
          Coordinate from = field.out(edge.x1(), edge.y1());
          Coordinate to = field.out(edge.x2(), edge.y2());
          Coordinate middle = new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
          assertThat(wall.distance(middle)).isCloseTo(gap, within(1e-5));
          assertThat(wall.distancePerpendicular(from)).isCloseTo(gap, within(1e-5));
          assertThat(wall.distancePerpendicular(to)).isCloseTo(gap, within(1e-5));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("ways")
  void a_doorway_is_an_edge_of_its_own_in_its_place(AffineTransformation way) {
    Polygon room = moved(Rooms.of(0, 0, 4000, 0, 4000, 3000, 0, 3000), way);
    for (int wall = 0; wall < 4; wall++) {
      Field.Opening door = Rooms.door(room, wall, 1200, 800);
      Field field = Field.of(room, 10, 0, List.of(door));
      assertThat(field.edges()).hasSize(6);
      Field.Edge edge = field.edges().stream().filter(Field.Edge::door).findFirst().orElseThrow();
      assertThat(edge.wall()).isEqualTo(wall);
      assertThat(edge.length()).isCloseTo(800, within(1e-5));
      Coordinate middle = new Coordinate((edge.x1() + edge.x2()) / 2, (edge.y1() + edge.y2()) / 2);
      // Straight in from the middle of the opening by the gap.
      assertThat(middle.distance(door.middle())).isCloseTo(10, within(1e-5));
      assertThat(middle.x - edge.nx() * 10).isCloseTo(door.middle().x, within(1e-5));
      assertThat(middle.y - edge.ny() * 10).isCloseTo(door.middle().y, within(1e-5));
    }
  }

  @Test
  void a_doorway_ends_with_its_wall() {
    Polygon room = Rooms.of(0, 0, 4000, 0, 4000, 3000, 0, 3000);
    // From wall to wall, over the corner, and beyond it.
    Field whole = Field.of(room, 10, 0, List.of(Rooms.door(room, 0, 0, 4000)));
    assertThat(whole.edges()).hasSize(4);
    assertThat(whole.edges().stream().filter(Field.Edge::door).toList())
        .singleElement()
        .satisfies(edge -> assertThat(edge.length()).isCloseTo(3980, within(1e-6)));
    Field over = Field.of(room, 10, 0, List.of(Rooms.door(room, 0, 3500, 900)));
    assertThat(over.edges()).hasSize(5);
    assertThat(over.edges().stream().filter(Field.Edge::door).toList())
        .singleElement()
        .satisfies(edge -> assertThat(edge.length()).isCloseTo(490, within(1e-6)));
    Field beyond = Field.of(room, 10, 0, List.of(Rooms.door(room, 0, 5000, 900)));
    assertThat(beyond.edges()).hasSize(4).noneMatch(Field.Edge::door);
  }

  @Test
  void an_edge_round_a_column_belongs_to_no_wall() {
    Polygon room = Rooms.withColumn();
    Field field = Field.of(room, 10, 0, List.of());
    assertThat(field.edges()).filteredOn(edge -> edge.wall() < 0).hasSize(4);
    assertThat(field.edges()).filteredOn(edge -> edge.wall() >= 0).hasSize(4);
    assertThat(field.edges())
        .allSatisfy(
            edge ->
                assertThat(
                        field
                            .shape()
                            .contains(
                                Field.SHAPES.createPoint(
                                    new Coordinate(
                                        (edge.x1() + edge.x2()) / 2 + edge.nx(),
                                        (edge.y1() + edge.y2()) / 2 + edge.ny()))))
                    .isTrue());
  }

  @Test
  void a_gap_round_a_corner_of_a_wall_has_a_corner_too() {
    // 4000 by 3000 less 1000 by 1000: the inner corner keeps square.
    Polygon room = Rooms.of(0, 0, 4000, 0, 4000, 2000, 3000, 2000, 3000, 3000, 0, 3000);
    assertThat(Field.shrunk(room, 10).getArea())
        .isCloseTo(3980.0 * 2980 - 1000.0 * 1000, within(1e-6));
    // Round a pier that ends in a point the gap runs to a point as well: 10 mm from slopes of 1 in
    // 10 is 10 * sqrt(101) beyond the tip.
    Polygon pier = Rooms.of(0, 0, 1900, 0, 2000, 1000, 2100, 0, 4000, 0, 4000, 3000, 0, 3000);
    double tip = 1000 + 10 * Math.sqrt(101);
    assertThat(covers(pier, 2000, tip - 1)).isFalse();
    assertThat(covers(pier, 2000, tip + 1)).isTrue();
  }

  private static boolean covers(Polygon room, double x, double y) {
    return Field.shrunk(room, 10).covers(Field.SHAPES.createPoint(new Coordinate(x, y)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void turned_by_quarters_whole_millimetres_stay_whole(int quarters) {
    Polygon room = Rooms.of(37, 53, 4011, 53, 4011, 3019, 37, 3019);
    Field field = Field.of(room, 8, quarters * Math.PI / 2, List.of());
    for (Coordinate c : field.shape().getCoordinates()) {
      assertThat(c.x).isEqualTo(Math.rint(c.x));
      assertThat(c.y).isEqualTo(Math.rint(c.y));
    }
    for (Field.Edge edge : field.edges()) {
      assertThat(edge.alongX() || edge.alongY()).isTrue();
      assertThat(edge.x1()).isEqualTo(Math.rint(edge.x1()));
    }
  }

  @Test
  void the_middle_of_a_doorway_is_half_way_between_its_sides() {
    Field.Opening door =
        new Field.Opening("front", 0, new Coordinate(100, 40), new Coordinate(900, 640));
    assertThat(door.middle()).isEqualTo(new Coordinate(500, 340));
  }
}
