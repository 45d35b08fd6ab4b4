package underfoot.scenario;

/** What a scenario says of a fact. */
public enum State {
  /** The scenario gives a value. */
  KNOWN,
  /** The scenario says it is unknown, or says nothing of it. */
  UNKNOWN,
  /** The scenario says the fact does not apply to this floor. */
  NOT_APPLICABLE
}
