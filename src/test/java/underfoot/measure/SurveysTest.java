package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import underfoot.scenario.Scenario;

/** The levels of a floor are worked out once for as long as nothing that tells them changes. */
class SurveysTest {
  private static Scenario floor(int height, String... more) {
    String readings =
        "levels: {readings: [[0 mm, 0 mm, 0 mm], [2000 mm, 0 mm, %d mm], [0 mm, 2000 mm, 0 mm]]}"
            .formatted(height);
    String[] lines = new String[more.length + 1];
    lines[0] = readings;
    System.arraycopy(more, 0, lines, 1, more.length);
    return Measured.scenario(lines);
  }

  @Test
  void the_same_readings_in_the_same_room_are_searched_once() {
    Surveys surveys = new Surveys();
    LevelSurvey first = surveys.of(floor(3)).orElseThrow();
    assertThat(surveys.of(floor(3))).containsSame(first);
    assertThat(surveys.of(floor(3, "site: {air temperature: 18 C}"))).containsSame(first);
  }

  @Test
  void other_readings_or_another_outline_are_another_floor() {
    Surveys surveys = new Surveys();
    LevelSurvey first = surveys.of(floor(3)).orElseThrow();
    LevelSurvey second = surveys.of(floor(4)).orElseThrow();
    assertThat(second).isNotSameAs(first);
    assertThat(second.highest().z()).isEqualTo(4);
    LevelSurvey walled =
        surveys
            .of(
                floor(
                    3,
                    "room: {use: hall, outline: [[0 m, 0 m], [2 m, 0 m], [2 m, 2 m], [0 m, 2 m]]}"))
            .orElseThrow();
    assertThat(walled).isNotSameAs(first);
    assertThat(walled.floor().vertices()).hasSize(4);
  }

  @Test
  void what_was_asked_for_long_ago_is_let_go_and_worked_out_afresh() {
    Surveys surveys = new Surveys();
    LevelSurvey first = surveys.of(floor(1)).orElseThrow();
    for (int height = 2; height <= 12; height++) {
      surveys.of(floor(height));
    }
    LevelSurvey again = surveys.of(floor(1)).orElseThrow();
    assertThat(again).isNotSameAs(first);
    assertThat(again.flatness(2000).gapMm()).isEqualTo(first.flatness(2000).gapMm());
    assertThat(again.highest()).isEqualTo(first.highest());
  }

  @Test
  void a_floor_with_fewer_than_two_readings_tells_no_levels() {
    assertThat(new Surveys().of(Measured.scenario())).isEmpty();
    assertThat(new Surveys().of(Measured.scenario("levels: {readings: [[0 mm, 0 mm, 0 mm]]}")))
        .isEmpty();
  }
}
