package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.language.Effect;
import underfoot.language.Pass;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleSet;
import underfoot.language.Said;
import underfoot.scenario.FactDefinition;

/** Rules with one thing wrong in each, each to be put in the place of the right one. */
final class Mutants {
  private final Knowledge knowledge = Floors.advisor().knowledge();
  private final RuleSet set = Floors.advisor().rules().set();

  /**
   * One mutant.
   *
   * @param sort what was done to the rule
   * @param rule the right rule
   * @param told what is wrong now
   * @param wrong the wrong rule; null if it is deleted
   */
  record Mutant(String sort, Rule rule, String told, Rule wrong) {
    Pass pass() {
      return rule.pass();
    }
  }

  /** Every mutant there is: rules deleted, conditions dropped, words swapped. */
  List<Mutant> all() {
    List<Mutant> all = new ArrayList<>(dropped());
    for (Rule rule : set.rules()) {
      all.add(new Mutant("rule deleted", rule, "", null));
      swapped(rule, rule.conditions(), true, all);
      swapped(rule, rule.consequences(), false, all);
    }
    return all;
  }

  /** The same rule under another id, for another reason. */
  static Rule with(Rule rule, String id, String reason) {
    RuleNote own = rule.note();
    return rule.with(
        new RuleNote(id, own.title(), reason, own.source(), own.id().equals(id) ? own.row() : ""));
  }

  /** Every rule without one of its conditions, if it still says something. */
  List<Mutant> dropped() {
    List<Mutant> all = new ArrayList<>();
    for (Rule rule : set.rules()) {
      for (int i = 0; i < rule.conditions().size(); i++) {
        List<Said> when = new ArrayList<>(rule.conditions());
        Said said = when.remove(i);
        boolean names = said.patterns().stream().anyMatch(one -> one.variable().equals("thing"));
        boolean leans =
            names
                && (rule.effects().stream().anyMatch(Effect::leans)
                    || when.stream()
                        .flatMap(one -> one.patterns().stream())
                        .anyMatch(Mutants::speaksOfThing));
        boolean always =
            said.text().equals("The build-up is known"); // it is, wherever such rules are asked
        if (!leans && !always && !when.isEmpty()) {
          all.add(
              new Mutant(
                  "condition dropped", rule, said.text(), rule.with(when, rule.consequences())));
        }
      }
    }
    return all;
  }

  private static boolean speaksOfThing(Pattern pattern) {
    return pattern.constraints().stream().anyMatch(one -> one.variables().contains("thing"));
  }

  private void swapped(Rule rule, List<Said> lines, boolean condition, List<Mutant> all) {
    for (int i = 0; i < lines.size(); i++) {
      Said said = lines.get(i);
      for (Map.Entry<String, String> slot : said.slots().entrySet()) {
        String other = other(slot.getKey(), slot.getValue(), said.slots().get("name"));
        if (other.isEmpty() || !said.text().contains(slot.getValue())) {
          continue;
        }
        String text = replaceLast(said.text(), slot.getValue(), other);
        List<Said> changed = new ArrayList<>(lines);
        changed.set(
            i,
            (condition
                    ? set.vocabulary().condition(text, said.number())
                    : set.vocabulary().consequence(text, said.number()))
                .orElseThrow());
        all.add(
            new Mutant(
                slot.getKey() + " swapped",
                rule,
                text,
                condition
                    ? rule.with(changed, rule.consequences())
                    : rule.with(rule.conditions(), changed)));
      }
    }
  }

  private static String replaceLast(String line, String what, String by) {
    int at = line.lastIndexOf(what);
    return line.substring(0, at) + by + line.substring(at + what.length());
  }

  /** Another word of the same sort; empty if there is none. */
  private String other(String slot, String value, String name) {
    if (value.startsWith("[")) {
      return ""; // a fact stands where a figure may
    }
    return switch (slot) {
      case "figure" ->
          next(
              new TreeSet<>(
                  knowledge.figures().all().stream()
                      .filter(
                          one ->
                              one.unit().equals(knowledge.figures().get(value).unit())
                                  && one.number() != knowledge.figures().get(value).number())
                      .map(one -> one.name())
                      .toList()),
              value);
      case "wording" -> next(new TreeSet<>(knowledge.wording().ids()), value);
      case "layer" ->
          next(
              new TreeSet<>(knowledge.layers().all().stream().map(one -> one.id()).toList()),
              value);
      case "value" -> {
        for (FactDefinition fact : knowledge.facts().definitions()) {
          if (fact.called().equals(name) && fact.of().contains(value)) {
            yield next(new TreeSet<>(fact.of()), value);
          }
        }
        yield value.equals("yes") ? "no" : value.equals("no") ? "yes" : "";
      }
      default -> "";
    };
  }

  private static String next(TreeSet<String> of, String value) {
    of.remove(value);
    if (of.isEmpty()) {
      return "";
    }
    String higher = of.higher(value);
    return higher == null ? of.first() : higher;
  }

  /** The shipped rules with a mutant in the place of the right rule. */
  Advisor advisor(Mutant mutant) {
    List<Rule> rules = new ArrayList<>(set.of(mutant.pass()));
    int at = rules.indexOf(mutant.rule());
    rules.remove(at);
    if (mutant.wrong() != null) {
      rules.add(at, mutant.wrong());
    }
    return advisor(Map.of(mutant.pass(), rules));
  }

  /** The shipped rules with others for some passes. */
  Advisor advisor(Map<Pass, List<Rule>> others) {
    RuleBase rules = Floors.advisor().rules();
    for (Map.Entry<Pass, List<Rule>> entry : others.entrySet()) {
      rules = rules.with(entry.getKey(), entry.getValue());
    }
    return new Advisor(rules, knowledge, new underfoot.plan.Planner(knowledge.prices()));
  }
}
