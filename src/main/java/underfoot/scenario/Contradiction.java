package underfoot.scenario;

import java.util.List;

/**
 * Two facts that cannot both be true, as {@code rules/facts/contradictions.yaml} lists them.
 *
 * @param form how they contradict each other
 * @param first the first fact's key
 * @param firstValues the first fact's values it is about; empty when the two are compared
 * @param second the second fact's key
 * @param secondValues the second fact's values it is about; empty unless the form is {@code AND}
 * @param says why they cannot both be true and what to do, in plain words
 */
record Contradiction(
    Form form,
    String first,
    List<String> firstValues,
    String second,
    List<String> secondValues,
    String says) {

  /** How two facts contradict each other. */
  enum Form {
    /** The first number is greater than the second. */
    GREATER,
    /** The first has one of the values, and the second is known at all. */
    GIVEN,
    /** The first has one of its values, and the second one of its own. */
    AND
  }

  /** Whether these two statements cannot both be true. */
  boolean holds(StatedFact one, StatedFact other) {
    if (!one.known() || !other.known()) {
      return false;
    }
    return switch (form) {
      case GREATER -> one.number() > other.number();
      case GIVEN -> firstValues.contains(one.text());
      case AND -> firstValues.contains(one.text()) && secondValues.contains(other.text());
    };
  }
}
