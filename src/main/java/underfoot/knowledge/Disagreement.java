package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import underfoot.scenario.RuleFiles;

/**
 * A matter on which sources differ.
 *
 * @param about what it is about
 * @param voices who says what
 * @param used what this rule base goes by; rules and figures are named by id
 * @param because why that
 */
public record Disagreement(String about, List<Voice> voices, String used, String because) {
  /** Copies the list. */
  public Disagreement {
    voices = List.copyOf(voices);
  }

  /**
   * What one source says.
   *
   * @param source what is cited: an id, a clause, {@code from memory}
   * @param says what it says, with names of figures in braces
   */
  public record Voice(String source, String says) {}

  /** Reads all of them. */
  static List<Disagreement> load(RuleFiles files) throws KnowledgeFault {
    List<Disagreement> all = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, "disagreements.yaml")) {
      List<Voice> voices = new ArrayList<>();
      for (Entries.Entry voice : entry.rows().getOrDefault("voices", List.of())) {
        voices.add(new Voice(voice.required("source"), voice.required("says")));
      }
      all.add(
          new Disagreement(
              entry.name(), voices, entry.required("used"), entry.required("because")));
    }
    return all;
  }
}
