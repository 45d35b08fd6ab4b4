package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underfoot.scenario.Scenario;

/** A part of a room knows how many spot heights lie on it, whether that is none, few or all. */
class PartsWithReadingsTest {
  private static Scenario floor(String use, String readings, String part) throws Exception {
    String text =
        """
        scenario: A room of parts
        practice: uk
        building: {built: 2020}
        subfloor: {deck: concrete slab}
        tile: {material: ceramic, length: 60 mm, width: 20 mm, thickness: 6 mm, pattern: herringbone}
        room: {use: %s, outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 2 m], [0 m, 2 m]]}
        levels: {readings: [%s]}
        zones: [{name: part, outline: %s, deck: concrete slab}]
        """
            .formatted(use, readings, part);
    return Floors.reader().read("parts", text.getBytes(StandardCharsets.UTF_8));
  }

  private static final String LEFT = "[[0 m, 0 m], [1.5 m, 0 m], [1.5 m, 2 m], [0 m, 2 m]]";
  private static final String RIGHT = "[[1.6 m, 0 m], [3 m, 0 m], [3 m, 2 m], [1.6 m, 2 m]]";
  private static final String THREE =
      "[0.2 m, 0.2 m, 0 mm], [1.2 m, 0.3 m, 9 mm], [0.7 m, 1.7 m, 4 mm]";

  @ParameterizedTest
  @ValueSource(strings = {"shower room", "wet room", "hall"})
  void a_room_and_its_part_are_answered_wherever_the_readings_lie(String use) throws Exception {
    for (String readings :
        List.of(THREE, "[0.2 m, 0.2 m, 0 mm]", "[0.2 m, 0.2 m, 0 mm], [1.4 m, 1.9 m, 9 mm]")) {
      for (String part : List.of(LEFT, RIGHT)) {
        Assessment assessment = Floors.advisor().advise(floor(use, readings, part));
        assertThat(assessment.buildUps()).isNotEmpty();
        assertThat(assessment.zones().get(0).assessment().buildUps()).isNotEmpty();
      }
    }
  }

  @Test
  void what_is_said_of_readings_is_how_many_lie_there() throws Exception {
    Scenario room = floor("hall", THREE, LEFT);
    assertThat(room.readings()).isEmpty();
    assertThat(room.find("levels.readings").orElseThrow().known()).isFalse();
    Scenario part = room.zones().get(0).floor();
    assertThat(part.find("levels.readings").orElseThrow().text()).isEqualTo("3 readings");
    Scenario elsewhere = floor("hall", THREE, RIGHT);
    assertThat(elsewhere.find("levels.readings").orElseThrow().text()).isEqualTo("3 readings");
    assertThat(elsewhere.zones().get(0).floor().find("levels.readings").orElseThrow().known())
        .isFalse();
  }
}
