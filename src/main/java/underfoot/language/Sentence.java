package underfoot.language;

import java.util.List;

/**
 * One sentence of the vocabulary.
 *
 * @param file where it stands
 * @param line where it stands
 * @param template how it is written
 * @param patterns what it asks for, as a condition; places in braces
 * @param effect what it concludes, as a consequence; null for a condition
 */
record Sentence(String file, int line, Template template, List<Pattern> patterns, Effect effect) {

  boolean isCondition() {
    return effect == null;
  }

  /** How it is written. */
  String text() {
    return template.text();
  }
}
