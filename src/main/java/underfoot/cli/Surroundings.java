package underfoot.cli;

import java.io.InputStream;
import java.util.Map;
import java.util.function.Supplier;
import underfoot.reasoning.RuleBase;
import underfoot.report.Page;

/**
 * What a command sees of the outside.
 *
 * @param in standard input
 * @param environment the environment variables
 * @param terminal whether output goes to a terminal
 * @param shipped the rules that came with the program
 */
record Surroundings(
    InputStream in, Map<String, String> environment, boolean terminal, Supplier<RuleBase> shipped) {
  private static final int USUAL_WIDTH = 80;

  /** Whether colours are wanted: on a terminal that has them, unless {@code NO_COLOR} is set. */
  boolean colour() {
    return terminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(environment.get("TERM"));
  }

  /** A page as wide as asked for, else as wide as {@code COLUMNS} says, else 80 columns. */
  Page page(Integer asked) throws Complaint {
    if (asked != null) {
      if (asked < Page.LEAST_WIDTH || asked > Page.MOST_WIDTH) {
        throw Complaint.usage(
            "--width must be from " + Page.LEAST_WIDTH + " to " + Page.MOST_WIDTH + " columns");
      }
      return new Page(asked, colour());
    }
    int columns = USUAL_WIDTH;
    try {
      columns = Integer.parseInt(environment.getOrDefault("COLUMNS", "").strip());
    } catch (NumberFormatException notSet) {
      columns = USUAL_WIDTH;
    }
    return new Page(columns <= 0 ? USUAL_WIDTH : Math.min(columns, Page.MOST_WIDTH), colour());
  }
}
