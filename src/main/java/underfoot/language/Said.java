package underfoot.language;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A line of a rule as the vocabulary takes it.
 *
 * @param text the line
 * @param number where it stands in its file
 * @param sentence the sentence of the vocabulary
 * @param slots what stands in its places
 * @param patterns what it asks for, as a condition
 * @param effect what it concludes, as a consequence; null for a condition
 */
public record Said(
    String text,
    int number,
    Sentence sentence,
    Map<String, String> slots,
    List<Pattern> patterns,
    Effect effect) {

  static Said of(String text, int number, Sentence sentence, Map<String, String> slots) {
    List<Pattern> patterns =
        sentence.patterns().stream().map(pattern -> filled(pattern, slots)).toList();
    Effect effect = sentence.effect();
    if (effect != null) {
      effect =
          new Effect(
              effect.verb(), effect.words().stream().map(word -> filled(word, slots)).toList());
    }
    return new Said(text, number, sentence, new LinkedHashMap<>(slots), patterns, effect);
  }

  private static Pattern filled(Pattern pattern, Map<String, String> slots) {
    List<Constraint> constraints =
        pattern.constraints().stream()
            .map(
                one ->
                    one.with() instanceof Operand.Words words
                        ? new Constraint(
                            one.field(),
                            one.operator(),
                            new Operand.Words(
                                words.words().stream().map(word -> filled(word, slots)).toList()))
                        : one)
            .toList();
    return new Pattern(pattern.quantity(), pattern.variable(), pattern.type(), constraints);
  }

  private static String filled(String word, Map<String, String> slots) {
    String filled = word;
    if (word.indexOf('{') >= 0) {
      for (Map.Entry<String, String> slot : slots.entrySet()) {
        filled = filled.replace("{" + slot.getKey() + "}", slot.getValue());
      }
    }
    return filled.intern();
  }
}
