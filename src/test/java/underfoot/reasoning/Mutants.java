package underfoot.reasoning;

import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.drools.core.impl.InternalRuleBase;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.definition.KiePackage;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/**
 * Rules with one thing wrong in each. All of a pass are compiled together, each in a package of its
 * own; to try one, it is put into the compiled rules of its pass in the place of the right one.
 */
final class Mutants {
  private final RuleFiles files = RuleFiles.shipped();
  private final Vocabulary vocabulary = Vocabulary.read(files, new ArrayList<>());
  private final Knowledge knowledge = Floors.advisor().knowledge();
  private final List<Rule> rules;

  Mutants() throws RuleFaults {
    rules = Rule.readAll(files);
  }

  /**
   * One mutant.
   *
   * @param sort what was done to the rule
   * @param rule the right rule
   * @param told what is wrong now
   * @param text the wrong rule without its package; empty if it is deleted
   */
  record Mutant(String sort, Rule rule, String told, String text) {
    Pass pass() {
      for (Pass pass : Pass.values()) {
        if (pass.rulePackage().equals(rule.rulePackage())) {
          return pass;
        }
      }
      throw new IllegalStateException(rule.rulePackage());
    }
  }

  /** Every mutant there is: rules deleted, conditions dropped, words swapped. */
  List<Mutant> all() {
    List<Mutant> all = new ArrayList<>(dropped());
    for (Rule rule : rules) {
      all.add(new Mutant("rule deleted", rule, "", ""));
      swapped(rule, rule.when(), true, all);
      swapped(rule, rule.then(), false, all);
    }
    return all;
  }

  /** Every rule without one of its conditions, if it still says something. */
  List<Mutant> dropped() {
    List<Mutant> all = new ArrayList<>();
    for (Rule rule : rules) {
      for (int i = 0; i < rule.when().size(); i++) {
        List<String> when = new ArrayList<>(rule.when());
        String line = when.remove(i);
        boolean leans =
            stands(line, true).contains("$thing :")
                && (when.stream().anyMatch(one -> stands(one, true).contains("$thing."))
                    || rule.then().stream()
                        .anyMatch(one -> stands(one, false).contains("$thing.")));
        boolean always =
            line.equals("The build-up is known"); // it is, wherever such rules are asked
        if (!leans && !always && !when.isEmpty()) {
          all.add(
              new Mutant(
                  "condition dropped",
                  rule,
                  line,
                  text(rule, rule.note().id(), rule.note().reason(), when, rule.then())));
        }
      }
    }
    return all;
  }

  private void swapped(Rule rule, List<String> lines, boolean condition, List<Mutant> all) {
    for (int i = 0; i < lines.size(); i++) {
      Vocabulary.Said said =
          (condition ? vocabulary.condition(lines.get(i)) : vocabulary.consequence(lines.get(i)))
              .orElseThrow();
      for (Map.Entry<String, String> slot : said.slots().entrySet()) {
        String other = other(slot.getKey(), slot.getValue(), said.slots().get("name"));
        if (other.isEmpty() || !lines.get(i).contains(slot.getValue())) {
          continue;
        }
        List<String> changed = new ArrayList<>(lines);
        changed.set(i, replaceLast(lines.get(i), slot.getValue(), other));
        all.add(
            new Mutant(
                slot.getKey() + " swapped",
                rule,
                changed.get(i),
                text(
                    rule,
                    rule.note().id(),
                    rule.note().reason(),
                    condition ? changed : rule.when(),
                    condition ? rule.then() : changed)));
      }
    }
  }

  private static String replaceLast(String line, String what, String by) {
    int at = line.lastIndexOf(what);
    return line.substring(0, at) + by + line.substring(at + what.length());
  }

  /** Another word of the same sort; empty if there is none. */
  private String other(String slot, String value, String name) {
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

  private String stands(String line, boolean condition) {
    return (condition ? vocabulary.condition(line) : vocabulary.consequence(line))
        .orElseThrow()
        .stands();
  }

  static String text(
      Rule rule, String id, String reason, List<String> when, List<String> then) {
    return "rule \""
        + id
        + " "
        + rule.note().title()
        + "\"\n@reason(\""
        + reason
        + "\")\n@source(\""
        + rule.note().source()
        + "\")\nwhen\n"
        + String.join("\n", when)
        + "\nthen\n"
        + String.join("\n", then)
        + "\nend\n";
  }

  /** Compiles rules of one pass, each text in a package of its own, in the order given. */
  List<KiePackage> compile(Pass pass, List<String> texts) {
    StringBuilder joined = new StringBuilder();
    for (String path : files.list("vocabulary", ".dsl")) {
      joined.append(Rule.text(files, path)).append('\n');
    }
    KieServices services = KieServices.get();
    KieFileSystem staged = services.newKieFileSystem();
    staged.generateAndWritePomXML(
        services.newReleaseId("underfoot", "mutants-" + pass + System.nanoTime(), "1"));
    staged.write("src/main/resources/rules/vocabulary/all.dsl", joined.toString());
    for (int i = 0; i < texts.size(); i++) {
      staged.write(
          "src/main/resources/rules/m" + i + ".dslr",
          "package "
              + pass.rulePackage()
              + ".m"
              + i
              + "\nimport underfoot.knowledge.*\nimport underfoot.buildup.*\n"
              + "global underfoot.reasoning.Draft draft\n"
              + "expander rules/vocabulary/90-general.dsl\n\n"
              + texts.get(i));
    }
    KieBuilder builder = services.newKieBuilder(staged).buildAll(ExecutableModelProject.class);
    for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
      throw new IllegalStateException(message.getPath() + ": " + message.getText());
    }
    KieBase compiled = services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
    List<KiePackage> packages = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      packages.add(compiled.getKiePackage(pass.rulePackage() + ".m" + i));
    }
    return packages;
  }

  /** The shipped rules with a mutant in the place of the right rule. */
  Advisor advisor(Mutant mutant, KiePackage wrong) throws Exception {
    KieBase base = RuleBase.fresh(mutant.pass());
    String name = mutant.rule().note().id() + " " + mutant.rule().note().title();
    base.removeRule(mutant.rule().rulePackage(), name);
    if (wrong != null) {
      ((InternalRuleBase) base).addPackages(List.of(wrong));
    }
    return advisor(mutant.pass(), base);
  }

  private Advisor advisor(Pass pass, KieBase base) {
    return new Advisor(
        Floors.advisor().rules().with(pass, base),
        knowledge,
        new underfoot.plan.Planner(knowledge.prices()));
  }

  /** The shipped rules with others for some passes. */
  Advisor advisor(Map<Pass, KieBase> others) {
    RuleBase rules = Floors.advisor().rules();
    for (Map.Entry<Pass, KieBase> entry : others.entrySet()) {
      rules = rules.with(entry.getKey(), entry.getValue());
    }
    return new Advisor(rules, knowledge, new underfoot.plan.Planner(knowledge.prices()));
  }
}
