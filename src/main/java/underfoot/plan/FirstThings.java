package underfoot.plan;

import java.util.List;

/**
 * What a reader must know before all else.
 *
 * @param headline one sentence by the gravest thing that holds
 * @param headlineOf the id of the decision it rests on; empty where nothing is in the way
 * @param doNow the few things to do first, the gravest before the rest
 * @param alsoFirst the titles of the gates that are not among them
 */
public record FirstThings(
    String headline, String headlineOf, List<DoNow> doNow, List<String> alsoFirst) {
  /** Copies the lists. */
  public FirstThings {
    doNow = List.copyOf(doNow);
    alsoFirst = List.copyOf(alsoFirst);
  }

  /**
   * One thing to do now.
   *
   * @param id the decision it is about, or the scenario key that is found out
   * @param kind what it is, as {@code rules/headlines.yaml} names kinds
   * @param text one sentence
   */
  public record DoNow(String id, String kind, String text) {}
}
