package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.measure.Texts;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Zone;

/**
 * A room whose floor is otherwise in some parts: each part is thought through as a floor of its
 * own, and those that end lower are made up to the one that ends highest, as far as rules say how.
 * What the room costs and how long it takes, it does with its parts.
 */
final class ZonedFloor {
  /** The fact that tells by how much a part must end higher than its layers alone have it. */
  private static final String TO_MAKE_UP = "level to make up";

  /** The fact that tells by how much a part still ends higher than the rest. */
  private static final String STEP_LEFT = "step left at the line";

  /** The fact that tells a part of a room, of which some things are asked as a whole. */
  private static final String EXTENT = "extent";

  /** What is made up may come out thicker than asked and raise the others; it settles at once. */
  private static final int MOST_ROUNDS = 4;

  private static final double SAME_LEVEL = 0.05;

  private final Advisor advisor;
  private final List<Part> parts = new ArrayList<>();

  /** The parts as they are built, beside the rest of the room, when that was thought through. */
  private List<Assessment> besides = List.of();

  /** One part of the room, the rest of the floor first. */
  private static final class Part {
    private final String name;
    private final double surface;
    private final Scenario floor;
    private final Map<Double, Assessment> madeUp = new HashMap<>();
    private double makeUp;
    private double tried;
    private double told;
    private Assessment assessment;

    Part(String name, double surface, Scenario floor) {
      this.name = name;
      this.surface = Double.isNaN(surface) ? 0 : surface;
      this.floor = floor;
    }

    /** Where its finished floor lies above the rest of the floor as it is today, mm. */
    double level() {
      Optional<BuildUp> chosen = assessment.chosen();
      return chosen.map(one -> surface + one.facts().number("rise")).orElse(Double.NaN);
    }
  }

  ZonedFloor(Advisor advisor, Scenario room) {
    this.advisor = advisor;
    parts.add(new Part("", 0, room));
    for (Zone zone : room.zones()) {
      double surface =
          room.find("zones[].surface", zone.name()).map(StatedFact::number).orElse(Double.NaN);
      parts.add(new Part(zone.name(), surface, zone.floor()));
    }
  }

  Assessment assessment() {
    besides = parts.stream().skip(1).map(part -> advise(part, 0)).toList();
    boolean settled = false;
    for (int round = 0; !settled && round < MOST_ROUNDS; round++) {
      settled = together();
    }
    if (!settled) { // counting the parts made it go another way, and that the first again
      parts.get(0).assessment = advise(parts.get(0), parts.get(0).makeUp);
    }
    boolean told = false;
    for (int round = 0; !told && round < MOST_ROUNDS; round++) {
      told = !stepped();
    }
    double room = parts.get(0).level();
    List<ZonePart> zones = new ArrayList<>();
    for (Part part : parts.subList(1, parts.size())) {
      zones.add(
          new ZonePart(
              part.name, part.surface, part.assessment, part.level(), part.level() - room));
    }
    return parts.get(0).assessment.with(zones);
  }

  /**
   * Tells each part what step is left at its line, and the rest of the room what the parts are now;
   * whether there was anything new to tell.
   */
  private boolean stepped() {
    double room = parts.get(0).level();
    boolean changed = false;
    for (Part part : parts.subList(1, parts.size())) {
      double step = part.level() - room;
      double left = Math.abs(step) > SAME_LEVEL ? step : 0;
      if (!(Math.abs(left - part.told) > SAME_LEVEL)) {
        continue;
      }
      List<Fact> levels = new ArrayList<>();
      if (left != 0) {
        levels.add(step(left));
      }
      double up = left == 0 ? part.makeUp : part.tried;
      if (up > 0) {
        levels.add(toMakeUp(up));
      }
      part.told = left;
      part.assessment = advise(part, levels);
      changed = true;
    }
    if (changed) {
      besides = parts.subList(1, parts.size()).stream().map(part -> part.assessment).toList();
      parts.get(0).assessment = advise(parts.get(0), parts.get(0).makeUp);
    }
    return changed;
  }

  /**
   * Brings the parts to one level, the rest of the room as it is chosen with the parts beside it;
   * whether they come out as they were counted for it.
   */
  private boolean together() {
    for (Part part : parts) {
      part.makeUp = 0;
      part.tried = 0;
      part.assessment = advise(part, 0);
    }
    boolean moved = true;
    for (int round = 0; moved && round < MOST_ROUNDS; round++) {
      moved = raise();
    }
    List<Assessment> counted = besides;
    besides = parts.subList(1, parts.size()).stream().map(part -> part.assessment).toList();
    boolean same = counted.size() == besides.size();
    for (int i = 0; same && i < counted.size(); i++) {
      same = counted.get(i) == besides.get(i);
    }
    return same;
  }

  /** A part made up by so much, mm; what was thought through so already is not again. */
  private Assessment advise(Part part, double makeUp) {
    List<Fact> levels = makeUp > 0 ? List.of(toMakeUp(makeUp)) : List.of();
    return part == parts.get(0)
        ? advise(part, levels)
        : part.madeUp.computeIfAbsent(makeUp, any -> advise(part, levels));
  }

  private Assessment advise(Part part, List<Fact> levels) {
    if (part == parts.get(0)) {
      return advisor.advise(part.floor, levels, besides);
    }
    List<Fact> own = new ArrayList<>(levels);
    own.add(
        Fact.measured(
            EXTENT, "", "part of a room", Double.NaN, "told as a zone of the room", List.of()));
    return advisor.advise(part.floor, own, List.of());
  }

  private static Fact toMakeUp(double mm) {
    return fact(TO_MAKE_UP, mm);
  }

  /** The step at the line, as it is walked from the rest of the room. */
  private static Fact step(double mm) {
    return fact(STEP_LEFT, Texts.of(Math.abs(mm), "mm") + (mm < 0 ? " down" : " up"), mm);
  }

  private static Fact fact(String name, double mm) {
    return fact(name, Texts.of(mm, "mm"), mm);
  }

  private static Fact fact(String name, String text, double mm) {
    return Fact.measured(
        name,
        "",
        text,
        mm,
        "the finished level of this part against the rest of the room",
        List.of());
  }

  /** Makes up what ends lower than the highest; whether anything moved. */
  private boolean raise() {
    double highest =
        parts.stream().mapToDouble(Part::level).filter(one -> !Double.isNaN(one)).max().orElse(0);
    boolean moved = false;
    for (Part part : parts) {
      double lacking = highest - part.level();
      if (!(lacking > SAME_LEVEL)) {
        continue;
      }
      double wanted = part.makeUp + lacking;
      if (Math.abs(wanted - part.tried) < SAME_LEVEL) {
        continue; // it was tried, and rules know no way to make it up
      }
      part.tried = wanted;
      Assessment raised = advise(part, wanted);
      if (raised.chosen().isPresent()) {
        double before = part.level();
        part.assessment = raised;
        if (part.level() > before + SAME_LEVEL) {
          part.makeUp = wanted;
          moved = true;
        }
      }
    }
    return moved;
  }
}
