package underfoot.reasoning;

import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import underfoot.language.Constraint;
import underfoot.language.Effect;
import underfoot.language.Operand;
import underfoot.language.Pass;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleSet;
import underfoot.language.Said;
import underfoot.plan.Proposals;
import underfoot.reasoning.Mutants.Mutant;
import underfoot.reasoning.RuleCasesTest.RuleCase;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/**
 * Looks, for each condition of each rule that the rule's own near miss does not try alone, for a
 * floor on which all the others hold, and writes them to {@link NearMiss#FILE}. No part of the
 * build: {@code mvn -o test -Dtest=NearMissSearch}. What is written there already is kept, unless
 * {@code -Dsearch.anew=true}; {@code -Dsearch.rules=DOOR-.*} looks for these rules only, {@code
 * -Dsearch.varied.only=true} not on the floors of all cases again, and {@code -Dsearch.minutes=20}
 * is how long the last part may take.
 *
 * <p>Beside each rule stands a probe: the same rule without the one condition. Where the probe
 * speaks and the rule does not, the condition is what keeps the rule quiet. First the floors of all
 * cases are looked at; then what makes the rule speak is said of every other floor; then the rule's
 * own floor is taken with one thing changed that has to do with the condition: a fact it reads, a
 * fact that a rule rests on which concludes what it reads, or all that makes the case of such a
 * rule fire.
 */
class NearMissSearch {
  private static final System.Logger LOG = System.getLogger("underfoot.mutation");
  private static final int MOST_CHANGES = Integer.getInteger("most.changes", 140);

  private final Mutants mutants = new Mutants();
  private final List<Rule> rules = set().rules();
  private final Map<String, List<RuleCase>> cases = new LinkedHashMap<>();
  private final Map<String, RuleCase> byName = NearMiss.byName();

  /** The probes that no floor has told from their rules yet, by their names. */
  private final Map<String, Mutant> open = new LinkedHashMap<>();

  private final List<NearMiss> found = new ArrayList<>();
  private Advisor advisor;

  NearMissSearch() throws Exception {
    for (RuleCase one : RuleCasesTest.cases()) {
      cases.computeIfAbsent(one.rule(), rule -> new ArrayList<>()).add(one);
    }
  }

  @Test
  void write_where_rules_stay_quiet() throws Exception {
    Set<String> known = new TreeSet<>();
    if (!Boolean.getBoolean("search.anew")) {
      NearMiss.all().values().forEach(found::addAll);
      found.forEach(one -> known.add(one.rule() + ": " + one.without()));
    }
    int number = 0;
    for (Mutant mutant : mutants.dropped()) {
      if (id(mutant).matches(System.getProperty("search.rules", ".*"))
          && !known.contains(id(mutant) + ": " + mutant.told())) {
        open.put(id(mutant) + "~" + ++number, mutant);
      }
    }
    told(" conditions to try alone");
    probe();
    for (List<RuleCase> of : cases.values()) {
      for (RuleCase one : of) {
        if (open.values().stream().anyMatch(probe -> id(probe).equals(one.rule()))) {
          listen(one, " missed", RuleCasesTest.changes(one, true), Map.of(), true);
        }
      }
    }
    told(" without their own near miss");
    probe();
    if (!Boolean.getBoolean("search.varied.only")) {
      for (RuleCase one : byName.values()) {
        listen(one, "", one.fires(), Map.of(), false);
        listen(one, " missed", RuleCasesTest.changes(one, true), Map.of(), false);
      }
      NearMiss.write(found);
      told(" without a floor among the cases");
      probe();
    }
    long end = System.nanoTime() + Long.getLong("search.minutes", 20) * 60_000_000_000L;
    for (Map.Entry<String, Mutant> probe : List.copyOf(open.entrySet())) {
      if (open.containsKey(probe.getKey()) && System.nanoTime() < end) {
        vary(probe.getKey(), probe.getValue());
      }
    }
    NearMiss.write(found);
    told(" left after one change");
    probe();
    Random random = new Random(Long.getLong("seed", 1));
    while (System.nanoTime() < end && !open.isEmpty()) {
      wander(random);
    }
    NearMiss.write(found);
    Map<String, List<String>> left = new TreeMap<>();
    open.values()
        .forEach(one -> left.computeIfAbsent(id(one), rule -> new ArrayList<>()).add(one.told()));
    StringBuilder told = new StringBuilder(open.size() + " without any floor");
    left.forEach((rule, lines) -> told.append("\n  ").append(rule).append(": ").append(lines));
    LOG.log(Level.INFO, told.toString());
  }

  private static RuleSet set() {
    return Floors.advisor().rules().set();
  }

  private static String id(Mutant mutant) {
    return mutant.rule().key();
  }

  private void told(String what) {
    LOG.log(Level.INFO, open.size() + what);
  }

  /** Puts a probe beside the right rule for each condition that is still open. */
  private void probe() throws Exception {
    Map<Pass, List<Rule>> probed = new EnumMap<>(Pass.class);
    open.forEach(
        (name, mutant) -> {
          List<Rule> rules =
              probed.computeIfAbsent(mutant.pass(), pass -> new ArrayList<>(set().of(pass)));
          Said speaks = set().vocabulary().consequence(speaks(mutant), 0).orElseThrow();
          rules.add(
              Mutants.with(
                  mutant.wrong().with(mutant.wrong().conditions(), List.of(speaks)),
                  name,
                  "probe"));
        });
    advisor = mutants.advisor(probed);
  }

  /** A probe speaks of the thing its rule speaks of. */
  private String speaks(Mutant mutant) {
    boolean ofThing = mutant.rule().effects().stream().anyMatch(Effect::leans);
    if (mutant.pass() == Pass.CHECK) {
      return ofThing
          ? "Judge that it agrees, find-the-base"
          : "Judge that the whole falls short, find-the-base";
    }
    return ofThing ? "Note at that thing find-the-base" : "Note find-the-base";
  }

  /**
   * Listens on a floor for probes that speak where their rules do not.
   *
   * @param one the case whose floor it is
   * @param missed what is added to the case's name
   * @param changes what the case changes
   * @param more what is changed besides
   * @param own whether only the case's own rule counts, which RuleCasesTest holds to it anyway
   */
  private void listen(
      RuleCase one,
      String missed,
      Map<String, String> changes,
      Map<String, String> more,
      boolean own)
      throws Exception {
    Map<String, String> all = new LinkedHashMap<>(changes);
    all.putAll(more);
    Set<Voice> heard;
    try {
      heard = RuleCasesTest.heard(advisor, one, all);
    } catch (ScenarioFaults | RuntimeException contradiction) {
      return;
    }
    Map<String, Set<Voice>> byRule = new LinkedHashMap<>();
    heard.forEach(v -> byRule.computeIfAbsent(v.rule(), rule -> new LinkedHashSet<>()).add(v));
    for (Map.Entry<String, Mutant> probe : List.copyOf(open.entrySet())) {
      String rule = id(probe.getValue());
      Set<Voice> right = byRule.getOrDefault(rule, Set.of());
      if (own && (!rule.equals(one.rule()) || !right.isEmpty())) {
        continue;
      }
      for (Voice wrong : byRule.getOrDefault(probe.getKey(), Set.of())) {
        NearMiss miss = miss(wrong, rule, right, probe.getValue(), one, missed, more);
        if (miss != null) {
          open.remove(probe.getKey());
          if (!own) {
            found.add(miss);
          }
          break;
        }
      }
    }
  }

  /** Why a probe is told from its rule; null if the rule says the same. */
  private static NearMiss miss(
      Voice wrong,
      String rule,
      Set<Voice> right,
      Mutant probe,
      RuleCase one,
      String missed,
      Map<String, String> more) {
    boolean anyWay = right.stream().noneMatch(v -> v.about().equals(wrong.about()));
    boolean anyThing = right.stream().noneMatch(v -> v.way().equals(wrong.way()));
    boolean quiet = right.isEmpty();
    if (!quiet && right.contains(new Voice(rule, wrong.way(), wrong.about()))) {
      return null;
    }
    String way = quiet || (anyWay && !wrong.about().isEmpty()) ? "" : wrong.way();
    String about = quiet || (anyThing && !wrong.way().isEmpty()) ? "" : wrong.about();
    if (!quiet && way.isEmpty() && about.isEmpty()) {
      return null; // it speaks of the whole floor, and the rule speaks only of parts
    }
    return new NearMiss(rule, probe.told(), one.rule() + missed, more, way, about);
  }

  // --- changes that have to do with a condition

  private void vary(String name, Mutant probe) throws Exception {
    RuleCase one = byName.get(id(probe));
    for (RuleCase floor : one.proposal().isEmpty() ? onEachFloor() : List.<RuleCase>of()) {
      if (open.containsKey(name)) {
        listen(floor, "", floor.fires(), one.fires(), false);
      }
    }
    int tried = 0;
    for (Map<String, String> change : changes(probe, one)) {
      if (tried++ >= MOST_CHANGES || !open.containsKey(name)) {
        break;
      }
      listen(one, "", one.fires(), change, false);
    }
  }

  /** A case on each floor there is. */
  private List<RuleCase> onEachFloor() {
    Map<String, RuleCase> byFloor = new TreeMap<>();
    for (RuleCase one : byName.values()) {
      if (one.proposal().isEmpty()) {
        byFloor.putIfAbsent(one.from(), one);
      }
    }
    return List.copyOf(byFloor.values());
  }

  /** Two changes at once, each of those that have to do with a condition still open. */
  private void wander(Random random) throws Exception {
    List<Mutant> left = List.copyOf(open.values());
    Mutant probe = left.get(random.nextInt(left.size()));
    RuleCase one = byName.get(id(probe));
    List<Map<String, String>> changes = changes(probe, one);
    if (changes.isEmpty()) {
      return;
    }
    Map<String, String> both = new LinkedHashMap<>();
    int count = 2 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      both.putAll(changes.get(random.nextInt(changes.size())));
    }
    listen(one, "", one.fires(), both, false);
  }

  private List<Map<String, String>> changes(Mutant probe, RuleCase one) throws Exception {
    Set<Map<String, String>> changes = new LinkedHashSet<>();
    boolean proposal = !one.proposal().isEmpty();
    Set<String> names =
        names(set().vocabulary().condition(probe.told(), 0).orElseThrow().patterns());
    Scenario floor = RuleCasesTest.floor(one, one.fires());
    values(names, floor, "", Floors.advisor().knowledge().facts(), changes);
    if (proposal) {
      Scenario proposed = RuleCasesTest.proposal(one, one.fires());
      values(names, proposed, RuleCasesTest.OF_PROPOSAL, Proposals.book(), changes);
    }
    Set<String> seen = new TreeSet<>(names);
    Set<String> wave = names;
    for (int depth = 0; depth < 3; depth++) {
      Set<String> next = new TreeSet<>();
      for (Rule rule : rules) {
        boolean concludes = wave.stream().anyMatch(word -> concludes(rule, word));
        boolean reads = depth == 0 && wave.stream().anyMatch(names(rule.patterns())::contains);
        if (!concludes && !reads) {
          continue;
        }
        if (concludes) {
          Set<String> read = names(rule.patterns());
          values(read, floor, "", Floors.advisor().knowledge().facts(), changes);
          next.addAll(read);
        }
        for (RuleCase other : cases.getOrDefault(rule.key(), List.of())) {
          if (other != one && (other.proposal().isEmpty() || proposal)) {
            changes.add(other.fires());
            changes.add(RuleCasesTest.changes(other, true));
          }
        }
      }
      next.removeAll(seen);
      seen.addAll(next);
      wave = next;
    }
    if (proposal) {
      kinds(one, changes);
    }
    changes.remove(Map.of());
    List<Map<String, String>> list = new ArrayList<>(changes);
    if (list.size() > MOST_CHANGES) { // the nearest first, of the rest some of all sorts
      Collections.shuffle(list.subList(MOST_CHANGES / 2, list.size()), new Random(1));
    }
    return list;
  }

  /** Other kinds of layer for each layer of a proposal. */
  private static void kinds(RuleCase one, Set<Map<String, String>> changes) throws Exception {
    Scenario proposal = RuleCasesTest.proposal(one, one.fires());
    FactDefinition kind = Proposals.book().find("layers[].kind").orElseThrow();
    for (String layer : proposal.entries("layers[]")) {
      for (String value : kind.of()) {
        changes.add(Map.of(RuleCasesTest.OF_PROPOSAL + "layers[" + layer + "].kind", value));
      }
    }
  }

  /** Other values of the facts of these names. */
  private static void values(
      Set<String> names,
      Scenario scenario,
      String before,
      FactBook book,
      Set<Map<String, String>> changes) {
    for (FactDefinition fact : book.definitions()) {
      if (!names.contains(fact.called())) {
        continue;
      }
      Set<String> values = new LinkedHashSet<>(fact.of());
      if (fact.kind().name().equals("YES_NO")) {
        values.addAll(List.of("yes", "no"));
      }
      values.addAll(fact.otherwise());
      if (!fact.example().isEmpty()) {
        values.add(fact.example());
      }
      values.add("unknown");
      List<String> keys = new ArrayList<>();
      if (fact.ofEntries()) {
        for (String entry : scenario.entries(fact.list())) {
          keys.add(fact.key().replace("[]", "[" + entry + "]"));
        }
      } else {
        keys.add(fact.key());
      }
      for (String key : keys) {
        for (String value : values) {
          changes.add(Map.of(before + key, value));
        }
      }
    }
  }

  /** What conditions name: facts, layers, kinds of layer, rules, ways of building. */
  private static Set<String> names(List<Pattern> patterns) {
    Set<String> names = new TreeSet<>();
    for (Pattern pattern : patterns) {
      names.add(pattern.name());
      if (pattern.name().equals("build-up")) {
        names.add(pattern.value());
      }
      for (Constraint constraint : pattern.constraints()) {
        boolean tells =
            Set.of("layer", "family", "rule", "wording").contains(constraint.field())
                || (constraint.field().equals("text") && pattern.name().equals("build-up"));
        if (tells && constraint.with() instanceof Operand.Words words) {
          names.addAll(words.words());
        }
      }
    }
    names.remove("");
    return names;
  }

  private boolean concludes(Rule rule, String name) {
    if (rule.key().equals(name)) {
      return true;
    }
    for (Effect effect : rule.effects()) {
      if (effect.words().contains(name)) {
        return true;
      }
      String layer = effect.word(Effect.Place.LAYER);
      if (!layer.isEmpty()
          && Floors.advisor().knowledge().layers().get(layer).family().equals(name)) {
        return true;
      }
    }
    return false;
  }
}
