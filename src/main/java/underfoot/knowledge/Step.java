package underfoot.knowledge;

/**
 * A step of the work.
 *
 * @param id the name rules use
 * @param place its place in the order of the work
 * @param title what is done or waited for
 * @param waits whether it is a wait and not work
 * @param from the step at whose end it begins and that it does not hold up; empty for one that
 *     begins when the step before it ends
 */
public record Step(String id, int place, String title, boolean waits, String from) {}
