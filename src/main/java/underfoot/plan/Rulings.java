package underfoot.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import underfoot.buildup.ActRuling;

/** What rules say of acts on a floor, found by the act and the thing it is done to. */
final class Rulings {
  private final List<ActRuling> all;
  private final Map<Place, List<Integer>> places = new HashMap<>();

  /** An act, and the thing it is done to; no thing is the whole floor. */
  private record Place(String act, String about) {}

  Rulings(Collection<ActRuling> rulings) {
    this.all = List.copyOf(rulings);
    for (int i = 0; i < all.size(); i++) {
      ActRuling one = all.get(i);
      places.computeIfAbsent(new Place(one.act(), one.about()), at -> new ArrayList<>()).add(i);
    }
  }

  /** Whether nothing is said of any act. */
  boolean isEmpty() {
    return all.isEmpty();
  }

  /** The same where more is said. */
  Rulings and(List<ActRuling> more) {
    Set<ActRuling> both = new LinkedHashSet<>(all);
    both.addAll(more);
    return new Rulings(both);
  }

  /** Those that hold for one of some acts done to a thing, in the order they were concluded. */
  List<ActRuling> holdingFor(List<String> acts, String about) {
    Map<Integer, ActRuling> found = new TreeMap<>();
    for (String act : acts) {
      for (String thing : about.isEmpty() ? List.of("") : List.of("", about)) {
        for (int i : places.getOrDefault(new Place(act, thing), List.of())) {
          found.put(i, all.get(i));
        }
      }
    }
    return List.copyOf(found.values());
  }
}
