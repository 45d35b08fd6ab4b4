package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.quantity.Words;

@DisplayName("The facts files")
class FactBookTest {

  @TempDir Path folder;

  @Test
  @DisplayName("give an example for each fact that reads as that fact")
  void examples() {
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      assertThat(fact.example()).as(fact.key()).isNotBlank();
      assertThat(fact.means()).as(fact.key()).isNotBlank();
      switch (fact.kind()) {
        case POINTS, RECTANGLE, READINGS, LIST, CHOICES -> {
          // Read as part of a whole scenario, below and in ItemsReadTest.
        }
        default ->
            assertThatCode(() -> Values.read(fact, fact.example(), 1000))
                .as(fact.key())
                .doesNotThrowAnyException();
      }
    }
  }

  @Test
  @DisplayName("give list examples that may stand in a scenario")
  void list_examples() throws Exception {
    Scenario scenario = Book.read(Book.LEAST);
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      if (fact.key().equals("zones[].outline")) {
        continue; // read with its zone, in FoundFloorTest
      }
      switch (fact.kind()) {
        case POINTS, READINGS, LIST, CHOICES ->
            assertThat(scenario.with(fact.key(), "", fact.example()).find(fact.key()).orElseThrow())
                .as(fact.key())
                .matches(StatedFact::known);
        default -> {
          // Read above.
        }
      }
    }
  }

  @Test
  @DisplayName("give other values that read as the fact, and differ from one another")
  void otherwise() throws Exception {
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      for (String value : fact.otherwise()) {
        assertThatCode(() -> Values.read(fact, value, 1000))
            .as("%s: %s", fact.key(), value)
            .doesNotThrowAnyException();
      }
      assertThat(fact.otherwise()).as(fact.key()).doesNotHaveDuplicates();
    }
  }

  @Test
  @DisplayName("let each other word stand for a choice that exists, and for one only")
  void synonyms() {
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      Map<String, String> all = new HashMap<>();
      fact.of().forEach(choice -> assertThat(all.put(Words.alike(choice), choice)).isNull());
      fact.also()
          .forEach(
              (word, choice) -> {
                assertThat(fact.of()).as("%s: %s", fact.key(), word).contains(choice);
                String before = all.put(Words.alike(word), choice);
                assertThat(before == null || before.equals(choice))
                    .as("%s: %s", fact.key(), word)
                    .isTrue();
              });
      fact.refused().keySet().forEach(word -> assertThat(all).doesNotContainKey(Words.alike(word)));
      assertThat(fact.least() > fact.most()).as(fact.key()).isFalse();
    }
  }

  @Test
  @DisplayName("call each fact by a name of its own")
  void names() {
    Map<String, String> names = new HashMap<>();
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      assertThat(names.put(Words.alike(fact.called()), fact.key())).as(fact.key()).isNull();
    }
  }

  @Test
  @DisplayName("take a new fact without any change of the program")
  void a_new_fact() throws Exception {
    copyShipped();
    Files.writeString(
        folder.resolve("facts/pets.yaml"),
        """
        house.dogs:
          called: dogs
          kind: count
          least: "0"
          most: "20"
          means: How many dogs will walk on the floor
          example: "2"
        house.claws:
          called: claws
          kind: choice
          of: [blunt, sharp]
          also: {pointed: sharp}
          means: What their claws are like
          example: blunt
        """);
    FactBook book = FactBook.load(RuleFiles.of(folder));
    Scenario scenario =
        new ScenarioReader(book)
            .read(
                "floor.yaml",
                (Book.LEAST + "house: {dogs: 3, claws: pointed}\n")
                    .getBytes(StandardCharsets.UTF_8));
    assertThat(scenario.find("house.dogs").orElseThrow().number()).isEqualTo(3);
    assertThat(scenario.find("claws").orElseThrow().text()).isEqualTo("sharp");
    assertThat(ScenarioSchema.of(book)).contains("\"claws\"");
  }

  @Test
  @DisplayName("are told all their own faults, with file, line and column")
  void own_faults() throws Exception {
    copyShipped();
    Files.writeString(
        folder.resolve("facts/pets.yaml"),
        """
        house.dogs:
          called: dogs
          kind: cuont
          means: How many dogs
        house.weight:
          kind: quantity
          means: How heavy
        house.claws:
          kind: choice
          colour: [red]
          means: Claws
        house.cats:
          kind: quantity
          dimension: length
          least: 2 kg
          means: Cats
        subfloor.deck:
          kind: text
          means: twice
        house.nothing:
        """);
    assertThatThrownBy(() -> FactBook.load(RuleFiles.of(folder)))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining("facts/pets.yaml:1:1: house.dogs needs a kind, but has \"cuont\"")
        .hasMessageContaining("house.weight is a quantity, so it needs a dimension")
        .hasMessageContaining("facts/pets.yaml:10:3: \"colour\" is not a property of a fact")
        .hasMessageContaining("house.claws needs its choices")
        .hasMessageContaining("least: \"2 kg\" is a mass, but a length is needed")
        .hasMessageContaining("the fact subfloor.deck is defined twice")
        .hasMessageContaining("the fact house.nothing has nothing under it");
  }

  @Test
  @DisplayName("are told of contradictions between facts that do not exist")
  void contradictions_of_unknown_facts() throws Exception {
    copyShipped();
    Files.writeString(
        folder.resolve("facts/contradictions.yaml"),
        """
        - {greater: subfloor.joists.breath, than: subfloor.joists.depth, says: "No"}
        - {one of: {subfloor.deck: [jelly]}, given: subfloor.thickness, says: "No"}
        - {smaller: a, than: b}
        """);
    assertThatThrownBy(() -> FactBook.load(RuleFiles.of(folder)))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining("1:13: \"subfloor.joists.breath\" is not a fact")
        .hasMessageContaining("write: subfloor.joists.breadth")
        .hasMessageContaining("\"jelly\" is not a choice of subfloor.deck")
        .hasMessageContaining("3:3: a contradiction has one of three forms");
  }

  @Test
  @DisplayName("are missed if the limits or contradictions are not there")
  void missing_files() throws Exception {
    copyShipped();
    Files.delete(folder.resolve("facts/limits.yaml"));
    assertThatThrownBy(() -> FactBook.load(RuleFiles.of(folder)))
        .isInstanceOf(ScenarioFaults.class)
        .hasMessageContaining("facts/limits.yaml: this file of the rule base is missing");
  }

  @Test
  @DisplayName("find a fact by the end of its key where only one ends so")
  void find() {
    assertThat(Book.SHIPPED.find("clear_span").orElseThrow().key())
        .isEqualTo("subfloor.joists.clear span");
    assertThat(Book.SHIPPED.find("doors.gap under leaf").orElseThrow().key())
        .isEqualTo("room.doors[].gap under leaf");
    assertThat(Book.SHIPPED.find("thickness")).isEmpty();
    assertThat(Book.SHIPPED.find("nothing")).isEmpty();
  }

  private void copyShipped() throws IOException {
    RuleFiles shipped = RuleFiles.shipped();
    Files.createDirectories(folder.resolve("facts"));
    for (String path : shipped.list("facts", ".yaml")) {
      Files.write(folder.resolve(path), shipped.read(path));
    }
  }
}
