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

  /**
   * The layers of a floor, from what carries it up; none where they are not told.
   *
   * @param facts what is held of them
   * @param baseTakenUp whether the way chosen takes up the base, the uppermost that could stay
   * @param justifier tells why
   */
  static List<LayerFound> of(Facts facts, boolean baseTakenUp, Justifier justifier) {
    List<LayerFound> found = new ArrayList<>();
    List<String> names = FoundLayers.names(facts);
    String deck =
        names.stream()
            .filter(name -> baseTakenUp && FoundLayers.stays(facts, name))
            .reduce("", (below, above) -> above);
    for (String name : names) {
      Fact verdict = facts.find(FoundLayers.VERDICT, name);
      found.add(
          new LayerFound(
              name,
              facts.number(FoundLayers.THICKNESS, name),
              FoundLayers.stays(facts, name) && !name.equals(deck),
              verdict == null || verdict.because() == null
                  ? List.of()
                  : justifier.of(List.of(verdict.because()))));
    }
    return found;
  }
}
