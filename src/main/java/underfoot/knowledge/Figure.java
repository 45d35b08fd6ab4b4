package underfoot.knowledge;

/**
 * A number of the knowledge base.
 *
 * @param name such as {@code leveller-least-pour}
 * @param description what it is
 * @param text the value as written, with its unit, such as {@code 3 mm}
 * @param value the number as written
 * @param unit the unit as written; empty for a bare number
 * @param number the value in the base unit of its dimension (mm, m2, C, %, h, kg, km/h), which
 *     rules compare with facts; the same as {@code value} for other units
 * @param practice {@code uk}, {@code north-america} or {@code any}
 * @param source what it cites: the id of an entry of the bibliography, and a clause
 * @param status how well the value is known, an entry of {@code statuses.yaml}
 * @param note what else there is to say, rival values included; may be empty
 */
public record Figure(
    String name,
    String description,
    String text,
    double value,
    String unit,
    double number,
    String practice,
    String source,
    String status,
    String note) {
  /** Two figures are the same if all that their files say of them is. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Figure that
            && name.equals(that.name)
            && text.equals(that.text)
            && description.equals(that.description)
            && practice.equals(that.practice)
            && source.equals(that.source)
            && status.equals(that.status)
            && note.equals(that.note));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }
}
