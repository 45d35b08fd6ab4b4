package underfoot.plan;

import java.util.List;
import java.util.Optional;

/**
 * Why a material or a way of building is not what is recommended, in words.
 *
 * @param scenario the floor's own name
 * @param asked what was asked about, as the person wrote it
 * @param standing how the nearest build-up with it stands, in a word
 * @param text that in a sentence
 * @param way the nearest build-up with it; empty if none was worked out
 * @param reasons what refuses it, or why it is recommended, each with its chain
 * @param failed the facts it fails on
 * @param changes what would let it in, the least trouble first
 * @param askedFor where none was worked out: the rules that would ask for it
 */
public record Refusal(
    String scenario,
    String asked,
    String standing,
    String text,
    Optional<ComparedBuildUp> way,
    List<Advice.Say> reasons,
    List<Failed> failed,
    List<Opening> changes,
    List<String> askedFor) {
  /** Copies the lists. */
  public Refusal {
    reasons = List.copyOf(reasons);
    failed = List.copyOf(failed);
    changes = List.copyOf(changes);
    askedFor = List.copyOf(askedFor);
  }

  /**
   * A fact it fails on.
   *
   * @param fact its scenario key
   * @param called its name in plain words
   * @param value its value
   * @param assumed whether that was assumed and not stated
   */
  public record Failed(String fact, String called, String value, boolean assumed) {
    /** Where its value is from. */
    public String from() {
      return assumed ? "assumed" : "scenario";
    }
  }

  /**
   * A change that would let it in.
   *
   * @param text what is changed, as a sentence
   * @param with the changes as {@code compare --with} takes them
   * @param way what comes first then
   */
  public record Opening(String text, List<String> with, String way) {
    /** Copies the list. */
    public Opening {
      with = List.copyOf(with);
    }
  }
}
