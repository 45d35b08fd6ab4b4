package underfoot.scenario;

import java.util.Optional;

/** What sort of value a fact has. */
public enum Kind {
  /** Free text. */
  TEXT("text"),
  /** One of the fact's choices. */
  CHOICE("choice"),
  /** Several of the fact's choices, in order. */
  CHOICES("choices"),
  /** Yes or no. */
  YES_NO("yes-no"),
  /** A number with its unit. */
  QUANTITY("quantity"),
  /** A whole number. */
  COUNT("count"),
  /** A year. */
  YEAR("year"),
  /** A day. */
  DATE("date"),
  /** Corners, each of two lengths. */
  POINTS("points"),
  /** Two opposite corners of a rectangle, each of two lengths. */
  RECTANGLE("rectangle"),
  /** Spot heights, each of three lengths. */
  READINGS("readings"),
  /** A list whose entries have facts of their own. */
  LIST("list");

  private final String word;

  Kind(String word) {
    this.word = word;
  }

  /** The kind as the facts files write it. */
  public String word() {
    return word;
  }

  static Optional<Kind> named(String word) {
    for (Kind kind : values()) {
      if (kind.word.equals(word)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
