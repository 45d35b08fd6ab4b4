package underfoot.plan;

/** A finished advice that does not keep a promise. It is the program's own fault. */
public final class BrokenPromise extends IllegalStateException {
  private static final long serialVersionUID = 1;

  /**
   * @param words the promise in words
   * @param one the place that says one thing
   * @param other the place that says another
   */
  BrokenPromise(String words, String one, String other) {
    super(
        "the advice breaks its promise '%s': %s, but %s; no advice is given"
            .formatted(words, one, other));
  }
}
