package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.Remedy;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * What holds between the answers to a floor and to its neighbours: the same floor again, a room
 * used harder, and what was not known said.
 */
final class Neighbours {
  /** Each use is wetter than the one before it. */
  private static final List<String> WETTER = List.of("cloakroom", "bathroom", "wet room");

  private Neighbours() {}

  /** Fails, with what was expected, if an answer does not fit its neighbours'. */
  static void check(Assessment assessment) throws ScenarioFaults {
    Scenario scenario = assessment.scenario();
    assertThat(told(Floors.advisor().advise(scenario)))
        .as("the same floor gets the same answer")
        .isEqualTo(told(assessment));
    stricterUseIsNeverLaxer(scenario);
    whatIsAssumedIsNeverLaxer(assessment);
  }

  /** All that is decided, in words. */
  static Set<String> told(Assessment assessment) {
    Set<String> told = new TreeSet<>();
    told.add("verdict " + assessment.verdict());
    assessment.general().forEach(one -> told.add(one.because().rule().id() + " " + one.getClass()));
    for (BuildUp buildUp : assessment.buildUps()) {
      told.add(buildUp.way() + " " + buildUp.stands() + " " + buildUp.stack().rise());
      buildUp.concluded().forEach(one -> told.add(buildUp.way() + " " + one.because().rule().id()));
    }
    assessment.chosen().ifPresent(chosen -> told.add("chosen " + chosen.way()));
    return told;
  }

  private static void stricterUseIsNeverLaxer(Scenario scenario) throws ScenarioFaults {
    List<Assessment> byUse = new ArrayList<>();
    for (String use : WETTER) {
      Optional<Assessment> one = with(scenario, "room.use", use);
      one.ifPresent(byUse::add);
    }
    for (int i = 1; i < byUse.size(); i++) {
      notLaxer("a wetter room", byUse.get(i), byUse.get(i - 1));
    }
  }

  private static void notLaxer(String what, Assessment strict, Assessment lax) {
    for (BuildUp buildUp : strict.buildUps()) {
      for (BuildUp other : lax.buildUps()) {
        if (!buildUp.way().equals(other.way())) {
          continue;
        }
        String where = what + ": " + buildUp.way();
        assertThat(target(buildUp)).as(where + ", contact").isGreaterThanOrEqualTo(target(other));
        if (buildUp.stands() && Invariants.sealed(other.stack())) {
          assertThat(Invariants.sealed(buildUp.stack())).as(where + ", sealing").isTrue();
        }
      }
    }
  }

  /** The contact aimed for; 0 if none is. */
  static double target(BuildUp buildUp) {
    return buildUp.of(CoverageTarget.class).stream()
        .mapToDouble(one -> one.figure().number())
        .max()
        .orElse(0);
  }

  /**
   * What is not known is never judged more kindly than the value assumed for it, nor is less
   * contact asked for than with any of its ordinary values.
   */
  private static void whatIsAssumedIsNeverLaxer(Assessment assessment) throws ScenarioFaults {
    Set<String> tried = new TreeSet<>();
    for (Fact fact : assessment.facts().all()) {
      if (fact.from() != From.ASSUMED || !fact.about().isEmpty() || !tried.add(fact.key())) {
        continue;
      }
      Optional<FactDefinition> definition = Floors.advisor().knowledge().facts().find(fact.key());
      if (definition.isEmpty() || definition.get().required()) {
        continue;
      }
      Optional<Assessment> stated = with(assessment.scenario(), fact.key(), fact.text());
      // What may be past bearing is no ordinary value: it is a hold point, not a stop.
      boolean held = assessment.of(Remedy.class).stream().anyMatch(Remedy::hold);
      if (stated.isPresent() && !(held && stated.get().verdict() == Verdict.STOP)) {
        assertThat(assessment.verdict())
            .as("not knowing the %s, which is assumed to be %s", fact.name(), fact.text())
            .isGreaterThanOrEqualTo(stated.get().verdict());
        notLaxer("not knowing the " + fact.name(), assessment, stated.get());
      }
      if (definition.get().kind() == Kind.YES_NO || definition.get().kind() == Kind.CHOICE) {
        for (String value : definition.get().otherwise()) {
          Optional<Assessment> other = with(assessment.scenario(), fact.key(), value);
          if (other.isPresent() && assessment.verdict() == Verdict.SOUND) {
            notLaxer("not knowing the " + fact.name() + ", " + value, assessment, other.get());
          }
        }
      }
    }
  }

  /** The answer with one thing said otherwise; empty if that is a contradiction. */
  private static Optional<Assessment> with(Scenario scenario, String key, String value)
      throws ScenarioFaults {
    try {
      return Optional.of(Floors.advisor().advise(scenario.with(key, "", value)));
    } catch (ScenarioFaults contradiction) {
      return Optional.empty();
    }
  }
}
