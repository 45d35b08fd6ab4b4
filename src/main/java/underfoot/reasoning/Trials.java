package underfoot.reasoning;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import underfoot.knowledge.Facts;
import underfoot.knowledge.InterviewBook;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;

/** One floor thought through with other values of what is asked. */
final class Trials {
  private final Scenario scenario;
  private final Advisor quick;
  private final InterviewBook order;
  private final DecisionDigest now;
  private final Facts held;
  private final Map<String, String> known;
  private final Map<String, Boolean> tried = new ConcurrentHashMap<>();
  private final Map<String, Optional<DecisionDigest>> gists = new ConcurrentHashMap<>();

  Trials(Advisor advisor, InterviewBook order, Map<String, String> known, Scenario scenario) {
    this.quick = advisor.remembering();
    this.order = order;
    this.known = known;
    this.scenario = scenario;
    Assessment assessment = quick.advise(scenario);
    this.now = DecisionDigest.of(assessment);
    this.held = assessment.factsOfChosen();
  }

  /** Whether what is known, all but what is said to be unknown, is the same. */
  boolean isOf(Map<String, String> others) {
    return known.equals(others);
  }

  /** Whether a place is one of such a floor at all. */
  boolean fits(Place place) {
    return order.fits(place.fact(), held);
  }

  /** With the likely values, another answer or another way. */
  boolean decides(Place place) {
    return any(
        "decides ",
        place,
        TriedValues.spoken(scenario, place),
        then -> then.verdict() != now.verdict() || !then.way().equals(now.way()));
  }

  /** With the likely values; what only others change is asked after those. */
  boolean soonMatter(Place place) {
    return any("soon ", place, TriedValues.spoken(scenario, place), then -> !then.equals(now));
  }

  /** With any value. */
  boolean matter(Place place) {
    return any("", place, TriedValues.of(scenario, place), then -> !then.equals(now));
  }

  private boolean any(
      String test, Place place, List<String> values, Predicate<DecisionDigest> changes) {
    return once(
        tried,
        test + place.id(),
        () -> values.stream().anyMatch(value -> gist(place, value).filter(changes).isPresent()));
  }

  private Optional<DecisionDigest> gist(Place place, String value) {
    return once(
        gists,
        place.id() + '\n' + value,
        () ->
            TriedValues.changed(scenario, place, value)
                .map(other -> DecisionDigest.of(quick.advise(other))));
  }

  /**
   * What is in the map, or else what the work brings. The map is not locked meanwhile: a floor is
   * thought through on all cores, and two questions that each held their place in the map could
   * wait for each other's core for ever. At worst something is worked out twice, alike.
   */
  private static <V> V once(Map<String, V> map, String key, Supplier<V> work) {
    V before = map.get(key);
    if (before != null) {
      return before;
    }
    V now = work.get();
    map.put(key, now);
    return now;
  }
}
