package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.scenario.RuleFiles;

/**
 * What people call layers when they propose a build-up, and which kinds of layer they may mean by
 * it, as {@code rules/kinds.yaml} and {@code rules/work.yaml} say.
 */
public final class ProposedKinds {
  private static final String FILE = "kinds.yaml";
  private static final String WORK = "work.yaml";

  private final Map<String, Kind> byName;
  private final Map<String, List<String>> work;

  private ProposedKinds(Map<String, Kind> byName, Map<String, List<String>> work) {
    this.byName = byName;
    this.work = work;
  }

  /**
   * One such name.
   *
   * @param name what people call it
   * @param is the kinds of layer it may be, at least one
   * @param serves the kinds of layer it may stand for without harm
   * @param instead the kinds of layer that people put it in the place of, though it is none
   * @param waits the step of waiting that follows it, by the kind of layer it is
   * @param scales the scales that its classes stand on; empty if it has none
   */
  public record Kind(
      String name,
      List<String> is,
      List<String> serves,
      List<String> instead,
      Map<String, String> waits,
      List<String> scales) {
    /** The step of waiting that follows it where it does the work of a layer; empty if none. */
    public Optional<String> waitAs(String layer) {
      String own = waits.get(layer);
      boolean serving = own == null && serves.contains(layer) && is.size() == 1;
      return Optional.ofNullable(serving ? waits.get(is.get(0)) : own);
    }
  }

  /**
   * Loads the names.
   *
   * @param files the rule base
   * @param layers the kinds of layer
   * @param steps the steps of the work
   * @throws KnowledgeFault if a file cannot be used as it stands
   */
  public static ProposedKinds load(RuleFiles files, Layers layers, Steps steps)
      throws KnowledgeFault {
    Map<String, Kind> byName = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      List<String> is = layers(entry, "is", layers);
      if (is.isEmpty()) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' is no layer; write is: [a-layer]");
      }
      List<String> waits = entry.lists().getOrDefault("waits", List.of());
      if (!waits.isEmpty() && waits.size() != is.size()) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' needs a wait for each layer it is");
      }
      Map<String, String> byLayer = new LinkedHashMap<>();
      for (int i = 0; i < waits.size(); i++) {
        if (!waits.get(i).equals("none")) {
          byLayer.put(is.get(i), step(entry, waits.get(i), steps));
        }
      }
      byName.put(
          entry.name(),
          new Kind(
              entry.name(),
              is,
              layers(entry, "serves as", layers),
              layers(entry, "instead of", layers),
              Map.copyOf(byLayer),
              List.copyOf(entry.lists().getOrDefault("classes", List.of()))));
    }
    Map<String, List<String>> work = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, WORK)) {
      for (String step : entry.lists().getOrDefault("list", List.of())) {
        step(entry, step, steps);
      }
      work.put(entry.name(), entry.lists().getOrDefault("list", List.of()));
    }
    return new ProposedKinds(byName, work);
  }

  private static List<String> layers(Entries.Entry entry, String list, Layers layers)
      throws KnowledgeFault {
    List<String> ids = entry.lists().getOrDefault(list, List.of());
    for (String id : ids) {
      if (!layers.has(id)) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' names '" + id + "', no such layer");
      }
    }
    return List.copyOf(ids);
  }

  private static String step(Entries.Entry entry, String step, Steps steps) throws KnowledgeFault {
    if (!steps.ids().contains(step)) {
      throw new KnowledgeFault(
          entry.file(), entry.line(), "'" + entry.name() + "' names '" + step + "', no such step");
    }
    return step;
  }

  /**
   * One name.
   *
   * @throws MissingKnowledge if people do not call a layer so
   */
  public Kind get(String name) {
    Kind kind = byName.get(name);
    if (kind == null) {
      throw new MissingKnowledge("kind of proposed layer", name);
    }
    return kind;
  }

  /** Every name. */
  public Set<String> names() {
    return byName.keySet();
  }

  /** The pieces of work a proposal may name, each with the steps it stands for. */
  public Map<String, List<String>> work() {
    return work;
  }
}
