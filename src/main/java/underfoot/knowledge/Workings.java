package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import underfoot.quantity.Nearest;
import underfoot.quantity.Words;
import underfoot.scenario.RuleFiles;
import underfoot.working.Adhesive;
import underfoot.working.BayLimits;
import underfoot.working.BestPlane;
import underfoot.working.CureTime;
import underfoot.working.Cuts;
import underfoot.working.DeckDeflection;
import underfoot.working.DewPoint;
import underfoot.working.DryingRates;
import underfoot.working.DryingTime;
import underfoot.working.Evaporation;
import underfoot.working.EvaporationBands;
import underfoot.working.Fall;
import underfoot.working.FallLimits;
import underfoot.working.FloorFrequency;
import underfoot.working.Grout;
import underfoot.working.HeatOutput;
import underfoot.working.HeatSplit;
import underfoot.working.HeatingProgramme;
import underfoot.working.HeatingStart;
import underfoot.working.JoistDeflection;
import underfoot.working.JoistSpan;
import underfoot.working.LevellingVolume;
import underfoot.working.MovementBays;
import underfoot.working.Refused;
import underfoot.working.ScrewLength;
import underfoot.working.StraightedgeGap;
import underfoot.working.TilesPerArea;
import underfoot.working.TimberGrade;
import underfoot.working.WoodMoisture;
import underfoot.working.Working;

/** The catalogue of workings that can be run by name, with the figures they take. */
public final class Workings {
  private static final double MM_PER_M = 1000;
  private static final double HOURS_A_DAY = 24;
  private static final String PRACTICE = "uk";

  private final Map<String, Working> byName = new LinkedHashMap<>();
  private final Figures figures;

  /**
   * Makes the catalogue.
   *
   * @param figures where the limits and material values are looked up
   * @throws MissingKnowledge if one of them is not there
   */
  public Workings(Figures figures) {
    this.figures = figures;
    List<TimberGrade> grades = grades();
    for (Working working :
        List.of(
            new JoistSpan(grades),
            new JoistDeflection(grades),
            new DeckDeflection(),
            new FloorFrequency(number("floor-frequency-simple-check")),
            new StraightedgeGap(number("straightedge-usual-length")),
            new BestPlane(),
            new LevellingVolume(),
            new Evaporation(
                new EvaporationBands(
                    number("evaporation-band-1-from"),
                    number("evaporation-band-2-from"),
                    number("evaporation-band-3-from"))),
            new CureTime(number("cement-least-curing-temperature")),
            new DryingTime(drying("cement-screed"), drying("calcium-sulfate-screed")),
            new HeatOutput(number("heated-floor-excess-occupied")),
            new HeatSplit(),
            new HeatingProgramme(
                new HeatingStart(
                    number("cement-screed-first-heating") / HOURS_A_DAY,
                    number("calcium-sulfate-screed-first-heating") / HOURS_A_DAY)),
            new Grout(),
            new Adhesive(),
            new MovementBays(
                new BayLimits(
                    number("bay-heated-longest-side") / MM_PER_M,
                    OptionalDouble.of(number("bay-heated-largest-area"))),
                new BayLimits(
                    number("bay-unheated-longest-side") / MM_PER_M, OptionalDouble.empty())),
            new Cuts(),
            new TilesPerArea(),
            new Fall(new FallLimits(number("fall-gentlest"), number("fall-steepest"))),
            new ScrewLength(
                figures.startingWith("stocked-screw-").stream().map(Figure::number).toList()),
            new WoodMoisture(),
            new DewPoint())) {
      byName.put(working.name(), working);
    }
  }

  /** The catalogue with the figures shipped. */
  public static Workings standard() {
    try {
      return new Workings(Figures.load(RuleFiles.shipped(), PRACTICE));
    } catch (KnowledgeFault e) {
      throw new IllegalStateException("the figures shipped are at fault", e);
    }
  }

  private double number(String figure) {
    return figures.get(figure).number();
  }

  private DryingRates drying(String screed) {
    return new DryingRates(
        number(screed + "-drying-first-depth"),
        number(screed + "-drying-rate-first"),
        number(screed + "-drying-rate-beyond"));
  }

  /** The strength classes of timber, in the order of the file. */
  private List<TimberGrade> grades() {
    return figures.startingWith("timber-").stream()
        .filter(one -> one.name().matches("timber-[a-z0-9]+-modulus"))
        .map(
            modulus -> {
              String stem = modulus.name().replaceFirst("modulus$", "");
              return new TimberGrade(
                  stem.substring("timber-".length(), stem.length() - 1).toUpperCase(Locale.ROOT),
                  modulus.number(),
                  number(stem + "shear-modulus"),
                  number(stem + "bending-strength"),
                  number(stem + "shear-strength"),
                  number(stem + "mean-density"),
                  modulus.status());
            })
        .toList();
  }

  /** All workings, in the order of the contract. */
  public List<Working> all() {
    return List.copyOf(byName.values());
  }

  /**
   * A working by name.
   *
   * @throws Refused with the nearest name where there is none of that name
   */
  public Working named(String name) {
    Working working = byName.get(name);
    if (working == null) {
      String near = Nearest.to(name, byName.keySet());
      throw new Refused(
          "no working is called "
              + Words.quote(name)
              + (near.isEmpty()
                  ? "; 'work-out' alone lists them all"
                  : "; did you mean " + near + "?"));
    }
    return working;
  }
}
