package underfoot.knowledge;

/**
 * A rule, a formula or a wording names something that the knowledge base does not hold. It is a
 * mistake of the rule base, not of a scenario.
 */
public final class MissingKnowledge extends RuntimeException {
  /**
   * @param what the sort of thing: figure, wording, layer, source or fact
   * @param name the name that is not there
   */
  public MissingKnowledge(String what, String name) {
    super("The rule base has no " + what + " '" + name + "'");
  }
}
