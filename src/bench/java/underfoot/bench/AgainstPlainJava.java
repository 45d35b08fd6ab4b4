package underfoot.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerNote;
import underfoot.knowledge.Fact;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.RuleBase;
import underfoot.scenario.RuleFiles;

/**
 * What the rule engine costs: twenty rules about the adhesive, thought through by the engine and
 * written as plain Java conditions. Both are given the same facts of all build-ups of the example
 * floors and must conclude the same.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 4)
@Measurement(iterations = 3, time = 3)
@Fork(1)
@State(Scope.Benchmark)
public class AgainstPlainJava {
  private static final String FILE = "43-which-adhesive.dslr";
  private static final Set<String> LEFT_OUT = Set.of("ADH-13", "ADH-21", "ADH-22", "ADH-23");

  private Shop shop;
  private RuleBase twenty;
  private final List<List<Object>> floors = new ArrayList<>();
  private int at;

  /** Compiles the twenty rules, collects what is known of every build-up, and compares. */
  @Setup
  public void compare() throws IOException, RuleFaults {
    shop = new Shop();
    twenty = RuleBase.of(twentyRules());
    for (String text : Shop.examples()) {
      for (BuildUp buildUp : shop.advisor(shop.planner()).advise(shop.read(text)).buildUps()) {
        List<Object> known = new ArrayList<>(buildUp.facts().all());
        buildUp.concluded().stream().filter(Laid.class::isInstance).forEach(known::add);
        floors.add(known);
      }
    }
    int said = 0;
    for (List<Object> floor : floors) {
      Set<String> concluded = new TreeSet<>();
      for (Object one : engine(floor)) {
        if (one instanceof LayerClass of) {
          concluded.add(of.layer() + ": " + of.grade());
        } else if (one instanceof LayerNote note) {
          concluded.add(note.layer() + ": " + note.wording());
        }
      }
      if (!concluded.equals(new TreeSet<>(plain(floor)))) {
        throw new IllegalStateException(concluded + " is not " + plain(floor));
      }
      said += concluded.size();
    }
    if (said < floors.size()) {
      throw new IllegalStateException("the twenty rules conclude too little to be compared");
    }
  }

  private static RuleSet twentyRules() throws RuleFaults {
    RuleSet all = RuleSet.read(RuleFiles.shipped());
    List<Rule> kept =
        all.of(Pass.LAY).stream()
            .filter(rule -> rule.file().endsWith(FILE))
            .filter(rule -> LEFT_OUT.stream().noneMatch(rule.id()::equals))
            .toList();
    if (kept.size() != 20) {
      throw new IllegalStateException(kept.size() + " rules, not 20; leave out others");
    }
    return all.with(kept);
  }

  /** The engine. */
  @Benchmark
  public List<Object> engine() {
    return engine(next());
  }

  /** Plain Java. */
  @Benchmark
  public List<String> plain() {
    return plain(next());
  }

  private List<Object> next() {
    at = (at + 1) % floors.size();
    return floors.get(at);
  }

  private List<Object> engine(List<Object> floor) {
    return twenty.think(Pass.LAY, shop.knowledge, floor);
  }

  private static List<String> plain(List<Object> floor) {
    Map<String, String> facts = new HashMap<>();
    boolean membrane = false;
    for (Object one : floor) {
      if (one instanceof Fact fact) {
        if (fact.about().isEmpty()) {
          facts.put(fact.name(), fact.text());
        }
      } else if (one instanceof Laid laid && laid.kind().family().equals("membrane")) {
        membrane = true;
      }
    }
    List<String> said = new ArrayList<>();
    if (!facts.containsKey("build-up")) {
      return said;
    }
    String family = facts.getOrDefault("base family", "");
    String sort = facts.getOrDefault("tile sort", "");
    String format = facts.getOrDefault("tile format", "");
    boolean moves = family.equals("timber") || family.equals("floating");
    boolean large = format.equals("large") || format.equals("plank") || format.equals("slim panel");
    boolean soaked = is(facts, "wetness", "soaked");
    boolean ruined = is(facts, "very moisture-sensitive", "yes");
    if (moves) {
      say(said, "tile-bed: C2 S1");
    }
    if (family.equals("solid") && sort.equals("ceramic")) {
      say(said, "tile-bed: C1");
    }
    if (sort.equals("dense ceramic")) {
      say(said, "tile-bed: C2");
    }
    if (sort.equals("stone") || sort.equals("cement-bound")) {
      say(said, "tile-bed: C2");
    }
    if (sort.equals("glass")) {
      say(said, "tile-bed: C2 S1");
    }
    if (is(facts, "heated", "yes")) {
      say(said, "tile-bed: C2 S1");
    }
    if (large) {
      say(said, "tile-bed: C2 S1");
    }
    if (moves && format.equals("slim panel")) {
      say(said, "tile-bed: C2 S2");
    }
    if (soaked) {
      say(said, "tile-bed: C2");
    }
    if (is(facts, "base kind", "tiles")) {
      say(said, "tile-bed: C2");
    }
    if (is(facts, "sunlit", "yes")) {
      say(said, "tile-bed: C2 S1");
    }
    if (is(facts, "use", "light commercial")) {
      say(said, "tile-bed: C2");
    }
    if (ruined) {
      say(said, "tile-bed: R2");
    }
    if (is(facts, "moisture-sensitive", "yes") && !ruined) {
      say(said, "tile-bed: adhesive-rapid-drying");
    }
    if (is(facts, "light or translucent", "yes")) {
      say(said, "tile-bed: adhesive-white");
    }
    if (sort.equals("glass")) {
      say(said, "tile-bed: adhesive-white");
    }
    if (large) {
      say(said, "tile-bed: adhesive-open-time");
    }
    if (soaked) {
      say(said, "tile-bed: adhesive-no-slip");
    }
    if (is(facts, "adhesive set", "rapid")) {
      say(said, "tile-bed: adhesive-small-batches");
    }
    if (membrane && (sort.equals("dense ceramic") || sort.equals("glass"))) {
      say(said, "tile-bed: adhesive-shut-in");
    }
    return said;
  }

  private static boolean is(Map<String, String> facts, String name, String value) {
    return value.equals(facts.get(name));
  }

  private static void say(List<String> said, String what) {
    if (!said.contains(what)) {
      said.add(what);
    }
  }
}
