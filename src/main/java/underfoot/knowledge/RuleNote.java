package underfoot.knowledge;

/**
 * What a rule says of itself.
 *
 * @param id unique and stable, such as {@code DECK-03}
 * @param title the rest of its name
 * @param reason one plain sentence that a client understands
 * @param source the id of an entry of the bibliography
 */
public record RuleNote(String id, String title, String reason, String source) {}
