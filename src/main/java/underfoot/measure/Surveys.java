package underfoot.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.scenario.Point;
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

  /** By outline, and bays along and across. */
  private final Map<List<Object>, Long> bays = new ConcurrentHashMap<>();

  /** By outline. */
  private final Map<List<Point>, RoomShape> rooms = new ConcurrentHashMap<>();

  /** By outline and lines. */
  private final Map<List<Object>, PourLines> lines = new ConcurrentHashMap<>();

  /**
   * A room in which a pour stops at lines before doors.
   *
   * @param outline the room's corners, at least three
   * @param drawn the lines, each at a wall that there is
   * @param least how wide a pour is to be worth making, mm
   */
  public PourLines pourLines(List<Point> outline, List<PourLines.Line> drawn, double least) {
    if (rooms.size() >= KEPT) {
      rooms.clear();
    }
    if (lines.size() >= KEPT * KEPT) { // each build-up rises by its own and has its own lines
      lines.clear();
    }
    RoomShape room = rooms.computeIfAbsent(outline, of -> RoomShape.of(of).orElseThrow());
    return lines.computeIfAbsent(
        List.of(outline, drawn, least), asked -> PourLines.of(room, outline, drawn, least));
  }

  /**
   * How many of the equal bays of the rectangle about a room hold floor.
   *
   * @param outline the room's corners
   * @param room the same as a shape
   * @param along bays along the longer side
   * @param across bays along the shorter side
   */
  long baysWithFloor(List<Point> outline, RoomShape room, long along, long across) {
    if (bays.size() >= KEPT) {
      bays.clear();
    }
    return bays.computeIfAbsent(
        List.of(outline, along, across), asked -> room.baysWithFloor(along, across));
  }

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
