package underfoot.knowledge;

/**
 * An entry of the bibliography.
 *
 * @param id the name by which rules and figures cite it
 * @param title what it is, with edition
 * @param status published, quoted, common-practice or from-memory
 * @param note what was and was not read of it; may be empty
 */
public record Source(String id, String title, String status, String note) {}
