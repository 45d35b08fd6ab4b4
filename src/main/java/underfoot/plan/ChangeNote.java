package underfoot.plan;

import java.util.List;
import underfoot.buildup.Verdict;

/**
 * A change of the floor or the job that would make a way stand where none does now.
 *
 * @param text what to change, as a sentence
 * @param with the changes as {@code compare --with} takes them
 * @param way what could be built then
 * @param verdict the verdict then
 * @param stillFirst what then still has to be put right of what carries the floor
 * @param numbers that way worked out
 */
public record ChangeNote(
    String text,
    List<String> with,
    String way,
    Verdict verdict,
    List<String> stillFirst,
    ComparedBuildUp numbers) {
  /** Copies the lists. */
  public ChangeNote {
    with = List.copyOf(with);
    stillFirst = List.copyOf(stillFirst);
  }
}
