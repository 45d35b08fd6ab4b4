package underfoot.reasoning;

import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.LayerKind;

/** What one rule concluded of a floor, each thing once. */
final class RuleSays {
  private RuleSays() {}

  /** What a rule said in an answer, on one line; empty if it did not fire. */
  static String of(String rule, Assessment assessment) {
    return of(rule, said(assessment));
  }

  private static Deque<Object> said(Assessment assessment) {
    Deque<Object> todo = new ArrayDeque<>(assessment.general());
    todo.addAll(assessment.facts().all());
    for (BuildUp buildUp : assessment.buildUps()) {
      todo.addAll(buildUp.concluded());
      todo.addAll(buildUp.facts().all());
    }
    for (Assessment other : assessment.others()) {
      todo.addAll(said(other));
    }
    for (ZonePart zone : assessment.zones()) {
      todo.addAll(said(zone.assessment()));
    }
    return todo;
  }

  /** What a rule said among conclusions and what they rest on. */
  static String of(String rule, Deque<Object> todo) {
    Set<Object> seen = new HashSet<>();
    Set<String> said = new TreeSet<>();
    while (!todo.isEmpty()) {
      Object one = todo.pop();
      Derivation because =
          one instanceof Conclusion conclusion
              ? conclusion.because()
              : one instanceof Fact fact ? fact.because() : null;
      if (because == null || !seen.add(Map.entry(one, because))) {
        continue;
      }
      if (because.rule().key().equals(rule)) {
        said.add(words(one));
      }
      todo.addAll(because.premises());
    }
    return String.join("; ", said);
  }

  private static String words(Object one) {
    if (one instanceof Fact fact) {
      return fact.from() + " " + fact.name() + ": " + fact.text();
    }
    List<String> words = new ArrayList<>(List.of(one.getClass().getSimpleName()));
    for (RecordComponent part : one.getClass().getRecordComponents()) {
      if (part.getName().equals("because") || part.getName().equals("about")) {
        continue;
      }
      try {
        part.getAccessor().setAccessible(true);
        Object value = part.getAccessor().invoke(one);
        words.add(
            value instanceof LayerKind kind
                ? kind.id()
                : value instanceof Figure figure ? figure.name() : String.valueOf(value));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
    return String.join(" ", words).strip();
  }
}
