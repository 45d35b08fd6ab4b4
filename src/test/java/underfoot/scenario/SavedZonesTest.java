package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that are saved keep what the file they went on from says of parts of the room. */
class SavedZonesTest {
  private final FactBook book = Book.SHIPPED;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "scenarios/hall-of-boards-with-an-old-hearth.yaml",
        "scenarios/kitchen-where-an-extension-meets-boards.yaml",
        "src/test/resources/floors/zones.yaml",
        "src/test/resources/floors/zones-of-timber.yaml"
      })
  void every_part_with_all_that_is_said_of_it_comes_back(String file) throws Exception {
    byte[] content = Files.readAllBytes(Path.of(file));
    List<Zone> zones = new ScenarioReader(book).read(file, content).zones();
    assertThat(zones).isNotEmpty();

    String saved = Answers.of(book, file, content).file(List.of(), place -> "");
    byte[] again = saved.getBytes(StandardCharsets.UTF_8);
    List<Zone> back = new ScenarioReader(book).read("saved.yaml", again).zones();

    assertThat(told(back)).isEqualTo(told(zones));
    assertThat(Answers.of(book, "saved.yaml", again).file(List.of(), place -> ""))
        .as("saved once more")
        .isEqualTo(saved);
  }

  @ParameterizedTest
  @ValueSource(strings = "src/test/resources/floors/zones.yaml")
  void one_more_answer_leaves_the_parts_as_they_are(String file) throws Exception {
    Answers answers = Answers.of(book, file, Files.readAllBytes(Path.of(file)));
    Place stairs = new Place(book.find("room.stairs").orElseThrow(), "");
    assertThat(told(answers.with(stairs, "yes").scenario().zones()))
        .isEqualTo(told(answers.scenario().zones()));
    Place surface = new Place(book.find("zones[].surface").orElseThrow(), "later slab");
    assertThat(answers.with(surface, "7 mm").file(List.of(), place -> ""))
        .contains("surface: 7 mm", "outline: [[", "deck: ");
  }

  private static List<String> told(List<Zone> zones) {
    return zones.stream()
        .map(
            zone ->
                zone.name()
                    + zone.floor().outline()
                    + zone.floor().givens().stream()
                        .filter(given -> given.said() && given.definition().ofTheFloorItself())
                        .map(given -> given.key() + given.about() + given.text())
                        .toList())
        .toList();
  }
}
