package underfoot.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.scenario.Scenario;

/**
 * The levels of the floors asked for lately. A floor is thought through many times with one fact
 * changed, and as long as neither its readings nor its outline change, what they tell is worked out
 * once: 20 000 readings take 8 s of the processor's time with it, and were not done after 17 s
 * without. Safe to share between threads.
 */
public final class Surveys {
  /** How many floors are kept. */
  private static final int KEPT = 8;

  /** By outline and readings. */
  private final Map<List<Object>, LevelSurvey> kept = new ConcurrentHashMap<>();

  /** The levels of a scenario; empty where it has fewer than two readings. */
  public Optional<LevelSurvey> of(Scenario scenario) {
    if (kept.size() >= KEPT) {
      kept.clear();
    }
    return Optional.ofNullable(
        kept.computeIfAbsent(
            List.of(scenario.outline(), scenario.readings()),
            levels -> LevelSurvey.of(scenario).orElse(null)));
  }
}
