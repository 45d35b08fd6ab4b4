package underfoot.cli;

import java.io.InputStream;
import java.util.Map;
import java.util.function.Supplier;
import underfoot.reasoning.RuleBase;
import underfoot.report.TextPage;

/**
 * What a command sees of the outside.
 *
 * @param in standard input
 * @param environment the environment variables
 * @param terminal whether output goes to a terminal
 * @param shipped the rules that came with the program
 */
record Environment(
    InputStream in, Map<String, String> environment, boolean terminal, Supplier<RuleBase> shipped) {
  private static final int USUAL_WIDTH = 80;

  /** Whether colours are wanted: on a terminal that has them, unless {@code NO_COLOR} is set. */
  boolean colour() {
    return terminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(environment.get("TERM"));
  }

  /** A page as wide as asked for, else as wide as {@code COLUMNS} says, else 80 columns. */
  TextPage page(Integer asked) throws UserError {
    if (asked != null) {
      if (asked < TextPage.LEAST_WIDTH || asked > TextPage.MOST_WIDTH) {
        throw UserError.usage(
            "--width must be from "
                + TextPage.LEAST_WIDTH
                + " to "
                + TextPage.MOST_WIDTH
                + " columns");
      }
      return new TextPage(asked, colour());
    }
    int columns = USUAL_WIDTH;
    try {
      columns = Integer.parseInt(environment.getOrDefault("COLUMNS", "").strip());
    } catch (NumberFormatException notSet) {
      columns = USUAL_WIDTH;
    }
    return new TextPage(
        columns <= 0 ? USUAL_WIDTH : Math.min(columns, TextPage.MOST_WIDTH), colour());
  }
}
