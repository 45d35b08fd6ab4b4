package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.Unknown;
import underfoot.scenario.Answers;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.Zone;

/**
 * Which questions still matter for a floor. A fact is asked for only if one of its values would
 * change what a person acts on ({@link DecisionDigest}), given all that was said so far; the floor
 * is thought through again with each value to find that out. So no rule needs to say what is to be
 * asked, and a new rule's fact is asked by itself. Safe to share between threads.
 */
public final class Interview {
  private final Advisor advisor;
  private final InterviewBook order;
  private final DecisionDifferences differences;

  /** The floor tried last: not knowing more leaves it as it is, so what was tried still holds. */
  private final AtomicReference<Trials> last = new AtomicReference<>();

  /**
   * @param advisor who thinks the floors through
   * @param order in what order people are asked
   */
  public Interview(Advisor advisor, InterviewBook order) {
    this.advisor = advisor;
    this.order = order;
    this.differences = new DecisionDifferences(advisor.knowledge());
  }

  /**
   * Why something is asked.
   *
   * @param changes for each value that would change something: what would be decided otherwise
   * @param rules the rules that read the answer, or that it is not known
   */
  public record Why(List<WhatIf.Otherwise> changes, List<RuleNote> rules) {
    /** Copies the lists. */
    public Why {
      changes = List.copyOf(changes);
      rules = List.copyOf(rules);
    }
  }

  /**
   * Something not known, and what hangs on it.
   *
   * @param place what is not known
   * @param assumed what was taken for it; empty if nothing was
   * @param changes what other values would change
   */
  public record Hanging(Place place, String assumed, List<WhatIf.Otherwise> changes) {
    /** Copies the list. */
    public Hanging {
      changes = List.copyOf(changes);
    }
  }

  /** In what order people are asked, and what helps them. */
  public InterviewBook book() {
    return order;
  }

  /** Who thinks the floors through. */
  public Advisor advisor() {
    return advisor;
  }

  /** Answers with what can be said in one way only, such as whose guidance applies, said. */
  public static Answers begun(Answers answers) {
    Answers more = answers;
    for (Place place : answers.missing()) {
      if (place.fact().kind() == Kind.CHOICE && place.fact().of().size() == 1) {
        try {
          more = more.with(place, place.fact().of().get(0));
        } catch (ScenarioFaults e) {
          throw new IllegalStateException("the only choice there is, is refused", e);
        }
      }
    }
    return more;
  }

  /** The places of a floor in the order a person is asked, answered or not. */
  public List<Place> inOrder(Answers answers) {
    Map<String, Integer> rank = new LinkedHashMap<>();
    for (InterviewBook.Part part : order.parts()) {
      for (String key : part.facts()) {
        rank.putIfAbsent(key, rank.size());
      }
    }
    List<Place> places = new ArrayList<>(answers.places());
    List<String> zones = answers.scenario().zones().stream().map(Zone::name).toList();
    places.sort(
        Comparator.<Place>comparingInt(place -> rank.getOrDefault(place.fact().key(), 9_999))
            .thenComparingInt(place -> zones.indexOf(place.zone())));
    return byEntry(places);
  }

  /** All that is asked of one entry of a list together, before the next entry. */
  private static List<Place> byEntry(List<Place> places) {
    List<Place> all = new ArrayList<>();
    Set<String> lists = new LinkedHashSet<>();
    for (Place place : places) {
      String list = place.fact().list();
      if (list.isEmpty()) {
        all.add(place);
      } else if (lists.add(place.zone() + list)) {
        Map<String, List<Place>> entries = new LinkedHashMap<>();
        for (Place one : places) {
          if (one.fact().list().equals(list) && one.zone().equals(place.zone())) {
            entries.computeIfAbsent(one.about(), about -> new ArrayList<>()).add(one);
          }
        }
        entries.values().forEach(all::addAll);
      }
    }
    return all;
  }

  /** What the rules make of the answers; empty while required facts are missing. */
  public Optional<Assessment> assessment(Answers answers) {
    return answers.complete() ? Optional.of(advisor.advise(answers.scenario())) : Optional.empty();
  }

  /**
   * The next question; empty if no answers could change anything, one alone or several at once.
   * First come those of which a likely answer could hurt, stop the work or bring another way of
   * building ({@link #decides}), then all others.
   */
  public Optional<Place> next(Answers answers) {
    List<Place> missing = required(answers);
    if (!missing.isEmpty()) {
      return Optional.of(missing.get(0));
    }
    Trials trials = trials(answers);
    List<Place> unanswered = unanswered(answers, trials);
    List<Place> likely = trials.affordedLikely(unanswered);
    List<Place> all = trials.afforded(unanswered);
    return first(likely, trials::decides)
        .or(() -> first(likely, trials::soonMatter))
        .or(() -> first(all, trials::matter))
        .or(() -> trials.withOthers(all));
  }

  private static Optional<Place> first(List<Place> places, Predicate<Place> test) {
    return places.stream().filter(test).findFirst(); // each floor is thought through on all cores
  }

  /**
   * Whether a place is a required one, or a likely answer to it, alone or with what goes together
   * with it, could change the answer in one word, bring a danger or another way of building.
   */
  public boolean decides(Answers answers, Place place) {
    return !answers.complete() || trials(answers).decides(place);
  }

  /**
   * Whether a question can be asked of this floor at all: not for the sheets of a floor of boards.
   */
  boolean fits(Answers answers, Place place) {
    return !answers.complete() || trials(answers).fits(place);
  }

  /** The questions that matter with likely values, in order; quicker than {@link #open}. */
  public List<Place> likely(Answers answers) {
    return likely(answers, () -> false);
  }

  /**
   * The same, unless nobody waits for it any more.
   *
   * @param late whether that is so; then no more is tried, and what is told is not all
   */
  public List<Place> likely(Answers answers, BooleanSupplier late) {
    return open(
        answers,
        Trials::affordedLikely,
        (trials, place) -> !late.getAsBoolean() && trials.soonMatter(place));
  }

  /** All questions that matter as things stand, in the order they are asked. */
  public List<Place> open(Answers answers) {
    return open(answers, Trials::afforded, Trials::matter);
  }

  private List<Place> open(
      Answers answers,
      BiFunction<Trials, List<Place>, List<Place>> afforded,
      BiPredicate<Trials, Place> matters) {
    List<Place> missing = required(answers);
    if (!missing.isEmpty()) {
      return missing;
    }
    Trials trials = trials(answers);
    return afforded.apply(trials, unanswered(answers, trials)).parallelStream()
        .filter(place -> matters.test(trials, place))
        .toList();
  }

  private Trials trials(Answers answers) {
    Map<String, String> known = new TreeMap<>(answers.said());
    known.values().removeIf(Answers.UNKNOWN::equals);
    Trials before = last.get();
    if (before != null && before.isOf(known)) {
      return before;
    }
    Trials now = new Trials(advisor, order, known, answers.scenario());
    last.set(now);
    return now;
  }

  private List<Place> required(Answers answers) {
    List<Place> missing = answers.missing();
    return inOrder(answers).stream().filter(missing::contains).toList();
  }

  private List<Place> unanswered(Answers answers, Trials trials) {
    return inOrder(answers).stream()
        .filter(place -> !answers.has(place) && !answers.isSaidOtherwise(place))
        .filter(trials::fits)
        .toList();
  }

  /** Why a place is asked for, as things stand. Empty lists while required facts are missing. */
  public Why why(Answers answers, Place place) {
    if (!answers.complete()) {
      return new Why(List.of(), List.of());
    }
    Scenario scenario = answers.scenario();
    Assessment now = advisor.advise(scenario);
    Map<String, RuleNote> rules = new TreeMap<>();
    readers(now.at(place.zone()), place, rules);
    List<WhatIf.Otherwise> changes = new ArrayList<>();
    Set<List<Difference>> told = new LinkedHashSet<>();
    for (String value : TriedValues.spoken(scenario, place)) {
      Optional<Scenario> other = TriedValues.changed(scenario, place, value);
      if (other.isPresent()) {
        Assessment then = advisor.advise(other.get());
        readers(then.at(place.zone()), place, rules);
        List<Difference> said = differences.of(now, then);
        if (!said.isEmpty() && told.add(said)) {
          changes.add(WhatIf.otherwise(place, value, now, then, said));
        }
      }
    }
    return new Why(changes, List.copyOf(rules.values()));
  }

  /** The rules that matched what is said, or not known, of a place. */
  private static void readers(Assessment assessment, Place place, Map<String, RuleNote> found) {
    List<Object> all = new ArrayList<>(assessment.general());
    all.addAll(assessment.facts().all());
    for (BuildUp buildUp : assessment.everyBuildUp()) {
      all.addAll(buildUp.concluded());
      all.addAll(buildUp.facts().all());
    }
    for (Object one : all) {
      Derivation because =
          one instanceof Conclusion conclusion
              ? conclusion.because()
              : one instanceof Fact fact ? fact.because() : null;
      if (because != null && because.premises().stream().anyMatch(each -> is(each, place))) {
        found.putIfAbsent(because.rule().key(), because.rule());
      }
    }
  }

  private static boolean is(Object premise, Place place) {
    String key = place.fact().key();
    return premise instanceof Fact fact && fact.key().equals(key)
        || premise instanceof Unknown unknown && unknown.key().equals(key);
  }

  /**
   * What is not known and matters most: first what could stop the work, then what could change the
   * answer, then the way, then what changes most; among equals in the order of the questions.
   *
   * @param answers all that was said
   * @param most how many at most
   * @param late whether nobody waits for it any more; then what is told is not all
   */
  public List<Hanging> first(Answers answers, int most, BooleanSupplier late) {
    return answers.complete()
        ? new HangingSearch(advisor, differences).first(answers, inOrder(answers), most, late)
        : List.of();
  }

  /** What was assumed for a place that is not known, as things stand. */
  public Optional<String> assumed(Answers answers, Place place) {
    return assessment(answers).map(assessment -> HangingSearch.assumed(assessment).get(place.id()));
  }
}
