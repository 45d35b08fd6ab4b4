package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What stands on the floor, as a scenario says it. */
@DisplayName("Heavy things")
class ItemsReadTest {
  private static Scenario read(String items) throws ScenarioFaults {
    return Book.read(Book.LEAST + "\nitems: " + items + "\n");
  }

  @Test
  @DisplayName("stand at the end of a scenario or within the room, by item or by name")
  void two_places() throws Exception {
    Scenario scenario =
        read("[{item: bath, mass: 280 kg, at: [[1.8 m, 0.1 m], [0.1 m, 0.8 m]], feet: 4}]");
    assertThat(scenario.entries("room.heavy items[]")).containsExactly("bath");
    assertThat(scenario.find("room.heavy items[].mass", "bath").orElseThrow().number())
        .isEqualTo(280);
    assertThat(scenario.find("room.heavy items[].feet", "bath").orElseThrow().text())
        .isEqualTo("four feet");
    Value.Box box =
        (Value.Box) scenario.find("room.heavy items[].at", "bath").orElseThrow().value();
    assertThat(box).isEqualTo(new Value.Box(new Point(100, 100), new Point(1800, 800)));
    assertThat(box.text()).isEqualTo("[[100 mm, 100 mm], [1800 mm, 800 mm]]");
    Scenario elsewhere = scenario.with("room.heavy items[].at", "bath", "[[0 m, 0 m], [1 m, 1 m]]");
    assertThat(elsewhere.find("room.heavy items[].at", "bath").orElseThrow().text())
        .isEqualTo("[[0 mm, 0 mm], [1000 mm, 1000 mm]]");
  }

  @Test
  @DisplayName("take up a rectangle between two corners that lie apart both ways")
  void corners() {
    assertThatThrownBy(() -> read("[{item: bath, at: [[0 m, 0 m], [1 m, 0 m]]}]"))
        .hasMessageContaining("at is as narrow as a line");
    assertThatThrownBy(() -> read("[{item: bath, at: [[0 m, 0 m]]}]"))
        .hasMessageContaining("at needs two opposite corners, but has one value");
    assertThatThrownBy(() -> read("[{item: bath, at: [0 m, 0 m]}]"))
        .hasMessageContaining("at: each entry is [x, y]");
    assertThatThrownBy(() -> read("[{item: bath, at: 2 m}]"))
        .hasMessageContaining("a list is needed");
  }

  @Test
  @DisplayName("need a name, and one of their own")
  void names() {
    assertThatThrownBy(() -> read("[{mass: 280 kg}]")).hasMessageContaining("name is missing");
    assertThatThrownBy(() -> read("[{item: bath, name: tub}]"))
        .hasMessageContaining("stands twice");
    assertThatThrownBy(() -> read("[{item: bath}, {item: bath}]"))
        .hasMessageContaining("two entries are called");
  }
}
