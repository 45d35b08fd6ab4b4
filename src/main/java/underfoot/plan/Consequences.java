package underfoot.plan;

import java.util.List;
import java.util.Optional;

/**
 * What follows from a build-up besides its layers.
 *
 * @param quantities what to buy
 * @param shopping the same as it is asked for in shops, with tools and what keeps people safe
 * @param programme the steps of the work in order
 * @param schedule how long the work takes, and the days that are waited for
 * @param cost what the materials cost; empty without a price book
 * @param levels how the levelling compound is set out; empty without compound or spot heights
 * @param ways every way that was worked out, side by side, the recommended one first
 * @param changes what would make a way stand or keep the client's limits, the least trouble first;
 *     empty if the recommended way fits as it is
 * @param changesNote that not all changes were tried; empty if they were
 * @param beneath what the lowest layer lies on, as it is drawn
 * @param room the room as it is drawn; empty where its outline is not known
 * @param setOut where tiles and boards lie; empty where the outline is not known
 */
public record Consequences(
    List<QuantityLine> quantities,
    List<ShoppingLine> shopping,
    List<ProgrammeStep> programme,
    Schedule schedule,
    Optional<Cost> cost,
    Optional<LevelPlan> levels,
    List<ComparedBuildUp> ways,
    List<ChangeNote> changes,
    Optional<String> changesNote,
    BaseBelow beneath,
    Optional<RoomPlan> room,
    Optional<SetOut> setOut) {
  /** Copies the lists. */
  public Consequences {
    quantities = List.copyOf(quantities);
    shopping = List.copyOf(shopping);
    programme = List.copyOf(programme);
    ways = List.copyOf(ways);
    changes = List.copyOf(changes);
  }

  /** Nothing worked out. */
  public static Consequences none() {
    return none(List.of());
  }

  /** Nothing recommended, but ways that were worked out. */
  static Consequences none(List<ComparedBuildUp> ways) {
    return new Consequences(
        List.of(),
        List.of(),
        List.of(),
        Schedule.none(),
        Optional.empty(),
        Optional.empty(),
        ways,
        List.of(),
        Optional.empty(),
        BaseBelow.unknown(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same with what would make a way fit. */
  public Consequences with(List<ChangeNote> changes, Optional<String> changesNote) {
    return new Consequences(
        quantities,
        shopping,
        programme,
        schedule,
        cost,
        levels,
        ways,
        changes,
        changesNote,
        beneath,
        room,
        setOut);
  }
}
