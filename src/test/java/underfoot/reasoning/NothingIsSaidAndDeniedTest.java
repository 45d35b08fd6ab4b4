package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * No two live rules say opposite things of one floor: what is opposite stands in opposites.yaml.
 * {@code -Dfloors=20000 -Dseed=7} makes up more floors.
 */
class NothingIsSaidAndDeniedTest {
  private static final int FLOORS = Integer.getInteger("floors", 600);
  private static final long SEED = Long.getLong("seed", 20261130L);

  private final Opposites opposites = new Opposites();
  private final Map<String, Integer> found = new TreeMap<>();
  private final Map<String, String> first = new TreeMap<>();

  private void look(Scenario scenario, String text) {
    Advisor listening = Floors.advisor().remembering();
    Assessment assessment = listening.advise(scenario);
    Set<String> all = new TreeSet<>(opposites.in(assessment));
    if (scenario.zones().isEmpty()) { // the parts of a room are floors of their own
      all.addAll(Opposites.twoValues(listening, assessment));
    }
    for (String one : all) {
      found.merge(one, 1, Integer::sum);
      first.putIfAbsent(one, text);
    }
  }

  private void report() {
    assertThat(found).as("the first: " + first.values().stream().findFirst()).isEmpty();
  }

  @Test
  void no_example_is_told_two_opposite_things() throws Exception {
    for (Path file : Floors.examples()) {
      look(Floors.reader().read(file.toString(), Files.readAllBytes(file)), file.toString());
    }
    report();
  }

  @Test
  void no_made_up_floor_is_told_two_opposite_things() {
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), SEED);
    int answered = 0;
    for (int i = 0; i < FLOORS; i++) {
      String text = floors.next(Map.of());
      try {
        look(Floors.reader().read("made-up", text.getBytes(StandardCharsets.UTF_8)), text);
        answered++;
      } catch (ScenarioFaults contradiction) {
        // It contradicts itself, so there is nothing to tell.
      }
    }
    assertThat(answered).isGreaterThan(FLOORS / 3);
    report();
  }

  @Test
  void every_opposite_names_what_the_rules_can_say() {
    Knowledge knowledge = Floors.advisor().knowledge();
    List<String> unknown = new ArrayList<>();
    opposites
        .rows()
        .forEach(
            (what, sides) -> {
              assertThat(sides).as(what).hasSizeGreaterThan(1);
              for (List<String> side : sides) {
                for (String thing : side) {
                  if (!known(knowledge, thing)) {
                    unknown.add(what + ": " + thing);
                  }
                }
              }
            });
    assertThat(unknown).isEmpty();
  }

  private static boolean known(Knowledge knowledge, String thing) {
    if (thing.startsWith("lay ")) {
      return knowledge.layers().has(thing.substring(4));
    }
    if (thing.startsWith("class ")) {
      return knowledge.layers().has(thing.split(" ")[1]);
    }
    return knowledge.wording().ids().contains(thing);
  }

  @Test
  void an_opposite_that_is_said_is_found() throws Exception {
    Scenario floor = Floors.read("slab");
    Assessment assessment = Floors.advisor().advise(floor);
    List<String> said =
        assessment.general().stream()
            .filter(one -> one instanceof underfoot.buildup.Caution)
            .map(one -> ((underfoot.buildup.Caution) one).wording())
            .distinct()
            .toList();
    assertThat(said).hasSizeGreaterThan(1);
    String one = said.get(new Random(SEED).nextInt(said.size() - 1));
    String other = said.get(said.size() - 1);
    assertThat(new Opposites(Map.of("both", List.of(List.of(one), List.of(other)))).in(assessment))
        .containsExactly("both: " + one + ", " + other);
    assertThat(new Opposites(Map.of("one side", List.of(List.of(one, other)))).in(assessment))
        .isEmpty();
    assertThat(
            new Opposites(Map.of("a layer", List.of(List.of(one), List.of("lay tile"))))
                .in(assessment))
        .isNotEmpty();
  }
}
