package underfoot.scenario;

/**
 * What a scenario says of one fact.
 *
 * @param definition what may be said of it
 * @param about the entry of a list it belongs to, by its name ({@code kitchen door}) or, if it has
 *     none, by its place ({@code door 1}); empty for a fact of the floor as a whole
 * @param state known, unknown or not applicable
 * @param said whether the scenario wrote it; false if it was left out
 * @param value its value; null unless it is known
 * @param line the line of its value in the file; 0 if it was left out
 * @param column the column of its value in the file; 0 if it was left out
 */
public record StatedFact(
    FactDefinition definition,
    String about,
    State state,
    boolean said,
    Value value,
    int line,
    int column)
    implements Spot {

  /** The fact's key, such as {@code room.doors[].gap under leaf}. */
  public String key() {
    return definition.key();
  }

  /** The name rules use for it. */
  public String called() {
    return definition.called();
  }

  /** Whether its value is known. */
  public boolean known() {
    return state == State.KNOWN;
  }

  /**
   * The value as text: the choice, {@code yes} or {@code no}, the quantity as written; {@code
   * unknown} or {@code not applicable} if there is none.
   */
  public String text() {
    return switch (state) {
      case KNOWN -> value.text();
      case UNKNOWN -> "unknown";
      case NOT_APPLICABLE -> "not applicable";
    };
  }

  /** The value in the base unit; NaN if it is not known or is no number. */
  public double number() {
    return state == State.KNOWN ? value.number() : Double.NaN;
  }
}
