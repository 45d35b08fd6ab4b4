package underfoot.report.html;

import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.Consequences;

/** The drawings of an advice by themselves, for a page that draws while somebody answers. */
public final class Drawings {
  private Drawings() {}

  /**
   * The build-up cut through.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @return an SVG element; empty if nothing is built
   */
  public static String section(Advice advice, Phrases phrases) {
    return advice.builds() ? new SectionDrawing(advice, new Speech(phrases)).draw().toString() : "";
  }

  /**
   * The floor's levels, or how deep the compound stands where one is poured.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @return an SVG element; empty if the room is not drawn or too few places of it were measured
   */
  public static String levels(Advice advice, Phrases phrases) {
    Consequences after = advice.consequences();
    Optional<LevelDrawing> drawing =
        after.room().flatMap(room -> LevelDrawing.of(room, after.levels(), new Speech(phrases)));
    return drawing.map(one -> one.draw().toString()).orElse("");
  }
}
