package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import underfoot.knowledge.Knowledge;
import underfoot.language.Constraint;
import underfoot.language.Constraint.Operator;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Effect.Verb;
import underfoot.language.Operand;
import underfoot.language.Pattern;
import underfoot.language.Pattern.Quantity;
import underfoot.language.Pattern.Type;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.scenario.FactDefinition;

/** Rules that demand different things and may both fire. */
final class RuleConflicts {
  /** So many steps back it is followed what must hold where something was concluded. */
  private static final int DEPTH = 3;

  private static final String ANY = "[any]";

  private final List<Rule> rules;
  private final Knowledge knowledge;
  private final Set<String> stated;
  private final Set<String> assumed;

  /** What a fact may be assumed to be, where it is only ever assumed, and in plain words. */
  private final Map<String, Set<String>> assumedAs = new HashMap<>();

  private final List<RuleFaults.Fault> faults = new ArrayList<>();
  private final Map<String, Map<String, Set<String>>> allowedBefore = new HashMap<>();

  RuleConflicts(List<Rule> rules, Knowledge knowledge) {
    this.rules = rules;
    this.knowledge = knowledge;
    this.stated =
        knowledge.facts().definitions().stream()
            .map(FactDefinition::called)
            .collect(Collectors.toSet());
    this.assumed =
        rules.stream()
            .flatMap(rule -> rule.effects().stream())
            .filter(Effect::isFact)
            .map(effect -> effect.word(Place.FACT))
            .collect(Collectors.toSet());
    rules.stream()
        .flatMap(rule -> rule.effects().stream())
        .filter(Effect::isFact)
        .forEach(
            effect ->
                assumedAs
                    .computeIfAbsent(effect.word(Place.FACT), fact -> new HashSet<>())
                    .add(effect.verb() == Verb.ASSUME ? effect.word(Place.WORD) : ANY));
    assumedAs
        .values()
        .removeIf(words -> words.contains(ANY) || words.stream().anyMatch(Effect::isLookedUp));
  }

  List<RuleFaults.Fault> faults() {
    assumptions();
    grades();
    return faults;
  }

  private record Demand(Rule rule, String what) {}

  private void assumptions() {
    Map<String, List<Demand>> byFact = new TreeMap<>();
    for (Rule rule : rules) {
      for (Effect effect : rule.effects()) {
        if (effect.verb() == Verb.ASSUME || effect.verb() == Verb.ASSUME_AS) {
          String what = effect.word(Place.WORD) + effect.word(Place.FIGURE);
          String about = effect.word(Place.ABOUT);
          String thing = about.isEmpty() || about.equals(Effect.ABOUT) ? "" : about + "'s ";
          byFact
              .computeIfAbsent(
                  thing + "assumed " + effect.word(Place.FACT), fact -> new ArrayList<>())
              .add(new Demand(rule, what));
        }
      }
    }
    byFact.forEach(
        (fact, demands) -> {
          for (int i = 0; i < demands.size(); i++) {
            for (Demand other : demands.subList(i + 1, demands.size())) {
              Demand one = demands.get(i);
              if (!one.what().equals(other.what()) && !exclusive(one.rule(), other.rule())) {
                contradiction(fact, one, other, "; let one ask for what the other must not have");
              }
            }
          }
        });
  }

  /** Classes that stand on no scale cannot be told stricter from laxer where two rules ask. */
  private void grades() {
    Map<String, Demand> first = new HashMap<>();
    for (Rule rule : rules) {
      for (Effect effect : rule.effects()) {
        String grade = effect.word(Place.WORD);
        if (effect.verb() == Verb.GRADE
            && knowledge.scales().values().stream().noneMatch(s -> s.contains(grade))) {
          String layer = effect.word(Place.LAYER);
          Demand one = first.putIfAbsent(layer, new Demand(rule, "another"));
          if (one != null) {
            contradiction(
                "class of " + layer,
                one,
                new Demand(rule, grade),
                "; name the exception in one of them: except when … holds");
          }
        }
      }
    }
  }

  private void contradiction(String fact, Demand one, Demand other, String how) {
    faults.add(
        new RuleFaults.Fault(
            other.rule().file(),
            other.rule().line(),
            other.rule().key()
                + " and "
                + one.rule().key()
                + " ("
                + one.rule().file()
                + ":"
                + one.rule().line()
                + ") may both fire and demand different things, the "
                + fact
                + " being "
                + other.what()
                + " and "
                + one.what()
                + how));
  }

  /** Whether two rules cannot both hold, as far as their own conditions tell. */
  private boolean exclusive(Rule one, Rule other) {
    if (excepts(one, other) || excepts(other, one)) {
      return true;
    }
    Map<String, Set<String>> asked = allowed(one, 0);
    for (Map.Entry<String, Set<String>> far : allowed(other, 0).entrySet()) {
      Set<String> here = asked.get(far.getKey());
      if (here != null && here.stream().noneMatch(far.getValue()::contains)) {
        return true;
      }
    }
    return denies(one, other) || denies(other, one) || compared(one, other) || compared(other, one);
  }

  private static boolean excepts(Rule one, Rule other) {
    return one.patterns().stream()
        .anyMatch(
            pattern ->
                pattern.type() == Type.CONCLUSION
                    && pattern.quantity() == Quantity.NONE
                    && pattern.word("rule").equals(other.id()));
  }

  /** Whether one rule asks that not be, or not be known, which another needs. */
  private boolean denies(Rule one, Rule other) {
    Map<String, Set<String>> needs = allowed(other, 0);
    Set<String> named =
        other.patterns().stream()
            .filter(Pattern::isFactThere)
            .map(Pattern::name)
            .collect(Collectors.toSet());
    Map<String, Set<String>> denied = new HashMap<>();
    for (Pattern pattern : one.patterns()) {
      String name = pattern.name();
      boolean none = pattern.quantity() == Quantity.NONE;
      if (pattern.type() == Type.FACT && none && !pattern.value().isEmpty()) {
        denied.computeIfAbsent(name, n -> new HashSet<>()).add(pattern.value());
      } else if (pattern.type() == Type.FACT && none && named.contains(name)) {
        return true;
      } else if (pattern.type() == Type.FACT && !none) {
        denied.computeIfAbsent(name, n -> new HashSet<>()).addAll(words(pattern, Operator.IS_NOT));
      } else if (pattern.type() == Type.UNKNOWN
          && (named.contains(pattern.word("name")) && !assumed.contains(pattern.word("name"))
              || neverAssumed(pattern.word("name"), needs))) {
        return true;
      }
    }
    for (Map.Entry<String, Set<String>> no : denied.entrySet()) {
      Set<String> must = needs.get(no.getKey());
      if (must != null && !no.getValue().isEmpty() && no.getValue().containsAll(must)) {
        return true;
      }
    }
    return other.patterns().stream()
        .anyMatch(pattern -> one.patterns().contains(pattern.with(Quantity.NONE)));
  }

  /** Whether a fact that nobody has said is never assumed to be what is needed. */
  private boolean neverAssumed(String name, Map<String, Set<String>> needs) {
    Set<String> needed = needs.get(name);
    Set<String> taken = assumedAs.get(name);
    return needed != null && taken != null && needed.stream().noneMatch(taken::contains);
  }

  /** The words that a pattern holds the text of a fact to, or keeps it from. */
  private static Set<String> words(Pattern pattern, Operator operator) {
    Set<String> words = new HashSet<>();
    for (Constraint constraint : pattern.constraints()) {
      if (constraint.field().equals("text")
          && constraint.operator() == operator
          && constraint.with() instanceof Operand.Words among) {
        words.addAll(among.words());
      }
    }
    return words;
  }

  /**
   * The values that facts may have where a rule fires, also those that follow from what it asks for
   * because only some rules conclude that or only some kinds have it.
   */
  private Map<String, Set<String>> allowed(Rule rule, int depth) {
    String key = depth + rule.key();
    Map<String, Set<String>> known = allowedBefore.get(key);
    if (known == null) {
      known = new HashMap<>();
      for (Pattern pattern : rule.patterns()) {
        Set<String> values =
            pattern.value().isEmpty() ? words(pattern, Operator.IS) : Set.of(pattern.value());
        if (pattern.isFactThere() && values.isEmpty()) {
          values = knowledge.kinds().values(pattern.name());
        }
        if (pattern.isFactThere() && !values.isEmpty()) {
          narrow(known, pattern.name(), values);
          if (depth < DEPTH) {
            follow(known, pattern.name(), values, depth);
          }
        }
      }
      allowedBefore.put(key, known);
    }
    return known;
  }

  private static void narrow(Map<String, Set<String>> allowed, String name, Set<String> values) {
    allowed.merge(
        name,
        values,
        (had, more) -> {
          Set<String> both = new HashSet<>(had);
          both.retainAll(more);
          return both;
        });
  }

  private void follow(
      Map<String, Set<String>> allowed, String name, Set<String> values, int depth) {
    if (stated.contains(name)) {
      return;
    }
    List<Map<String, Set<String>>> ways = new ArrayList<>();
    for (Rule rule : rules) {
      for (Effect effect : rule.effects()) {
        if (effect.isFact()
            && effect.word(Place.FACT).equals(name)
            && (values.contains(effect.word(Place.WORD))
                || Effect.isLookedUp(effect.word(Place.WORD)))) {
          ways.add(allowed(rule, depth + 1));
        }
      }
    }
    knowledge
        .kinds()
        .having(name, values)
        .forEach(
            (fact, kinds) -> {
              Map<String, Set<String>> of = new HashMap<>(Map.of(fact, kinds));
              if (depth < DEPTH) {
                follow(of, fact, kinds, depth + 1);
              }
              ways.add(of);
            });
    Map<String, Set<String>> any = new HashMap<>();
    for (String fact : ways.isEmpty() ? Set.<String>of() : ways.get(0).keySet()) {
      if (ways.stream().allMatch(way -> way.containsKey(fact))) {
        Set<String> either = new HashSet<>();
        ways.forEach(way -> either.addAll(way.get(fact)));
        any.put(fact, either);
      }
    }
    any.forEach((fact, of) -> narrow(allowed, fact, of));
  }

  /** Whether one rule asks that a number be below what another asks it to be above. */
  private static boolean compared(Rule one, Rule other) {
    for (Comparison here : comparisons(one)) {
      for (Comparison there : comparisons(other)) {
        if (here.with().equals(there.with()) && here.below() != there.below()) {
          return true;
        }
      }
    }
    return false;
  }

  private record Comparison(List<String> with, boolean below) {}

  private static List<Comparison> comparisons(Rule rule) {
    List<Comparison> comparisons = new ArrayList<>();
    Map<String, String> named = new HashMap<>();
    for (Pattern pattern : rule.patterns()) {
      named.put(pattern.variable(), pattern.name());
      for (Constraint constraint : pattern.constraints()) {
        Operator operator = constraint.operator();
        if (operator.ofNumbers() && constraint.with() instanceof Operand.Of of) {
          String name = pattern.type() == Type.FACT ? pattern.name() : pattern.word("name");
          comparisons.add(
              new Comparison(
                  List.of(String.valueOf(named.get(of.variable())), name),
                  operator == Operator.LESS || operator == Operator.AT_MOST));
        }
      }
    }
    return comparisons;
  }
}
