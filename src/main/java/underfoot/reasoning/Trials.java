package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import underfoot.knowledge.InterviewBook;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;

/** One floor thought through with other values of what is asked. */
final class Trials {
  private final Scenario scenario;
  private final Advisor quick;
  private final InterviewBook order;
  private final DecisionDigest now;
  private final Assessment assessment;
  private final int afforded;
  private final Map<String, String> known;
  private final JointTrials joint;
  private final Map<String, Set<Place>> groups = new ConcurrentHashMap<>();
  private final Map<String, Boolean> tried = new ConcurrentHashMap<>();
  private final Map<String, Optional<DecisionDigest>> gists = new ConcurrentHashMap<>();

  Trials(Advisor advisor, InterviewBook order, Map<String, String> known, Scenario scenario) {
    this.quick = advisor.remembering();
    this.order = order;
    this.known = known;
    this.scenario = scenario;
    this.assessment = quick.advise(scenario);
    this.now = DecisionDigest.of(assessment);
    this.afforded = Effort.ofTalk(assessment);
    this.joint = new JointTrials(scenario, now, other -> DecisionDigest.of(quick.advise(other)));
  }

  /** Whether what is known, all but what is said to be unknown, is the same. */
  boolean isOf(Map<String, String> others) {
    return known.equals(others);
  }

  /** Whether a place is one of such a floor at all. */
  boolean fits(Place place) {
    return order.fits(place.fact(), assessment.at(place.zone()).factsOfChosen());
  }

  /** Of many places those that can be tried: of two hundred doors a few in every respect. */
  List<Place> afforded(List<Place> places) {
    return afforded(places, place -> TriedValues.of(scenario, place).size());
  }

  /** The same with likely values only. */
  List<Place> affordedLikely(List<Place> places) {
    return afforded(places, place -> TriedValues.spoken(scenario, place).size());
  }

  private List<Place> afforded(List<Place> places, ToIntFunction<Place> costs) {
    return Effort.afforded(places, place -> place.fact().key() + place.zone(), costs, afforded);
  }

  /** With the likely values, another answer, another way, or something that can hurt. */
  boolean decides(Place place) {
    return order.isEarly(place.fact()) && soonMatter(place)
        || any("decides ", place, TriedValues.spoken(scenario, place), now::turnsInto)
        || together("decides", place, DecisionDigest::turnsInto);
  }

  /** With the likely values; what only others change is asked after those. */
  boolean soonMatter(Place place) {
    return isAlwaysAsked(place)
        || any("soon ", place, TriedValues.spoken(scenario, place), then -> !then.equals(now))
        || together("soon", place, (one, other) -> !one.equals(other));
  }

  /**
   * Whether it is asked of every floor on which what it comes after is known, and nothing that
   * answers it as well was said.
   */
  private boolean isAlwaysAsked(Place place) {
    InterviewBook.Help help = order.help(place.fact());
    return place.zone().isEmpty()
        && !help.text("always").isEmpty()
        && !known.containsKey(help.text("or"))
        && isAfter(help.text("after"), place);
  }

  private boolean isAfter(String key, Place place) {
    return key.isEmpty()
        || known.containsKey(place.beside(scenario.book().find(key).orElseThrow()).id());
  }

  /** With the likely values of it and of what goes together with it. */
  private boolean together(
      String test, Place place, BiPredicate<DecisionDigest, DecisionDigest> differ) {
    for (List<String> group : order.together()) {
      if (group.contains(place.fact().key())) {
        Set<Place> matter =
            once(
                groups,
                test + group + place.zone(),
                () -> {
                  List<Place> open = new ArrayList<>();
                  for (String key : group) {
                    Place one = place.beside(scenario.book().find(key).orElseThrow());
                    if (!known.containsKey(one.id()) && fits(one)) {
                      open.add(one);
                    }
                  }
                  return joint.matter(open, differ);
                });
        if (matter.contains(place)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Something that matters only together with something else; empty if nothing was found to. */
  Optional<Place> withOthers(List<Place> places) {
    return joint.any(places);
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
