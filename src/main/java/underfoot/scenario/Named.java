package underfoot.scenario;

/**
 * Something with what it is about, written as one: {@code name @about}.
 *
 * @param name what it is, such as the id of a text or the key of a fact
 * @param about the door, the layer or the like that it is about; empty if it is about none
 */
public record Named(String name, String about) {
  private static final String OF = " @";

  /** Reads what {@link #id} wrote. */
  public static Named of(String id) {
    int at = id.indexOf(OF);
    return at < 0
        ? new Named(id, "")
        : new Named(id.substring(0, at), id.substring(at + OF.length()));
  }

  /** Both in one. */
  public String id() {
    return about.isEmpty() ? name : name + OF + about;
  }
}
