package underfoot.reasoning;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;

/** The names by which rules and reports know the layers of a floor as it is today. */
public final class FoundLayers {
  /** What rules say of a layer: it may stay, or it comes up. */
  public static final String VERDICT = "found verdict";

  /** How thick a layer is. */
  public static final String THICKNESS = "found thickness";

  static final String FATE = "fate";
  static final String COMES_UP = "comes up";
  private static final String PLACE = "found place";

  private FoundLayers() {}

  /** The names of the layers, from what carries the floor up; none where they are not told. */
  public static List<String> names(Facts facts) {
    return facts.abouts(PLACE);
  }

  /** Whether a layer stays where the work starts as it does. */
  public static boolean stays(Facts facts, String name) {
    Fact fate = facts.find(FATE, name);
    return fate == null || !fate.text().equals(COMES_UP);
  }
}
