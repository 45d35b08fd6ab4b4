package underfoot.knowledge;

/**
 * What a rule says of itself.
 *
 * @param id unique and stable, such as {@code DECK-03}
 * @param title the rest of its name
 * @param reason one plain sentence that a client understands
 * @param source what it cites: the id of an entry of the bibliography, a clause, and {@code from
 *     memory} where that was not read
 * @param row the key of the row, of a rule that holds for each row of a table; else empty
 */
public record RuleNote(String id, String title, String reason, String source, String row) {
  /** What a rule says of itself that is written for no table. */
  public RuleNote(String id, String title, String reason, String source) {
    this(id, title, reason, source, "");
  }

  /** Its id, and its row if it is one of several; no two rules have the same. */
  public String key() {
    return row.isEmpty() ? id : id + '/' + row;
  }
}
