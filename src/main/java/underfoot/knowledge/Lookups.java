package underfoot.knowledge;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What was looked up in facts, and what was found. Whatever was worked out from facts in this way
 * comes out the same from any other facts in which the same would be found. It serves one thread
 * while it notes; afterwards it may be shared.
 */
public final class Lookups {
  private final Map<Facts.Key, Fact> found = new HashMap<>();
  private final Map<String, List<String>> abouts = new HashMap<>();
  private boolean everything;

  void note(Facts.Key key, Fact fact) {
    found.put(key, fact);
  }

  void noteAbouts(String name, List<String> of) {
    abouts.put(name, List.copyOf(of));
  }

  void noteEverything() {
    everything = true;
  }

  /** Whether other facts would give the same values in every lookup. */
  public boolean wouldFindTheSameIn(Facts facts) {
    if (everything) {
      return false;
    }
    for (Map.Entry<Facts.Key, Fact> one : found.entrySet()) {
      if (!sameValue(one.getValue(), facts.find(one.getKey()))) {
        return false;
      }
    }
    for (Map.Entry<String, List<String>> one : abouts.entrySet()) {
      if (!one.getValue().equals(facts.abouts(one.getKey()))) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameValue(Fact one, Fact other) {
    if (one == null || other == null || one == other) {
      return one == other;
    }
    return one.text().equals(other.text())
        && Double.compare(one.number(), other.number()) == 0
        && one.from() == other.from();
  }
}
