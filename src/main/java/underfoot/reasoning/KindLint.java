package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.language.Constraint;
import underfoot.language.Effect;
import underfoot.language.Operand;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;

/** Rows and attributes of kinds that no rule asks for, and values of facts without a row. */
final class KindLint {
  private static final String WAY = "build-up";

  private final Knowledge knowledge;
  private final Set<String> compared = new HashSet<>();
  private final Set<String> readWhole;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  private KindLint(List<Rule> rules, Knowledge knowledge, Set<String> byFormulas) {
    this.knowledge = knowledge;
    this.readWhole = new HashSet<>(byFormulas);
    for (Rule rule : rules) {
      rule.patterns().stream().filter(one -> one.type() == Pattern.Type.FACT).forEach(this::read);
      for (Effect effect : rule.effects()) {
        effect.words().stream()
            .filter(Effect::isLookedUp)
            .forEach(word -> readWhole.add(Effect.lookedUp(word)));
      }
    }
  }

  /**
   * What is wrong with the tables of kinds.
   *
   * @param rules the rules
   * @param knowledge the tables and the facts whose values they speak of
   * @param byFormulas the facts of rows that formulas read
   */
  static List<RuleFaults.Fault> faults(
      List<Rule> rules, Knowledge knowledge, Set<String> byFormulas) {
    KindLint lint = new KindLint(rules, knowledge, byFormulas);
    for (Kinds.Table table : knowledge.kinds().tables()) {
      lint.attributes(table);
      lint.rows(table);
    }
    lint.ways(rules);
    return lint.faults;
  }

  private void read(Pattern pattern) {
    String name = pattern.name();
    List<String> values = new ArrayList<>();
    for (Constraint one : pattern.constraints()) {
      if (one.operator() == Constraint.Operator.IS_NOT) {
        readWhole.add(name);
      } else if (one.field().equals("text") && one.with() instanceof Operand.Words words) {
        values.addAll(words.words());
      } else if (one.field().equals("number")) {
        readWhole.add(name);
      }
    }
    if (!pattern.value().isEmpty()) {
      values.add(pattern.value());
    }
    values.forEach(value -> compared.add(name + ": " + value));
    if (values.isEmpty()) {
      readWhole.add(name);
    }
  }

  private void attributes(Kinds.Table table) {
    for (Map.Entry<String, Kinds.Attribute> column : table.attributes().entrySet()) {
      Set<String> called = new TreeSet<>();
      table.facts().values().stream()
          .map(names -> names.get(column.getKey()))
          .filter(name -> name != null)
          .forEach(called::add);
      if (called.stream().anyMatch(readWhole::contains)) {
        continue;
      }
      Set<String> values = new TreeSet<>();
      for (Kinds.Row row : table.rows()) {
        if (row.cells().containsKey(column.getKey())) {
          values.add(row.cells().get(column.getKey()).value());
        }
      }
      int before = values.size();
      values.removeIf(
          value -> called.stream().anyMatch(name -> compared.contains(name + ": " + value)));
      if (values.size() == before) {
        add(
            table,
            column.getValue().line(),
            "no rule asks for the attribute '" + column.getKey() + "'; use it or take it out");
      } else if (values.size() > 1) { // what is none of the others is told by them
        add(
            table,
            column.getValue().line(),
            "no rule compares '"
                + column.getKey()
                + "' with "
                + String.join(", ", values)
                + "; write none there, or a rule that asks for it");
      }
    }
  }

  private void rows(Kinds.Table table) {
    Set<String> known = new HashSet<>();
    boolean stated = false;
    for (FactDefinition fact : knowledge.facts().definitions()) {
      if (fact.kind() == Kind.CHOICE && table.facts().containsKey(fact.called())) {
        stated = true;
        known.addAll(fact.of());
        for (String value : fact.of()) {
          if (knowledge.kinds().tables().stream()
              .noneMatch(one -> one.facts().containsKey(fact.called()) && has(one, value))) {
            add(
                table,
                0,
                "'" + value + "', a value of " + fact.key() + ", has no row; give it one");
          }
        }
      }
    }
    for (Kinds.Row row : table.rows()) {
      if (stated && !known.contains(row.kind())) {
        add(
            table,
            row.line(),
            "'" + row.kind() + "' is no value of a fact; add it in facts or take the row out");
      }
    }
  }

  /** Of a way without a row nobody knows what of the old floor stays, so nothing is put right. */
  private void ways(List<Rule> rules) {
    List<Kinds.Table> tables =
        knowledge.kinds().tables().stream().filter(one -> one.facts().containsKey(WAY)).toList();
    Set<String> offered = new TreeSet<>();
    for (Rule rule : rules) {
      rule.effects().stream()
          .filter(effect -> effect.verb() == Effect.Verb.OFFER)
          .forEach(effect -> offered.add(effect.word(Effect.Place.WAY)));
    }
    for (Kinds.Table table : tables) {
      offered.stream()
          .filter(way -> tables.stream().noneMatch(one -> has(one, way)))
          .forEach(
              way ->
                  add(table, 0, "'" + way + "', a way that rules offer, has no row; give it one"));
    }
  }

  private static boolean has(Kinds.Table table, String kind) {
    return table.rows().stream().anyMatch(row -> row.kind().equals(kind));
  }

  private void add(Kinds.Table table, int line, String what) {
    faults.add(new RuleFaults.Fault(table.file(), line, what));
  }
}
