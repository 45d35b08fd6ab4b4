package underfoot.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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
    List<Justification> each = new ArrayList<>();
    for (Justification one : all) {
      int same = 0;
      while (same < each.size() && !one.tellsTheSameAs(each.get(same))) {
        same++;
      }
      if (same == each.size()) {
        each.add(one);
      } else {
        each.set(same, each.get(same).with(one));
      }
    }
    return List.copyOf(each);
  }

  private boolean tellsTheSameAs(Justification other) {
    return this == other
        || (rule.key().equals(other.rule.key())
            && figures.equals(other.figures)
            && told(facts).equals(told(other.facts)));
  }

  private static List<String> told(List<Premise> facts) {
    return facts.stream().map(Premise::toString).toList();
  }

  private Justification with(Justification other) {
    if (this == other) {
      return this;
    }
    List<Justification> both = new ArrayList<>(restsOn);
    both.addAll(other.restsOn);
    return new Justification(rule, source, facts, figures, once(both));
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
