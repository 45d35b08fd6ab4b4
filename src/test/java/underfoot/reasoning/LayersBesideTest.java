package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.scenario.ScenarioFaults;

/** What may lie on what: the table is whole, and all that rules lay keeps it. */
class LayersBesideTest {
  private static final int FLOORS = Integer.getInteger("floors", 60);
  private static final long SEED = 20261130L;

  private static final LayersBeside BESIDE =
      new LayersBeside(Floors.advisor().rules(), Floors.advisor().knowledge());

  @Test
  void whatever_rules_lay_on_example_floors_and_made_up_ones_keeps_the_table() throws Exception {
    Map<String, String> wrong = new TreeMap<>();
    for (Path file : Floors.examples()) {
      look(Floors.reader().read(file.toString(), Files.readAllBytes(file)), file, wrong);
    }
    for (int i = 0; i < FLOORS; i++) {
      try {
        String yaml = Floors.madeUp(SEED + i);
        Path name = Path.of("made-up-" + (SEED + i));
        look(Floors.reader().read(name.toString(), yaml.getBytes("UTF-8")), name, wrong);
      } catch (ScenarioFaults contradiction) {
        // what contradicts itself is no floor
      }
    }
    assertThat(wrong).as("rulings broken by what rules lay, with the first floor").isEmpty();
  }

  private static void look(
      underfoot.scenario.Scenario floor, Path name, Map<String, String> wrong) {
    StackKinds kinds = new StackKinds(Floors.advisor().knowledge());
    for (BuildUp buildUp : Floors.advisor().advise(floor).buildUps()) {
      if (!buildUp.stands()) {
        continue; // what is ruled out is not laid
      }
      List<String> stack = kinds.of(buildUp);
      for (LayersBeside.Wrong one : BESIDE.wrong(stack)) {
        wrong.putIfAbsent(
            one.ruling().because().rule().key()
                + ": "
                + one.pair().upper()
                + " on "
                + one.pair().lower(),
            name + ", " + buildUp.way() + ": " + stack);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Map<String, List<String>>> stacks() {
    return new YAMLMapper().readValue(new File("src/test/resources/neighbours.yaml"), Map.class);
  }

  private static Set<String> broken(List<String> stack) {
    Set<String> rules = new TreeSet<>();
    assertThat(stack).allMatch(BESIDE::knows);
    BESIDE.wrong(stack).forEach(one -> rules.add(one.ruling().because().rule().key()));
    return rules;
  }

  @TestFactory
  Stream<DynamicTest> each_neighbour_rule_has_a_stack_that_breaks_it_and_one_that_keeps_it() {
    return stacks().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      assertThat(broken(one.getValue().get("breaks"))).contains(one.getKey());
                      assertThat(broken(one.getValue().get("keeps"))).isEmpty();
                    }));
  }

  @Test
  void no_neighbour_rule_is_without_its_two_stacks() {
    Set<String> without = new TreeSet<>();
    for (Rule rule : Floors.advisor().rules().set().of(Pass.NEXT)) {
      if (!rule.id().equals("NEXT-01")) { // allows, and so is broken by nothing
        without.add(rule.key());
      }
    }
    without.removeAll(stacks().keySet());
    assertThat(without).isEmpty();
  }

  @Test
  void every_kind_of_layer_has_a_passport() {
    List<String> without = new ArrayList<>();
    Floors.advisor()
        .knowledge()
        .layers()
        .all()
        .forEach(
            layer -> {
              if (!BESIDE.knows(layer.id())) {
                without.add(layer.id());
              }
            });
    assertThat(without).isEmpty();
  }
}
