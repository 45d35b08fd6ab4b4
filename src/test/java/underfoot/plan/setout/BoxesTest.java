package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** What is told of boxes from their bounds is what the general methods find of them. */
class BoxesTest {
  private static final int MANY = 2_000;

  @Test
  void two_boxes_have_in_common_what_the_general_method_finds() {
    Random random = new Random(8);
    int apart = 0;
    for (int i = 0; i < MANY; i++) {
      Geometry one = box(random);
      Geometry other = box(random);
      Geometry general = one.intersection(other);
      Geometry common = Boxes.common(one, other);
      if (general.getArea() == 0) { // apart, or they only touch
        apart++;
        assertThat(common.isEmpty()).isTrue();
      } else {
        assertThat(common.equalsTopo(general)).as("%s with %s", one, other).isTrue();
      }
    }
    assertThat(apart).isBetween(MANY / 20, MANY * 3 / 4);
  }

  @Test
  void a_box_and_a_slanting_shape_are_left_to_the_general_method() {
    Geometry slanting =
        Field.SHAPES.createPolygon(
            new Coordinate[] {
              new Coordinate(0, 0),
              new Coordinate(10, 0),
              new Coordinate(0, 10),
              new Coordinate(0, 0)
            });
    Geometry box = Field.SHAPES.toGeometry(new Envelope(0, 10, 0, 10));
    assertThat(Boxes.common(box, slanting).getArea()).isEqualTo(50);
  }

  @Test
  void a_box_is_shrunk_corner_for_corner_as_the_general_method_does() {
    BufferParameters mitred = new BufferParameters();
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    mitred.setMitreLimit(20);
    for (int start = 0; start < 4; start++) {
      for (int step : new int[] {1, 3}) {
        Polygon box = ring(start, step);
        Geometry general = BufferOp.bufferOp(box, -8, mitred);
        assertThat(Boxes.shrunk(box, 8).getCoordinates())
            .as("%s", box)
            .containsExactly(general.getCoordinates());
      }
    }
  }

  @Test
  void nothing_is_left_of_a_box_as_wide_as_its_two_gaps() {
    assertThat(Boxes.shrunk(ring(0, 1), 1500).isEmpty()).isTrue();
    assertThat(Boxes.shrunk(ring(0, 1), 1499).isEmpty()).isFalse();
  }

  @Test
  void the_smallest_rectangle_about_a_box_is_the_box_begun_at_its_lowest_corner() {
    for (int start = 0; start < 4; start++) {
      for (int step : new int[] {1, 3}) {
        Polygon box = ring(start, step);
        assertThat(box.getEnvelope().getCoordinates())
            .containsExactly(MinimumAreaRectangle.getMinimumRectangle(box).getCoordinates());
      }
    }
  }

  /** A room of 4 by 3 m, its ring begun at any corner and led either way. */
  private static Polygon ring(int start, int step) {
    Coordinate[] corners = {
      new Coordinate(0, 0),
      new Coordinate(4000, 0),
      new Coordinate(4000, 3000),
      new Coordinate(0, 3000)
    };
    Coordinate[] ring = new Coordinate[5];
    for (int i = 0; i < 5; i++) {
      ring[i] = corners[(start + step * i) % 4].copy();
    }
    return Field.SHAPES.createPolygon(ring);
  }

  private static Geometry box(Random random) {
    double x = random.nextInt(6);
    double y = random.nextInt(6);
    return Field.SHAPES.toGeometry(
        new Envelope(x, x + 1 + random.nextInt(8), y, y + 1 + random.nextInt(8)));
  }
}
