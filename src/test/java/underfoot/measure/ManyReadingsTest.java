package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
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
  @Timeout(value = 20, unit = TimeUnit.SECONDS)
  void ten_thousand_readings_are_searched_and_poured_within_seconds() {
    LevelSurvey survey = LevelSurvey.of(SQUARE, grid(100, 3)).orElseThrow();
    assertThat(survey.flatness(2000).gapMm()).isGreaterThan(5);
    Pour pour = survey.pour(true, 3).orElseThrow();
    assertThat(pour.areaM2()).isCloseTo(HALL * HALL / 1e6, within(1e-6));
  }

  @Test
  @Timeout(value = 20, unit = TimeUnit.SECONDS)
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
