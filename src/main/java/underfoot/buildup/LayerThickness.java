package underfoot.buildup;

import java.util.List;
import java.util.Set;
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
  /** How what comes on top of a layer's own thickness is given: before what tells it. */
  public static final String AND = "and ";

  /** How a thickness that a fact tells is given. */
  public static final String OF_FACT = "the ";

  static final String OF_POUR = "the pour";
  static final String OF_FALLS = "the falls";
  static final String OF_PACKING = "the packing";

  /** Thicknesses that differ from place to place; facts tell the least, the mean and the most. */
  private static final Set<String> UNEVEN = Set.of(OF_POUR, OF_FALLS, OF_PACKING);

  /**
   * What is read for a layer's thickness, where that is a matter of facts.
   *
   * @param given how a layer's thickness is given
   */
  static List<String> facts(String given) {
    String name = given.startsWith(OF_FACT) ? given.substring(OF_FACT.length()) : "";
    if (UNEVEN.contains(given)) {
      return List.of(name + " least", name + " mean", name + " most");
    }
    return name.isEmpty() ? List.of() : List.of(name);
  }

  /** A layer of one thickness, mm. */
  public static LayerThickness even(double mm) {
    return new LayerThickness(mm, mm, mm);
  }

  /** As much more at each point. */
  LayerThickness and(LayerThickness more) {
    return new LayerThickness(min + more.min, mean + more.mean, max + more.max);
  }

  /** The thicker of two at each point. */
  LayerThickness or(LayerThickness other) {
    return new LayerThickness(
        Math.max(min, other.min), Math.max(mean, other.mean), Math.max(max, other.max));
  }

  /** Whether it comes on top of what else the layer has. */
  static boolean onTop(Laid laid) {
    return laid.figure().startsWith(AND);
  }

  /** What tells how thick it is laid: the kind's own where nothing else was asked. */
  static String given(Laid laid) {
    if (laid.figure().isEmpty()) {
      return laid.kind().thickness();
    }
    return onTop(laid) ? laid.figure().substring(AND.length()) : laid.figure();
  }

  /**
   * Reads how a layer's thickness is given.
   *
   * @param laid the layer
   * @param figures where figures are looked up
   * @param facts where {@code the tile thickness}, {@code the pour} and {@code the falls} are
   *     looked up
   * @throws MissingKnowledge if what is named is not there
   */
  static LayerThickness of(Laid laid, Figures figures, Facts facts) {
    String given = given(laid);
    if (given.equals("none")) {
      return even(0);
    }
    List<String> names = facts(given);
    if (names.size() > 1) {
      return new LayerThickness(
          known(facts, names.get(0)), known(facts, names.get(1)), known(facts, names.get(2)));
    }
    if (!names.isEmpty()) {
      return even(known(facts, names.get(0)));
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
