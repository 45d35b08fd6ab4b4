package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import underfoot.knowledge.Figures;

/**
 * How much may be tried of one floor. What a trial takes grows with what is thought of the floor,
 * so the work of a search is known before it starts; where not everything can be tried, the advice
 * says so.
 */
final class Effort {
  private static final String EFFORT = "trials-effort";
  private static final String TALK = "interview-effort";
  private static final String WAY = "trials-effort-of-a-way";
  private static final String CORNER = "trials-effort-of-a-corner";
  private static final String ROUNDS = "trials-effort-of-levels";

  private Effort() {}

  /** How often a floor may be thought through again to find the next question about it. */
  static int ofTalk(Assessment assessment) {
    return (int) (assessment.knowledge().figures().get(TALK).value() / of(assessment));
  }

  /** How often a floor may be thought through again in one search; never, if it is too much. */
  static int trials(Assessment assessment) {
    return (int) (assessment.knowledge().figures().get(EFFORT).value() / of(assessment));
  }

  /**
   * How much there was to think of in a floor, counted in facts and conclusions: those of the floor
   * and of each way of building worked out, what each way takes besides, and the corners of the
   * room, in which tiles and boards are cut; for each part of the room anew.
   */
  static double of(Assessment assessment) {
    Figures figures = assessment.knowledge().figures();
    double work = ways(assessment);
    for (Assessment other : assessment.others()) {
      work += ways(other);
    }
    work += figures.get(CORNER).value() * assessment.scenario().outline().size();
    if (!assessment.zones().isEmpty()) {
      for (ZonePart part : assessment.zones()) {
        work += of(part.assessment());
      }
      work *= figures.get(ROUNDS).value();
    }
    return work;
  }

  private static double ways(Assessment assessment) {
    double way = assessment.knowledge().figures().get(WAY).value();
    double work = assessment.facts().all().size() + assessment.general().size();
    for (BuildUp buildUp : assessment.buildUps()) {
      work += way + buildUp.facts().all().size() + buildUp.concluded().size();
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

  /** Those things whose turn comes before so much is spent, in the order given. */
  static <T> List<T> afforded(
      List<T> things, Function<T, String> key, ToIntFunction<T> costs, int most) {
    List<Integer> some = new ArrayList<>();
    int left = most;
    for (int one : inTurn(things, key)) {
      int cost = costs.applyAsInt(things.get(one));
      left -= cost;
      if (left >= 0 || cost == 0) {
        some.add(one);
      }
    }
    return some.stream().sorted().map(things::get).toList();
  }

  /** So many of some things at most, those whose turn comes first, in the order given. */
  static <T> List<T> some(List<T> things, Function<T, String> key, int most) {
    return inTurn(things, key).stream().limit(most).sorted().map(things::get).toList();
  }
}
