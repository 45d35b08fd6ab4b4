package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Unknown;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.State;
import underfoot.scenario.StatedFact;

/** What would be decided if what was assumed were otherwise: the floor is thought through again. */
public final class WhatIf {
  private final Advisor quick;
  private final Knowledge knowledge;

  /**
   * @param advisor who thinks the floor through again
   */
  public WhatIf(Advisor advisor) {
    this.quick = advisor.remembering();
    this.knowledge = advisor.knowledge();
  }

  /**
   * Another value of a fact, and what becomes of it.
   *
   * @param fact the scenario key, with the name of the thing it is about if there are several
   * @param value the other value
   * @param reach how far the change reaches
   * @param differences what would be decided otherwise, that which reaches farthest first; at least
   *     one
   */
  public record Otherwise(String fact, String value, Reach reach, List<Difference> differences) {
    /** That which reaches farthest first, and among equals that which changes most. */
    public static final Comparator<Otherwise> FARTHEST_FIRST =
        Comparator.comparing(Otherwise::reach)
            .thenComparing(one -> one.differences().size())
            .reversed();

    /** Of several facts that with the farthest reach first, then that which changes most. */
    public static final Comparator<List<Otherwise>> MOST_FIRST =
        Comparator.<List<Otherwise>>comparingInt(
                all -> all.stream().mapToInt(one -> one.reach().ordinal()).max().orElse(-1))
            .thenComparingLong(
                all -> all.stream().flatMap(one -> one.differences().stream()).distinct().count())
            .reversed();

    /** Copies the list. */
    public Otherwise {
      differences = List.copyOf(differences);
    }

    /** The differences in one clause: at most so many of them, the farthest-reaching first. */
    public String clause(int most) {
      List<String> told = Difference.texts(differences);
      return String.join("; ", told.subList(0, Math.min(most, told.size())));
    }

    /** All differences in one clause. */
    public String clause() {
      return clause(Integer.MAX_VALUE);
    }
  }

  /**
   * An assumed fact.
   *
   * @param fact what was assumed
   * @param key the scenario key that would settle it
   * @param about which of several things it is about; empty for the room
   * @param definition what may be said of it; empty if no scenario can state it
   * @param otherwise the other values that would change something
   * @param tried whether other values were tried; not all are where a floor holds very much
   */
  public record Assumed(
      Fact fact,
      String key,
      String about,
      Optional<FactDefinition> definition,
      List<Otherwise> otherwise,
      boolean tried) {
    /** Copies the list. */
    public Assumed {
      otherwise = List.copyOf(otherwise);
    }
  }

  /**
   * A fact that the scenario does not state and nothing was assumed of, though something hangs on
   * it.
   *
   * @param definition what may be said of it
   * @param about which of several things it is about; empty for the room
   * @param otherwise the values that would change something; at least one if it was tried
   * @param tried whether values were tried; not all are where a floor holds very much
   */
  public record Unsaid(
      FactDefinition definition, String about, List<Otherwise> otherwise, boolean tried) {
    /** Copies the list. */
    public Unsaid {
      otherwise = List.copyOf(otherwise);
    }
  }

  /** How far a change reaches, the least first. */
  public enum Reach {
    /** A layer, a remedy, a danger. */
    PART,
    /** Another way of building comes first. */
    WAY,
    /** The verdict is another. */
    VERDICT;

    /** The word used in JSON. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A fact to try otherwise, what is held of it now, and the values to try. */
  private record Asked(String key, String about, String text, double number, List<String> values) {
    /** The values that are not held now. */
    List<String> others() {
      return values.stream().filter(value -> !value.equals(text)).toList();
    }
  }

  /** One floor to think through again. */
  private record Trial(int asked, String fact, String value, Scenario scenario) {}

  /** What changes with each of several facts; null for one that was not tried. */
  private record Tried(List<List<Otherwise>> changes) {
    List<Otherwise> of(int fact) {
      return has(fact) ? changes.get(fact) : List.of();
    }

    boolean has(int fact) {
      return changes.get(fact) != null;
    }
  }

  /** The facts that were assumed, without asking what hangs on them. */
  public static List<Assumed> assumed(Assessment assessment) {
    Map<String, Assumed> found = new LinkedHashMap<>();
    for (Fact fact : assessment.factsOfChosen().all()) {
      if (fact.from() == From.ASSUMED) {
        Assumed assumed = settledBy(assessment.scenario(), fact);
        found.putIfAbsent(assumed.key() + '\n' + assumed.about(), assumed);
      }
    }
    return List.copyOf(found.values());
  }

  /** The key that would settle an assumption: its own, or the unknown one the rule matched. */
  private static Assumed settledBy(Scenario scenario, Fact fact) {
    Optional<FactDefinition> own = scenario.book().find(fact.key());
    if (own.isEmpty() && fact.because() != null) {
      for (Object premise : fact.because().premises()) {
        if (premise instanceof Unknown unknown) {
          return new Assumed(
              fact,
              unknown.key(),
              unknown.about(),
              scenario.book().find(unknown.key()),
              List.of(),
              true);
        }
      }
    }
    return new Assumed(fact, fact.key(), fact.about(), own, List.of(), true);
  }

  /**
   * Thinks the floor through again with each other value of each assumed fact.
   *
   * @param assessment what was decided
   * @return the assumed facts, each with what would change
   */
  public List<Assumed> of(Assessment assessment) {
    List<Assumed> assumed = assumed(assessment);
    Tried tried = tried(assessment, asked(assumed), Effort.trials(assessment) / 2);
    List<Assumed> all = new ArrayList<>();
    for (int i = 0; i < assumed.size(); i++) {
      Assumed one = assumed.get(i);
      all.add(
          new Assumed(
              one.fact(), one.key(), one.about(), one.definition(), tried.of(i), tried.has(i)));
    }
    return List.copyOf(all);
  }

  /**
   * Thinks the floor through again with other values of each fact that is unknown and was not
   * assumed, such as whether there is asbestos. Rules need not cite it: some ask whether anything
   * is known of it at all.
   *
   * @param assessment what was decided
   * @return the facts on which something hangs
   */
  public List<Unsaid> unsaid(Assessment assessment) {
    List<Assumed> assumed = assumed(assessment);
    List<StatedFact> unknown = new ArrayList<>();
    for (StatedFact one : assessment.scenario().givens()) {
      if (one.state() == State.UNKNOWN
          && knowledge.survey().asks(one.key(), assessment.factsOfChosen())
          && assumed.stream()
              .noneMatch(a -> a.key().equals(one.key()) && a.about().equals(one.about()))) {
        unknown.add(one);
      }
    }
    List<Asked> asked = new ArrayList<>();
    for (StatedFact one : unknown) {
      asked.add(new Asked(one.key(), one.about(), "", Double.NaN, values(one.definition())));
    }
    // Both searches are of one answer: what the other took of its half is not there for this one.
    int all = Effort.trials(assessment);
    Tried tried = tried(assessment, asked, all - taken(asked(assumed), all / 2));
    List<Unsaid> found = new ArrayList<>();
    for (int i = 0; i < unknown.size(); i++) {
      if (!tried.has(i) || !tried.of(i).isEmpty()) {
        StatedFact one = unknown.get(i);
        found.add(new Unsaid(one.definition(), one.about(), tried.of(i), tried.has(i)));
      }
    }
    return List.copyOf(found);
  }

  /** The values worth trying of a fact of which nothing is assumed. */
  private static List<String> values(FactDefinition definition) {
    boolean none = definition.otherwise().isEmpty();
    return none && definition.kind() == Kind.YES_NO ? List.of("yes", "no") : definition.otherwise();
  }

  private static List<Asked> asked(List<Assumed> assumed) {
    List<Asked> asked = new ArrayList<>();
    for (Assumed one : assumed) {
      List<String> values = one.definition().map(FactDefinition::otherwise).orElse(List.of());
      asked.add(new Asked(one.key(), one.about(), one.fact().text(), one.fact().number(), values));
    }
    return asked;
  }

  /** The facts that are tried where so many trials can be made, by their places. */
  private static List<Integer> afforded(List<Asked> asked, int trials) {
    List<Integer> places = IntStream.range(0, asked.size()).boxed().toList();
    return Effort.afforded(
        places, place -> asked.get(place).key(), place -> asked.get(place).others().size(), trials);
  }

  /** How many trials those facts take. */
  private static int taken(List<Asked> asked, int trials) {
    return afforded(asked, trials).stream().mapToInt(fact -> asked.get(fact).others().size()).sum();
  }

  /** The changes of each fact tried; only values that change something. */
  private Tried tried(Assessment assessment, List<Asked> asked, int trials) {
    DecisionDifferences differences = new DecisionDifferences(knowledge);
    List<List<Otherwise>> changes = new ArrayList<>(Collections.nCopies(asked.size(), null));
    List<Trial> afforded = new ArrayList<>();
    for (int fact : afforded(asked, trials)) {
      Asked one = asked.get(fact);
      changes.set(fact, new ArrayList<>());
      for (String value : one.others()) {
        trial(assessment.scenario(), one, fact, value).ifPresent(afforded::add);
      }
    }
    List<Otherwise> tried =
        quick
            .each(afforded)
            .map(
                trial -> {
                  Assessment then = quick.advise(trial.scenario());
                  return new Otherwise(
                      trial.fact(),
                      trial.value(),
                      reach(assessment, then),
                      differences.of(assessment, then));
                })
            .toList();
    for (int i = 0; i < afforded.size(); i++) {
      if (!tried.get(i).differences().isEmpty()) {
        changes.get(afforded.get(i).asked()).add(tried.get(i));
      }
    }
    return new Tried(changes);
  }

  /** What becomes of another value of a place, by what is decided otherwise. */
  static Otherwise otherwise(
      Place place, String value, Assessment now, Assessment then, List<Difference> said) {
    return new Otherwise(
        Place.named(place.fact().key(), place.whose()), value, reach(now, then), said);
  }

  static Reach reach(Assessment now, Assessment then) {
    if (now.verdict() != then.verdict()) {
      return Reach.VERDICT;
    }
    String was = now.chosen().map(BuildUp::way).orElse("");
    return was.equals(then.chosen().map(BuildUp::way).orElse("")) ? Reach.PART : Reach.WAY;
  }

  private static Optional<Trial> trial(Scenario scenario, Asked one, int place, String value) {
    try {
      Scenario other = scenario.with(one.key(), one.about(), value);
      double number = other.find(one.key(), one.about()).map(g -> g.number()).orElse(Double.NaN);
      return number == one.number()
          ? Optional.empty()
          : Optional.of(new Trial(place, Place.named(one.key(), one.about()), value, other));
    } catch (ScenarioFaults impossibleHere) {
      // Another value may contradict what the scenario states; then it is not a case to think of.
      return Optional.empty();
    }
  }
}
