package underfoot.working;

import java.util.ArrayList;
import java.util.List;

/** How far a deck bends between joists: one simply supported span of layers laid loose together. */
public final class DeckDeflection implements Working {
  private static final int MOST_LAYERS = 20;

  /**
   * One sheet of a deck.
   *
   * @param thicknessMm thickness, mm
   * @param modulus modulus of elasticity in the direction of the span, N/mm2
   */
  public record Layer(double thicknessMm, double modulus) {
    /** Refuses a thickness or modulus that is not above 0. */
    public Layer {
      Need.positive("thickness", thicknessMm);
      Need.positive("modulus", modulus);
    }

    /** Bending stiffness of a strip one metre wide, N.mm2. */
    public double stiffness() {
      return modulus * Beam.secondMoment(1000, thicknessMm);
    }
  }

  /**
   * What a deck comes to.
   *
   * @param deflectionMm deflection midway between joists, mm
   * @param ratio span divided by deflection
   * @param stiffness bending stiffness of all layers, N.mm2 for each metre of width
   */
  public record Values(double deflectionMm, double ratio, double stiffness) {}

  /**
   * Works out 5wL^4/(384 sum of EI) for a strip one metre wide, L being the joist centres. The
   * layers are taken as unbonded, so their stiffnesses add and nothing more.
   *
   * @param layers the layers, at least one
   * @param centresMm joist spacing, mm, above 0
   * @param loadKnPerM2 load, kN/m2, above 0
   * @throws IllegalArgumentException for no layers, or a number that is not above 0
   */
  public static Values of(List<Layer> layers, double centresMm, double loadKnPerM2) {
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a deck needs at least one layer");
    }
    double stiffness = layers.stream().mapToDouble(Layer::stiffness).sum();
    double deflection =
        Beam.bending(
            Need.positive("load", loadKnPerM2), Need.positive("centres", centresMm), stiffness);
    return new Values(deflection, centresMm / deflection, stiffness);
  }

  @Override
  public String name() {
    return "deck-deflection";
  }

  @Override
  public String purpose() {
    return "How far boards or sheets bend between joists, layers laid one on another";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("thickness", Dimension.LENGTH, "mm", 1, 500, "thickness of each layer")
            .as(Key.Shape.LIST),
        Key.of("modulus", Dimension.STRESS, "N/mm2", 1, 300_000, "modulus of each layer")
            .as(Key.Shape.LIST),
        Key.of("centres", Dimension.LENGTH, "mm", 10, 5000, "joist spacing, centre to centre"),
        Key.of("load", Dimension.AREA_LOAD, "kN/m2", 0.001, 100, "load on the floor"));
  }

  @Override
  public List<String> example() {
    return List.of(
        "thickness=18 mm,15 mm", "modulus=3300 N/mm2,6000 N/mm2", "centres=450 mm", "load=2 kN/m2");
  }

  @Override
  public String source() {
    return "5wL^4/(384EI): Chudley and Greeno, Building Construction Handbook, 8th ed., Timber beam"
        + " design (published); stiffnesses of unbonded layers add: textbook";
  }

  @Override
  public Result work(Inputs in) {
    double[] thickness = in.list("thickness");
    double[] modulus = in.list("modulus");
    if (thickness.length > MOST_LAYERS) {
      throw in.refuse("thickness", "has more than " + MOST_LAYERS + " layers");
    }
    if (modulus.length != thickness.length) {
      throw in.refuse(
          "modulus", "has " + modulus.length + " values for " + thickness.length + " thicknesses");
    }
    List<Layer> layers = new ArrayList<>();
    List<String> terms = new ArrayList<>();
    for (int i = 0; i < thickness.length; i++) {
      layers.add(new Layer(thickness[i], modulus[i]));
      terms.add(Show.number(modulus[i]) + "*1000*" + Show.number(thickness[i]) + "^3/12");
    }
    double centres = in.number("centres");
    double load = in.number("load");
    Values values = of(layers, centres, load);
    return new Result.Draft()
        .step(
            "EI = sum of E*1000*t^3/12 (per m of width)",
            String.join(" + ", terms),
            "EI = " + Show.number(values.stiffness()) + " N.mm2 per m")
        .step(
            "deflection = 5*w*L^4/(384*EI), w per m of width, L = centres",
            "5*"
                + Show.number(load)
                + "*"
                + Show.number(centres)
                + "^4/(384*"
                + Show.number(values.stiffness())
                + ")",
            "deflection = " + Show.number(values.deflectionMm()) + " mm")
        .step(
            "ratio = L/deflection",
            Show.number(centres) + "/" + Show.number(values.deflectionMm()),
            "deflection = span/" + Show.number(values.ratio()))
        .value("deflection", values.deflectionMm(), "mm")
        .value("ratio", values.ratio(), "")
        .note("One simply supported span, layers not bonded: a cautious reading of a deck.")
        .note("An overlay stiffens the deck between joists, not the joists.")
        .done(this, in);
  }
}
