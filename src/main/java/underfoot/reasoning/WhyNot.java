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
import underfoot.buildup.LayerClass;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Unknown;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/**
 * Why a material or a way of building is not what is recommended for a floor: the nearest build-up
 * with it, what refused that, the facts it failed on, and the smallest change that would let it in.
 *
 * @param assessment what is decided of the floor
 * @param standing how the nearest build-up with it stands
 * @param nearest that build-up; empty if no build-up with it was worked out
 * @param refusals what ruled it out, or ranked it behind; empty if it is recommended
 * @param failed the facts of the scenario, stated or assumed, that the refusals rest on
 * @param changes what would let it in, the least trouble first
 */
public record WhyNot(
    Assessment assessment,
    Standing standing,
    Optional<BuildUp> nearest,
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
    FLOOR_STOPPED,
    /** The material is laid, and this is the class asked of it. */
    CLASS_ASKED,
    /** The material is laid, and a higher class is asked of it. */
    CLASS_SHORT,
    /** The material is laid, and a lower class would do. */
    CLASS_MORE,
    /** The material is laid, and no class of that sort is asked of it. */
    CLASS_NOT_ASKED;

    /** Whether it is laid, and what was asked is its class. */
    public boolean isOfClass() {
      return this == CLASS_ASKED || this == CLASS_NOT_ASKED || isOtherClass();
    }

    /** Whether it is laid, but of another class than is asked. */
    public boolean isOtherClass() {
      return this == CLASS_SHORT || this == CLASS_MORE;
    }
  }

  /**
   * A change that would let it in.
   *
   * @param asked what is changed and how; each as a scenario key, what it is about, and its value
   * @param least the change in steps it came from; empty if it is another value of a fact
   * @param then what is decided then
   */
  public record Opening(List<Asked> asked, Optional<LeastChange.Proposal> least, Assessment then) {
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
   * @param thinker who thinks the floor and its variants through
   * @param scenario the floor
   * @param with whether a build-up is one with the material asked about
   */
  public static WhyNot of(Advisor thinker, Scenario scenario, Predicate<BuildUp> with) {
    Advisor noting = thinker.noting(); // one memory for the floor and all its variants
    Assessment assessment = noting.advise(scenario);
    Advisor advisor = noting.remembering();
    if (assessment.buildUps().isEmpty()) {
      List<Conclusion> stops = new ArrayList<>(assessment.of(StopFinding.class));
      return new WhyNot(
          assessment,
          Standing.FLOOR_STOPPED,
          Optional.empty(),
          stops,
          failed(assessment.facts().all(), stops),
          List.of());
    }
    Optional<BuildUp> nearest =
        assessment.everyBuildUp().stream()
            .filter(with)
            .min(Comparator.comparingInt(buildUp -> refusals(buildUp).size()));
    if (nearest.isEmpty()) {
      return new WhyNot(
          assessment,
          Standing.NOT_ASKED_FOR,
          nearest,
          List.of(),
          List.of(),
          openings(advisor, assessment, everyFact(scenario), letIn(assessment, with)));
    }
    BuildUp buildUp = nearest.get();
    if (assessment.chosen().filter(chosen -> chosen == buildUp).isPresent()) {
      return new WhyNot(assessment, Standing.RECOMMENDED, nearest, List.of(), List.of(), List.of());
    }
    List<Conclusion> refusals = refusals(buildUp);
    if (buildUp.stands()) {
      Predicate<Assessment> first = then -> then.chosen().filter(with).isPresent();
      return new WhyNot(
          assessment,
          Standing.SECOND_CHOICE,
          nearest,
          decisive(assessment, buildUp),
          List.of(),
          stepwise(advisor, assessment, first));
    }
    List<Fact> failed = failed(buildUp.facts().all(), refusals);
    return new WhyNot(
        assessment,
        Standing.RULED_OUT,
        nearest,
        refusals,
        failed,
        openings(advisor, assessment, about(scenario, failed), letIn(assessment, with)));
  }

  /**
   * The same of a class of a material that is laid in what is recommended: whether it is what is
   * asked of it there, and which rules ask for more. Where no class is asked, all stays as it is.
   *
   * @param thinker who thought the floor through
   * @param found what was found of the material whatever its class; recommended, or not asked for,
   *     or ruled out where nothing stands
   * @param layers the kinds of layer that the material may be
   * @param grade the class
   */
  public static WhyNot ofClass(Advisor thinker, WhyNot found, List<String> layers, String grade) {
    Knowledge knowledge = found.assessment().knowledge();
    List<String> scale = knowledge.scales().get(MaterialClasses.scaleOf(knowledge, grade));
    Optional<BuildUp> recommended = found.assessment().chosen();
    boolean nowhere = found.standing() == Standing.NOT_ASKED_FOR;
    boolean laid =
        found.standing() == Standing.RECOMMENDED
            || (found.standing() == Standing.RULED_OUT && recommended.isEmpty());
    List<LayerClass> asked =
        (laid ? found.nearest() : recommended)
            .map(one -> asked(one, layers, scale))
            .orElse(List.of());
    int most = most(asked, scale);
    int mine = scale.indexOf(grade);
    if (laid && asked.isEmpty()) {
      return new WhyNot(
          found.assessment(),
          Standing.CLASS_NOT_ASKED,
          found.nearest(),
          List.of(),
          List.of(),
          List.of());
    }
    if (asked.isEmpty() || !(laid || nowhere) || (nowhere && mine <= most)) {
      return found;
    }
    Standing standing =
        mine == most
            ? Standing.CLASS_ASKED
            : mine < most ? Standing.CLASS_SHORT : Standing.CLASS_MORE;
    List<Conclusion> because = new ArrayList<>();
    asked.stream()
        .sorted(Comparator.comparingInt(one -> -scale.indexOf(one.grade())))
        .filter(one -> scale.indexOf(one.grade()) >= Math.min(most, mine + 1))
        .forEach(because::add);
    if (!laid) {
      return new WhyNot(
          found.assessment(),
          found.standing(),
          found.nearest(),
          because,
          List.of(),
          found.changes());
    }
    if (standing != Standing.CLASS_SHORT) {
      return new WhyNot(
          found.assessment(), standing, found.nearest(), because, List.of(), List.of());
    }
    Advisor advisor = thinker.remembering();
    Predicate<Assessment> would =
        then ->
            then.chosen()
                .map(one -> asked(one, layers, scale))
                .filter(one -> !one.isEmpty() && most(one, scale) <= mine)
                .isPresent();
    List<Fact> failed = failed(found.nearest().get().facts().all(), because);
    return new WhyNot(
        found.assessment(),
        standing,
        found.nearest(),
        because,
        failed,
        openings(advisor, found.assessment(), about(found.assessment().scenario(), failed), would));
  }

  private static int most(List<LayerClass> asked, List<String> scale) {
    return asked.stream().mapToInt(one -> scale.indexOf(one.grade())).max().orElse(-1);
  }

  /** What is asked, by a scale of classes, of the topmost layer that is of such a material. */
  private static List<LayerClass> asked(BuildUp buildUp, List<String> layers, List<String> scale) {
    List<LayerClass> all =
        buildUp.of(LayerClass.class).stream().filter(one -> scale.contains(one.grade())).toList();
    List<String> stack = buildUp.stack().layers().stream().map(layer -> layer.kind().id()).toList();
    Predicate<LayerClass> itself = one -> layers.contains(one.layer());
    boolean laid = all.stream().anyMatch(itself);
    int top =
        all.stream()
            .filter(one -> !laid || itself.test(one))
            .mapToInt(one -> stack.indexOf(one.layer()))
            .max()
            .orElse(-1);
    return all.stream().filter(one -> stack.indexOf(one.layer()) == top).toList();
  }

  /** The first criterion by which it is behind the build-up recommended. */
  private static List<Conclusion> decisive(Assessment assessment, BuildUp behind) {
    for (Criterion criterion : assessment.criteria()) {
      double here = behind.facts().number(criterion.name());
      double there =
          assessment.chosen().map(one -> one.facts().number(criterion.name())).orElse(Double.NaN);
      if (here > there || (Double.isNaN(here) && !Double.isNaN(there))) {
        return List.of(criterion);
      }
    }
    return List.of();
  }

  private static List<Conclusion> refusals(BuildUp buildUp) {
    List<Conclusion> refusals = new ArrayList<>(buildUp.of(RuledOut.class));
    buildUp.of(StopFinding.class).stream().filter(StopFinding::isStop).forEach(refusals::add);
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
      Derivation because, Map<String, Fact> found, Set<Object> seen, Map<String, Fact> held) {
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
    } else if (premise instanceof Conclusion conclusion && !(premise instanceof OfferedWay)) {
      gather(conclusion.because(), found, seen, held);
    }
  }

  private static List<StatedFact> about(Scenario scenario, List<Fact> facts) {
    List<StatedFact> givens = new ArrayList<>();
    for (Fact fact : facts) {
      scenario.find(fact.key(), fact.about()).ifPresent(givens::add);
    }
    return givens;
  }

  private static List<StatedFact> everyFact(Scenario scenario) {
    return scenario.givens();
  }

  /** Whether a build-up with it stands. */
  private static Predicate<Assessment> letIn(Assessment assessment, Predicate<BuildUp> with) {
    // Where nothing stands anyway, it is let in if it is worked out at all.
    boolean nothingStands = assessment.everyBuildUp().stream().noneMatch(BuildUp::stands);
    boolean workedOut = assessment.everyBuildUp().stream().anyMatch(with);
    return then ->
        then.everyBuildUp().stream()
            .anyMatch(one -> (one.stands() || (nothingStands && !workedOut)) && with.test(one));
  }

  /** Other values of facts, and changes in steps, with which it is let in. */
  private static List<Opening> openings(
      Advisor advisor,
      Assessment assessment,
      List<StatedFact> givens,
      Predicate<Assessment> stands) {
    List<Opening> openings = new ArrayList<>(stepwise(advisor, assessment, stands));
    Set<String> changed = new LinkedHashSet<>();
    openings.forEach(one -> one.asked().forEach(asked -> changed.add(asked.fact().key())));
    List<Other> others =
        givens.stream()
            .filter(given -> !changed.contains(given.key()))
            .flatMap(given -> otherValues(given).map(value -> new Other(given, value)))
            .toList();
    int afforded = Effort.trials(assessment);
    Effort.some(others, one -> one.given().key(), afforded).parallelStream()
        .map(other -> tried(advisor, assessment.scenario(), other, stands))
        .flatMap(Optional::stream)
        .toList()
        .stream()
        .filter(one -> changed.add(one.asked().get(0).fact().key()))
        .forEach(openings::add);
    openings.sort(Comparator.comparingInt(one -> one.asked().size()));
    return openings.subList(0, Math.min(TOLD, openings.size()));
  }

  /** Another value of a fact. */
  private record Other(StatedFact given, String value) {}

  /** The values worth trying: every choice, yes and no, and those its definition names. */
  private static Stream<String> otherValues(StatedFact given) {
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
      Advisor advisor, Scenario scenario, Other other, Predicate<Assessment> stands) {
    StatedFact given = other.given();
    try {
      Assessment then = advisor.advise(scenario.with(given.key(), given.about(), other.value()));
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
      Advisor advisor, Assessment assessment, Predicate<Assessment> wanted) {
    List<Opening> openings = new ArrayList<>();
    for (LeastChange.Proposal proposal :
        LeastChange.search(advisor, assessment, wanted).proposals()) {
      List<Asked> asked = new ArrayList<>();
      for (LeastChange.Altered one : proposal.altered()) {
        asked.add(new Asked(one.change().fact(), one.about(), one.was(), one.is()));
      }
      openings.add(new Opening(asked, Optional.of(proposal), proposal.then()));
    }
    return openings;
  }
}
