package underfoot.reasoning;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.function.Predicate;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Lookups;

/**
 * Remembers what passes concluded, so that thinking one floor through again and again with one fact
 * changed runs only the passes whose rules can tell the difference. What is recalled is right in
 * its values, but its reasons may name a fact as it stood when the pass was run; so it serves to
 * compare floors, not to explain one. It is meant for one floor and its variants.
 */
final class PassCache {
  /** A way of building has sessions of its own. */
  private static final Predicate<String> OF_A_WAY = line -> line.startsWith("build-up\t");

  /**
   * The passes that are run most, once for each way. In those before, rules assume what is missing,
   * and are shown all at once.
   */
  private static final Set<Pass> STAY_OPEN = EnumSet.of(Pass.LAY, Pass.JUDGE);

  /** With more to compare with, working it out afresh would be quicker. */
  private static final int MOST_COMPARED = 12;

  private final Map<List<Object>, List<Object>> remembered = new ConcurrentHashMap<>();
  private final Map<String, RuleSession> open = new ConcurrentHashMap<>();
  private final Map<Object, List<Known>> worked = new ConcurrentHashMap<>();
  private volatile boolean beginning;

  /** What was concluded of the same things in the same pass; null if nothing is remembered. */
  List<Object> find(List<Object> key) {
    return remembered.get(key);
  }

  void keep(List<Object> key, List<Object> concluded) {
    remembered.put(key, List.copyOf(concluded));
  }

  /** All that is remembered, also facts that others of the same name were held in place of. */
  List<Object> all() {
    return remembered.values().stream().flatMap(List::stream).toList();
  }

  /**
   * What is worked out from facts, once for all facts in which the same would be looked up.
   *
   * @param task what is worked out, and from what besides
   * @param facts the facts
   * @param work how, from facts that note what is looked up in them
   */
  List<Fact> worked(Object task, Facts facts, Function<Facts, List<Fact>> work) {
    List<Known> known = worked.computeIfAbsent(task, one -> new CopyOnWriteArrayList<>());
    for (Known one : known) {
      if (one.lookups().wouldFindTheSameIn(facts)) {
        return one.found();
      }
    }
    Lookups lookups = new Lookups();
    List<Fact> found = List.copyOf(work.apply(Facts.noting(facts, lookups)));
    if (known.size() < MOST_COMPARED) {
      known.add(new Known(lookups, found));
    }
    return found;
  }

  /** What was worked out once. */
  private record Known(Lookups lookups, List<Fact> found) {}

  /** From now on until it ends, sessions stay open for the variants of the floor they are for. */
  void begin() {
    beginning = true;
  }

  void begun() {
    beginning = false;
  }

  /** Ends the open sessions; what is asked for later is worked out without them. */
  void end() {
    open.values().forEach(RuleSession::end);
    open.clear();
  }

  /** What a pass concludes of what it is shown, in an open session if one is near enough. */
  List<Object> work(
      Pass pass, RuleBase.Loaded loaded, Knowledge knowledge, Map<String, Object> shown) {
    String which = pass + shown.keySet().stream().filter(OF_A_WAY).findFirst().orElse("");
    if (beginning && STAY_OPEN.contains(pass)) {
      RuleSession sitting = RuleSession.open(pass, loaded, knowledge, shown);
      List<Object> held = sitting.held();
      open.put(which, sitting);
      return held;
    }
    return Optional.ofNullable(open.get(which))
        .flatMap(sitting -> sitting.with(shown))
        .orElseGet(() -> RuleSession.of(pass, loaded, knowledge, shown.values()));
  }
}
