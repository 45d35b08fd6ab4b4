package underfoot.scenario;

/**
 * One fact of one floor that may be asked for.
 *
 * @param fact what may be said of it
 * @param about the entry of a list it belongs to; empty for a fact of the floor as a whole
 */
public record Place(FactDefinition fact, String about) {
  /** Its key and entry in one text, such as {@code room.doors[].gap under leaf@kitchen door}. */
  public String id() {
    return about.isEmpty() ? fact.key() : fact.key() + '@' + about;
  }

  /** The key of a fact, with the name of the thing it is about if there are several. */
  public static String named(String key, String about) {
    if (about.isEmpty()) {
      return key;
    }
    return key.contains("[]") ? key.replace("[]", '[' + about + ']') : key + " @" + about;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Place that && id().equals(that.id());
  }

  @Override
  public int hashCode() {
    return id().hashCode();
  }

  @Override
  public String toString() {
    return id();
  }
}
