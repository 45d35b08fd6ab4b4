package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Criterion;
import underfoot.buildup.Halt;
import underfoot.buildup.Offer;
import underfoot.buildup.RuledOut;
import underfoot.knowledge.Because;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Unknown;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Given;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * Why a material or a way of building is not what is recommended for a floor: the nearest build-up
 * with it, what refused that, the facts it failed on, and the smallest change that would let it in.
 *
 * @param counsel what is decided of the floor
 * @param standing how the nearest build-up with it stands
 * @param nearest that build-up; empty if no build-up with it was worked out
 * @param refusals what ruled it out, or ranked it behind; empty if it is recommended
 * @param failed the facts of the scenario, stated or assumed, that the refusals rest on
 * @param changes what would let it in, the least trouble first
 */
public record WhyNot(
    Counsel counsel,
    Standing standing,
    Optional<Candidate> nearest,
    List<Conclusion> refusals,
    List<Fact> failed,
    List<Opening> changes) {
  /** So many changes are told. */
  private static final int TOLD = 5;

  /** Copies the lists. */
  public WhyNot {
    refusals = List.copyOf(refusals);
    failed = List.copyOf(failed);
    changes = List.copyOf(changes);
  }

  /** How the nearest build-up with a material stands. */
  public enum Standing {
    /** It is the build-up recommended. */
    RECOMMENDED,
    /** It may be built too, but another comes first. */
    SECOND_CHOICE,
    /** It must not be built here. */
    RULED_OUT,
    /** No build-up with it was worked out: no rule asks for it on this floor. */
    NOT_ASKED_FOR,
    /** The floor as a whole is stopped, so nothing was worked out. */
    FLOOR_STOPPED
  }

  /**
   * A change that would let it in.
   *
   * @param asked what is changed and how; each as a scenario key, what it is about, and its value
   * @param least the change in steps it came from; empty if it is another value of a fact
   * @param then what is decided then
   */
  public record Opening(List<Asked> asked, Optional<LeastChange.Proposal> least, Counsel then) {
    /** Copies the list. */
    public Opening {
      asked = List.copyOf(asked);
    }
  }

  /**
   * A fact given another value.
   *
   * @param fact the fact
   * @param about which of several things it is about; empty for the room
   * @param was its value before, in words
   * @param is its value now
   */
  public record Asked(FactDefinition fact, String about, String was, String is) {}

  /**
   * Finds out.
   *
   * @param advisor who thinks the floor and its variants through
   * @param scenario the floor
   * @param with whether a build-up is one with the material asked about
   */
  public static WhyNot of(Advisor advisor, Scenario scenario, Predicate<Candidate> with) {
    Counsel counsel = advisor.advise(scenario);
    if (counsel.candidates().isEmpty()) {
      List<Conclusion> stops = new ArrayList<>(counsel.of(Halt.class));
      return new WhyNot(
          counsel,
          Standing.FLOOR_STOPPED,
          Optional.empty(),
          stops,
          failed(counsel.facts().all(), stops),
          List.of());
    }
    Optional<Candidate> nearest =
        counsel.candidates().stream()
            .filter(with)
            .min(Comparator.comparingInt(candidate -> refusals(candidate).size()));
    if (nearest.isEmpty()) {
      return new WhyNot(
          counsel,
          Standing.NOT_ASKED_FOR,
          nearest,
          List.of(),
          List.of(),
          openings(advisor, counsel, everyFact(scenario), with));
    }
    Candidate candidate = nearest.get();
    if (counsel.chosen().filter(chosen -> chosen == candidate).isPresent()) {
      return new WhyNot(counsel, Standing.RECOMMENDED, nearest, List.of(), List.of(), List.of());
    }
    List<Conclusion> refusals = refusals(candidate);
    if (candidate.stands()) {
      Predicate<Counsel> first = then -> then.chosen().filter(with).isPresent();
      return new WhyNot(
          counsel,
          Standing.SECOND_CHOICE,
          nearest,
          decisive(counsel, candidate),
          List.of(),
          stepwise(advisor, counsel, first));
    }
    List<Fact> failed = failed(candidate.facts().all(), refusals);
    return new WhyNot(
        counsel,
        Standing.RULED_OUT,
        nearest,
        refusals,
        failed,
        openings(advisor, counsel, about(scenario, failed), with));
  }

  /** The first criterion by which it is behind the build-up recommended. */
  private static List<Conclusion> decisive(Counsel counsel, Candidate behind) {
    for (Criterion criterion : counsel.criteria()) {
      double here = behind.facts().number(criterion.name());
      double there =
          counsel.chosen().map(one -> one.facts().number(criterion.name())).orElse(Double.NaN);
      if (here > there || (Double.isNaN(here) && !Double.isNaN(there))) {
        return List.of(criterion);
      }
    }
    return List.of();
  }

  private static List<Conclusion> refusals(Candidate candidate) {
    List<Conclusion> refusals = new ArrayList<>(candidate.of(RuledOut.class));
    candidate.of(Halt.class).stream().filter(Halt::isStop).forEach(refusals::add);
    return refusals;
  }

  /** The facts that conclusions rest on in the end: those stated, and those assumed. */
  private static List<Fact> failed(Collection<Fact> held, List<Conclusion> refusals) {
    Map<String, Fact> found = new LinkedHashMap<>();
    Map<String, Fact> byKey = new LinkedHashMap<>();
    held.forEach(fact -> byKey.put(fact.name() + '\n' + fact.about(), fact));
    Set<Object> seen = new LinkedHashSet<>();
    for (Conclusion refusal : refusals) {
      gather(refusal.because(), found, seen, byKey);
    }
    return List.copyOf(found.values());
  }

  private static void gather(
      Because because, Map<String, Fact> found, Set<Object> seen, Map<String, Fact> held) {
    if (because == null || !seen.add(because)) {
      return;
    }
    for (Object premise : because.premises()) {
      gather(premise, found, seen, held);
    }
  }

  private static void gather(
      Object premise, Map<String, Fact> found, Set<Object> seen, Map<String, Fact> held) {
    if (premise instanceof Fact fact && seen.add(fact)) {
      switch (fact.from()) {
        case SCENARIO, ASSUMED -> found.putIfAbsent(fact.name() + '\n' + fact.about(), fact);
        case MEASURED -> fact.uses().forEach(used -> gather(used, found, seen, held));
        default -> gather(fact.because(), found, seen, held);
      }
    } else if (premise instanceof Unknown unknown) {
      Fact assumed = held.get(unknown.name() + '\n' + unknown.about());
      if (assumed != null && assumed.from() == From.ASSUMED) {
        gather((Object) assumed, found, seen, held);
      }
    } else if (premise instanceof Conclusion conclusion && !(premise instanceof Offer)) {
      gather(conclusion.because(), found, seen, held);
    }
  }

  private static List<Given> about(Scenario scenario, List<Fact> facts) {
    List<Given> givens = new ArrayList<>();
    for (Fact fact : facts) {
      scenario.find(fact.key(), fact.about()).ifPresent(givens::add);
    }
    return givens;
  }

  private static List<Given> everyFact(Scenario scenario) {
    return scenario.givens();
  }

  /** Other values of facts, and changes in steps, with which a build-up with it stands. */
  private static List<Opening> openings(
      Advisor advisor, Counsel counsel, List<Given> givens, Predicate<Candidate> with) {
    // Where nothing stands anyway, it is let in if it is worked out at all.
    boolean nothingStands = counsel.candidates().stream().noneMatch(Candidate::stands);
    boolean workedOut = counsel.candidates().stream().anyMatch(with);
    Predicate<Counsel> stands =
        then ->
            then.candidates().stream()
                .anyMatch(one -> (one.stands() || (nothingStands && !workedOut)) && with.test(one));
    List<Opening> openings = new ArrayList<>(stepwise(advisor, counsel, stands));
    Set<String> changed = new LinkedHashSet<>();
    openings.forEach(one -> one.asked().forEach(asked -> changed.add(asked.fact().key())));
    Advisor quick = advisor.remembering();
    quick.begin(counsel.scenario());
    givens.parallelStream()
        .filter(given -> !changed.contains(given.key()))
        .flatMap(given -> otherValues(given).map(value -> new Other(given, value)))
        .map(other -> tried(quick, counsel.scenario(), other, stands))
        .flatMap(Optional::stream)
        .toList()
        .stream()
        .filter(one -> changed.add(one.asked().get(0).fact().key()))
        .forEach(openings::add);
    quick.end();
    openings.sort(Comparator.comparingInt(one -> one.asked().size()));
    return openings.subList(0, Math.min(TOLD, openings.size()));
  }

  /** Another value of a fact. */
  private record Other(Given given, String value) {}

  /** The values worth trying: every choice, yes and no, and those its definition names. */
  private static Stream<String> otherValues(Given given) {
    FactDefinition fact = given.definition();
    Set<String> values = new LinkedHashSet<>();
    if (fact.kind() == Kind.CHOICE) {
      values.addAll(fact.of());
    } else if (fact.kind() == Kind.YES_NO) {
      values.addAll(List.of("yes", "no"));
    }
    values.addAll(fact.otherwise());
    values.remove(given.text());
    return values.stream();
  }

  private static Optional<Opening> tried(
      Advisor advisor, Scenario scenario, Other other, Predicate<Counsel> stands) {
    Given given = other.given();
    try {
      Counsel then = advisor.advise(scenario.with(given.key(), given.about(), other.value()));
      return stands.test(then)
          ? Optional.of(
              new Opening(
                  List.of(
                      new Asked(given.definition(), given.about(), given.text(), other.value())),
                  Optional.empty(),
                  then))
          : Optional.empty();
    } catch (ScenarioFaults impossibleHere) {
      return Optional.empty();
    }
  }

  private static List<Opening> stepwise(
      Advisor advisor, Counsel counsel, Predicate<Counsel> wanted) {
    List<Opening> openings = new ArrayList<>();
    for (LeastChange.Proposal proposal : LeastChange.search(advisor, counsel, wanted)) {
      List<Asked> asked = new ArrayList<>();
      for (LeastChange.Altered one : proposal.altered()) {
        asked.add(new Asked(one.change().fact(), one.about(), one.was(), one.is()));
      }
      openings.add(new Opening(asked, Optional.of(proposal), proposal.then()));
    }
    return openings;
  }
}
