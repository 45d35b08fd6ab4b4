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
 * @param numbers that way worked out
 */
public record ChangeNote(
    String text, List<String> with, String way, Verdict verdict, ComparedBuildUp numbers) {
  /** Copies the list. */
  public ChangeNote {
    with = List.copyOf(with);
  }
}
