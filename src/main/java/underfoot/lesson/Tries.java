package underfoot.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import underfoot.reasoning.Assessment;

/**
 * What was tried on the one floor that is asked about, and how much more may be: how often it may
 * be thought through again is known before a lesson begins, by what the floor holds.
 */
public final class Tries {
  /** So many there are to be before a kind of question begins that has to try something. */
  private static final int OF_A_KIND = 12;

  private final Map<List<String>, Optional<Assessment>> known = new HashMap<>();
  private int left;

  Tries(int left) {
    this.left = left;
  }

  /** Whether a kind of question that has to try something can still be made. */
  boolean enough() {
    return left >= OF_A_KIND;
  }

  /** Takes one try away; false if there is none left. */
  boolean spend() {
    left--;
    return left >= 0;
  }

  /** What became of the floor with such changes, tried once; empty if it may not be tried. */
  Optional<Assessment> of(List<String> edits, Supplier<Optional<Assessment>> trying) {
    Optional<Assessment> then = known.get(edits);
    if (then == null) {
      then = spend() ? trying.get() : Optional.empty();
      known.put(edits, then);
    }
    return then;
  }
}
