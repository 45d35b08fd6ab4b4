package underfoot.reasoning;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Unknown;

/**
 * Remembers what passes concluded, so that thinking one floor through again and again with one fact
 * changed runs only the passes whose rules can tell the difference. What is recalled is right in
 * its values, but its reasons may name a fact as it stood when the pass was run; so it serves to
 * compare floors, not to explain one. It is meant for one floor and its variants.
 */
final class Recall {
  private final Map<String, List<Object>> remembered = new ConcurrentHashMap<>();

  /** What was concluded of the same things in the same pass; null if nothing is remembered. */
  List<Object> find(String key) {
    return remembered.get(key);
  }

  void keep(String key, List<Object> concluded) {
    remembered.put(key, List.copyOf(concluded));
  }

  /** All that is remembered, also facts that others of the same name were held in place of. */
  List<Object> all() {
    return remembered.values().stream().flatMap(List::stream).toList();
  }

  /** What the rules of a pass can tell apart of what they are shown. */
  static String key(Stage stage, Iterable<Object> shown) {
    StringBuilder key = new StringBuilder(8_000).append(stage);
    for (Object one : shown) {
      key.append('\n');
      if (one instanceof Fact fact) {
        key.append(fact.name()).append('\t').append(fact.about()).append('\t');
        key.append(fact.text()).append('\t').append(fact.number()).append('\t').append(fact.from());
      } else if (one instanceof Unknown unknown) {
        key.append('?').append(unknown.name()).append('\t').append(unknown.about());
      } else if (!(one instanceof Figure)) {
        key.append(one);
      }
    }
    return key.toString();
  }
}
