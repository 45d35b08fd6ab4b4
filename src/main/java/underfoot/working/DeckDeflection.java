package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.quantity.Dimension.PRESSURE;
import static underfoot.quantity.Dimension.STRESS;

import java.util.ArrayList;
import java.util.List;

/** How far a deck bends between joists: one simply supported span of layers laid loose together. */
public final class DeckDeflection extends Working {
  private static final int MOST_LAYERS = 20;

  /** Makes the working. */
  public DeckDeflection() {
    super(
        new Sheet(
            "deck-deflection",
            "How far boards or sheets bend between joists, layers laid one on another",
            "5wL^4/(384EI): Chudley and Greeno, Building Construction Handbook, 8th ed., Timber beam"
                + " design (published); stiffnesses of unbonded layers add: textbook",
            "thickness=18 mm,15 mm",
            "modulus=3300 N/mm2,6000 N/mm2",
            "centres=450 mm",
            "load=2 kN/m2"),
        Key.of("thickness", LENGTH, "mm", 1, 500, "thickness of each layer").as(Key.Shape.LIST),
        Key.of("modulus", STRESS, "N/mm2", 1, 300_000, "modulus of each layer").as(Key.Shape.LIST),
        Key.of("centres", LENGTH, "mm", 10, 5000, "joist spacing, centre to centre"),
        Key.of("load", PRESSURE, "kN/m2", 0.001, 100, "load on the floor"));
  }

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
  Result work(Inputs in) {
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
    Values values = of(layers, in.number("centres"), in.number("load"));
    return new Result.Draft(in)
        .let("EI", values.stiffness(), "N.mm2 per m")
        .let("w", in.number("load"))
        .let("L", in.number("centres"))
        .value("deflection", values.deflectionMm(), "mm")
        .value("ratio", values.ratio(), "")
        .step(
            "EI = sum of E*1000*t^3/12 (per m of width)",
            String.join(" + ", terms),
            "EI = {EI} N.mm2 per m")
        .step("deflection = 5*w*L^4/(384*EI), w per m of width, L = centres")
        .step("ratio = L/deflection", "deflection = span/{ratio}")
        .note("One simply supported span, layers not bonded: a cautious reading of a deck.")
        .note("An overlay stiffens the deck between joists, not the joists.")
        .done(this);
  }
}
