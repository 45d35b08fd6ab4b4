package underfoot.working;

/**
 * An input a working cannot take. The message is one line that names the key, what is wrong, its
 * unit and its range.
 */
public final class Refused extends RuntimeException {
  /**
   * Makes a refusal.
   *
   * @param message one line for the person who typed the input
   */
  public Refused(String message) {
    super(message);
  }
}
