package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rectangle is said by its sides and where it lies, in whatever units. */
class CornersTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1.2 m x 0.5 m at 0.4 m, 0.1 m",
        "1.2 x 0.5 at 0.4, 0.1 m",
        "1200 mm by 500 mm at 400 mm and 100 mm",
        "120 x 50 cm, at 40, 10 cm",
        "0.4 m, 0.1 m to 1.6 m, 0.6 m",
        "from 0.4, 0.1 m to 1.6, 0.6 m"
      })
  void one_rectangle_is_meant_by_all_of_these(String words) {
    assertThat(Corners.placed(Kind.RECTANGLE, words))
        .contains("[[400 mm, 100 mm], [1600 mm, 600 mm]]");
    assertThat(Corners.placed(Kind.POINTS, words))
        .contains("[[400 mm, 100 mm], [1600 mm, 100 mm], [1600 mm, 600 mm], [400 mm, 600 mm]]");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1.2 m x 0.5 m",
        "at the wall",
        "1.2 x 0.5 at 0.4, 0.1",
        "[[0 m, 0 m], [1 m, 1 m]]",
        ""
      })
  void what_tells_no_place_or_no_unit_is_no_placed_rectangle(String words) {
    assertThat(Corners.placed(Kind.RECTANGLE, words)).isEmpty();
  }

  @Test
  void nothing_else_is_read_as_corners() {
    assertThat(Corners.placed(Kind.TEXT, "1 m x 1 m at 0 m, 0 m")).isEmpty();
  }
}
