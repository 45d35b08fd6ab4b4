package underfoot.buildup;

import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MissingKnowledge;

/**
 * How thick a layer comes out.
 *
 * @param min at its thinnest, mm
 * @param mean on average over the floor, mm
 * @param max at its thickest, mm
 */
public record LayerThickness(double min, double mean, double max) {
  static final String OF_FACT = "the ";
  static final String OF_POUR = "the pour";

  /** A layer of one thickness, mm. */
  public static LayerThickness even(double mm) {
    return new LayerThickness(mm, mm, mm);
  }

  /** The thicker of two at each point. */
  LayerThickness or(LayerThickness other) {
    return new LayerThickness(
        Math.max(min, other.min), Math.max(mean, other.mean), Math.max(max, other.max));
  }

  /**
   * Reads how a layer's thickness is given.
   *
   * @param laid the layer
   * @param figures where figures are looked up
   * @param facts where {@code the tile thickness} and {@code the pour} are looked up
   * @throws MissingKnowledge if what is named is not there
   */
  static LayerThickness of(Laid laid, Figures figures, Facts facts) {
    String given = laid.figure().isEmpty() ? laid.kind().thickness() : laid.figure();
    if (given.equals("none")) {
      return even(0);
    }
    if (given.equals(OF_POUR)) {
      return new LayerThickness(
          known(facts, "pour least"), known(facts, "pour mean"), known(facts, "pour most"));
    }
    if (given.startsWith(OF_FACT)) {
      return even(known(facts, given.substring(OF_FACT.length())));
    }
    return even(figures.get(given).number());
  }

  /**
   * How thick a kind of layer usually is; nothing if that hangs on what is not known.
   *
   * @param kind the kind of layer
   * @param figures where figures are looked up
   * @param facts where facts are looked up
   */
  public static LayerThickness usual(LayerKind kind, Figures figures, Facts facts) {
    try {
      return of(new Laid(null, kind, ""), figures, facts);
    } catch (MissingKnowledge notKnown) {
      return even(0);
    }
  }

  private static double known(Facts facts, String name) {
    double number = facts.number(name);
    if (Double.isNaN(number)) {
      throw new MissingKnowledge("measured or assumed fact", name);
    }
    return number;
  }
}
