package underfoot.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Figure;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.Source;

/**
 * Why something was decided: a rule, what it rests on, and so on down to what the scenario states.
 * Justifications share their parts, so the whole is small however long the chains are; two are the
 * same only if they are one object.
 */
public final class Justification {
  private final RuleNote rule;
  private final Source source;
  private final List<Premise> facts;
  private final List<Figure> figures;
  private final List<Justification> restsOn;

  Justification(
      RuleNote rule,
      Source source,
      List<Premise> facts,
      List<Figure> figures,
      List<Justification> restsOn) {
    this.rule = rule;
    this.source = source;
    this.facts = List.copyOf(facts);
    this.figures = List.copyOf(figures);
    this.restsOn = List.copyOf(restsOn);
  }

  /**
   * Each decision once. A rule may decide the same by what looks the same: a compound may be asked
   * for by two rules, and what is said of it then holds twice. That is one reason, and it rests on
   * all that either rests on.
   */
  static List<Justification> once(Collection<Justification> all) {
    Map<Told, Set<Justification>> each = new LinkedHashMap<>();
    for (Justification one : all) {
      each.computeIfAbsent(one.told(), told -> new LinkedHashSet<>()).add(one);
    }
    return each.values().stream().map(Justification::one).toList();
  }

  /** What a decision looks like: decisions that look the same are one reason. */
  private record Told(String rule, List<Figure> figures, List<String> facts) {}

  private Told told() {
    return new Told(rule.key(), figures, facts.stream().map(Premise::toString).toList());
  }

  private static Justification one(Set<Justification> same) {
    Justification first = same.iterator().next();
    if (same.size() == 1) {
      return first;
    }
    List<Justification> all = new ArrayList<>();
    same.forEach(one -> all.addAll(one.restsOn));
    return new Justification(first.rule, first.source, first.facts, first.figures, once(all));
  }

  /** The rule that decided. */
  public RuleNote rule() {
    return rule;
  }

  /** Where the rule comes from. */
  public Source source() {
    return source;
  }

  /** The facts it rests on. */
  public List<Premise> facts() {
    return facts;
  }

  /** The figures it was judged by. */
  public List<Figure> figures() {
    return figures;
  }

  /** The decisions it rests on: those that assumed or concluded its facts, and earlier ones. */
  public List<Justification> restsOn() {
    return restsOn;
  }

  @Override
  public String toString() {
    return rule.id();
  }
}
