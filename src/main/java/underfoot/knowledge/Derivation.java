package underfoot.knowledge;

import java.util.List;
import java.util.Objects;

/**
 * Why something was concluded: the rule, and all that it matched. The premises are {@link Fact},
 * {@link Unknown}, {@link Figure} and earlier conclusions, so the whole chain hangs together.
 */
public final class Derivation {
  private final RuleNote rule;
  private final List<Object> premises;
  private final int hash;

  /**
   * @param rule the rule that fired
   * @param premises what it matched, in the order of its sentences
   */
  public Derivation(RuleNote rule, List<Object> premises) {
    this.rule = Objects.requireNonNull(rule);
    this.premises = List.copyOf(premises);
    // Chains are deep and hashes are asked for often: worked out once.
    this.hash = 31 * rule.key().hashCode() + this.premises.hashCode();
  }

  /** The rule that fired. */
  public RuleNote rule() {
    return rule;
  }

  /** What it matched. */
  public List<Object> premises() {
    return premises;
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Derivation that
            && hash == that.hash
            && rule.key().equals(that.rule.key())
            && premises.equals(that.premises));
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public String toString() {
    return rule.id();
  }
}
