package underfoot.talk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Interview;
import underfoot.scenario.FactBook;
import underfoot.scenario.Place;
import underfoot.scenario.RuleFiles;

/** Where a door is, is asked once the room has its walls, and may be said in one breath. */
class DoorsAreSaidTest {
  private static final FactBook BOOK = Floors.advisor().knowledge().facts();
  private static final String HALL =
      """
      scenario: Hall with two doors
      practice: uk
      room:
        use: hall
        storey: ground floor
        outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 2 m], [0 m, 2 m]]
        doors: [{name: front door}, {name: kitchen door, wall: 2, from: 0.5 m, width: 762 mm}]
      subfloor: {deck: square-edged boards}
      tile: {material: porcelain, length: 600 mm, width: 300 mm}
      """;

  private final Conversation conversation;
  private Known known;

  DoorsAreSaidTest() throws Exception {
    conversation =
        new Conversation(
            new Interview(Floors.advisor(), InterviewBook.load(RuleFiles.shipped(), BOOK)),
            new Phrases(Floors.advisor().knowledge().wording()));
    known = conversation.begun(AnswerFile.read(BOOK, "hall.yaml", bytes(HALL)));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private Reply say(String id, String words) {
    Place place = conversation.place(known, id).orElseThrow(() -> new AssertionError("no " + id));
    Reply reply = conversation.say(known, place, words, "");
    known = reply.known();
    return reply;
  }

  /** What is known of a door, by the last word of each fact. */
  private Map<String, String> of(String door) {
    return known.answers().said().entrySet().stream()
        .filter(one -> one.getKey().endsWith("@" + door))
        .collect(
            Collectors.toMap(
                one -> one.getKey().replaceAll("^room\\.doors\\[]\\.|@.*$", ""),
                Map.Entry::getValue));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wall 1, 0.4 m from the corner, 0.8 m wide, opens into the room, hinges on the left"
            + "|1|0.4 m|0.8 m|into the room|left",
        "wall 3, 1 ft from the corner, 30 in wide, opens out of the room, hinges on the right"
            + "|3|1 ft|30 in|out of the room|right",
        "number 0, 762 mm wide, 20 cm from the corner, it slides|0|20 cm|762 mm|sliding|",
        "1, a leaf 700 mm wide hung on the right, opens inwards, 60 cm along"
            + "|1|60 cm|700 mm|into the room|right",
        "0|0||||",
      })
  void all_of_a_door_may_be_said_at_once(
      String words, String wall, String from, String width, String opens, String hinge) {
    Reply reply = say("room.doors[].wall@front door", words);
    assertThat(reply.answered()).as(reply.objection()).isTrue();
    assertThat(of("front door"))
        .isEqualTo(
            Stream.of(
                    new String[] {"wall", wall},
                    new String[] {"from", from},
                    new String[] {"width", width},
                    new String[] {"opens", opens},
                    new String[] {"hinge", hinge})
                .filter(one -> one[1] != null)
                .collect(Collectors.toMap(one -> one[0], one -> one[1])));
    assertThat(of("kitchen door")).hasSize(3);
  }

  @Test
  void a_door_that_is_moved_is_held_against_where_it_is_now() {
    say("room.doors[].wall@front door", "wall 0, 3 m from the corner, 0.8 m wide, hinges left");
    Reply moved = say("room.doors[].wall@front door", "wall 1, 1 m from the corner, 0.9 m wide");
    assertThat(moved.answered()).as(moved.objection()).isTrue();
    assertThat(of("front door"))
        .containsEntry("wall", "1")
        .containsEntry("from", "1 m")
        .containsEntry("width", "0.9 m")
        .containsEntry("hinge", "left");
  }

  @Test
  void a_door_where_another_stands_or_past_its_wall_is_objected_to_and_what_was_known_stays() {
    Reply over = say("room.doors[].wall@front door", "wall 2, 0.4 m from the corner, 0.8 m wide");
    assertThat(over.answered()).isFalse();
    assertThat(over.objection()).contains("same place as").contains("kitchen door");
    Reply past = say("room.doors[].wall@front door", "wall 1, 1.5 m from the corner, 0.8 m wide");
    assertThat(past.answered()).isFalse();
    assertThat(past.objection()).contains("2000 mm long");
    assertThat(of("front door")).isEmpty();
  }

  @Test
  void where_a_door_is_is_asked_only_once_the_room_has_walls() throws Exception {
    assertThat(open())
        .contains("room.doors[].wall@front door")
        .doesNotContain("room.doors[].from@front door");
    say("room.doors[].wall@front door", "1");
    assertThat(open())
        .contains("room.doors[].from@front door", "room.doors[].width@front door")
        .doesNotContain("room.doors[].wall@front door");
    known =
        conversation.begun(
            AnswerFile.read(
                BOOK,
                "hall.yaml",
                bytes(
                    HALL.replaceAll("(?m)^ *outline:.*\n", "")
                        .replace(", wall: 2, from: 0.5 m", ""))));
    assertThat(open()).noneMatch(id -> id.startsWith("room.doors[].wall"));
  }

  private List<String> open() {
    return conversation.interview().likely(known.answers()).stream().map(Place::id).toList();
  }

  @Test
  void a_door_is_kept_in_the_scenario_file_and_read_back() throws Exception {
    say(
        "room.doors[].wall@front door",
        "wall 1, 0.4 m from the corner, 0.8 m wide, opens out of the room, hinges on the right");
    Map<String, String> before = of("front door");
    assertThat(known.file()).contains("hinge: right");
    known = AnswerFile.read(BOOK, "saved.yaml", bytes(known.file()));
    assertThat(of("front door")).isEqualTo(before).hasSize(5);
  }
}
