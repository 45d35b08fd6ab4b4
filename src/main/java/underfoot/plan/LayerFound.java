package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.reasoning.FoundLayers;

/**
 * A layer of the floor as it is today.
 *
 * @param name what it is called
 * @param thicknessMm how thick it is, mm; NaN if nobody has said
 * @param stays whether it stays; what does not stay comes up before anything is laid
 * @param because why
 */
public record LayerFound(
    String name, double thicknessMm, boolean stays, List<Justification> because) {
  /** Copies the list. */
  public LayerFound {
    because = List.copyOf(because);
  }

  /** The layers of a floor, from what carries it up; none where they are not told. */
  static List<LayerFound> of(Facts facts, Justifier justifier) {
    List<LayerFound> found = new ArrayList<>();
    for (String name : FoundLayers.names(facts)) {
      Fact verdict = facts.find(FoundLayers.VERDICT, name);
      found.add(
          new LayerFound(
              name,
              facts.number(FoundLayers.THICKNESS, name),
              FoundLayers.stays(facts, name),
              verdict == null || verdict.because() == null
                  ? List.of()
                  : justifier.of(List.of(verdict.because()))));
    }
    return found;
  }
}
