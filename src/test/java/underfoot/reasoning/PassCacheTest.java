package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Fact;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/** A memory makes variants of a floor quicker and changes nothing of them. */
@Tag("slow")
class PassCacheTest {
  private static final int FLOORS = Integer.getInteger("recalled", 3);
  private static final long SEED = Long.getLong("seed", 5L);

  @TestFactory
  Stream<DynamicTest> every_variant_of_a_floor_is_decided_as_if_it_stood_alone() throws Exception {
    List<Scenario> floors = new ArrayList<>();
    floors.add(Floors.read("plain"));
    List<Path> examples = Floors.examples();
    for (int i = 0; i < examples.size(); i += 5) {
      Path file = examples.get(i);
      floors.add(Floors.reader().read(file.getFileName().toString(), Files.readAllBytes(file)));
    }
    RandomFloors random = new RandomFloors(Floors.advisor().knowledge().facts(), SEED);
    while (floors.size() < examples.size() / 5 + FLOORS) {
      try {
        byte[] text = random.next(Map.of()).getBytes(StandardCharsets.UTF_8);
        floors.add(Answers.of(Floors.advisor().knowledge().facts(), "made up", text).scenario());
      } catch (ScenarioFaults contradiction) {
        // another, then
      }
    }
    return floors.stream()
        .map(floor -> DynamicTest.dynamicTest(floor.name(), () -> assertAlike(floor)));
  }

  private static void assertAlike(Scenario floor) {
    Advisor plain = Floors.advisor();
    Advisor quick = plain.remembering();
    assertThat(said(quick.advise(floor))).isEqualTo(said(plain.advise(floor)));
    int tried = 0;
    for (Scenario variant : variants(floor)) {
      Assessment recalled = quick.advise(variant);
      Assessment fresh = plain.advise(variant);
      assertThat(recalled.verdict()).isEqualTo(fresh.verdict());
      assertThat(sorted(recalled)).isEqualTo(sorted(fresh));
      tried++;
    }
    assertThat(tried).as("variants").isGreaterThan(20);
  }

  @Test
  void what_is_noted_of_a_floor_is_said_of_it_with_its_own_reasons() throws Exception {
    for (Path file : Floors.examples().subList(0, 3)) {
      Scenario floor =
          Floors.reader().read(file.getFileName().toString(), Files.readAllBytes(file));
      assertThat(reasons(Floors.advisor().noting().advise(floor)))
          .isEqualTo(reasons(Floors.advisor().advise(floor)));
    }
  }

  /** How each fact of each way came to be held. */
  private static List<String> reasons(Assessment assessment) {
    return assessment.buildUps().stream()
        .flatMap(way -> way.facts().all().stream())
        .map(fact -> fact + " " + fact.how() + " " + fact.because())
        .toList();
  }

  @Test
  void what_is_said_of_a_variant_does_not_depend_on_those_before_it() throws Exception {
    Scenario floor = Floors.read("plain");
    Advisor forwards = Floors.advisor().remembering();
    Advisor shuffled = Floors.advisor().remembering();
    forwards.advise(floor);
    shuffled.advise(floor);
    List<Scenario> variants = variants(floor);
    List<String> said = variants.stream().map(one -> said(forwards.advise(one))).toList();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < variants.size(); i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(SEED));
    for (int i : order) {
      assertThat(said(shuffled.advise(variants.get(i)))).isEqualTo(said.get(i));
    }
  }

  /** Each fact with each other value worth trying, and each that is said taken back. */
  private static List<Scenario> variants(Scenario floor) {
    List<Scenario> variants = new ArrayList<>();
    for (FactDefinition definition : floor.book().definitions()) {
      if (!definition.ofEntries()) {
        definition.otherwise().forEach(value -> add(floor, definition, value, variants));
      }
    }
    for (StatedFact given : floor.givens()) {
      if (!given.definition().required() && given.about().isEmpty()) {
        add(floor, given.definition(), Answers.UNKNOWN, variants);
      }
    }
    return variants;
  }

  private static void add(
      Scenario floor, FactDefinition definition, String value, List<Scenario> variants) {
    try {
      variants.add(floor.with(definition.key(), "", value));
    } catch (ScenarioFaults contradictsThisFloor) {
      // no variant of this floor
    }
  }

  private static String said(Assessment assessment) {
    return String.join("\n", lines(assessment));
  }

  /**
   * Conclusions of a pass come in another order where sessions were left open, and what a rule says
   * twice over, each time for another reason, may be said once.
   */
  private static List<String> sorted(Assessment assessment) {
    return lines(assessment).stream().distinct().sorted().toList();
  }

  private static List<String> lines(Assessment assessment) {
    List<String> said = new ArrayList<>();
    assessment.general().stream().map(Conclusion::toString).forEach(said::add);
    int place = 0;
    for (BuildUp buildUp : assessment.buildUps()) {
      String way = ++place + " " + buildUp.way() + ' ';
      said.add(way + buildUp.stack().rise());
      buildUp.concluded().forEach(one -> said.add(way + one));
      for (Fact fact : buildUp.facts().all()) {
        said.add(way + fact.says() + '@' + fact.about() + ' ' + fact.number());
      }
    }
    return said;
  }
}
