package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.IntStream;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;

/**
 * Several facts of one floor thought through at once: a joist's depth changes nothing while its
 * span is not known, and much when it is.
 */
final class JointTrials {
  /** How many values are tried of each of those that go together. */
  private static final int VALUES = 2;

  /** How many go together at most. */
  private static final int MOST = 5;

  private static final int SAMPLES = 24;
  private static final long SEED = 20_270_301L;

  private final Scenario scenario;
  private final DecisionDigest now;
  private final Function<Scenario, DecisionDigest> think;

  /**
   * @param scenario the floor as it is known
   * @param now what a person acts on of its advice
   * @param think the same for another floor
   */
  JointTrials(Scenario scenario, DecisionDigest now, Function<Scenario, DecisionDigest> think) {
    this.scenario = scenario;
    this.now = now;
    this.think = think;
  }

  /**
   * Which of those that go together matter: with the others held, one value of it brings another
   * advice than the other.
   *
   * @param places what goes together and is not known
   * @param differ when two advices differ for this purpose
   * @return those that matter, with any values of the others
   */
  Set<Place> matter(List<Place> places, BiPredicate<DecisionDigest, DecisionDigest> differ) {
    List<Place> tried = places.subList(0, Math.min(MOST, places.size()));
    int all = 1 << tried.size();
    List<Optional<DecisionDigest>> digests =
        IntStream.range(0, all).parallel().mapToObj(bits -> digest(tried, bits)).toList();
    Set<Place> matter = new HashSet<>();
    for (int i = 0; i < tried.size(); i++) {
      for (int bits = 0; bits < all; bits++) {
        Optional<DecisionDigest> one = digests.get(bits);
        Optional<DecisionDigest> other = digests.get(bits ^ 1 << i);
        if (one.isPresent() && other.isPresent() && differ.test(one.get(), other.get())) {
          matter.add(tried.get(i));
        }
      }
    }
    return matter;
  }

  /** The floor with the first or the last likely value of each, as the bits say. */
  private Optional<DecisionDigest> digest(List<Place> places, int bits) {
    Scenario floor = scenario;
    for (int i = 0; i < places.size(); i++) {
      List<String> values = TriedValues.spoken(scenario, places.get(i));
      if (values.size() < VALUES) {
        return Optional.empty();
      }
      String value = values.get((bits >> i & 1) == 0 ? 0 : values.size() - 1);
      Optional<Scenario> other = TriedValues.changed(floor, places.get(i), value);
      if (other.isEmpty()) {
        return Optional.empty();
      }
      floor = other.get();
    }
    return Optional.of(think.apply(floor));
  }

  /**
   * Something that matters only together with something else, whatever that is: all that is not
   * known is given values at once, and where that changes the advice, values are taken away again
   * until no fewer change it.
   *
   * @param places all that is not known, in the order it is asked
   * @return the first of those that change the advice together; empty if none were found to
   */
  Optional<Place> any(List<Place> places) {
    Map<Place, List<String>> values = new LinkedHashMap<>();
    places.forEach(place -> values.put(place, TriedValues.of(scenario, place)));
    return IntStream.range(0, SAMPLES)
        .parallel()
        .mapToObj(sample -> said(places, values, new Random(SEED + sample)))
        .filter(said -> differs(said))
        .findFirst()
        .map(said -> fewest(places, said));
  }

  private static Map<Place, String> said(
      List<Place> places, Map<Place, List<String>> values, Random random) {
    Map<Place, String> said = new LinkedHashMap<>();
    for (Place place : places) {
      List<String> of = values.get(place);
      String value = of.get(random.nextInt(of.size()));
      if (random.nextBoolean()) {
        said.put(place, value);
      }
    }
    return said;
  }

  private boolean differs(Map<Place, String> said) {
    Scenario floor = scenario;
    for (Map.Entry<Place, String> one : said.entrySet()) {
      floor = TriedValues.changed(floor, one.getKey(), one.getValue()).orElse(floor);
    }
    return !think.apply(floor).equals(now);
  }

  private Place fewest(List<Place> places, Map<Place, String> said) {
    Map<Place, String> needed = new LinkedHashMap<>(said);
    int chunk = Math.max(1, needed.size() / 2);
    while (true) {
      boolean fewer = false;
      List<Place> left = new ArrayList<>(needed.keySet());
      for (int i = 0; i < left.size(); i += chunk) {
        Map<Place, String> without = new LinkedHashMap<>(needed);
        left.subList(i, Math.min(left.size(), i + chunk)).forEach(without::remove);
        if (!without.isEmpty() && without.size() < needed.size() && differs(without)) {
          needed = without;
          fewer = true;
        }
      }
      if (!fewer && chunk == 1) {
        break;
      }
      chunk = Math.max(1, fewer ? chunk : chunk / 2);
    }
    Map<Place, String> last = needed;
    return places.stream().filter(last::containsKey).findFirst().orElseThrow();
  }
}
