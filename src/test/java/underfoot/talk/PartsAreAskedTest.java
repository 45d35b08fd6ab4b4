package underfoot.talk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Interview;
import underfoot.scenario.FactBook;
import underfoot.scenario.Place;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.Zone;

/**
 * The floor of a part of the room is asked as the room's own is: where it lies, then what it is.
 */
class PartsAreAskedTest {
  private static final FactBook BOOK = Floors.advisor().knowledge().facts();
  private static final String HALL =
      """
      scenario: Hall with a hearth
      practice: uk
      room: {use: hall, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 2 m], [0 m, 2 m]], storey: ground floor}
      subfloor: {deck: square-edged boards}
      tile: {material: porcelain, length: 600 mm, width: 300 mm}
      """;

  private final Conversation conversation;
  private Known known;

  PartsAreAskedTest() throws Exception {
    conversation =
        new Conversation(
            new Interview(Floors.advisor(), InterviewBook.load(RuleFiles.shipped(), BOOK)),
            new Phrases(Floors.advisor().knowledge().wording()));
    known = AnswerFile.read(BOOK, "hall.yaml", HALL.getBytes(StandardCharsets.UTF_8));
    known = conversation.begun(known);
  }

  private Reply say(String id, String words) {
    Place place = conversation.place(known, id).orElseThrow(() -> new AssertionError("no " + id));
    Reply reply = conversation.say(known, place, words, "");
    known = reply.known();
    return reply;
  }

  private Zone hearth() throws Exception {
    Scenario read =
        new ScenarioReader(BOOK).read("saved.yaml", known.file().getBytes(StandardCharsets.UTF_8));
    return read.zones().get(0);
  }

  private String nextId() {
    return conversation.next(known).map(asked -> asked.place().id()).orElse("");
  }

  @Test
  void a_part_that_is_named_is_placed_first_and_then_its_floor_is_asked() throws Exception {
    say("zones", "an old hearth");
    String name = known.answers().said().get("zones");
    assertThat(nextId()).isEqualTo("zones[].outline@" + name);
    Reply placed = say("zones[].outline@" + name, "1.2 x 0.5 m at 1.4 m, 0 m");
    assertThat(placed.answered()).as(placed.objection()).isTrue();

    Optional<Asked> asked = conversation.next(known);
    assertThat(asked.orElseThrow().place().zone()).isEqualTo(name);
    assertThat(asked.get().ask()).startsWith(name + ": ");
    assertThat(asked.get().place().fact().key()).isEqualTo("subfloor.deck");
    Reply told = say(asked.get().place().id(), "concrete slab");
    assertThat(told.told().get(0).called()).contains(name);

    assertThat(hearth().floor().find("subfloor.deck").orElseThrow().text())
        .isEqualTo("concrete slab");
    assertThat(hearth().floor().outline()).hasSize(4);
    assertThat(known.answers().scenario().find("subfloor.deck").orElseThrow().text())
        .as("the room's own floor stays what it is")
        .isEqualTo("square-edged boards");
    assertThat(conversation.interview().likely(known.answers()))
        .as("what the slab hides is asked of the part")
        .anyMatch(place -> place.zone().equals(name));
  }

  @Test
  void what_is_heard_beside_an_answer_on_a_part_is_of_that_part() throws Exception {
    say("zones", "extension");
    say("zones[].outline@extension", "from 3 m, 0 m to 4 m, 2 m");
    say("zones[extension].subfloor.deck", "square-edged boards");
    say("zones[extension].subfloor.joists.depth", "8x2s");
    String breadth = "subfloor.joists.breadth";
    assertThat(hearth().floor().find(breadth).orElseThrow().number()).isBetween(45.0, 51.0);
    assertThat(known.answers().scenario().find(breadth).orElseThrow().known()).isFalse();
  }

  @Test
  void the_layers_of_a_part_are_told_one_by_one_and_do_for_its_deck() throws Exception {
    say("zones", "extension");
    say("zones[].outline@extension", "1 m x 2 m at 3 m, 0 m");
    say("zones[extension].subfloor.carried by.kind", "slab on the ground");
    say("zones[extension].subfloor.as found", "insulation, screed, vinyl tiles");
    say("zones[extension].subfloor.as found[].thickness@insulation", "50 mm");
    assertThat(hearth().floor().entries("subfloor.as found[]")).hasSize(3);
    assertThat(known.answers().complete()).as("%s", known.answers().missing()).isTrue();
    Known again = AnswerFile.read(BOOK, "again", known.file().getBytes(StandardCharsets.UTF_8));
    assertThat(again.file()).isEqualTo(known.file());
  }

  @Test
  void a_guess_about_a_part_is_still_one_when_the_file_is_opened_again() throws Exception {
    say("zones", "extension");
    say("zones[].outline@extension", "1 m x 2 m at 3 m, 0 m");
    say("zones[extension].subfloor.deck", "some sort of screed");
    Known again = AnswerFile.read(BOOK, "again", known.file().getBytes(StandardCharsets.UTF_8));
    assertThat(again.taken().keySet()).isEqualTo(known.taken().keySet());
  }

  @Test
  void a_room_that_is_the_same_all_over_has_no_parts() {
    for (String words : List.of("no", "none", "it is the same all over")) {
      say("zones", words);
      assertThat(known.answers().said()).as(words).containsEntry("zones", "none");
      assertThat(known.answers().missing()).isEmpty();
    }
  }

  @Test
  void a_part_taken_back_takes_what_was_said_of_it_along() {
    say("zones", "extension");
    say("zones[].outline@extension", "1 m x 2 m at 3 m, 0 m");
    say("zones[extension].subfloor.deck", "concrete slab");
    Place zones = conversation.place(known, "zones").orElseThrow();
    assertThat(known.without(zones).answers().said().keySet())
        .noneMatch(id -> id.startsWith("zones"));
  }

  @Test
  void where_a_heavy_thing_stands_is_said_by_its_sides_and_its_corner() {
    say("room.heavy items", "bath");
    say("room.heavy items[].at@bath", "1.7 m x 0.7 m at 0.1 m, 0.2 m");
    assertThat(known.answers().said().get("room.heavy items[].at@bath"))
        .isEqualTo("[[100 mm, 200 mm], [1800 mm, 900 mm]]");
  }
}
