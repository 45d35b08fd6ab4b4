package underfoot.knowledge;

import java.util.List;

/**
 * Something that advice may ask a person to do, or not to do. What it brings in danger, what it
 * waits for and how it must be done is told by the rules that read its row.
 *
 * @param id what is done, as it stands after "to": {@code cut a leaf}
 * @param means what counts as doing it
 * @param stage at which stage of putting a floor right it is done, from 0
 * @param structural whether it makes the floor carry, or says whether it does
 * @param undated whether nobody can say beforehand how long it takes
 * @param saidAs words by which a text speaks of it, so that none does without naming it
 */
public record Act(
    String id, String means, int stage, boolean structural, boolean undated, List<String> saidAs) {
  /** Copies the list. */
  public Act {
    saidAs = List.copyOf(saidAs);
  }
}
