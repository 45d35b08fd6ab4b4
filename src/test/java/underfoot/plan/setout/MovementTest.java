package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Movement joints of 8 mm between tiles of 600 by 300 with joints of 3 mm. */
class MovementTest {
  private static final Pattern GRID = Pattern.of(Pattern.Kind.GRID, 600, 300, 3);
  private static final Pattern HALF = Pattern.of(Pattern.Kind.HALF_OFFSET, 600, 300, 3);
  private static final Pattern HERRINGBONE = Pattern.of(Pattern.Kind.HERRINGBONE, 600, 300, 3);

  @Test
  void the_joint_whose_middle_comes_nearest_when_widened_is_widened() {
    // Tiles from 0: joints begin at 600 and 1203. Widened to 8 their middles are 604 and 1207,
    // half way between them is 905.5.
    assertThat(widenedX(905.4)).containsExactly(600);
    assertThat(widenedX(905.6)).containsExactly(1203);
    // After one widened joint all is 5 further: 1212 and 1815, half way 1513.5.
    assertThat(widenedX(600, 1513.4)).containsExactly(600, 1203);
    assertThat(widenedX(600, 1513.6)).containsExactly(600, 1806);
    // Along the other side joints begin at 300, 603 and so on: half way between is 455.5.
    Movement across = new Movement(new double[0], new double[] {455.4}, 8);
    assertThat(across.widenedY(GRID, 0)).containsExactly(300);
    assertThat(across.widenedY(HALF, 10)).containsExactly(310);
    assertThat(across.widenedY(HERRINGBONE, 0)).isEmpty();
  }

  private static double[] widenedX(double... wanted) {
    return new Movement(wanted, new double[0], 8).widenedX(GRID, 0);
  }

  @Test
  void two_that_fall_on_one_joint_are_one() {
    assertThat(widenedX(600, 610)).containsExactly(600);
  }

  @Test
  void where_no_joint_runs_through_a_strip_is_cut_out_right_across_the_room() {
    Envelope tall = new Envelope(100, 1100, 0, 9000);
    Movement both = new Movement(new double[] {600}, new double[] {3000, 6000}, 8);
    List<Polygon> strips = both.cut(HERRINGBONE, tall, 0);
    assertThat(strips).hasSize(3);
    Envelope upright = strips.get(0).getEnvelopeInternal();
    assertThat(upright.getMinX()).isEqualTo(596);
    assertThat(upright.getMaxX()).isEqualTo(604);
    assertThat(upright.getMinY()).isLessThan(0);
    assertThat(upright.getMaxY()).isGreaterThan(9000);
    Envelope level = strips.get(2).getEnvelopeInternal();
    assertThat(level.getMinY()).isEqualTo(5996);
    assertThat(level.getMaxY()).isEqualTo(6004);
    assertThat(level.getMinX()).isLessThan(100);
    assertThat(level.getMaxX()).isGreaterThan(1100);
    // Rows run straight through in a half offset, columns do not.
    assertThat(both.cut(HALF, tall, 0)).hasSize(1);
    assertThat(both.cut(HALF, tall, 0).get(0).getEnvelopeInternal().getMinX()).isEqualTo(596);
    assertThat(both.cut(GRID, tall, 0)).isEmpty();
  }

  @Test
  void a_place_is_taken_back_by_every_joint_before_it_and_to_where_one_begins_if_it_is_within() {
    Movement joints = new Movement(new double[0], new double[0], 8);
    double[] widened = {600, 1203, 1806};
    // A joint is 5 wider from its middle on, which lies at 601.5 before widening.
    assertThat(joints.back(500, widened, GRID)).isEqualTo(500);
    assertThat(joints.back(601.5, widened, GRID)).isEqualTo(601.5);
    assertThat(joints.back(603, widened, GRID)).isEqualTo(601.5);
    assertThat(joints.back(606.5, widened, GRID)).isEqualTo(601.5);
    assertThat(joints.back(607, widened, GRID)).isEqualTo(602);
    assertThat(joints.back(1209.5, widened, GRID)).isEqualTo(1204.5);
    assertThat(joints.back(1212, widened, GRID)).isEqualTo(1204.5);
    assertThat(joints.back(5015, widened, GRID)).isEqualTo(5000);
    assertThat(joints.on(500, widened, GRID)).isZero();
    assertThat(joints.on(603, widened, GRID)).isEqualTo(5);
    assertThat(joints.on(5000, widened, GRID)).isEqualTo(15);
    assertThat(joints.back(700, new double[0], GRID)).isEqualTo(700);
  }
}
