package underfoot.scenario;

/**
 * A part of the room where the floor is otherwise.
 *
 * @param name what it is called
 * @param floor the part as a floor of its own: the room's use, tile and site, its own corners and
 *     what carries it and lies on it
 */
public record Zone(String name, Scenario floor) {}
