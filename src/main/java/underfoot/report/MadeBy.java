package underfoot.report;

/**
 * What made an advice.
 *
 * @param version the version of the program
 * @param ruleBase what tells its rule base from others
 * @param notice what a reader must be told first where the rules are not those that came with the
 *     program; empty if they are
 */
public record MadeBy(String version, String ruleBase, String notice) {}
