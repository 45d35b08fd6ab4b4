package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import underfoot.knowledge.Facts;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;

/** Big surveys and rooms of many corners are answered, and what was worked out is kept. */
class ManyReadingsTest {
  private static final double HALL = 9900;
  private static final List<Point> SQUARE =
      LevelSurveyTest.corners(0, 0, HALL, 0, HALL, HALL, 0, HALL);

  private static List<Reading> grid(int rows, long seed) {
    Random random = new Random(seed);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < rows; j++) {
        double x = HALL * i / (rows - 1);
        double y = HALL * j / (rows - 1);
        readings.add(
            new Reading(
                x, y, 4 * Math.sin(x / 800) + 3 * Math.cos(y / 500) + random.nextGaussian()));
      }
    }
    return readings;
  }

  @Test
  void of_ten_thousand_readings_a_bounded_number_of_lines_is_tried_and_the_whole_floor_is_poured() {
    LevelSurvey survey = LevelSurvey.of(SQUARE, grid(100, 3)).orElseThrow();
    assertThat(survey.flatness(2000).gapMm()).isGreaterThan(5);
    // Sixty lines in each of eight directions, and twelve through each of sixty places.
    assertThat(survey.flatness(2000).linesTried()).isBetween(500, 8 * 60 + 12 * 60);
    Pour pour = survey.pour(true, 3).orElseThrow();
    assertThat(pour.areaM2()).isCloseTo(HALL * HALL / 1e6, within(1e-6));
  }

  @Test
  void a_room_of_five_hundred_corners_is_poured_over_its_whole_area() {
    List<Point> star = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      double angle = 2 * Math.PI * i / 500;
      double radius = i % 2 == 0 ? 4900 : 4500;
      star.add(new Point(HALL / 2 + radius * Math.cos(angle), HALL / 2 + radius * Math.sin(angle)));
    }
    LevelSurvey survey = LevelSurvey.of(star, grid(30, 5)).orElseThrow();
    Pour pour = survey.pour(true, 3).orElseThrow();
    // Five hundred triangles from the middle of the room.
    double area = 500 * 0.5 * 4.9 * 4.5 * Math.sin(2 * Math.PI / 500);
    assertThat(pour.areaM2()).isCloseTo(area, within(1e-6 * area));
  }

  @Test
  void a_place_is_found_among_many_triangles_as_if_each_were_looked_at() {
    LevelSurvey survey = LevelSurvey.of(SQUARE, grid(30, 7)).orElseThrow();
    TriangulatedSurface floor = survey.floor();
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      double x = HALL * (1.2 * random.nextDouble() - 0.1);
      double y = HALL * (1.2 * random.nextDouble() - 0.1);
      boolean inside = x >= 0 && x <= HALL && y >= 0 && y <= HALL;
      assertThat(Double.isNaN(floor.heightAt(x, y))).as("%f, %f", x, y).isNotEqualTo(inside);
      Coordinate place = new Coordinate(x, y);
      Coordinate nearest = floor.nearest(x, y);
      assertThat(floor.vertices().stream().mapToDouble(place::distance).min().orElseThrow())
          .isEqualTo(nearest.distance(place));
      if (inside) {
        assertThat(floor.heightAt(x, y)).isCloseTo(looked(floor, x, y), within(1e-9));
      }
    }
  }

  /** The height in the first triangle that holds the place, each looked at. */
  private static double looked(TriangulatedSurface floor, double x, double y) {
    for (int[] triangle : floor.triangles()) {
      Coordinate[] c = floor.corners(triangle);
      double whole = cross(c[0], c[1], c[2].x, c[2].y);
      double u = cross(c[1], c[2], x, y) / whole;
      double v = cross(c[2], c[0], x, y) / whole;
      if (Math.min(u, Math.min(v, 1 - u - v)) >= -1e-9) {
        return u * c[0].getZ() + v * c[1].getZ() + (1 - u - v) * c[2].getZ();
      }
    }
    return Double.NaN;
  }

  private static double cross(Coordinate a, Coordinate b, double x, double y) {
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  }

  @Test
  void one_ground_filled_twice_is_each_floor_poured_by_itself() {
    List<Reading> readings = grid(12, 9);
    LevelSurvey survey = LevelSurvey.of(SQUARE, readings).orElseThrow();
    survey.pour(true, 3);
    Pour sloping = survey.pour(false, 3).orElseThrow();
    Pour alone = LevelSurvey.of(SQUARE, readings).orElseThrow().pour(false, 3).orElseThrow();
    assertThat(sloping).isEqualTo(alone);
  }

  @Test
  void readings_farther_apart_than_the_straightedge_tell_no_flatness() {
    String room = "room: {use: hall, outline: [[0 m, 0 m], [5 m, 0 m], [5 m, 4 m], [0 m, 4 m]]}";
    String corners = "[0 m, 0 m, 0 mm], [5 m, 0 m, 2 mm], [5 m, 4 m, 0 mm], [0 m, 4 m, 9 mm]";
    Facts far = Measured.of(Measured.scenario(room, "levels: {readings: [" + corners + "]}"));
    assertThat(far.number("step between readings")).isCloseTo(5000, within(1e-9));
    assertThat(far.find("flatness gap")).isNull();
    assertThat(far.find("hump")).isNull();
    assertThat(far.number("level difference")).isEqualTo(9);
    Facts said =
        Measured.of(
            Measured.scenario(
                room,
                "levels: {gap under 2 m straightedge: 4 mm, readings: [" + corners + "]}"));
    assertThat(said.number("flatness gap")).isEqualTo(4);
    // A far corner among near readings is as far from them.
    double apart =
        LevelSurvey.of(
                SQUARE,
                List.of(
                    new Reading(0, 0, 0),
                    new Reading(1000, 0, 0),
                    new Reading(0, 1200, 0),
                    new Reading(4000, 4000, 0)))
            .orElseThrow()
            .widestStep();
    assertThat(apart).isCloseTo(Math.hypot(4000, 2800), within(1e-9));
  }

  @Test
  void levels_that_did_not_change_are_not_worked_out_again() {
    Surveys surveys = new Surveys();
    String levels = "levels: {readings: [[0 m, 0 m, 0 mm], [3 m, 0 m, 2 mm], [0 m, 3 m, 5 mm]]}";
    Scenario one = Measured.scenario(levels);
    Scenario other = Measured.scenario(levels, "heating: none");
    Scenario moved = Measured.scenario(levels.replace("5 mm", "6 mm"));
    LevelSurvey first = surveys.of(one).orElseThrow();
    assertThat(surveys.of(other)).containsSame(first);
    assertThat(surveys.of(moved).orElseThrow()).isNotSameAs(first);
    assertThat(surveys.of(moved).orElseThrow().highest().z()).isEqualTo(6);
    assertThat(first.flatness(2000)).isSameAs(first.flatness(2000));
    assertThat(surveys.of(Measured.scenario(""))).isEmpty();
  }
}
