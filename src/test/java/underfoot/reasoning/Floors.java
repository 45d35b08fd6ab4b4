package underfoot.reasoning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.RuleNote;
import underfoot.plan.Planner;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;

/** Floors for tests, and the one advisor they share. */
public final class Floors {
  private static final Path FLOORS = Path.of("src/test/resources/floors");
  private static final Advisor ADVISOR = load();

  private Floors() {}

  private static Advisor load() {
    try {
      RuleFiles files = RuleFiles.shipped();
      FactBook facts = FactBook.load(files);
      Knowledge knowledge = Knowledge.load(files, facts, "uk");
      return new Advisor(RuleBase.shipped(), knowledge, new Planner(knowledge.prices()));
    } catch (ScenarioFaults | KnowledgeFault e) {
      throw new IllegalStateException(e);
    }
  }

  /** The advisor by the shipped rules. */
  public static Advisor advisor() {
    return ADVISOR;
  }

  /** Reads a floor of {@code src/test/resources/floors} by its name. */
  public static Scenario read(String name) throws Exception {
    Path file = FLOORS.resolve(name + ".yaml");
    return reader().read(file.toString(), Files.readAllBytes(file));
  }

  /** The example scenarios in the order of their names. */
  public static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** A made-up floor as a scenario file; it may contradict itself. The same seed gives the same. */
  public static String madeUp(long seed) {
    return new RandomFloors(ADVISOR.knowledge().facts(), seed).next(java.util.Map.of());
  }

  /** A reader by the shipped facts. */
  public static ScenarioReader reader() {
    return new ScenarioReader(ADVISOR.knowledge().facts());
  }

  /** A floor with several facts changed, each as {@link #change(Scenario, String, String)} does. */
  public static Scenario change(Scenario scenario, Map<String, String> changes) throws Exception {
    Scenario changed = scenario;
    for (Map.Entry<String, String> one : changes.entrySet()) {
      changed = change(changed, one.getKey(), one.getValue());
    }
    return changed;
  }

  /**
   * Changes one fact, given as {@code tile.thickness} or {@code room.doors[kitchen door].gap under
   * leaf}.
   */
  public static Scenario change(Scenario scenario, String key, String value) throws Exception {
    int open = key.indexOf('[');
    int close = key.indexOf(']');
    if (open < 0 || close == open + 1) {
      return scenario.with(key, "", value);
    }
    String about = key.substring(open + 1, close);
    return scenario.with(key.substring(0, open + 1) + key.substring(close), about, value);
  }

  /** The keys of all rules that concluded anything about a floor, for any build-up. */
  public static Set<String> rulesOf(Assessment assessment) {
    return FiredRules.notes(assessment).stream()
        .map(RuleNote::key)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
