package underfoot.reasoning;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Finding;
import underfoot.buildup.Laid;
import underfoot.buildup.Remedy;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Unknown;
import underfoot.language.Pattern;
import underfoot.language.Pattern.Type;
import underfoot.language.Rule;

/**
 * What the rules of one pass can match at all. Every pattern of the vocabulary names what it is
 * about, and most the value it must have, so what bears none of the names and values that a pass
 * asks for need not be shown to its sessions. That is most of what is known, and showing it is most
 * of the cost.
 */
final class FactFilter {
  /**
   * The names that patterns of a type ask for, each with the values they ask for; null for any name
   * or any value.
   */
  private final Map<Type, Map<String, Set<String>>> asked = new EnumMap<>(Type.class);

  private volatile Seen seen;

  /** Figures seen of all there are. */
  private record Seen(Figures of, List<Figure> figures) {}

  /** Reads the patterns of the rules of one pass. */
  FactFilter(List<Rule> rules) {
    for (Rule rule : rules) {
      rule.patterns().forEach(this::read);
    }
  }

  private void read(Pattern pattern) {
    switch (pattern.type()) {
      case FACT, UNKNOWN, FIGURE ->
          pattern.asked().forEach(one -> ask(pattern.type(), one.name(), one.value()));
      case CONCLUSION -> ask(Type.CONCLUSION, pattern.word("rule"), "");
      case LAID, REMEDY, CAUTION, FINDING -> ask(pattern.type(), "", "");
    }
  }

  private void ask(Type type, String name, String value) {
    if (name.isEmpty()) {
      asked.put(type, null);
      return;
    }
    if (asked.containsKey(type) && asked.get(type) == null) {
      return;
    }
    Map<String, Set<String>> names = asked.computeIfAbsent(type, any -> new HashMap<>());
    if (value.isEmpty()) {
      names.put(name, null);
    } else if (!names.containsKey(name)) {
      names.put(name, new HashSet<>(Set.of(value)));
    } else if (names.get(name) != null) {
      names.get(name).add(value);
    }
  }

  /** The figures that a rule of the pass might match. There are many, and always the same. */
  List<Figure> seenOf(Figures figures) {
    Seen now = seen;
    if (now == null || now.of() != figures) {
      now = new Seen(figures, figures.all().stream().filter(this::sees).toList());
      seen = now;
    }
    return now.figures();
  }

  /** Whether a rule of the pass might match it. */
  boolean sees(Object one) {
    if (one instanceof Fact fact) {
      return sees(Type.FACT, fact.name(), fact.text());
    }
    if (one instanceof Figure figure) {
      return sees(Type.FIGURE, figure.name(), "");
    }
    if (one instanceof Unknown unknown) {
      return sees(Type.UNKNOWN, unknown.name(), "");
    }
    return one instanceof Conclusion conclusion
        && (sees(Type.CONCLUSION, conclusion.getRule(), "")
            || (one instanceof Laid && asked.containsKey(Type.LAID))
            || (one instanceof Remedy && asked.containsKey(Type.REMEDY))
            || (one instanceof Caution && asked.containsKey(Type.CAUTION))
            || (one instanceof Finding && asked.containsKey(Type.FINDING)));
  }

  private boolean sees(Type type, String name, String value) {
    if (!asked.containsKey(type)) {
      return false;
    }
    Map<String, Set<String>> names = asked.get(type);
    if (names == null) {
      return true;
    }
    Set<String> values = names.get(name);
    return values == null ? names.containsKey(name) : values.contains(value);
  }
}
