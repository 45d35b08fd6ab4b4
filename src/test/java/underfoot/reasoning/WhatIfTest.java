package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.scenario.Scenario;

class WhatIfTest {
  private static List<WhatIf.Assumed> of(Scenario scenario) {
    return new WhatIf(Floors.advisor()).of(Floors.advisor().advise(scenario));
  }

  @Test
  void another_thickness_of_an_unmeasured_tile_changes_that_layer() throws Exception {
    Scenario floor = Floors.change(Floors.read("slab"), "tile.thickness", "unknown");
    WhatIf.Assumed tile =
        of(floor).stream()
            .filter(one -> one.key().equals("tile.thickness"))
            .findFirst()
            .orElseThrow();
    assertThat(tile.fact().text()).isEqualTo("12 mm");
    assertThat(tile.otherwise())
        .as("the assumed value itself is not tried")
        .extracting(WhatIf.Otherwise::value)
        .containsExactly("8 mm", "20 mm");
    WhatIf.Otherwise thinner = tile.otherwise().get(0);
    assertThat(thinner.fact()).isEqualTo("tile.thickness");
    assertThat(thinner.differences())
        .contains(
            new Difference(
                Difference.Kind.THICKNESS,
                List.of("tile"),
                "12 mm",
                "8 mm",
                "tile comes out at 8 mm instead of 12 mm"));
  }

  @Test
  void a_floor_of_which_all_is_said_rests_on_no_assumption_of_the_tile() throws Exception {
    assertThat(of(Floors.read("slab"))).noneMatch(one -> one.key().equals("tile.thickness"));
  }

  @Test
  void every_difference_is_a_real_one() throws Exception {
    Scenario floor = Floors.read("plain");
    Assessment now = Floors.advisor().advise(floor);
    for (WhatIf.Assumed one : new WhatIf(Floors.advisor()).of(now)) {
      for (WhatIf.Otherwise other : one.otherwise()) {
        Assessment then =
            Floors.advisor().advise(floor.with(one.key(), one.about(), other.value()));
        boolean same =
            now.verdict() == then.verdict()
                && now.chosen().map(BuildUp::stack).equals(then.chosen().map(BuildUp::stack))
                && now.of(underfoot.buildup.Remedy.class)
                    .equals(then.of(underfoot.buildup.Remedy.class))
                && now.of(underfoot.buildup.Caution.class)
                    .equals(then.of(underfoot.buildup.Caution.class));
        assertThat(same).as(one.key() + " = " + other.value()).isFalse();
        assertThat(other.differences()).isNotEmpty().allMatch(said -> !said.text().contains("<"));
      }
    }
  }
}
