package underfoot.knowledge;

import underfoot.quantity.Spoken;

/**
 * The phrase book: the set phrases that reports are made of. They are wordings whose places for
 * words are written in angle brackets, {@code <way>}.
 *
 * @param wording where the phrases stand
 */
public record Phrases(Wording wording) {
  /** Whether there is a phrase of that id. */
  public boolean has(String id) {
    return wording.ids().contains(id);
  }

  /**
   * A phrase with its places filled, amounts as people say them.
   *
   * @param id the phrase
   * @param filling names of places and the words for them, by turns
   * @throws MissingKnowledge if there is no such phrase
   */
  public String say(String id, String... filling) {
    String said = wording.get(id).parts().getOrDefault("text", "").strip();
    for (int i = 0; i + 1 < filling.length; i += 2) {
      said = said.replace('<' + filling[i] + '>', Spoken.of(filling[i + 1]));
    }
    return said;
  }

  /**
   * The words for a way of building.
   *
   * @param way its name among the rules, such as {@code rigid board overlay}
   * @return the phrase {@code way-rigid-board-overlay}, or the name itself if there is none
   */
  public String way(String way) {
    String id = "way-" + way.replace(' ', '-');
    return has(id) ? say(id) : way;
  }
}
