package underfoot.plan;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import underfoot.buildup.LayerThickness;
import underfoot.plan.Advice.Door;

/**
 * One way of building this floor, fully worked out, as it is set beside the others.
 *
 * @param id the way of building
 * @param title what it is called in plain words
 * @param standing how it stands
 * @param layers its layers from the base up, with their thickness
 * @param aboveOldFloor how much higher than the old floor the tiles come, mm
 * @param doors what is left under each door
 * @param massKgPerM2 what it weighs
 * @param joistRatio span over deflection of the joists with it; NaN if it does not apply
 * @param deckRatio span over deflection of the deck between joists with it; NaN if it does not
 *     apply
 * @param cost what it costs; empty if the area or the prices are not known
 * @param workHours hours that hands work
 * @param inUseAfterHours hours from the start of the work until the room is in full use
 * @param inUse the day the room is in full use; empty without a start date
 * @param disturbance how much the house is disturbed, in a word; may be empty
 * @param first what must be put right or settled first, in a few words each
 * @param risks what can still go wrong with it and not with every way, in a few words each
 * @param against why it must not be built here; empty if it may
 * @param gains what it has over the recommended way, in words and numbers
 * @param givesUp what the recommended way has over it
 * @param because the rules that offer it, rule it out, or rank it
 */
public record ComparedBuildUp(
    String id,
    String title,
    Advice.Standing standing,
    List<Part> layers,
    LayerThickness aboveOldFloor,
    List<Door> doors,
    double massKgPerM2,
    double joistRatio,
    double deckRatio,
    Optional<Cost> cost,
    double workHours,
    double inUseAfterHours,
    Optional<LocalDateTime> inUse,
    String disturbance,
    List<String> first,
    List<String> risks,
    List<String> against,
    List<String> gains,
    List<String> givesUp,
    List<Justification> because) {
  /** Copies the lists. */
  public ComparedBuildUp {
    layers = List.copyOf(layers);
    doors = List.copyOf(doors);
    first = List.copyOf(first);
    risks = List.copyOf(risks);
    against = List.copyOf(against);
    gains = List.copyOf(gains);
    givesUp = List.copyOf(givesUp);
    because = List.copyOf(because);
  }

  /**
   * One of its layers.
   *
   * @param id the kind of layer
   * @param name what it is called
   * @param thickness how thick it comes out, mm
   */
  public record Part(String id, String name, LayerThickness thickness) {}
}
