package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Listed;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Effect.Verb;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.language.Said;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/**
 * What is wrong with a rule base though it can be used: what is there and never used, what can
 * never happen, what is said twice, and what contradicts. What keeps it from being used is told by
 * {@link RuleCheck}, whose faults come first here.
 *
 * <p>What formulas read and give is no rule's to say, and stands in {@code read-by-formulas.yaml}.
 */
public final class Lint {
  private static final String FORMULAS = "read-by-formulas.yaml";

  private final RuleFiles files;
  private final Knowledge knowledge;
  private final RuleSet set;
  private final Map<String, Set<String>> formulas = new HashMap<>();
  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  private Lint(RuleFiles files, Knowledge knowledge) throws KnowledgeFault {
    this.files = files;
    this.knowledge = knowledge;
    this.set = RuleSet.read(files, faults);
    if (files.list("", ".yaml").contains(FORMULAS)) {
      for (Listed listed : Listed.in(files, FORMULAS)) {
        formulas.put(listed.name(), new TreeSet<>(listed.list()));
      }
    }
  }

  /**
   * All that is wrong, each with file, line and how to mend it.
   *
   * @param files the rule base
   * @param knowledge what was read from the same place
   * @throws KnowledgeFault if a file of the knowledge cannot be read
   */
  public static List<RuleFaults.Fault> faults(RuleFiles files, Knowledge knowledge)
      throws KnowledgeFault {
    Lint lint = new Lint(files, knowledge);
    lint.faults.addAll(RuleCheck.faults(lint.set, knowledge));
    lint.faults.addAll(lint.set.sentenceFaults());
    lint.faults.addAll(
        KindLint.faults(
            lint.set.rules(), knowledge, lint.formulas.getOrDefault("kinds", Set.of())));
    lint.neverFiring();
    lint.insideAnother();
    lint.faults.addAll(new RuleConflicts(lint.set.rules(), knowledge).faults());
    lint.faults.addAll(new ActLint(files, knowledge, lint.set.rules()).faults());
    lint.faults.addAll(new UnusedNames(files, knowledge, lint.set.rules(), lint.formulas).faults());
    return List.copyOf(lint.faults);
  }

  private void add(Rule rule, String what) {
    faults.add(new RuleFaults.Fault(rule.file(), rule.line(), rule.key() + what));
  }

  // --- rules that never fire

  private void neverFiring() {
    Map<String, Set<String>> values = new HashMap<>(); // of facts whose values are all known
    values.put(ActsApplied.ASKED, ActLint.askedFor(knowledge));
    Set<String> open = new HashSet<>(formulas.getOrDefault("facts", Set.of()));
    for (FactDefinition fact : stated()) {
      Set<String> of = values.computeIfAbsent(fact.called(), name -> new TreeSet<>());
      if (fact.kind() == Kind.YES_NO) {
        of.addAll(List.of("yes", "no"));
      } else if (fact.kind() == Kind.CHOICE || fact.kind() == Kind.CHOICES) {
        of.addAll(fact.of());
      } else {
        open.add(fact.called());
      }
    }
    for (Kinds.Table table : knowledge.kinds().tables()) {
      for (String fact : table.facts().keySet()) {
        for (Kinds.Row row : table.rows()) {
          for (Kinds.Said said : knowledge.kinds().of(fact, row.kind())) {
            values.computeIfAbsent(said.called(), any -> new TreeSet<>()).add(said.value());
            if (said.sort() == Kinds.Sort.FIGURE) {
              open.add(said.called());
            }
          }
        }
      }
    }
    for (Rule rule : set.rules()) {
      for (Effect effect : rule.effects()) {
        String name = effect.verb() == Verb.OFFER ? "build-up" : effect.word(Place.FACT);
        if (effect.verb() == Verb.OFFER) {
          values.computeIfAbsent(name, any -> new TreeSet<>()).add(effect.word(Place.WAY));
        } else if (effect.isFact() && Effect.isLookedUp(effect.word(Place.WORD))) {
          String from = Effect.lookedUp(effect.word(Place.WORD));
          values
              .computeIfAbsent(name, any -> new TreeSet<>())
              .addAll(values.getOrDefault(from, Set.of()));
        } else if (effect.isFact() && effect.word(Place.FIGURE).isEmpty()) {
          values.computeIfAbsent(name, any -> new TreeSet<>()).add(effect.word(Place.WORD));
        } else if (effect.isFact()) {
          open.add(name);
        }
      }
    }
    for (Rule rule : set.rules()) {
      for (Said said : rule.conditions()) {
        for (Pattern pattern : said.patterns()) {
          if (pattern.isFactThere()
              && !pattern.name().isEmpty()
              && !open.contains(pattern.name())) {
            possible(rule, said.text(), pattern, values.get(pattern.name()));
          }
        }
      }
    }
  }

  private List<FactDefinition> stated() {
    List<FactDefinition> stated = new ArrayList<>(knowledge.facts().definitions());
    try {
      stated.addAll(FactBook.ofProposals(files).definitions());
    } catch (ScenarioFaults noProposals) {
      faults.add(new RuleFaults.Fault("proposal", 0, noProposals.text().strip()));
    }
    return stated;
  }

  private void possible(Rule rule, String line, Pattern pattern, Set<String> values) {
    if (values == null) {
      add(
          rule,
          " never fires: nobody can state or conclude the "
              + pattern.name()
              + " that '"
              + line
              + "' asks for; conclude it in a rule, define it in facts, or take the rule out");
    } else if (!pattern.value().isEmpty() && !values.contains(pattern.value())) {
      add(
          rule,
          " never fires: the "
              + pattern.name()
              + " is never '"
              + pattern.value()
              + "', only "
              + String.join(", ", values)
              + "; correct '"
              + line
              + "' or take the rule out");
    }
  }

  // --- rules that say what another says already

  private void insideAnother() {
    List<Rule> rules = set.rules();
    Map<String, List<Rule>> byConclusion = new LinkedHashMap<>();
    for (Rule rule : rules) {
      byConclusion
          .computeIfAbsent(rule.pass().folder() + rule.effects(), key -> new ArrayList<>())
          .add(rule);
    }
    for (List<Rule> same : byConclusion.values()) {
      for (Rule inner : same) {
        for (Rule outer : same) {
          Set<Pattern> all = new HashSet<>(inner.patterns());
          Set<Pattern> some = new HashSet<>(outer.patterns());
          boolean later = rules.indexOf(inner) > rules.indexOf(outer);
          if (inner != outer && all.containsAll(some) && (all.size() > some.size() || later)) {
            add(
                inner,
                " adds nothing: "
                    + outer.key()
                    + " ("
                    + outer.file()
                    + ":"
                    + outer.line()
                    + ") concludes the same wherever it fires; take one of them out");
          }
        }
      }
    }
  }
}
