package underfoot.language;

import java.util.List;

/**
 * One comparison within a pattern.
 *
 * @param field the field of the thing matched
 * @param operator how it is compared
 * @param with what it is compared with
 */
public record Constraint(String field, Operator operator, Operand with) {

  /** How a field is compared. */
  public enum Operator {
    /** The same as the word, one of the words, or the field of something named before. */
    IS("=="),
    /** None of the words. */
    IS_NOT("!="),
    /** A smaller number. */
    LESS("<"),
    /** A number no greater. */
    AT_MOST("<="),
    /** A greater number. */
    MORE(">"),
    /** A number no smaller. */
    AT_LEAST(">="),
    /** A list parted by commas has the word in its first place. */
    FIRST_IS("first =="),
    /** A list parted by commas has the word in its second place. */
    SECOND_IS("second ==");

    private final String sign;

    Operator(String sign) {
      this.sign = sign;
    }

    /** How a vocabulary file writes it. */
    public String sign() {
      return sign;
    }

    /** Whether it compares numbers. */
    public boolean ofNumbers() {
      return this == LESS || this == AT_MOST || this == MORE || this == AT_LEAST;
    }
  }

  /** The one word it is compared with; empty if it is compared with something else. */
  public String word() {
    return with instanceof Operand.Words words && words.words().size() == 1
        ? words.words().get(0)
        : "";
  }

  /** The names of earlier patterns that it speaks of. */
  public List<String> variables() {
    if (with instanceof Operand.Of of) {
      return List.of(of.variable());
    }
    return with instanceof Operand.Sum sum
        ? List.of(sum.first().variable(), sum.second().variable())
        : List.of();
  }

  @Override
  public String toString() {
    String told;
    if (with instanceof Operand.Words words) {
      told = String.join(" | ", words.words());
    } else if (with instanceof Operand.Of of) {
      told = '$' + of.variable() + '.' + of.field();
    } else {
      Operand.Sum sum = (Operand.Sum) with;
      told =
          "$%s.%s %s $%s.%s"
              .formatted(
                  sum.first().variable(),
                  sum.first().field(),
                  sum.plus() ? '+' : '-',
                  sum.second().variable(),
                  sum.second().field());
    }
    return field + ' ' + operator.sign() + ' ' + told;
  }
}
