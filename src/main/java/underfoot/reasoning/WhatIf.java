package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Unknown;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** What would be decided if what was assumed were otherwise: the floor is thought through again. */
public final class WhatIf {
  private final Advisor advisor;
  private final Knowledge knowledge;

  /**
   * @param advisor who thinks the floor through again
   */
  public WhatIf(Advisor advisor) {
    this.advisor = advisor;
    this.knowledge = advisor.knowledge();
  }

  /**
   * Another value of an assumed fact.
   *
   * @param value the other value
   * @param differences what would be decided otherwise, in plain words; at least one
   */
  public record Otherwise(String value, List<String> differences) {
    /** Copies the list. */
    public Otherwise {
      differences = List.copyOf(differences);
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
   */
  public record Assumed(
      Fact fact,
      String key,
      String about,
      Optional<FactDefinition> definition,
      List<Otherwise> otherwise) {
    /** Copies the list. */
    public Assumed {
      otherwise = List.copyOf(otherwise);
    }
  }

  /** One floor to think through again. */
  private record Trial(int assumed, String value, Scenario scenario) {}

  /** The facts that were assumed, without asking what hangs on them. */
  public static List<Assumed> assumed(Counsel counsel) {
    Map<String, Assumed> found = new LinkedHashMap<>();
    for (Fact fact : counsel.factsOfChosen().all()) {
      if (fact.from() == From.ASSUMED) {
        Assumed assumed = settledBy(counsel.scenario(), fact);
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
              fact, unknown.key(), unknown.about(), scenario.book().find(unknown.key()), List.of());
        }
      }
    }
    return new Assumed(fact, fact.key(), fact.about(), own, List.of());
  }

  /**
   * Thinks the floor through again with each other value of each assumed fact.
   *
   * @param counsel what was decided
   * @return the assumed facts, each with what would change
   */
  public List<Assumed> of(Counsel counsel) {
    List<Assumed> assumed = assumed(counsel);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < assumed.size(); i++) {
      Assumed one = assumed.get(i);
      if (one.definition().isPresent()) {
        for (String value : one.definition().get().otherwise()) {
          trial(counsel.scenario(), one, i, value).ifPresent(trials::add);
        }
      }
    }
    Differences differences = new Differences(knowledge);
    Advisor quick = advisor.remembering();
    List<Otherwise> tried =
        trials.parallelStream()
            .map(
                trial ->
                    new Otherwise(
                        trial.value(), differences.of(counsel, quick.advise(trial.scenario()))))
            .toList();
    List<Assumed> all = new ArrayList<>();
    for (int i = 0; i < assumed.size(); i++) {
      List<Otherwise> changes = new ArrayList<>();
      for (int j = 0; j < trials.size(); j++) {
        if (trials.get(j).assumed() == i && !tried.get(j).differences().isEmpty()) {
          changes.add(tried.get(j));
        }
      }
      Assumed one = assumed.get(i);
      all.add(new Assumed(one.fact(), one.key(), one.about(), one.definition(), changes));
    }
    return List.copyOf(all);
  }

  private static Optional<Trial> trial(Scenario scenario, Assumed one, int place, String value) {
    if (value.equals(one.fact().text())) {
      return Optional.empty();
    }
    try {
      Scenario other = scenario.with(one.key(), one.about(), value);
      double number = other.find(one.key(), one.about()).map(g -> g.number()).orElse(Double.NaN);
      return number == one.fact().number()
          ? Optional.empty()
          : Optional.of(new Trial(place, value, other));
    } catch (ScenarioFaults impossibleHere) {
      // Another value may contradict what the scenario states; then it is not a case to think of.
      return Optional.empty();
    }
  }
}
