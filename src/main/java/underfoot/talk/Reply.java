package underfoot.talk;

import java.util.List;
import underfoot.measure.Texts;

/**
 * What a saying led to.
 *
 * @param known all that is known now
 * @param told what was understood, what was asked for first
 * @param answered whether the question is answered, be it with not knowing
 * @param objection why it is not, and how to say it; empty if it is
 * @param meant what a yes to the objection would mean; empty for nothing
 */
public record Reply(
    Known known, List<Told> told, boolean answered, String objection, String meant) {
  /** Copies the list. */
  public Reply {
    told = List.copyOf(told);
  }

  /**
   * Something understood.
   *
   * @param id the place it is of
   * @param called what that is called
   * @param value what was understood
   * @param guess whether it was only taken
   * @param since why; empty if it was not
   * @param asked whether it was asked for
   */
  public record Told(
      String id, String called, String value, boolean guess, String since, boolean asked) {
    /** The same in a sentence. */
    public String sentence() {
      if (guess) {
        String how = (asked ? "" : called + ' ') + "taken as " + value + ": ";
        return Texts.capital(how + Texts.sentence(since));
      }
      return Texts.capital(asked ? "that is" : called) + ": " + value + '.';
    }
  }
}
