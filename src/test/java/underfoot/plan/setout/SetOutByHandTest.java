package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The parts of a set-out against numbers worked out by hand, and against trying everything. */
class SetOutByHandTest {
  private static final DoubleUnaryOperator FREE = place -> 0;

  private static Optional<List<Double>> divide(
      double to, double longest, double least, DoubleUnaryOperator cost) {
    return Division.of(0, to, longest, least, 2, List.of(), cost);
  }

  // --- dividing a length

  @Test
  void a_length_of_one_board_has_no_joint_and_a_hair_more_has_one() {
    assertThat(divide(1200, 1200, 100, FREE)).hasValue(List.of());
    assertThat(divide(1201, 1200, 100, FREE).orElseThrow()).hasSize(1);
    // Two whole boards and the gap between; a millimetre more takes three pieces.
    assertThat(divide(2402, 1200, 100, FREE)).hasValue(List.of(1200.0));
    assertThat(divide(2403, 1200, 100, FREE).orElseThrow()).hasSize(2);
  }

  @Test
  void no_piece_is_shorter_than_the_least_and_without_a_way_there_is_none() {
    // 1250 mm: 1200 and 48 left is too short; 300 at either end is kept.
    double joint = divide(1250, 1200, 300, FREE).orElseThrow().get(0);
    assertThat(joint).isBetween(300.0, 948.0);
    assertThat(divide(1250, 1200, 700, FREE)).isEmpty();
    assertThat(divide(1250, 1200, 300, place -> Double.POSITIVE_INFINITY)).isEmpty();
  }

  @Test
  void of_all_divisions_the_cheapest_is_found() {
    Random random = new Random(3);
    for (int round = 0; round < 40; round++) {
      double to = 130 + random.nextInt(150);
      double least = 40 + random.nextInt(30);
      double[] price = random.doubles(60, 0, 2).toArray();
      DoubleUnaryOperator cost =
          place -> {
            double one = price[(int) (place / 10)];
            return one > 1.5 ? Double.POSITIVE_INFINITY : one > 0.5 ? 0 : one;
          };
      Optional<List<Double>> found = divide(to, 100, least, cost);
      double cheapest = cheapest(-2, to, 100, least, cost);
      // It may begin a joint at other places than tens besides, so it may find a way where there
      // is none on tens.
      assertThat(found.isPresent() || cheapest >= 1e9).as("round %d", round).isTrue();
      if (found.isPresent()) {
        double spent = 0;
        double from = 0;
        for (double joint : found.get()) {
          assertThat(joint - from).isBetween(least - 1e-6, 100 + 1e-6);
          spent += piece(joint - from) + cost.applyAsDouble(joint);
          from = joint + 2;
        }
        assertThat(to - from).isBetween(least - 1e-6, 100 + 1e-6);
        spent += piece(to - from);
        assertThat(spent).as("round %d", round).isLessThanOrEqualTo(cheapest + 1e-9);
      }
    }
  }

  private static double piece(double length) {
    return length > 99.5 ? 1 : 1.05;
  }

  /** The cheapest way on from the joint that began at a place, joints on tens only. */
  private static double cheapest(
      double joint, double to, double longest, double least, DoubleUnaryOperator cost) {
    double from = joint + 2;
    double best = 1e9;
    double rest = to - from;
    if (rest >= least && rest <= longest) {
      best = piece(rest);
    }
    for (double next = 10; next + 2 < to; next += 10) {
      double length = next - from;
      if (length >= least && length <= longest && cost.applyAsDouble(next) < 1e9) {
        best =
            Math.min(
                best,
                piece(length)
                    + cost.applyAsDouble(next)
                    + cheapest(next, to, longest, least, cost));
      }
    }
    return best;
  }

  // --- cutting boards

  private static int boards(double... lengthsAndWidths) {
    List<double[]> pieces = new ArrayList<>();
    for (int i = 0; i < lengthsAndWidths.length; i += 2) {
      pieces.add(new double[] {lengthsAndWidths[i], lengthsAndWidths[i + 1]});
    }
    return Packing.boards(pieces, 1200, 800, 3);
  }

  @Test
  void boards_are_opened_only_where_no_offcut_is_large_enough() {
    assertThat(boards()).isZero();
    assertThat(boards(1200, 800)).isEqualTo(1);
    assertThat(boards(1200, 800, 1200, 800)).isEqualTo(2);
    // 700 long leaves 497 by 800.
    assertThat(boards(700, 800, 497, 800)).isEqualTo(1);
    assertThat(boards(700, 800, 498, 800)).isEqualTo(2);
    // 500 wide leaves 297 by 1200.
    assertThat(boards(1200, 500, 1200, 297)).isEqualTo(1);
    assertThat(boards(1200, 500, 1200, 298)).isEqualTo(2);
    // Four quarters less the saw's way.
    assertThat(boards(598, 398, 598, 398, 598, 398, 598, 398)).isEqualTo(1);
    // 1000 by 300 leaves 1200 by 497 whole and 197 by 300 beside it.
    assertThat(boards(1000, 300, 1200, 497, 197, 300)).isEqualTo(1);
    // The smallest offcut that is large enough is taken: 197 by 300 for 150 by 200.
    assertThat(boards(1000, 300, 150, 200, 1200, 497)).isEqualTo(1);
    // Of 100 by 800 and 400 by 800 the first serves for 90, so that the second is left for 400.
    assertThat(boards(1097, 800, 797, 800, 90, 800, 400, 800)).isEqualTo(2);
    // And so whichever of them was there first.
    assertThat(boards(797, 800, 1097, 800, 90, 800, 400, 800)).isEqualTo(2);
    // 500 by 700 leaves 697 by 800 whole, and 500 by 97 beside it.
    assertThat(boards(500, 700, 697, 800, 500, 97)).isEqualTo(1);
  }

  // --- patterns and movement joints

  @ParameterizedTest
  @EnumSource(Pattern.Kind.class)
  void a_repeat_takes_up_a_tile_with_its_joints(Pattern.Kind kind) {
    Pattern pattern = Pattern.of(kind, 600, 300, 3);
    // In herringbone too each tile has a joint on two of its sides.
    assertThat(pattern.cell()).isCloseTo(603 * 303, within(1e-6));
    boolean herringbone = kind == Pattern.Kind.HERRINGBONE;
    assertThat(pattern.periodX()).isEqualTo(herringbone ? 906 : 603);
    assertThat(pattern.periodY()).isEqualTo(herringbone ? 906 : 303);
    assertThat(pattern.tiles()).hasSize(herringbone ? 2 : 1);
    assertThat(Pattern.Kind.named(kind.words())).isEqualTo(kind);
    assertThat(Pattern.Kind.named("crazy paving")).isNull();
    assertThat(kind.straightRows()).isEqualTo(!herringbone);
    assertThat(kind.straightColumns())
        .isEqualTo(kind == Pattern.Kind.GRID || kind == Pattern.Kind.DIAGONAL);
    assertThat(kind.turnDegrees()).isEqualTo(kind == Pattern.Kind.DIAGONAL ? 45 : 0);
    double shift = kind == Pattern.Kind.HALF_OFFSET ? 301.5 : 201;
    boolean offset = kind == Pattern.Kind.HALF_OFFSET || kind == Pattern.Kind.THIRD_OFFSET;
    if (!herringbone) {
      assertThat(pattern.up()).containsExactly(offset ? shift : 0, 303);
    }
  }

  @Test
  void movement_joints_divide_a_length_evenly_and_move_the_tiles_beyond_them_on() {
    Movement even = Movement.even(new Envelope(100, 9100, 0, 4000), 3, 1, 8);
    assertThat(even.x()).containsExactly(3100, 6100);
    assertThat(even.y()).isEmpty();
    Pattern grid = Pattern.of(Pattern.Kind.GRID, 600, 300, 3);
    assertThat(even.extra(grid)).isEqualTo(5);
    // Tiles from 0: joints begin at 600 + 603 n; nearest to 3100 is 3015, from 3012... on tens of
    // the repeat: 600, 1203, 1806, 2409, 3012, 3615. To 6100 less one joint moved on: 6027.
    double[] widened = even.widenedX(grid, 0);
    assertThat(widened).containsExactly(3012, 6027);
    assertThat(even.widenedY(grid, 0)).isEmpty();
    assertThat(even.on(3000, widened, grid)).isZero();
    assertThat(even.on(3015, widened, grid)).isEqualTo(5);
    assertThat(even.on(6030, widened, grid)).isEqualTo(10);
    // And back again.
    assertThat(even.back(3000, widened, grid)).isEqualTo(3000);
    assertThat(even.back(3020, widened, grid)).isEqualTo(3015);
    assertThat(even.back(6040, widened, grid)).isEqualTo(6030);
    // Within the widened joint every place is its middle.
    assertThat(even.back(3016, widened, grid)).isEqualTo(3013.5);
    // Herringbone takes no movement joint into its own: tiles are cut along both.
    Pattern herringbone = Pattern.of(Pattern.Kind.HERRINGBONE, 600, 300, 3);
    Envelope room = new Envelope(100, 9100, 0, 4000);
    assertThat(even.widenedX(herringbone, 0)).isEmpty();
    List<Polygon> strips = even.cut(herringbone, room, 0);
    assertThat(strips).hasSize(2);
    assertThat(strips.get(0).getEnvelopeInternal().getMinX()).isEqualTo(3096);
    assertThat(strips.get(0).getEnvelopeInternal().getMaxX()).isEqualTo(3104);
    assertThat(even.cut(grid, room, 0)).isEmpty();
    assertThat(new Movement(new double[0], new double[0], 2).extra(grid)).isZero();
  }

  @Test
  void cuts_are_slivers_or_narrow_below_their_limits_and_not_at_them() {
    Weights weights = Rooms.WEIGHTS;
    double sliver = Math.min(weights.sliverMm(), weights.sliverShare() * 300);
    assertThat(weights.sliverLimit(300)).isEqualTo(sliver);
    assertThat(weights.sliver(sliver, 300)).isFalse();
    assertThat(weights.sliver(sliver - 0.01, 300)).isTrue();
    assertThat(weights.narrow(weights.leastShare() * 300, 300)).isFalse();
    assertThat(weights.narrow(weights.leastShare() * 300 - 0.01, 300)).isTrue();
  }

  // --- counting

  @ParameterizedTest
  @EnumSource(Pattern.Kind.class)
  void whole_and_cut_tiles_are_those_that_the_field_covers_and_cuts(Pattern.Kind kind) {
    Random random = new Random(kind.ordinal());
    for (int round = 0; round < 6; round++) {
      Polygon room = round % 2 == 0 ? Rooms.square(random) : Rooms.any(random);
      Field field = Field.of(room, 5, Math.toRadians(kind.turnDegrees()), List.of());
      Pattern pattern = Pattern.of(kind, 400 + random.nextInt(200), 200 + random.nextInt(100), 3);
      double ox = random.nextDouble() * 500;
      double oy = random.nextDouble() * 500;
      Tally tally = new Count(field, pattern, Rooms.WEIGHTS, Movement.NONE).at(ox, oy);
      long whole = 0;
      long cut = 0;
      for (int i = -60; i <= 60; i++) {
        for (int j = -60; j <= 60; j++) {
          for (Pattern.Tile tile : pattern.tiles()) {
            double x = ox + tile.x() + i * pattern.along()[0] + j * pattern.up()[0];
            double y = oy + tile.y() + i * pattern.along()[1] + j * pattern.up()[1];
            Envelope box = new Envelope(x, x + tile.w(), y, y + tile.h());
            if (!box.intersects(field.shape().getEnvelopeInternal())) {
              continue;
            }
            Geometry shape = Field.SHAPES.toGeometry(box);
            double on = shape.intersection(field.shape()).getArea();
            whole += on > shape.getArea() - 1e-3 ? 1 : 0;
            cut += on > 1e-3 && on <= shape.getArea() - 1e-3 ? 1 : 0;
          }
        }
      }
      assertThat(tally.whole()).as("%s, round %d", kind, round).isEqualTo(whole);
      assertThat((long) tally.cut()).as("%s, round %d", kind, round).isEqualTo(cut);
      assertThat(tally.boxed()).isBetween((int) Math.ceil(cut / 2.0), (int) cut);
    }
  }

  @Test
  void a_field_is_smaller_by_the_gap_and_its_edges_know_their_walls_and_doors() {
    Polygon room = Rooms.of(0, 0, 4000, 0, 4000, 3000, 0, 3000);
    Field field = Field.of(room, 10, 0, List.of(Rooms.door(room, 0, 1000, 800)));
    assertThat(field.shape().getArea()).isCloseTo(3980 * 2980, within(1e-3));
    assertThat(field.square()).isTrue();
    // The wall with the door in three, the others whole.
    assertThat(field.edges()).hasSize(6);
    assertThat(field.edges()).filteredOn(edge -> edge.wall() == 0).hasSize(3);
    List<Field.Edge> doors = field.edges().stream().filter(Field.Edge::door).toList();
    assertThat(doors).hasSize(1);
    assertThat(doors.get(0).length()).isCloseTo(800, within(1e-6));
    assertThat(Math.min(doors.get(0).x1(), doors.get(0).x2())).isCloseTo(1000, within(1e-6));
    for (Field.Edge edge : field.edges()) {
      // The normal points into the field.
      double x = (edge.x1() + edge.x2()) / 2 + edge.nx();
      double y = (edge.y1() + edge.y2()) / 2 + edge.ny();
      assertThat(field.shape().contains(Field.SHAPES.createPoint(new Coordinate(x, y)))).isTrue();
    }
    Field turned = Field.of(room, 10, Math.PI / 4, List.of());
    assertThat(turned.square()).isFalse();
    Coordinate there = turned.in(new Coordinate(1000, 1000));
    assertThat(there.x).isCloseTo(1000 * Math.sqrt(2), within(1e-6));
    assertThat(there.y).isCloseTo(0, within(1e-6));
    assertThat(turned.out(there.x, there.y).y).isCloseTo(1000, within(1e-6));
  }
}
