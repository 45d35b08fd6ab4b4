package underfoot.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which scenarios, and which lessons made of them, use which rules. */
public final class RuleUses {
  private final Map<String, List<String>> scenarios = new HashMap<>();
  private final Map<String, List<String>> lessons = new HashMap<>();
  private boolean looked;

  /** Notes that a scenario was looked at, and the rules that its advice and its lesson use. */
  public void add(String scenario, Iterable<String> byAdvice, Iterable<String> byLesson) {
    looked = true;
    byAdvice.forEach(rule -> scenarios.computeIfAbsent(rule, r -> new ArrayList<>()).add(scenario));
    byLesson.forEach(rule -> lessons.computeIfAbsent(rule, r -> new ArrayList<>()).add(scenario));
  }

  /** Whether any scenario was looked at; if none was, nothing is known of uses. */
  public boolean looked() {
    return looked;
  }

  /** The scenarios in whose advice a rule has a say, for any way of building. */
  public List<String> scenarios(String rule) {
    return scenarios.getOrDefault(rule, List.of());
  }

  /** The scenarios whose lesson, without a seed, cites a rule. */
  public List<String> lessons(String rule) {
    return lessons.getOrDefault(rule, List.of());
  }
}
