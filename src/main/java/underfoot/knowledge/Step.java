package underfoot.knowledge;

import java.util.List;

/**
 * A step of the work.
 *
 * @param id the name rules use
 * @param place its place in the order of the work, from 0
 * @param title what is done or waited for
 * @param kind whether hands work or time passes
 * @param from the step at whose end it begins and that it does not hold up; empty for one that
 *     begins when the step before it ends
 * @param meanwhile whether it runs from the beginning of the work beside the steps before it; what
 *     follows waits for whichever ends last
 * @param atStart what has come when it begins, such as the day of grouting; may be empty
 * @param atEnd what has come when it ends, such as light use; may be empty
 * @param inUse whether the room is in use when it ends
 * @param acts what is done in it
 * @param less facts of floor that nothing is done on in it, m2
 */
public record Step(
    String id,
    int place,
    String title,
    Kind kind,
    String from,
    boolean meanwhile,
    String atStart,
    String atEnd,
    boolean inUse,
    List<String> acts,
    List<String> less) {
  /** Copies the lists. */
  public Step {
    acts = List.copyOf(acts);
    less = List.copyOf(less);
  }

  /** What goes on in a step. */
  public enum Kind {
    /** Hands work; it may be broken off in the evening and gone on with next day. */
    WORK("work"),
    /** Hands work, and it must be finished in one go. */
    ONE_GO("one go"),
    /** Something sets, dries or is kept off, by day and by night. */
    WAIT("wait");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word used in the steps file and in JSON. */
    public String word() {
      return word;
    }
  }

  /** Whether it is a wait and not work. */
  public boolean waits() {
    return kind == Kind.WAIT;
  }
}
