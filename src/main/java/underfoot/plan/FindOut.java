package underfoot.plan;

import java.util.List;

/**
 * Something to find out before work, because decisions hang on it.
 *
 * @param fact the scenario key
 * @param called its name in plain words
 * @param ask the question put to a person; empty if it is only found on site
 * @param look how to find out on site
 * @param pass at which stage of a survey it is found out, in a few words
 * @param rank by how much would change, 1 being most
 * @param decisions what would be decided otherwise, one sentence for each value tried, that which
 *     reaches farthest first; at least one
 */
public record FindOut(
    String fact,
    String called,
    String ask,
    String look,
    String pass,
    int rank,
    List<String> decisions) {
  /** Copies the list. */
  public FindOut {
    decisions = List.copyOf(decisions);
  }
}
