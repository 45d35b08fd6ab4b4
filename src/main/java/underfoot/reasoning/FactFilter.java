package underfoot.reasoning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  /** Which rules ask for what, by their places in the pass. */
  private final Map<Key, List<Integer>> readers = new HashMap<>();

  private volatile Seen seen;

  /** Figures seen of all there are. */
  private record Seen(Figures of, List<Figure> figures) {}

  /**
   * What a pattern asks for.
   *
   * @param type the sort of thing
   * @param name its name; empty for anything of that sort
   * @param value the value it must have, of a layer its family; empty for any
   */
  record Key(Type type, String name, String value) {}

  /** Reads the patterns of the rules of one pass. */
  FactFilter(List<Rule> rules) {
    for (int i = 0; i < rules.size(); i++) {
      for (Pattern pattern : rules.get(i).patterns()) {
        for (Key key : asked(pattern)) {
          readers.computeIfAbsent(key, any -> new ArrayList<>()).add(i);
        }
      }
    }
  }

  /** What a pattern asks for; several if any of them will do. */
  static List<Key> asked(Pattern pattern) {
    return switch (pattern.type()) {
      case FACT, UNKNOWN, FIGURE ->
          pattern.asked().stream()
              .map(one -> new Key(pattern.type(), one.name(), one.value()))
              .toList();
      case CONCLUSION -> List.of(new Key(Type.CONCLUSION, pattern.word("rule"), ""));
      case LAID ->
          List.of(
              pattern.word("layer").isEmpty()
                  ? new Key(Type.LAID, "", pattern.word("family"))
                  : new Key(Type.LAID, pattern.word("layer"), ""));
      case REMEDY, CAUTION, FINDING -> List.of(new Key(pattern.type(), "", ""));
    };
  }

  /** What patterns may ask for to match a thing. */
  static List<Key> answered(Object one) {
    if (one instanceof Fact fact) {
      return List.of(
          new Key(Type.FACT, fact.name(), fact.text()),
          new Key(Type.FACT, fact.name(), ""),
          new Key(Type.FACT, "", ""));
    }
    if (one instanceof Unknown unknown) {
      return List.of(new Key(Type.UNKNOWN, unknown.name(), ""), new Key(Type.UNKNOWN, "", ""));
    }
    if (one instanceof Figure figure) {
      return List.of(new Key(Type.FIGURE, figure.name(), ""), new Key(Type.FIGURE, "", ""));
    }
    List<Key> keys = new ArrayList<>();
    if (one instanceof Conclusion conclusion) {
      keys.add(new Key(Type.CONCLUSION, conclusion.getRule(), ""));
      keys.add(new Key(Type.CONCLUSION, "", ""));
    }
    if (one instanceof Laid laid) {
      keys.add(new Key(Type.LAID, laid.getLayer(), ""));
      keys.add(new Key(Type.LAID, "", laid.getFamily()));
      keys.add(new Key(Type.LAID, "", ""));
    } else if (one instanceof Remedy) {
      keys.add(new Key(Type.REMEDY, "", ""));
    } else if (one instanceof Caution) {
      keys.add(new Key(Type.CAUTION, "", ""));
    } else if (one instanceof Finding) {
      keys.add(new Key(Type.FINDING, "", ""));
    }
    return keys;
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
    for (Key key : answered(one)) {
      if (readers.containsKey(key)) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of some rules of the pass, told by their places, might match it. */
  boolean sees(Object one, BitSet rules) {
    for (Key key : answered(one)) {
      for (int rule : readers.getOrDefault(key, List.of())) {
        if (rules.get(rule)) {
          return true;
        }
      }
    }
    return false;
  }
}
