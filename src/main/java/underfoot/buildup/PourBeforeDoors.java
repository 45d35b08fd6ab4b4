package underfoot.buildup;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.PourLines;
import underfoot.measure.Surveys;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.scenario.Scenario;

/**
 * The room as the stop lines before its doors divide it: how much floor lies before each, which no
 * compound covers, and what they leave to be poured.
 */
final class PourBeforeDoors {
  static final String STOP_LINE = "stop line";

  private PourBeforeDoors() {}

  /**
   * Adds what lies before the doors that have a stop line, where the room and their place are
   * known.
   *
   * @param found where the stop lines are, and where the rest is added
   */
  static void of(
      Scenario scenario,
      Surveys surveys,
      List<String> doors,
      Figures figures,
      Facts facts,
      MeasuredFacts found) {
    Facts known = Facts.over(facts).addAll(found.list());
    List<String> stopped = new ArrayList<>();
    List<PourLines.Line> lines = new ArrayList<>();
    for (String door : doors) {
      double wall = known.number("door wall", door);
      double start = known.number("door from", door);
      double width = known.number("door width", door);
      double stop = known.number(STOP_LINE, door);
      if (!Double.isNaN(wall + start + width + stop) && wall < scenario.outline().size()) {
        stopped.add(door);
        lines.add(new PourLines.Line((int) wall, start, width, stop));
      }
    }
    if (lines.isEmpty()) {
      return;
    }
    TracedFacts ofAll = new TracedFacts(figures, facts);
    ofAll.word("outline");
    double least = ofAll.figure("pour-worth-making");
    PourLines room = surveys.pourLines(scenario.outline(), lines, least);
    for (int i = 0; i < stopped.size(); i++) {
      Fact line = known.find(STOP_LINE, stopped.get(i));
      ofAll.use(line);
      before(stopped.get(i), room.doors().get(i), line, figures, facts, found);
    }
    if (!room.beyond()) {
      String how =
          "nowhere is the floor that no stop line cuts off as wide as " + Texts.metres(least);
      found
          .list()
          .add(
              Fact.measured(
                  "pour beyond the lines", "", "too narrow", Double.NaN, how, ofAll.uses()));
    }
  }

  private static void before(
      String door,
      PourLines.Before before,
      Fact line,
      Figures figures,
      Facts facts,
      MeasuredFacts found) {
    TracedFacts ofRoom = new TracedFacts(figures, facts);
    ofRoom.word("outline");
    found.addAs(
        "room before the door",
        door,
        Texts.metres(before.roomMm()),
        before.roomMm(),
        "from the middle of the opening square to its wall, to the next wall",
        ofRoom);
    TracedFacts ofStrip = new TracedFacts(figures, facts).use(line);
    ofStrip.word("outline");
    found.add(
        "floor before the stop line",
        door,
        before.floorM2(),
        "m2",
        "floor between the wall of the door and its stop line; what lies before the lines of several"
            + " doors is counted once",
        ofStrip);
  }
}
