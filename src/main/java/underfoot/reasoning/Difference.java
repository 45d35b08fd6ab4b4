package underfoot.reasoning;

import java.util.List;
import java.util.Locale;

/**
 * One thing that is decided otherwise of another floor.
 *
 * @param kind what sort of thing
 * @param ids the layers it is about; or the text of a stop, a remedy or a danger, followed by
 *     {@code @} and the thing it is about if there is one; empty for a way
 * @param was what it was: the verdict, the way, a thickness, a class; empty if it was not there
 * @param is what it is then; empty if it is not there
 * @param text that in a clause
 */
public record Difference(Kind kind, List<String> ids, String was, String is, String text) {
  /** Copies the list. */
  public Difference {
    ids = List.copyOf(ids);
  }

  /** What sort of thing is decided otherwise, that which reaches farthest first. */
  public enum Kind {
    /** The work stops, falls outside guidance, or no longer does. */
    VERDICT,
    /** Another way of building comes first. */
    WAY,
    /** Layers are added. */
    LAYERS_ADDED,
    /** Layers are left out. */
    LAYERS_LEFT_OUT,
    /** A layer comes out thicker or thinner. */
    THICKNESS,
    /** A layer must be of another class. */
    CLASS,
    /** Something more is to be put right first. */
    FIRST_ADDED,
    /** Something need no longer be put right first. */
    FIRST_LEFT_OUT,
    /** A danger more. */
    DANGER_ADDED,
    /** A danger less. */
    DANGER_LEFT_OUT;

    /** Whether it says that something is no longer there. */
    boolean isLeftOut() {
      return this == LAYERS_LEFT_OUT || this == FIRST_LEFT_OUT || this == DANGER_LEFT_OUT;
    }

    /** The word used in JSON. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** The clauses of differences, in their order. */
  public static List<String> texts(List<Difference> differences) {
    return differences.stream().map(Difference::text).toList();
  }
}
