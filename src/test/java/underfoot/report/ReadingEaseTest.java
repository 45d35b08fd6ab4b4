package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.reasoning.Floors;

/**
 * What the shorter forms say can be read aloud and understood.
 *
 * <p>Measured by the reading ease of Rudolf Flesch (Journal of Applied Psychology 32, 1948, from
 * memory): 206.835 - 1.015 × words a sentence - 84.6 × syllables a word; 60 to 70 is plain English.
 * As Flesch counts, a colon or semicolon ends a unit of speech as a full stop does. Syllables are
 * counted as groups of vowels, mute endings left out.
 */
class ReadingEaseTest {
  private static final double ALL = 70;
  private static final double EACH = 38;
  private static final int FEW_WORDS = 8;
  private static final Set<String> PARTS =
      Set.of(TextParts.TEXT, TextParts.DANGER, TextParts.WHOM, TextParts.INSTEAD);
  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z'-]*");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]{1,2}");

  private static int syllables(String word) {
    String plain = word.toLowerCase().replaceAll("[^a-z]", "");
    String said =
        plain
            .replaceAll("(?:[^laeiouy]es|ed|[^laeiouy]e|(?<=[aeiouy]l)e)$", "")
            .replaceAll("^y", "");
    return Math.max(1, (int) VOWELS.matcher(said).results().count());
  }

  private static int words(String text) {
    return (int) WORD.matcher(text).results().count();
  }

  private static double ease(String text) {
    int sentences = 0;
    for (String sentence : text.split("[.?!:;]+(?:\\s|$)")) {
      sentences += sentence.isBlank() ? 0 : 1;
    }
    int syllables = 0;
    Matcher each = WORD.matcher(text);
    while (each.find()) {
      syllables += syllables(each.group());
    }
    double words = words(text);
    return 206.835 - 1.015 * words / Math.max(1, sentences) - 84.6 * syllables / words;
  }

  /** What the shorter forms tell of a wording, its figures and facts replaced by a short word. */
  private static String told(Wording.Text wording) {
    StringBuilder told = new StringBuilder();
    wording
        .parts()
        .forEach(
            (part, text) -> {
              if (PARTS.contains(part)) {
                told.append(text.strip()).append(' ');
              }
            });
    return told.toString().replaceAll("\\{[^}]*\\}|\\[[^\\]]*\\]|<[^>]*>", "it").strip();
  }

  @Test
  void the_formula_gives_what_it_is_known_to_give() {
    assertThat(syllables("adhesive")).isEqualTo(3);
    assertThat(syllables("tile")).isEqualTo(1);
    assertThat(ease("The cat sat on the mat.")).isGreaterThan(110);
    assertThat(
            ease(
                "Notwithstanding considerable administrative complications, implementation continued."))
        .isLessThan(0);
  }

  @Test
  void every_wording_of_the_shorter_forms_is_plain_and_all_of_them_are_plainer() {
    Wording wording = Floors.advisor().knowledge().wording();
    StringBuilder all = new StringBuilder();
    TreeMap<String, Double> hard = new TreeMap<>();
    for (String id : wording.ids()) {
      String told = told(wording.get(id));
      if (words(told) < FEW_WORDS) {
        continue;
      }
      all.append(told).append(' ');
      if (ease(told) < EACH) {
        hard.put(id, ease(told));
      }
    }
    assertThat(hard).isEmpty();
    assertThat(ease(all.toString())).isGreaterThan(ALL);
  }
}
