package underfoot.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.quantity.Nearest;
import underfoot.scenario.RuleFiles;

/**
 * The steps of the work, by the names rules use. Their order is told by relations: each says which
 * steps it comes after, and together these must leave no pair without an order.
 */
public final class Steps {
  private static final String FILE = "tables/steps.yaml";

  private final Map<String, Step> byId;

  private Steps(Map<String, Step> byId) {
    this.byId = byId;
  }

  static Steps load(RuleFiles files) throws KnowledgeFault {
    Map<String, Step> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : inOrder(Entries.readFile(files, FILE))) {
      byId.put(
          entry.name(),
          new Step(
              entry.name(),
              byId.size(),
              entry.required("title"),
              kind(entry),
              entry.field("from"),
              entry.field("meanwhile").equals("yes"),
              entry.field("at-start"),
              entry.field("at-end"),
              entry.field("in-use").equals("yes"),
              entry.named("acts"),
              entry.named("less")));
    }
    return new Steps(byId);
  }

  /** The one order that the relations allow. */
  private static List<Entries.Entry> inOrder(List<Entries.Entry> entries) throws KnowledgeFault {
    Map<String, Entries.Entry> left = new LinkedHashMap<>();
    entries.forEach(entry -> left.put(entry.name(), entry));
    for (Entries.Entry entry : entries) {
      String before = entry.field("after");
      if (!before.isEmpty() && !left.containsKey(before)) {
        throw new KnowledgeFault(
            FILE,
            entry.line(),
            "'"
                + entry.name()
                + "' comes after '"
                + before
                + "', which is no step"
                + "; nearest: "
                + Nearest.to(before, left.keySet()));
      }
    }
    List<Entries.Entry> order = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Entries.Entry> next =
          left.values().stream().filter(one -> !left.containsKey(one.field("after"))).toList();
      Entries.Entry one = next.isEmpty() ? left.values().iterator().next() : next.get(0);
      if (next.size() > 1) {
        throw new KnowledgeFault(
            FILE,
            next.get(1).line(),
            "nothing says which comes first, '"
                + one.name()
                + "' or '"
                + next.get(1).name()
                + "'; write in the later one, or in one before it, what it comes after");
      } else if (next.isEmpty()) {
        throw new KnowledgeFault(
            FILE,
            one.line(),
            "'"
                + one.name()
                + "' comes after itself: "
                + String.join(", ", left.keySet())
                + " go round in a ring; one of them must come after another step");
      }
      order.add(left.remove(one.name()));
    }
    return order;
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
