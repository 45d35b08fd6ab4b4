package underfoot.plan;

import java.util.List;
import underfoot.reasoning.WhatIf.Otherwise;

/**
 * Something to find out before work, because decisions hang on it.
 *
 * @param fact the scenario key
 * @param about the thing it is of, such as a door; empty for the floor as a whole
 * @param called its name in plain words
 * @param ask the question put to a person; empty if it is only found on site
 * @param look how to find out on site
 * @param pass at which stage of a survey it is found out, in a few words
 * @param rank by how much would change, 1 being most
 * @param changes the values tried that would change something, that which reaches farthest first;
 *     at least one
 * @param decisions the same in words, one sentence for each
 */
public record FindOut(
    String fact,
    String about,
    String called,
    String ask,
    String look,
    String pass,
    int rank,
    List<Otherwise> changes,
    List<String> decisions) {
  /** Copies the lists. */
  public FindOut {
    changes = List.copyOf(changes);
    decisions = List.copyOf(decisions);
  }
}
