package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Remedy;
import underfoot.scenario.Scenario;

/** What must wait in a room waits in its parts, though the room itself asks nobody for it. */
class GatesReachPartsTest {
  private static List<String> putRightFirst(int built) throws Exception {
    String text =
        """
        scenario: Old tiles in the room and in a part of it
        practice: uk
        subfloor:
          deck: existing ceramic tiles
          carried by: {kind: earth or rubble}
        room: {use: bathroom, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]]}
        building: {built: %d}
        tile: {material: porcelain, length: 300 mm, width: 300 mm}
        zones:
          - name: by the window
            outline: [[0 m, 0 m], [1 m, 0 m], [1 m, 1 m], [0 m, 1 m]]
            as found: [{name: top, kind: sheet vinyl, thickness: 3 mm},
                       {name: old tiles, kind: stone tiles}]
        """
            .formatted(built);
    Scenario floor = Floors.reader().read("parts", text.getBytes(StandardCharsets.UTF_8));
    Assessment room = Floors.advisor().advise(floor);
    assertThat(room.chosen()).isEmpty();
    assertThat(room.zones().get(0).assessment().of(Remedy.class))
        .extracting(Remedy::wording)
        .contains("take-up-found-tiles");
    return room.of(Remedy.class).stream().map(Remedy::wording).toList();
  }

  @Test
  void old_tiles_taken_up_in_a_part_wait_for_the_sample_in_the_room() throws Exception {
    assertThat(putRightFirst(1982)).containsOnlyOnce("asbestos-beneath-old-floor-sampled");
  }

  @Test
  void where_the_house_is_too_young_for_asbestos_nothing_waits() throws Exception {
    assertThat(putRightFirst(2010)).doesNotContain("asbestos-beneath-old-floor-sampled");
  }
}
