package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * Whatever floor is described, there is one clear answer, and the answer keeps the trade's rules.
 */
class EveryFloorIsAnsweredTest {
  private static final int RANDOM_FLOORS = Integer.getInteger("floors", 1500);

  /** Of so many floors one is also held against its neighbours, which takes ten times as long. */
  private static final int NEIGHBOURS = Integer.getInteger("neighbours", 40);

  /** Floors made up for a pair before it is held to be a contradiction. */
  private static final int TRIES = 4;

  /** Of the whole space of deck, use, tile and heating every so many is walked; 1 is all of it. */
  private static final int WHOLE = Integer.getInteger("every", 17);

  /** Any two of these are tried together, each with each value. */
  private static final List<String> CHOICES =
      List.of(
          "subfloor.deck",
          "room.use",
          "tile.material",
          "heating.kind",
          "subfloor.beneath",
          "room.storey");

  private int walked;

  @Test
  void every_pair_of_ordinary_choices_is_answered() {
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), 7);
    List<String> wrong = new ArrayList<>();
    int made = 0;
    int answered = 0;
    for (int i = 0; i < CHOICES.size(); i++) {
      for (int j = i + 1; j < CHOICES.size(); j++) {
        for (String one : choices(CHOICES.get(i))) {
          for (String other : choices(CHOICES.get(j))) {
            Map<String, String> fixed = Map.of(CHOICES.get(i), one, CHOICES.get(j), other);
            made++;
            boolean possible = false;
            for (int tries = 0; tries < TRIES && !possible; tries++) {
              possible = check(floors.next(fixed), wrong);
            }
            answered += possible ? 1 : 0;
          }
        }
      }
    }
    report(wrong, made, answered);
  }

  @Test
  void every_deck_with_every_use_tile_and_heating_is_answered() {
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), 11);
    List<String> wrong = new ArrayList<>();
    int made = 0;
    int answered = 0;
    for (String deck : choices("subfloor.deck")) {
      for (String use : choices("room.use")) {
        for (String tile : choices("tile.material")) {
          for (String heating : choices("heating.kind")) {
            if (made++ % WHOLE != 0) {
              continue;
            }
            answered +=
                check(
                        floors.next(
                            Map.of(
                                "subfloor.deck", deck,
                                "room.use", use,
                                "tile.material", tile,
                                "heating.kind", heating)),
                        wrong)
                    ? 1
                    : 0;
          }
        }
      }
    }
    report(wrong, made / WHOLE, answered);
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
    report(wrong, RANDOM_FLOORS, answered);
  }

  private static void report(List<String> wrong, int made, int answered) {
    System.getLogger("underfoot.walk")
        .log(
            Level.INFO,
            "{0} combinations made up, {1} answered, {2} are contradictions",
            made,
            answered,
            made - answered);
    if (!wrong.isEmpty()) {
      Map<String, Integer> sorts = new TreeMap<>();
      wrong.forEach(one -> sorts.merge(one.lines().findFirst().orElse(""), 1, Integer::sum));
      fail(
          wrong.size() + " floors are answered wrongly, " + sorts + "; the first: " + wrong.get(0));
    }
    assertThat(answered).as("floors that are no contradiction").isGreaterThan(100);
  }

  private static List<String> choices(String key) {
    return Floors.advisor().knowledge().facts().find(key).orElseThrow().of();
  }

  /** Whether the floor is no contradiction; what is wrong with its answer goes on the list. */
  private boolean check(String yaml, List<String> wrong) {
    Scenario scenario;
    try {
      scenario = Floors.reader().read("made-up.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    } catch (ScenarioFaults contradiction) {
      return false;
    }
    try {
      Assessment assessment = Floors.advisor().advise(scenario);
      Invariants.check(assessment);
      if (++walked % NEIGHBOURS == 0) {
        Neighbours.check(assessment);
      }
    } catch (AssertionError | RuntimeException | ScenarioFaults e) {
      wrong.add(e + "\n" + yaml);
    }
    return true;
  }
}
