package underfoot.scenario;

import java.util.AbstractList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** What is said of every fact, in order, and found by key and entry without looking through all. */
final class Givens extends AbstractList<StatedFact> implements RandomAccess {
  private final List<StatedFact> all;
  private final Map<At, StatedFact> byPlace = new HashMap<>();

  /** A fact's key and the entry it belongs to. */
  private record At(String key, String about) {}

  private Givens(Collection<StatedFact> all) {
    this.all = List.copyOf(all);
    this.all.forEach(one -> byPlace.putIfAbsent(new At(one.key(), one.about()), one));
  }

  static Givens of(Collection<StatedFact> all) {
    return all instanceof Givens givens ? givens : new Givens(all);
  }

  /** What is said of a fact of an entry; null if nothing is. */
  StatedFact find(String key, String about) {
    return byPlace.get(new At(key, about));
  }

  @Override
  public StatedFact get(int place) {
    return all.get(place);
  }

  @Override
  public int size() {
    return all.size();
  }
}
