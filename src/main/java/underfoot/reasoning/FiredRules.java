package underfoot.reasoning;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.RuleNote;

/** Which rules had a say about a floor, or about one thing that was decided of it. */
public final class FiredRules {
  private final Map<String, Derivation> rules = new LinkedHashMap<>();
  private final Set<Figure> figures = new LinkedHashSet<>();
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private FiredRules() {}

  /**
   * The ids of all rules that concluded anything, for any build-up, in the order of their names.
   */
  public static Set<String> of(Assessment assessment) {
    return notes(assessment).stream()
        .map(RuleNote::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What those rules say of themselves; of one for each row of a table, the rows that did. */
  public static Set<RuleNote> notes(Assessment assessment) {
    return all(assessment).rules.values().stream()
        .map(Derivation::rule)
        .collect(Collectors.toSet());
  }

  private static FiredRules all(Assessment assessment) {
    FiredRules fired = new FiredRules();
    fired.collect(assessment.general());
    fired.collect(assessment.facts().all());
    for (BuildUp buildUp : assessment.buildUps()) {
      fired.collect(buildUp.concluded());
      fired.collect(buildUp.facts().all());
    }
    for (Assessment other : assessment.others()) {
      all(other).rules.forEach(fired.rules::putIfAbsent);
    }
    for (ZonePart zone : assessment.zones()) {
      all(zone.assessment()).rules.forEach(fired.rules::putIfAbsent);
    }
    return fired;
  }

  /**
   * The rules that some conclusions, facts or derivations rest on, by key, what comes first first.
   */
  static Map<String, Derivation> behind(Collection<?> decided) {
    FiredRules fired = new FiredRules();
    fired.collect(decided);
    return fired.rules;
  }

  /** The figures that some conclusions, facts or derivations rest on. */
  static Set<Figure> figuresBehind(Collection<?> decided) {
    FiredRules fired = new FiredRules();
    fired.collect(decided);
    return fired.figures;
  }

  private void collect(Collection<?> from) {
    for (Object one : from) {
      if (one instanceof Conclusion conclusion) {
        collect(List.of(conclusion.because()));
      } else if (one instanceof Fact fact && seen.add(fact)) {
        collect(fact.uses());
        if (fact.because() != null) {
          collect(List.of(fact.because()));
        }
      } else if (one instanceof Derivation because && seen.add(because)) {
        collect(because.premises());
        rules.putIfAbsent(because.rule().key(), because);
      } else if (one instanceof Figure figure) {
        figures.add(figure);
      }
    }
  }
}
