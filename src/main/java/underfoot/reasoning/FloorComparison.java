package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/**
 * Two floors compared: which facts differ, what is decided otherwise, and because of which fact.
 *
 * @param first what is decided of the first
 * @param second what is decided of the second
 * @param facts what is said of the two that is not the same
 * @param decisions what is decided otherwise of the second
 * @param every whether each fact was tried alone; not all are where floors hold very much
 */
public record FloorComparison(
    Assessment first,
    Assessment second,
    List<Differing> facts,
    List<Decided> decisions,
    boolean every) {
  private static final String NAME = "scenario";

  /** Copies the lists. */
  public FloorComparison {
    facts = List.copyOf(facts);
    decisions = List.copyOf(decisions);
  }

  /**
   * A fact that is not the same in both.
   *
   * @param fact the fact; a list stands for all its entries if they are not the same things
   * @param about which entry of a list it is about; empty for the floor as a whole
   * @param first its value in the first, in words
   * @param second its value in the second
   */
  public record Differing(FactDefinition fact, String about, String first, String second) {}

  /**
   * Something decided otherwise.
   *
   * @param what a clause that says what is decided of the second and not of the first
   * @param becauseOf the facts it hangs on: taking one of them over into the first brings it about,
   *     or taking it back in the second undoes it; empty if it takes several together
   */
  public record Decided(String what, List<Differing> becauseOf) {
    /** Copies the list. */
    public Decided {
      becauseOf = List.copyOf(becauseOf);
    }
  }

  /**
   * Compares.
   *
   * @param advisor who thinks the floors through
   * @param first one floor
   * @param second another
   */
  public static FloorComparison of(Advisor advisor, Scenario first, Scenario second) {
    Advisor quick = advisor.remembering();
    Assessment ofFirst = quick.advise(first);
    Assessment ofSecond = advisor.advise(second);
    DecisionDifferences differences = new DecisionDifferences(advisor.knowledge());
    List<Differing> facts = differing(first, second);
    List<String> clauses = Difference.texts(differences.of(ofFirst, ofSecond));
    // Each is thought through twice, once in either floor.
    int afforded = Math.min(Effort.trials(ofFirst), Effort.trials(ofSecond)) / 2;
    List<Differing> some = Effort.some(facts, one -> one.fact().key(), afforded);
    List<Tried> tried =
        some.parallelStream()
            .map(
                fact ->
                    new Tried(
                        fact,
                        with(quick, first, second, fact)
                            .map(then -> Difference.texts(differences.of(ofFirst, then))),
                        with(quick, second, first, fact)
                            .map(then -> Difference.texts(differences.of(ofFirst, then)))))
            .toList();
    List<Decided> decided = new ArrayList<>();
    for (String clause : clauses) {
      List<Differing> causes = new ArrayList<>();
      for (Tried one : tried) {
        boolean brings = one.brought().map(found -> found.contains(clause)).orElse(false);
        boolean undoes = one.left().map(found -> !found.contains(clause)).orElse(false);
        if (brings || undoes) {
          causes.add(one.fact());
        }
      }
      decided.add(new Decided(clause, causes));
    }
    boolean every = some.size() == facts.size();
    return new FloorComparison(ofFirst, ofSecond, facts, decided, every);
  }

  /** What one fact alone does: brought into the first floor, and taken back from the second. */
  private record Tried(
      Differing fact, Optional<List<String>> brought, Optional<List<String>> left) {}

  private static Optional<Assessment> with(
      Advisor advisor, Scenario one, Scenario other, Differing fact) {
    try {
      return Optional.of(advisor.advise(one.taking(other, fact.fact(), fact.about())));
    } catch (ScenarioFaults impossibleThere) {
      return Optional.empty();
    }
  }

  private static List<Differing> differing(Scenario first, Scenario second) {
    List<Differing> found = new ArrayList<>();
    Set<String> wholeLists = new LinkedHashSet<>();
    for (FactDefinition fact : first.book().definitions()) {
      if (fact.kind() == Kind.LIST) {
        String list = fact.key() + "[]";
        if (!first.entries(list).equals(second.entries(list))) {
          wholeLists.add(list);
          found.add(
              new Differing(
                  fact,
                  "",
                  String.join(", ", first.entries(list)),
                  String.join(", ", second.entries(list))));
        }
      }
    }
    for (FactDefinition fact : first.book().definitions()) {
      if (fact.kind() == Kind.LIST || fact.key().equals(NAME)) {
        continue;
      }
      if (!fact.ofEntries()) {
        differing(first, second, fact, "", found);
      } else if (!wholeLists.contains(fact.list())) {
        for (String entry : first.entries(fact.list())) {
          differing(first, second, fact, entry, found);
        }
      }
    }
    return found;
  }

  private static void differing(
      Scenario first, Scenario second, FactDefinition fact, String about, List<Differing> found) {
    boolean same =
        switch (fact.kind()) {
          case POINTS -> first.outline().equals(second.outline());
          case READINGS -> first.readings().equals(second.readings());
          default -> same(first.find(fact.key(), about), second.find(fact.key(), about));
        };
    if (!same) {
      found.add(
          new Differing(
              fact, about, text(first, fact.key(), about), text(second, fact.key(), about)));
    }
  }

  private static boolean same(Optional<StatedFact> one, Optional<StatedFact> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() && other.isEmpty();
    }
    double number = one.get().number();
    return one.get().state() == other.get().state()
        && (Double.isNaN(number)
            ? Objects.equals(one.get().text(), other.get().text())
            : number == other.get().number());
  }

  private static String text(Scenario scenario, String key, String about) {
    return scenario.find(key, about).map(StatedFact::text).orElse("");
  }
}
