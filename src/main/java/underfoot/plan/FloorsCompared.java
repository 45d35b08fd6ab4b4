package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.FloorComparison;
import underfoot.scenario.Place;

/**
 * Two floors compared, in words and numbers.
 *
 * @param first the first floor
 * @param second the second floor
 * @param facts what is said of the two that differs
 * @param decisions what is decided otherwise of the second
 * @param every whether each fact was tried alone; not all are where floors hold very much
 */
public record FloorsCompared(
    Floor first, Floor second, List<Differing> facts, List<Decided> decisions, boolean every) {
  /** Copies the lists. */
  public FloorsCompared {
    facts = List.copyOf(facts);
    decisions = List.copyOf(decisions);
  }

  /**
   * One of the floors.
   *
   * @param scenario its own name
   * @param verdict the verdict on it
   * @param way what is recommended for it, or else what came nearest; empty if nothing was worked
   *     out
   */
  public record Floor(String scenario, Verdict verdict, Optional<ComparedBuildUp> way) {}

  /**
   * A fact that differs.
   *
   * @param fact its scenario key
   * @param first its value in the first
   * @param second its value in the second
   */
  public record Differing(String fact, String first, String second) {}

  /**
   * Something decided otherwise.
   *
   * @param what what is decided of the second and not of the first
   * @param becauseOf the keys of the facts it hangs on; empty if it takes several together
   */
  public record Decided(String what, List<String> becauseOf) {
    /** Copies the list. */
    public Decided {
      becauseOf = List.copyOf(becauseOf);
    }
  }

  /** Puts a comparison into words and numbers. */
  public static FloorsCompared of(FloorComparison comparison, Planner ofFirst, Planner ofSecond) {
    List<Differing> facts = new ArrayList<>();
    for (FloorComparison.Differing one : comparison.facts()) {
      facts.add(new Differing(key(one), one.first(), one.second()));
    }
    List<Decided> decisions = new ArrayList<>();
    for (FloorComparison.Decided one : comparison.decisions()) {
      decisions.add(
          new Decided(one.what(), one.becauseOf().stream().map(FloorsCompared::key).toList()));
    }
    return new FloorsCompared(
        floor(comparison.first(), ofFirst),
        floor(comparison.second(), ofSecond),
        facts,
        decisions,
        comparison.every());
  }

  private static String key(FloorComparison.Differing one) {
    return Place.named(one.fact().key(), one.about());
  }

  private static Floor floor(Assessment assessment, Planner planner) {
    Justifier justifier = new Justifier(assessment.scenario(), assessment.knowledge());
    return new Floor(
        assessment.scenario().name(),
        assessment.verdict(),
        assessment.buildUps().stream()
            .findFirst()
            .map(first -> BuildUpComparison.of(assessment, first, planner, justifier)));
  }

  /** The verdict in words. */
  public static String verdict(Floor floor, Phrases phrases) {
    return phrases.say("verdict-" + floor.verdict().word());
  }
}
