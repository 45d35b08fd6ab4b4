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
              kind(entry),
              entry.field("from"),
              entry.field("at-start"),
              entry.field("at-end"),
              entry.field("in-use").equals("yes")));
    }
    return new Steps(byId);
  }

  private static Step.Kind kind(Entries.Entry entry) throws KnowledgeFault {
    String word = entry.required("kind");
    for (Step.Kind kind : Step.Kind.values()) {
      if (kind.word().equals(word)) {
        return kind;
      }
    }
    throw new KnowledgeFault(
        FILE, entry.line(), "'" + entry.name() + "' needs as kind one of: work, one go, wait");
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
