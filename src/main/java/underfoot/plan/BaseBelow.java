package underfoot.plan;

import underfoot.knowledge.Facts;

/**
 * What the lowest layer lies on, as it is drawn.
 *
 * @param family {@code timber}, {@code floating} or {@code solid}
 * @param name what it is called
 * @param boards whether it is of many narrow boards
 * @param thicknessMm how thick the deck or slab is, mm; NaN if unknown
 * @param joistBreadthMm mm; NaN where there are no joists or they are unknown
 * @param joistDepthMm mm; NaN as well
 * @param joistCentresMm mm; NaN as well
 * @param taken whether the old deck is taken up, so that the layers lie on what carried it
 */
public record BaseBelow(
    String family,
    String name,
    boolean boards,
    double thicknessMm,
    double joistBreadthMm,
    double joistDepthMm,
    double joistCentresMm,
    boolean taken) {
  /**
   * What is held of the base.
   *
   * @param facts the facts of a floor or of a build-up
   * @param left what the lowest layer lies on; empty where that has no name of its own
   * @param taken whether the deck is taken up
   */
  public static BaseBelow of(Facts facts, String left, boolean taken) {
    return new BaseBelow(
        facts.text("base family"),
        left.isEmpty() ? facts.text("base") : left,
        facts.text("base kind").equals("boards"),
        facts.number("deck thickness"),
        facts.number("joist breadth"),
        facts.number("joist depth"),
        facts.number("joist centres"),
        taken);
  }

  /** Nothing known. */
  public static BaseBelow unknown() {
    return new BaseBelow("", "", false, Double.NaN, Double.NaN, Double.NaN, Double.NaN, false);
  }
}
