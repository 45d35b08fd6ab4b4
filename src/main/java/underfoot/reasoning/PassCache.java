package underfoot.reasoning;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import underfoot.language.Pass;

/**
 * Remembers what passes concluded, so that thinking one floor through again and again with one fact
 * changed runs only the passes whose rules can tell the difference. What it remembers is right in
 * its values, but its reasons may name a fact as it stood when the pass was run; so it serves to
 * compare floors, not to explain one.
 */
final class PassCache {
  private final Map<List<Object>, List<Object>> remembered = new ConcurrentHashMap<>();

  /**
   * What a pass concludes of what it is shown.
   *
   * @param pass the pass
   * @param shown a digest of what rules can tell of all that it is shown
   * @param recall whether what was concluded of the same before may be told
   * @param conclude how, if it was not shown the same before
   */
  List<Object> find(Pass pass, ByteBuffer shown, boolean recall, Supplier<List<Object>> conclude) {
    List<Object> key = List.of(pass, shown);
    List<Object> known = recall ? remembered.get(key) : null;
    if (known == null) { // not computeIfAbsent: nobody may hold a lock while thinking
      known = List.copyOf(conclude.get());
      remembered.put(key, known);
    }
    return known;
  }

  /** All that is remembered, also facts that others of the same name were held in place of. */
  List<Object> all() {
    return remembered.values().stream().flatMap(List::stream).toList();
  }
}
