package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Knowledge;
import underfoot.plan.Advice.RemedyNote;

/**
 * The order in which things are put right: hold points first, each after what it waits for, and
 * then by the stage at which the act is done that it asks for first, what saves lives before all.
 */
final class RemedyOrder {
  private final Knowledge knowledge;
  private final ActsInWords acts;
  private final Map<String, Integer> depths = new HashMap<>();

  RemedyOrder(Knowledge knowledge, ActsInWords acts) {
    this.knowledge = knowledge;
    this.acts = acts;
  }

  /** The wording of a note. */
  static String wording(RemedyNote note) {
    String about = " @" + note.about();
    return note.id().endsWith(about)
        ? note.id().substring(0, note.id().length() - about.length())
        : note.id();
  }

  /**
   * Whether nobody can say how long a remedy takes: a hold point, or one whose first act has no
   * length that can be told.
   */
  static boolean undated(Knowledge knowledge, String wording, boolean hold) {
    List<String> asked = knowledge.wording().work(wording).asked();
    return hold || !asked.isEmpty() && knowledge.acts().get(asked.get(0)).undated();
  }

  /** The notes in order; those of one stage stay as they are. */
  List<RemedyNote> sorted(List<RemedyNote> notes) {
    Set<String> gates = new HashSet<>();
    for (RemedyNote note : notes) {
      gates.addAll(
          acts.gates(knowledge.wording().work(wording(note)).asked(), note.about(), wording(note)));
    }
    List<RemedyNote> sorted = new ArrayList<>(notes);
    sorted.sort(
        Comparator.comparing((RemedyNote note) -> !note.hold() && !gates.contains(wording(note)))
            .thenComparingInt(this::depth)
            .thenComparingInt(
                note -> knowledge.acts().stage(knowledge.wording().work(wording(note)).asked())));
    return sorted;
  }

  /** How many things one after another are done before it. */
  private int depth(RemedyNote note) {
    return depth(wording(note), note.about(), new HashSet<>());
  }

  private int depth(String wording, String about, Set<String> seen) {
    if (!seen.add(wording)) {
      return 0;
    }
    Integer known = depths.get(wording + about);
    if (known != null) {
      return known;
    }
    int depth = 0;
    List<String> asked = knowledge.wording().work(wording).asked();
    for (String gate : acts.gates(asked, about, wording)) {
      depth = Math.max(depth, 1 + depth(gate, about, seen));
    }
    depths.put(wording + about, depth);
    return depth;
  }
}
