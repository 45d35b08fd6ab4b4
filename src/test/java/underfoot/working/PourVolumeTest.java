package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static underfoot.working.Seeded.between;
import static underfoot.working.Seeded.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The pour over a room of any outline")
class PourVolumeTest {
  /** A room of 4 m by 3 m with a corner of 2 m by 1 m missing: 10 m2. */
  private static final List<PourVolume.Corner> L_SHAPE =
      corners(0, 0, 4, 0, 4, 2, 2, 2, 2, 3, 0, 3);

  private static List<PourVolume.Corner> corners(double... numbers) {
    List<PourVolume.Corner> corners = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 2) {
      corners.add(new PourVolume.Corner(numbers[i], numbers[i + 1]));
    }
    return corners;
  }

  @Test
  @DisplayName("is depth times area where the floor is level, however few the readings")
  void levelFloor() {
    for (List<Reading> readings :
        List.of(
            List.of(new Reading(1, 1, 2)),
            List.of(new Reading(1, 1, 2), new Reading(2, 1, 2)),
            List.of(new Reading(0, 0, 2), new Reading(4, 0, 2), new Reading(0, 3, 2)))) {
      PourVolume.Values values = PourVolume.of(readings, L_SHAPE, 7);
      assertThat(values.volumeL()).isCloseTo(50, offset(1e-9));
      assertThat(values.areaM2()).isCloseTo(10, offset(1e-9));
      assertThat(values.minDepthMm()).isEqualTo(5);
      assertThat(values.maxDepthMm()).isEqualTo(5);
    }
  }

  @Test
  @DisplayName(
      "over a tilted floor is the depth at the room's centre of area, not of a bounding box")
  void tiltedFloor() {
    List<Reading> readings = new ArrayList<>();
    for (double x : new double[] {0, 1.3, 4}) {
      for (double y : new double[] {0, 1.7, 3}) {
        readings.add(new Reading(x, y, 2 * x + 3 * y));
      }
    }
    // Centre of area: two rectangles, 4 by 2 and 2 by 1.
    double x = (8 * 2 + 2 * 1) / 10.0;
    double y = (8 * 1 + 2 * 2.5) / 10.0;
    PourVolume.Values values = PourVolume.of(readings, L_SHAPE, 20);
    assertThat(values.volumeL()).isCloseTo(10 * (20 - 2 * x - 3 * y), offset(1e-9));
    assertThat(values.minDepthMm()).isCloseTo(20 - 14, offset(1e-9));
    assertThat(values.maxDepthMm()).isCloseTo(20, offset(1e-9));
  }

  @Test
  @DisplayName(
      "is cut along the line of no depth (references Vol-4: exact wedge 12.50 L over 5 m2)")
  void wedge() {
    List<Reading> readings = new ArrayList<>();
    for (int x = 0; x <= 3; x++) {
      for (int y = 0; y <= 4; y++) {
        readings.add(new Reading(x, y, 4 * x));
      }
    }
    PourVolume.Values values = PourVolume.of(readings, corners(0, 0, 3, 0, 3, 4, 0, 4), 5);
    assertThat(values.volumeL()).isCloseTo(12.5, offset(1e-9));
    assertThat(values.areaM2()).isCloseTo(5, offset(1e-9));
    assertThat(values.minDepthMm()).isZero();
  }

  @Test
  @DisplayName("is the sum of the pours of its parts")
  void addsUp() {
    Random random = Seeded.random();
    for (int round = 0; round < 40; round++) {
      List<Reading> readings = new ArrayList<>();
      for (double[] corner : new double[][] {{0, 0}, {4, 0}, {4, 3}, {0, 3}}) {
        readings.add(new Reading(corner[0], corner[1], between(random, -8, 8)));
      }
      for (int i = 0; i < 15; i++) {
        readings.add(
            new Reading(between(random, 0, 4), between(random, 0, 3), between(random, -8, 8)));
      }
      double datum = between(random, -4, 12);
      double cut = between(random, 0.5, 1.9);
      PourVolume.Values whole = PourVolume.of(readings, L_SHAPE, datum);
      PourVolume.Values left = PourVolume.of(readings, corners(0, 0, cut, 0, cut, 3, 0, 3), datum);
      PourVolume.Values right =
          PourVolume.of(readings, corners(cut, 0, 4, 0, 4, 2, 2, 2, 2, 3, cut, 3), datum);
      assertThat(left.volumeL() + right.volumeL())
          .as(seed(round))
          .isCloseTo(whole.volumeL(), offset(1e-7));
      assertThat(left.areaM2() + right.areaM2())
          .as(seed(round))
          .isCloseTo(whole.areaM2(), offset(1e-7));
    }
  }

  @Test
  @DisplayName("lies between the two diagonals of the grid working, where the readings are a grid")
  void agreesWithTheGrid() {
    double[][] grid = {{0, 3, 9}, {1, 2, 8}, {3, 5, 12}};
    PourVolume.Values values =
        PourVolume.of(BestPlane.readings(grid, 1.5, 1.2), corners(0, 0, 3, 0, 3, 2.4, 0, 2.4), 15);
    assertThat(values.volumeL()).isBetween(77.5, 79.1);
    assertThat(values.minDepthMm()).isCloseTo(3, offset(1e-9));
    assertThat(values.maxDepthMm()).isCloseTo(15, offset(1e-9));
  }

  @Test
  @DisplayName("is refused for crossed walls, no readings, and readings that contradict each other")
  void refusals() {
    List<Reading> one = List.of(new Reading(0, 0, 0));
    assertThatThrownBy(() -> PourVolume.of(one, corners(0, 0, 2, 2, 2, 0, 0, 2), 5))
        .hasMessageContaining("cross");
    assertThatThrownBy(() -> PourVolume.of(one, corners(0, 0, 2, 2), 5))
        .hasMessageContaining("three corners");
    assertThatThrownBy(() -> PourVolume.of(List.of(), L_SHAPE, 5))
        .hasMessageContaining("at least one reading");
    assertThatThrownBy(
            () -> PourVolume.of(List.of(new Reading(1, 1, 0), new Reading(1, 1, 4)), L_SHAPE, 5))
        .hasMessageContaining("two readings differ");
  }
}
