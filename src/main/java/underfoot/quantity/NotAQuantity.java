package underfoot.quantity;

/** A text that is no quantity of the dimension asked for, with a plain message that says why. */
public final class NotAQuantity extends Exception {
  private final String suggestion;

  NotAQuantity(String message, String suggestion) {
    super(message, null, false, false);
    this.suggestion = suggestion;
  }

  /** How the quantity might be written instead, such as {@code 21 mm}; empty if that is unclear. */
  public String suggestion() {
    return suggestion;
  }
}
