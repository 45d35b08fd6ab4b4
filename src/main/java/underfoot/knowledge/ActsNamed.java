package underfoot.knowledge;

import java.util.List;

/**
 * The acts that something speaks of: a wording, a step, a layer, or how a fact is found out.
 *
 * @param asked what it asks somebody to do, the main thing first
 * @param barred what it says nobody may do
 * @param spoken what it only speaks of, such as something done long ago or to be avoided by care
 * @param once for what other work waits for: how it is told when that is done, as in {@code once
 *     the sample is clear}; else empty
 */
public record ActsNamed(List<String> asked, List<String> barred, List<String> spoken, String once) {
  /** Speaks of no act. */
  public static final ActsNamed NONE = new ActsNamed(List.of(), List.of(), List.of(), "");

  static final String ONCE = "once";

  /** Copies the lists. */
  public ActsNamed {
    asked = List.copyOf(asked);
    barred = List.copyOf(barred);
    spoken = List.copyOf(spoken);
  }

  static ActsNamed of(Entries.Entry entry) {
    List<String> asked = entry.named("acts");
    List<String> barred = entry.named("bars");
    List<String> spoken = entry.named("speaks of");
    String once = entry.field(ONCE);
    return asked.isEmpty() && barred.isEmpty() && spoken.isEmpty() && once.isEmpty()
        ? NONE
        : new ActsNamed(asked, barred, spoken, once);
  }

  /** Whether it speaks of an act in any way. */
  public boolean names(String act) {
    return asked.contains(act) || barred.contains(act) || spoken.contains(act);
  }
}
