package underfoot.language;

import java.util.List;

/** What a field of something is compared with. */
public sealed interface Operand {

  /**
   * Words written in the vocabulary or the rule; one of them.
   *
   * @param words at least one
   */
  record Words(List<String> words) implements Operand {
    /** Copies the list. */
    public Words {
      words = List.copyOf(words);
    }
  }

  /**
   * A field of something that an earlier pattern named.
   *
   * @param variable its name, such as {@code thing}
   * @param field the field
   */
  record Of(String variable, String field) implements Operand {}

  /**
   * The sum or difference of two numbers that earlier patterns named.
   *
   * @param first the first
   * @param plus whether the second is added rather than taken away
   * @param second the second
   */
  record Sum(Of first, boolean plus, Of second) implements Operand {
    /** The two put together. */
    public double of(double one, double other) {
      return plus ? one + other : one - other;
    }
  }
}
