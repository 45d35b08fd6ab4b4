package underfoot.reasoning;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.Scenario;
import underfoot.scenario.Zone;

/**
 * How much may be tried of one floor. What a trial takes grows with what the floor holds, so the
 * work of a search is known before it starts; where not everything can be tried, the advice says
 * so.
 */
final class Effort {
  private static final String EFFORT = "trials-effort";
  private static final String ROUNDS = "trials-effort-of-levels";
  private static final String CORNER = "trials-effort-of-a-corner";

  private Effort() {}

  /** How often a floor may be thought through again in one search; at least once. */
  static int trials(Knowledge knowledge, Scenario scenario) {
    double most = knowledge.figures().get(EFFORT).value() / of(knowledge, scenario);
    return (int) Math.max(1, most);
  }

  /**
   * How much there is to think of in a floor: what may be said of it and of each of its parts,
   * which is a floor of its own, and the corners of the room, in which tiles and boards are cut.
   */
  static double of(Knowledge knowledge, Scenario scenario) {
    double corner = knowledge.figures().get(CORNER).value();
    double work = scenario.givens().size() + corner * scenario.outline().size();
    if (!scenario.zones().isEmpty()) {
      for (Zone zone : scenario.zones()) {
        work += of(knowledge, zone.floor());
      }
      work *= knowledge.figures().get(ROUNDS).value();
    }
    return work;
  }

  /**
   * The order of trying: the first of each key, then the second of each, and so on, so that of many
   * doors a few are tried in every respect.
   *
   * @return places in the list given
   */
  static <T> List<Integer> inTurn(List<T> things, Function<T, String> key) {
    Map<String, Integer> met = new HashMap<>();
    List<Integer> turns =
        things.stream().map(one -> met.merge(key.apply(one), 1, Integer::sum)).toList();
    return IntStream.range(0, things.size())
        .boxed()
        .sorted(Comparator.comparing(turns::get))
        .toList();
  }

  /** So many of some things at most, those whose turn comes first, in the order given. */
  static <T> List<T> some(List<T> things, Function<T, String> key, int most) {
    return inTurn(things, key).stream().limit(most).sorted().map(things::get).toList();
  }
}
