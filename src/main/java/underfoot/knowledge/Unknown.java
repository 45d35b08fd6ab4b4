package underfoot.knowledge;

/**
 * Something a scenario could say but does not.
 *
 * @param key the scenario key
 * @param name what rules call it
 * @param about which of several things it is about; empty for the room
 */
public record Unknown(String key, String name, String about) {}
