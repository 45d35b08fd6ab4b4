package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Halt;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Target;
import underfoot.buildup.Verdict;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * Whatever floor is described, there is one clear answer, and the answer keeps the trade's rules.
 */
class EveryFloorIsAnsweredTest {
  private static final int RANDOM_FLOORS = Integer.getInteger("floors", 1500);

  @Test
  void every_pair_of_deck_and_use_and_of_deck_and_tile_and_of_deck_and_heating_is_answered() {
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), 7);
    List<String> wrong = new ArrayList<>();
    int answered = 0;
    for (String deck : choices("subfloor.deck")) {
      for (String[] other : pairs()) {
        Map<String, String> fixed = new HashMap<>();
        fixed.put("subfloor.deck", deck);
        fixed.put(other[0], other[1]);
        answered += check(floors.next(fixed), wrong) ? 1 : 0;
      }
    }
    report(wrong, answered);
  }

  @Test
  void random_floors_are_answered() {
    long seed = Long.getLong("seed", 20261125L);
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), seed);
    List<String> wrong = new ArrayList<>();
    int answered = 0;
    for (int i = 0; i < RANDOM_FLOORS; i++) {
      answered += check(floors.next(Map.of()), wrong) ? 1 : 0;
    }
    report(wrong, answered);
  }

  private static void report(List<String> wrong, int answered) {
    if (!wrong.isEmpty()) {
      Map<String, Integer> sorts = new TreeMap<>();
      wrong.forEach(one -> sorts.merge(one.lines().findFirst().orElse(""), 1, Integer::sum));
      fail(
          wrong.size() + " floors are answered wrongly, " + sorts + "; the first: " + wrong.get(0));
    }
    assertThat(answered).as("floors that are no contradiction").isGreaterThan(100);
  }

  private static List<String[]> pairs() {
    List<String[]> pairs = new ArrayList<>();
    for (String key :
        List.of("room.use", "tile.material", "heating.kind", "subfloor.beneath", "room.storey")) {
      for (String value : choices(key)) {
        pairs.add(new String[] {key, value});
      }
    }
    return pairs;
  }

  private static List<String> choices(String key) {
    return Floors.advisor().knowledge().facts().find(key).orElseThrow().of();
  }

  /** Whether the floor is no contradiction; what is wrong with its answer goes on the list. */
  private static boolean check(String yaml, List<String> wrong) {
    Scenario scenario;
    try {
      scenario = Floors.reader().read("made-up.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    } catch (ScenarioFaults contradiction) {
      return false;
    }
    try {
      Counsel counsel = Floors.advisor().advise(scenario);
      Invariants.check(counsel);
    } catch (AssertionError | RuntimeException e) {
      wrong.add(e + "\n" + yaml);
    }
    return true;
  }

  /** What holds of every answer. */
  static final class Invariants {
    private Invariants() {}

    static void check(Counsel counsel) {
      boolean stops = counsel.verdict() == Verdict.STOP;
      assertThat(counsel.chosen().isPresent())
          .as("a build-up unless the work stops")
          .isNotEqualTo(stops);
      if (stops) {
        assertThat(
                counsel.general().stream().anyMatch(one -> one instanceof Halt)
                    || counsel.candidates().stream().anyMatch(c -> !c.of(Halt.class).isEmpty()))
            .as("a stop is explained")
            .isTrue();
        return;
      }
      Candidate chosen = counsel.chosen().orElseThrow();
      List<StackLayer> layers = chosen.stack().layers();
      assertThat(layers.get(layers.size() - 1).kind().id()).as("the top layer").isEqualTo("tile");
      assertThat(chosen.stack().has("tile-bed")).as("a tile bed").isTrue();
      LayerThickness rise = chosen.stack().rise();
      double sum = layers.stream().mapToDouble(layer -> layer.thickness().mean()).sum();
      assertThat(rise.mean()).isCloseTo(sum, within(1e-9));
      assertThat(rise.min()).isLessThanOrEqualTo(rise.mean());
      assertThat(rise.mean()).isLessThanOrEqualTo(rise.max());
      assertThat(counsel.of(Target.class)).as("a coverage target").isNotEmpty();
      boolean remedies = !counsel.of(Remedy.class).isEmpty();
      if (counsel.verdict() == Verdict.SOUND) {
        assertThat(remedies).as("remedies under sound").isFalse();
      }
      if (chosen.facts().text("base family").equals("timber")) {
        assertThat(chosen.stack().has("plain-leveller"))
            .as("a leveller without fibres on timber")
            .isFalse();
      }
      if (chosen.facts().text("base").equals("calcium sulfate screed")
          && !chosen.stack().has("new-screed")) {
        assertThat(chosen.stack().has("sulfate-sealer")).as("calcium sulfate sealed").isTrue();
      }
      if (chosen.facts().text("wetness").equals("soaked")) {
        assertThat(chosen.stack().has("tanking") || chosen.stack().has("membrane-sealing"))
            .as("a soaked floor is sealed")
            .isTrue();
      }
      for (StackLayer layer : layers) {
        assertThat(layer.because()).isNotEmpty();
      }
    }
  }
}
