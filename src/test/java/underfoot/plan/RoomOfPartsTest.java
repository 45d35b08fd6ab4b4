package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Fact;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.reasoning.ZonePart;
import underfoot.scenario.Scenario;

/** Money, days and doors are the whole room's, whatever lies in which part of it. */
class RoomOfPartsTest {
  private static final Path ROOM =
      Path.of("scenarios/kitchen-where-an-extension-meets-boards.yaml");

  private static Assessment room(String key, String value) throws Exception {
    Scenario room = Floors.reader().read(ROOM.toString(), Files.readAllBytes(ROOM));
    return Floors.advisor().advise(key.isEmpty() ? room : Floors.change(room, key, value));
  }

  private static double number(Assessment room, String fact) {
    return room.chosen().orElseThrow().facts().number(fact);
  }

  private static Assessment alone() throws Exception {
    Scenario room = Floors.reader().read(ROOM.toString(), Files.readAllBytes(ROOM));
    return Floors.advisor()
        .advise(
            new Scenario(
                room.file(),
                room.name(),
                room.practice(),
                room.givens(),
                room.outline(),
                room.readings(),
                java.util.List.of(),
                room.book()));
  }

  @Test
  void a_budget_that_pays_for_the_rest_of_the_room_alone_is_told_not_to_reach() throws Exception {
    double whole = number(room("", ""), "cost");
    double budget = Math.floor(whole * 0.7);
    Assessment room = room("budget.limit", budget + " GBP");
    assertThat(number(room, "cost")).isCloseTo(whole, within(0.01));
    assertThat(number(room, "over budget")).isCloseTo(whole - budget, within(0.01));
    assertThat(room.of(ClientLimit.class))
        .extracting(ClientLimit::wording)
        .contains("over-the-budget");
  }

  @Test
  void a_budget_that_pays_for_all_of_it_is_kept_and_no_part_speaks_of_money() throws Exception {
    double whole = number(room("", ""), "cost");
    Assessment room = room("budget.limit", Math.ceil(whole) + " GBP");
    assertThat(room.of(ClientLimit.class)).isEmpty();
    for (ZonePart part : room.zones()) {
      assertThat(part.assessment().facts().find("budget")).isNull();
      assertThat(part.assessment().of(ClientLimit.class)).isEmpty();
    }
  }

  @Test
  void every_way_is_set_beside_the_others_at_what_the_whole_room_costs_and_takes()
      throws Exception {
    Assessment room = room("", "");
    for (BuildUp way : room.buildUps()) {
      double cost = way.facts().number("cost");
      double rest =
          alone().buildUps().stream()
              .filter(one -> one.way().equals(way.way()))
              .findFirst()
              .orElseThrow()
              .facts()
              .number("cost");
      assertThat(cost).as(way.way()).isNotNaN().isNotCloseTo(rest, within(1.0));
    }
  }

  @Test
  void a_part_in_which_no_door_stands_asks_nobody_to_describe_one() throws Exception {
    Assessment room = room("", "");
    ZonePart part = room.zones().get(0);
    Fact door = part.assessment().facts().find("door", "hall door");
    assertThat(door).isNull();
    assertThat(part.assessment().of(Conclusion.class))
        .noneMatch(
            one -> one instanceof Caution care && care.wording().equals("measure-every-door"));
  }
}
