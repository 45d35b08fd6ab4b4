package underfoot.plan;

import java.util.List;
import java.util.Optional;

/**
 * What follows from a build-up besides its layers.
 *
 * @param quantities what to buy
 * @param programme the steps of the work in order
 * @param cost what the materials cost; empty without a price book
 * @param levels how the levelling compound is set out; empty without compound or spot heights
 * @param beneath what the lowest layer lies on, as it is drawn
 * @param room the room as it is drawn; empty where its outline is not known
 * @param setOut where tiles and boards lie; empty where the outline is not known
 */
public record Consequences(
    List<QuantityLine> quantities,
    List<ProgrammeStep> programme,
    Optional<Cost> cost,
    Optional<LevelPlan> levels,
    Beneath beneath,
    Optional<RoomPlan> room,
    Optional<SetOut> setOut) {
  /** Copies the lists. */
  public Consequences {
    quantities = List.copyOf(quantities);
    programme = List.copyOf(programme);
  }

  /** Nothing worked out. */
  public static Consequences none() {
    return new Consequences(
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Beneath.unknown(),
        Optional.empty(),
        Optional.empty());
  }
}
