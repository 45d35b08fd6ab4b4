package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Knowledge;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.reasoning.Beside.Answer;
import underfoot.reasoning.Beside.Ruling;

/**
 * What is wrong with the rules of what may lie on what: two kinds without an answer, something that
 * is to lie between two and can lie between them nowhere, a kind that may lie on nothing, and a
 * rule that decides nothing.
 */
public final class NeighbourGaps {
  private final LayersBeside beside;
  private final Map<String, Map<String, Beside>> byUpper = new HashMap<>();
  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  private NeighbourGaps(LayersBeside beside) {
    this.beside = beside;
    for (Beside one : beside.all(List.of())) {
      byUpper.computeIfAbsent(one.upper(), any -> new HashMap<>()).put(one.lower(), one);
    }
  }

  /**
   * The faults.
   *
   * @param rules the rules
   * @param knowledge the kinds they are asked of
   */
  public static List<RuleFaults.Fault> faults(RuleBase rules, Knowledge knowledge) {
    if (rules.set().of(Pass.NEXT).isEmpty()) {
      return List.of(); // a rule base of one's own that leaves it out
    }
    NeighbourGaps gaps = new NeighbourGaps(new LayersBeside(rules, knowledge));
    gaps.unanswered();
    gaps.nothingBetween();
    gaps.idle(rules.set().of(Pass.NEXT));
    return gaps.faults;
  }

  private void unanswered() {
    byUpper.forEach(
        (upper, pairs) -> {
          pairs.values().stream()
              .filter(one -> one.rulings().isEmpty())
              .forEach(one -> add("no rule says whether " + upper + " may lie on " + one.lower()));
          if (pairs.values().stream().allMatch(one -> one.answer() == Answer.NEVER)) {
            add("'" + upper + "' may lie on nothing at all; say in tables/lie-on.yaml on what");
          }
        });
  }

  /** What is to lie between two must be something that may lie on the lower of them. */
  private void nothingBetween() {
    Set<String> told = new HashSet<>();
    for (Map<String, Beside> pairs : byUpper.values()) {
      for (Beside pair : pairs.values()) {
        for (Ruling one : pair.rulings()) {
          boolean open = one.answer() == Answer.ONLY_WITH && pair.answer() != Answer.NEVER;
          if (open
              && byUpper.keySet().stream().noneMatch(kind -> comesBetween(kind, one))
              && told.add(one.between())) {
            add("no kind is or does '" + one.between() + "', which is to lie between two");
          }
        }
      }
    }
  }

  private boolean comesBetween(String kind, Ruling ruling) {
    return beside.works(kind).contains(ruling.between())
        && byUpper.get(kind).values().stream().anyMatch(one -> one.answer() != Answer.NEVER);
  }

  private void idle(List<Rule> rules) {
    Set<String> deciding = new HashSet<>();
    byUpper
        .values()
        .forEach(
            pairs ->
                pairs
                    .values()
                    .forEach(
                        pair ->
                            pair.rulings()
                                .forEach(one -> deciding.add(one.because().rule().key()))));
    for (Rule rule : rules) {
      if (!deciding.contains(rule.key())) {
        faults.add(
            new RuleFaults.Fault(
                rule.file(),
                rule.line(),
                rule.key() + " decides of no two kinds; correct it or take it out"));
      }
    }
  }

  private void add(String what) {
    faults.add(new RuleFaults.Fault("next", 0, what));
  }
}
