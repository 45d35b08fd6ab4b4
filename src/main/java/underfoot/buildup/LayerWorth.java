package underfoot.buildup;

import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.TracedFacts;

/** What a layer weighs and how it holds heat back. */
public final class LayerWorth {
  private LayerWorth() {}

  /** Mass at its mean thickness, kg/m2; 0 where it is not worth counting. */
  public static double massKgPerM2(StackLayer layer, Figures figures) {
    String mass = layer.kind().mass();
    return mass.isEmpty() ? 0 : figures.get(mass).value() * layer.thickness().mean();
  }

  /** Thermal resistance at its mean thickness, m2K/W; 0 where it is too thin to count. */
  public static double resistanceM2KPerW(StackLayer layer, Figures figures) {
    String conductivity = layer.kind().conductivity();
    return conductivity.isEmpty()
        ? 0
        : layer.thickness().mean() / 1000 / figures.get(conductivity).value();
  }

  /** Adds to a basis what a layer's thickness was read from. */
  static void useThickness(StackLayer layer, Figures figures, Facts facts, TracedFacts basis) {
    for (Laid laid : layer.laid()) {
      String given = LayerThickness.given(laid);
      if (figures.has(given)) {
        basis.use(figures.get(given));
      } else {
        LayerThickness.facts(given).forEach(name -> use(name, facts, basis));
      }
    }
  }

  private static void use(String name, Facts facts, TracedFacts basis) {
    if (facts.find(name) != null) {
      basis.use(facts.find(name));
    }
  }
}
