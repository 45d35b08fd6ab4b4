package underfoot.working;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The catalogue of workings that can be run by name. */
public final class Workings {
  private final Map<String, Working> byName = new LinkedHashMap<>();

  /**
   * Makes the catalogue.
   *
   * @param defaults the limits and material values used
   */
  public Workings(Defaults defaults) {
    List<TimberGrade> grades = defaults.grades();
    for (Working working :
        List.of(
            new JoistSpan(grades),
            new JoistDeflection(grades),
            new DeckDeflection(),
            new FloorFrequency(defaults.simpleVibrationCheckAboveHz()),
            new StraightedgeGap(defaults.straightedgeMm()),
            new BestPlane(),
            new LevellingVolume(),
            new Evaporation(defaults.evaporationBands()),
            new CureTime(defaults.leastCuringC()),
            new DryingTime(defaults.cementDrying(), defaults.calciumSulfateDrying()),
            new HeatOutput(defaults.occupiedFloorExcessK()),
            new HeatSplit(),
            new HeatingProgramme(defaults.heatingStart()),
            new Grout(),
            new Adhesive(),
            new MovementBays(defaults.heatedBays(), defaults.unheatedBays()),
            new Cuts(),
            new TilesPerArea(),
            new Fall(defaults.falls()),
            new ScrewLength(defaults.stockedScrewsMm()),
            new WoodMoisture(),
            new DewPoint())) {
      byName.put(working.name(), working);
    }
  }

  /** The catalogue with the figures shipped. */
  public static Workings standard() {
    return new Workings(Defaults.read());
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
    if (working != null) {
      return working;
    }
    Optional<String> nearest = Nearest.to(name, byName.keySet());
    throw new Refused(
        "no working is called "
            + Show.quote(name)
            + nearest.map(near -> "; did you mean " + near + "?").orElse("")
            + (nearest.isPresent() ? "" : "; 'work-out' alone lists them all"));
  }
}
