package underfoot.buildup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is said of acts on a floor, found by the act and the thing it is done to.
 *
 * @param <T> what says it
 */
public final class ByAct<T> {
  private final List<T> all = new ArrayList<>();
  private final Map<Deed, List<Integer>> places = new HashMap<>();

  /** An act, and the thing it is done to; no thing is the whole floor. */
  private record Deed(String act, String about) {}

  /** What rules say of acts. */
  public static ByAct<ActRuling> of(Collection<ActRuling> rulings) {
    ByAct<ActRuling> found = new ByAct<>();
    rulings.forEach(one -> found.add(one.act(), one.about(), one));
    return found;
  }

  /** Adds what is said of an act done to a thing; of no thing if it is said of the whole floor. */
  public void add(String act, String about, T says) {
    places.computeIfAbsent(new Deed(act, about), at -> new ArrayList<>()).add(all.size());
    all.add(says);
  }

  /** All that is said, in the order it was added. */
  public List<T> all() {
    return List.copyOf(all);
  }

  /** Whether nothing is said of any act. */
  public boolean isEmpty() {
    return all.isEmpty();
  }

  /** The same where more rulings hold. */
  public static ByAct<ActRuling> both(ByAct<ActRuling> some, List<ActRuling> more) {
    Set<ActRuling> both = new LinkedHashSet<>(some.all);
    both.addAll(more);
    return of(both);
  }

  /** What holds for one of some acts done to a thing, in the order it was added. */
  public List<T> holdingFor(Collection<String> acts, String about) {
    if (all.isEmpty()) {
      return List.of();
    }
    Map<Integer, T> found = new TreeMap<>();
    for (String act : acts) {
      for (String thing : about.isEmpty() ? List.of("") : List.of("", about)) {
        for (int i : places.getOrDefault(new Deed(act, thing), List.of())) {
          found.put(i, all.get(i));
        }
      }
    }
    return List.copyOf(found.values());
  }
}
