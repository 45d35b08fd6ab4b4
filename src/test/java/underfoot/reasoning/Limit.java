package underfoot.reasoning;

import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.scenario.RuleFiles;

/**
 * A limit as the rules themselves have it: a number, or the sum of some, held against a figure.
 *
 * @param facts the facts whose sum is compared, by name
 * @param figure the figure it is compared with
 * @param rules the rules that compare them
 */
record Limit(List<String> facts, String figure, Set<String> rules) {
  private static final Pattern AGAINST =
      Pattern.compile("Figure\\( name == \"\\{figure}\", number [<>]=? ([^)]*?) \\)");
  private static final Pattern VARIABLE = Pattern.compile("\\$(\\w+)\\.number");

  /** What it is called: the facts, then the figure. */
  String name() {
    return String.join(" + ", facts) + " / " + figure;
  }

  /** Every limit of the rule base by name, read from the rules and the meaning of sentences. */
  static Map<String, Limit> all(RuleFiles files) throws RuleFaults {
    Vocabulary vocabulary = Vocabulary.read(files, new ArrayList<>());
    Map<String, Limit> found = new TreeMap<>();
    for (Rule rule : Rule.readAll(files)) {
      if (rule.rulePackage().endsWith(".check")) {
        continue; // a proposal and not a floor is compared; its pairs are among the rule cases
      }
      for (String line : rule.when()) {
        Vocabulary.Said said = vocabulary.condition(line).orElseThrow();
        Matcher against = AGAINST.matcher(meaning(files, said.sentence()));
        if (against.find()) {
          List<String> facts = new ArrayList<>();
          Matcher variables = VARIABLE.matcher(against.group(1));
          while (variables.find()) {
            facts.add(factOf(variables.group(1), meaning(files, said.sentence()), said.slots()));
          }
          Limit limit = new Limit(facts, said.slots().get("figure"), new TreeSet<>());
          found.computeIfAbsent(limit.name(), name -> limit).rules().add(rule.note().id());
        }
      }
    }
    return found;
  }

  /** What a sentence stands for, as its vocabulary file has it. */
  private static String meaning(RuleFiles files, Vocabulary.Sentence sentence) {
    String line = Rule.text(files, sentence.file()).split("\n", -1)[sentence.line() - 1];
    return line.substring(line.indexOf(sentence.said()) + sentence.said().length() + 1);
  }

  private static String factOf(String variable, String meaning, Map<String, String> slots) {
    Matcher bound =
        Pattern.compile("\\$" + variable + " : Fact\\( name == \"([^\"]*)\"").matcher(meaning);
    if (!bound.find()) {
      throw new IllegalStateException("no fact is bound to $" + variable + " in " + meaning);
    }
    String name = bound.group(1);
    for (Map.Entry<String, String> slot : slots.entrySet()) {
      name = name.replace("{" + slot.getKey() + "}", slot.getValue());
    }
    return name;
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
