package underfoot.reasoning;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.Scenario;

/**
 * How much may be tried of one floor. What a trial takes grows with what the floor holds, so the
 * work of a search is known before it starts; where not everything can be tried, the advice says
 * so.
 */
final class Effort {
  private static final String EFFORT = "trials-effort";

  private Effort() {}

  /** How often a floor may be thought through again in one search; at least once. */
  static int trials(Knowledge knowledge, Scenario scenario) {
    double most = knowledge.figures().get(EFFORT).value() / scenario.givens().size();
    return (int) Math.max(1, most);
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
