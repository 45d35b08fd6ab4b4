package underfoot.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/** A new deck over a dip stands higher over the dip than over the highest joist. */
class PackedDeckTest {
  private static final String GAP = "levels.gap under 2 m straightedge";
  private static final String DOOR = "landing door";

  private static Facts newDeck(Scenario scenario) {
    return Floors.advisor().advise(scenario).buildUps().stream()
        .filter(one -> one.way().equals("new deck"))
        .findFirst()
        .map(BuildUp::facts)
        .orElseThrow();
  }

  @Test
  void over_a_stated_dip_the_rise_goes_from_nothing_more_to_the_whole_dip() throws Exception {
    Scenario boards = Floors.read("boards");
    Facts even = newDeck(boards.with(GAP, "", "3 mm"));
    Facts dip = newDeck(boards.with(GAP, "", "6 mm"));
    assertThat(dip.number("rise least")).isEqualTo(even.number("rise least"));
    assertThat(dip.number("rise")).isCloseTo(even.number("rise") + 3, within(1e-9));
    assertThat(dip.number("rise most")).isCloseTo(even.number("rise most") + 6, within(1e-9));
    assertThat(dip.number("gap left", DOOR))
        .isCloseTo(even.number("gap left", DOOR) - 6, within(1e-9));
    assertThat(dip.number("mass added")).isEqualTo(even.number("mass added"));
  }

  @Test
  void where_the_floor_was_surveyed_the_packed_deck_is_measured_at_the_door() throws Exception {
    Scenario boards = Floors.read("boards");
    // The door stands in the low wall: the deck is packed up 8 mm there and by nothing opposite.
    Scenario low =
        boards
            .with(GAP, "", "unknown")
            .with("levels.wanted", "", "level")
            .with(
                "levels.readings",
                "",
                "[[0 m, 0 m, -8 mm], [3 m, 0 m, -8 mm], [3 m, 1.1 m, -8 mm], [0 m, 1.1 m, -8 mm],"
                    + " [3 m, 2.2 m, 0 mm], [0 m, 2.2 m, 0 mm]]");
    Facts even = newDeck(boards.with(GAP, "", "3 mm"));
    Facts packed = newDeck(low);
    assertThat(packed.number("packing most")).isCloseTo(8, within(1e-9));
    assertThat(packed.number("gap left", DOOR))
        .isCloseTo(even.number("gap left", DOOR) - 8, within(1e-6));
    assertThat(packed.find("gap left beside the pour", DOOR)).isNull();
  }
}
