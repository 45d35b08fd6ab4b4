package underfoot.reasoning;

import java.util.Comparator;
import java.util.List;
import underfoot.buildup.Judgement;
import underfoot.knowledge.Derivation;

/**
 * What rules say of two kinds of layer, one of which lies over the other.
 *
 * @param lower the kind beneath
 * @param upper the kind above
 * @param rulings what each rule says, the strictest first; empty if no rule speaks of the two
 */
public record Beside(String lower, String upper, List<Ruling> rulings) {
  /** Sorts the rulings. */
  public Beside {
    rulings = rulings.stream().sorted(Comparator.comparing(Ruling::answer).reversed()).toList();
  }

  /** What may be done with two kinds of layer, from the mildest answer to the strictest. */
  public enum Answer {
    /** The one may lie on the other. */
    ALLOWED,
    /** Only with something between them. */
    ONLY_WITH,
    /** The one is never laid on the other. */
    NEVER
  }

  /** Which two layers of a stack an answer is about. */
  public enum Reach {
    /** Two that touch. */
    TOUCHING,
    /** Two with nothing between them but coats and beds, which part nothing. */
    THROUGH_COATS,
    /** Any two, whatever lies between. */
    ANYWHERE
  }

  /**
   * What one rule says.
   *
   * @param answer its answer
   * @param between the work, or the family, of what must lie between; empty if nothing must
   * @param reach which two layers of a stack it is about
   * @param judgement how grave it is
   * @param wording the text that tells what is wrong and how to put it right; empty if allowed
   * @param ofLower whether the lower one is at fault and not the upper one
   * @param because the rule, with all that it matched
   */
  public record Ruling(
      Answer answer,
      String between,
      Reach reach,
      Judgement judgement,
      String wording,
      boolean ofLower,
      Derivation because) {}

  /** The answer that counts: the strictest, or that it is never done if nobody says a word. */
  public Answer answer() {
    return rulings.isEmpty() ? Answer.NEVER : rulings.get(0).answer();
  }
}
