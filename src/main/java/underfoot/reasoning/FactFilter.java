package underfoot.reasoning;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
import org.drools.base.rule.constraint.Constraint;
import org.drools.model.AlphaIndex;
import org.drools.model.Index.ConstraintType;
import org.drools.modelcompiler.constraints.LambdaConstraint;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Unknown;

/**
 * What the rules of one pass can match at all. Every pattern of the vocabulary names what it is
 * about, so what bears none of the names that a pass asks for need not be shown to its sessions.
 * That is most of what is known, and showing it is most of the cost.
 *
 * <p>The names are read from the compiled patterns, which the engine does not document. A pattern
 * that cannot be read makes its pass see everything of that kind: slower, never wrong.
 */
final class FactFilter {
  /** The words that patterns on a type ask for; null if one of them may match anything. */
  private final Map<Class<?>, Set<String>> asked = new HashMap<>();

  private boolean everything;
  private volatile Seen seen;

  /** Figures seen of all there are. */
  private record Seen(Figures of, List<Figure> figures) {}

  private FactFilter() {}

  /** Reads the patterns of the rules of one package and of those beneath it. */
  static FactFilter of(KieBase rules, String rulePackage) {
    FactFilter interest = new FactFilter();
    try {
      for (KiePackage found : rules.getKiePackages()) {
        if (found.getName().startsWith(rulePackage)) {
          for (Rule rule : found.getRules()) {
            interest.read(((RuleImpl) rule).getLhs());
          }
        }
      }
    } catch (RuntimeException | LinkageError | ReflectiveOperationException notAsExpected) {
      interest.everything = true;
    }
    return interest;
  }

  private void read(RuleConditionElement element) throws ReflectiveOperationException {
    if (element instanceof GroupElement group) {
      for (RuleConditionElement child : group.getChildren()) {
        read(child);
      }
    } else if (element instanceof Pattern pattern) {
      read(pattern);
    } else {
      everything = true;
    }
  }

  private void read(Pattern pattern) throws ReflectiveOperationException {
    Set<String> words = new HashSet<>();
    for (Constraint constraint : pattern.getConstraints()) {
      if (constraint instanceof LambdaConstraint lambda
          && lambda.getEvaluator().getIndex() instanceof AlphaIndex<?, ?> index
          && index.getConstraintType() == ConstraintType.EQUAL
          && index.getRightValue() instanceof String word
          && !word.isEmpty()) {
        words.add(word);
      }
    }
    Class<?> type = Class.forName(pattern.getObjectType().getClassName());
    Set<String> before = asked.get(type);
    if (words.isEmpty() || (asked.containsKey(type) && before == null)) {
      asked.put(type, null);
    } else if (before == null) {
      asked.put(type, words);
    } else {
      before.addAll(words);
    }
  }

  /** The figures that a rule of the pass might match. There are many, and always the same. */
  List<Figure> seenOf(Figures figures) {
    Seen now = seen;
    if (now == null || now.of() != figures) {
      now = new Seen(figures, figures.all().stream().filter(this::sees).toList());
      seen = now;
    }
    return now.figures();
  }

  /** Whether a rule of the pass might match it. */
  boolean sees(Object one) {
    if (everything) {
      return true;
    }
    // Asked of every fact in every pass, so no word is put into a list first.
    if (one instanceof Fact fact) {
      Set<String> words = words(Fact.class);
      return words == null
          || words.contains(fact.name())
          || words.contains(fact.says())
          || words.contains(fact.text())
          || words.contains(fact.about())
          || words.contains(fact.key());
    }
    if (one instanceof Figure figure) {
      Set<String> words = words(Figure.class);
      return words == null
          || words.contains(figure.name())
          || words.contains(figure.text())
          || words.contains(figure.unit())
          || words.contains(figure.source());
    }
    if (one instanceof Unknown unknown) {
      Set<String> words = words(Unknown.class);
      return words == null
          || words.contains(unknown.name())
          || words.contains(unknown.about())
          || words.contains(unknown.key());
    }
    if (one instanceof Conclusion conclusion) {
      Set<String> words = words(Conclusion.class);
      return asked.containsKey(one.getClass())
          || words == null
          || words.contains(conclusion.getRule());
    }
    return true;
  }

  /** The words that patterns on a type ask for; null if one of them may match anything. */
  private Set<String> words(Class<?> type) {
    return asked.getOrDefault(type, Set.of());
  }
}
