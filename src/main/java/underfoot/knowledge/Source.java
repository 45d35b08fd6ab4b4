package underfoot.knowledge;

/**
 * An entry of the bibliography, or what a rule cites of it.
 *
 * @param id the name by which rules and figures cite it
 * @param title what it is, with edition; of what is cited, the clause too
 * @param status how well it is known, an entry of {@code statuses.yaml}
 * @param note what was and was not read of it; may be empty
 * @param holds where it holds, such as {@code north-america}; empty where it may be taken as it is
 */
public record Source(String id, String title, String status, String note, String holds) {
  private static final String FROM_MEMORY = "from memory";
  private static final String AS_REMEMBERED = "named-from-memory";

  /**
   * The id of the entry that a citation names: {@code bs-5385-3, clause 6.3.2, from memory} names
   * {@code bs-5385-3}.
   */
  public static String key(String citation) {
    int comma = citation.indexOf(',');
    return (comma < 0 ? citation : citation.substring(0, comma)).strip();
  }

  /**
   * What a citation of this entry names of it: the clause goes to the title, and what is cited from
   * memory is known no better than that, whatever else of the document was read.
   *
   * @param citation the id, a clause if it is known, and {@code from memory} if it was not read
   */
  public Source cited(String citation) {
    String where = citation.substring(key(citation).length());
    boolean remembered = where.endsWith(", " + FROM_MEMORY);
    String clause =
        remembered ? where.substring(0, where.length() - FROM_MEMORY.length() - 2) : where;
    return new Source(id, title + clause, remembered ? AS_REMEMBERED : status, note, holds);
  }
}
