package underfoot.reasoning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Kinds;
import underfoot.language.Constraint;
import underfoot.language.Pass;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleSet;
import underfoot.language.Said;

/**
 * A limit as the rules themselves have it: a number, or the sum of some, held against a figure or
 * against a fact whose figure stands in a row of its kind.
 *
 * @param facts the facts whose sum is compared, by name
 * @param figure the figure it is compared with
 * @param rules the rules that compare them
 */
record Limit(List<String> facts, String figure, Set<String> rules) {
  /** What it is called: the facts, then the figure. */
  String name() {
    return String.join(" + ", facts) + " / " + figure;
  }

  /** Every limit of the rule base by name, read from the rules and the meaning of sentences. */
  static Map<String, Limit> all(RuleSet set, Kinds kinds) {
    Map<String, Limit> found = new TreeMap<>();
    for (Rule rule : set.rules()) {
      if (rule.pass() == Pass.CHECK) {
        continue; // a proposal and not a floor is compared; its pairs are among the rule cases
      }
      for (Said said : rule.conditions()) {
        Map<String, String> named = new LinkedHashMap<>();
        for (Pattern pattern : said.patterns()) {
          named.put(pattern.variable(), pattern.name());
          for (Constraint constraint : pattern.constraints()) {
            if (constraint.operator().ofNumbers()) {
              List<String> facts = constraint.variables().stream().map(named::get).toList();
              for (String figure : figures(pattern, kinds)) {
                Limit limit = new Limit(facts, figure, new TreeSet<>());
                found.computeIfAbsent(limit.name(), name -> limit).rules().add(rule.key());
              }
            }
          }
        }
      }
    }
    return found;
  }

  /** The figure a pattern stands for, or those that the rows of kinds give to its fact. */
  private static Set<String> figures(Pattern pattern, Kinds kinds) {
    return pattern.type() == Pattern.Type.FIGURE
        ? Set.of(pattern.word("name"))
        : pattern.type() == Pattern.Type.FACT ? kinds.values(pattern.name()) : Set.of();
  }

  /**
   * What is compared in one answer: for the floor and for each build-up, and of each thing that the
   * facts are about.
   */
  Map<String, Double> numbers(Assessment assessment) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    numbers(assessment.facts(), "", numbers);
    for (BuildUp buildUp : assessment.buildUps()) {
      numbers(buildUp.facts(), buildUp.way(), numbers);
    }
    return numbers;
  }

  private void numbers(Facts held, String way, Map<String, Double> numbers) {
    for (String about : held.abouts(facts.get(0))) {
      double sum = 0;
      for (String name : facts) {
        Fact fact = held.find(name, about);
        sum += fact == null ? Double.NaN : fact.number();
      }
      if (Double.isFinite(sum)) {
        numbers.put(way + "|" + about, sum);
      }
    }
  }
}
