package underfoot.knowledge;

/**
 * Something a scenario could say but does not.
 *
 * @param key the scenario key
 * @param name what rules call it
 * @param about which of several things it is about; empty for the room
 */
public record Unknown(String key, String name, String about) {
  @Override
  public boolean equals(Object other) {
    return other instanceof Unknown that
        && key.equals(that.key)
        && name.equals(that.name)
        && about.equals(that.about);
  }

  @Override
  public int hashCode() {
    return 31 * key.hashCode() + about.hashCode();
  }
}
