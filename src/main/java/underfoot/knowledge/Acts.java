package underfoot.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.RuleFiles;

/** The closed list of what advice may ask a person to do. */
public final class Acts {
  private static final String FILE = "acts.yaml";

  /** Stands in a step for what its way of building asks for. */
  private static final String OF_THE_WAY = "those of the way";

  private static final String STAGES = "stages of putting right";

  private final Map<String, Act> byId;
  private final Map<String, List<String>> ofWays;

  private Acts(Map<String, Act> byId, Map<String, List<String>> ofWays) {
    this.byId = byId;
    this.ofWays = ofWays;
  }

  static Acts load(RuleFiles files, Map<String, List<String>> scales) throws KnowledgeFault {
    if (!files.list("", ".yaml").contains(FILE)) {
      return new Acts(Map.of(), Map.of()); // a rule base of one's own may be smaller
    }
    List<String> stages = scales.getOrDefault(STAGES, List.of());
    Map<String, Act> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      int stage = stages.indexOf(entry.required("stage"));
      if (stage < 0) {
        throw new KnowledgeFault(
            entry.file(),
            entry.line(),
            "'%s' has the stage '%s', which is none; write one of %s"
                .formatted(entry.name(), entry.field("stage"), String.join(", ", stages)));
      }
      byId.put(
          entry.name(),
          new Act(
              entry.name(),
              entry.required("means"),
              stage,
              entry.field("structure").equals("yes"),
              entry.field("undated").equals("yes"),
              entry.named("said as")));
    }
    Map<String, List<String>> ofWays = new LinkedHashMap<>();
    for (Entries.Entry way : Entries.readFile(files, "tables/ways.yaml")) {
      ofWays.put(way.name(), way.named("acts"));
    }
    return new Acts(byId, ofWays);
  }

  /** All acts, in the order of their file. */
  public Collection<Act> all() {
    return byId.values();
  }

  /** The names of all acts. */
  public Set<String> ids() {
    return byId.keySet();
  }

  /**
   * One act.
   *
   * @throws MissingKnowledge if there is none of that name
   */
  public Act get(String id) {
    Act act = byId.get(id);
    if (act == null) {
      throw new MissingKnowledge("act", id);
    }
    return act;
  }

  /** The ways of building that say what they ask for. */
  public Set<String> ways() {
    return ofWays.keySet();
  }

  /** What a way of building asks for by itself. */
  public List<String> ofWay(String way) {
    return ofWays.getOrDefault(way, List.of());
  }

  /** What a step asks for in a way of building. */
  public List<String> of(Step step, String way) {
    return step.acts().contains(OF_THE_WAY) ? ofWay(way) : step.acts();
  }

  /** At which stage of putting right the first of some acts is done; the last stage for none. */
  public int stage(List<String> acts) {
    return acts.isEmpty() || !byId.containsKey(acts.get(0))
        ? Integer.MAX_VALUE
        : byId.get(acts.get(0)).stage();
  }
}
