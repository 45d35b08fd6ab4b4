package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.RuleFiles;

/** The steps of the work, by the names rules use. */
public final class Steps {
  private static final String FILE = "steps.yaml";

  private final Map<String, Step> byId;

  private Steps(Map<String, Step> byId) {
    this.byId = byId;
  }

  static Steps load(RuleFiles files) throws KnowledgeFault {
    Map<String, Step> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      int place;
      try {
        place = Integer.parseInt(entry.required("place"));
      } catch (NumberFormatException e) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' needs a whole number as place");
      }
      byId.put(
          entry.name(),
          new Step(
              entry.name(),
              place,
              entry.required("title"),
              entry.field("kind").equals("wait"),
              entry.field("from")));
    }
    return new Steps(byId);
  }

  /**
   * One step.
   *
   * @throws MissingKnowledge if there is none of that name
   */
  public Step get(String id) {
    Step step = byId.get(id);
    if (step == null) {
      throw new MissingKnowledge("step", id);
    }
    return step;
  }

  /** The names of all steps. */
  public Set<String> ids() {
    return byId.keySet();
  }
}
