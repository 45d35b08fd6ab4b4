package underfoot.buildup;

import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.measure.Doorway;
import underfoot.measure.LevelSurvey;
import underfoot.measure.MeasuredFacts;
import underfoot.measure.PourSurface;
import underfoot.measure.Surveys;
import underfoot.measure.Texts;
import underfoot.measure.TracedFacts;
import underfoot.scenario.Scenario;

/** What a build-up leaves at the doors. */
final class StackDoors {
  private static final String BESIDE_THE_POUR = "gap left beside the pour";

  private StackDoors() {}

  static List<Fact> of(
      Scenario scenario, Surveys surveys, Stack stack, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    List<String> doors = facts.abouts("door");
    if (doors.isEmpty()) {
      return found.list();
    }
    Optional<LevelSurvey> survey =
        facts.abouts("door wall").isEmpty()
            ? Optional.empty()
            : surveys.of(scenario).filter(one -> one.room().isPresent() && one.plane().isPresent());
    Optional<PourSurface> evened =
        (stack.poured() || stack.packed()) && facts.find("levels wanted") != null
            ? survey.flatMap(
                one ->
                    one.surface(facts.text("levels wanted").equals("level"), least(stack, figures)))
            : Optional.empty();
    boolean asItIs = !stack.poured() && !stack.packed();
    for (String door : doors) {
      Optional<Doorway> doorway =
          survey.isPresent() ? Doorway.of(scenario, survey.get(), facts, door) : Optional.empty();
      double evenly = evenly(stack, facts);
      MeasuredFacts one = new MeasuredFacts();
      if (doorway.isPresent() && (evened.isPresent() || asItIs)) {
        surveyed(doorway.get(), evened, stack.poured(), evenly, door, figures, facts, one);
      } else {
        unsurveyed(door, figures, facts, stack.poured(), stack.falls(), evenly, one);
      }
      Facts known = Facts.over(facts).addAll(one.list());
      trim(door, figures, known, one);
      if (stack.poured() && facts.find("line before the door", door) != null) {
        new Wedge(door, figures, known, one).work(doorway, evened);
      }
      found.list().addAll(one.list());
    }
    PourBeforeDoors.of(scenario, surveys, doors, figures, facts, found);
    return found.list();
  }

  /** How much a compound stands at its least over the highest point; a packed deck lies on it. */
  private static double least(Stack stack, Figures figures) {
    return stack.poured() ? figures.get("leveller-least-pour").number() : 0;
  }

  /** How much the floor rises everywhere alike, the pour or packing left out, mm. */
  private static double evenly(Stack stack, Facts facts) {
    double rise = facts.number("rise most");
    for (StackLayer layer : stack.layers()) {
      if (layer.poured() || layer.packed()) {
        rise -= layer.thickness().max();
      }
    }
    return rise;
  }

  private static void surveyed(
      Doorway doorway,
      Optional<PourSurface> evened,
      boolean poured,
      double evenly,
      String door,
      Figures figures,
      Facts facts,
      MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    for (String name : List.of("readings", "rise most")) {
      basis.use(facts.find(name));
    }
    for (String name : List.of("door wall", "door from", "door width", "opens", "door hinge")) {
      if (facts.find(name, door) != null) {
        basis.use(facts.find(name, door));
      }
    }
    double here = evened.map(doorway::depthInTheOpening).orElse(0.0);
    if (poured && evened.isPresent()) {
      basis.use(facts.find("pour most"));
      found.add(
          "pour at the door",
          door,
          here,
          "mm",
          "poured surface − floor, midway in the opening",
          basis);
    }
    TracedFacts ofGap = copy(basis, figures, facts);
    double gap = ofGap.fact("gap under leaf", door);
    double climb = doorway.climbUnderTheLeaf(evened);
    found.add(
        "gap left",
        door,
        gap - climb - evenly,
        "mm",
        Texts.of(gap, "mm")
            + " gap − "
            + Texts.of(climb, "mm")
            + " that the "
            + (evened.isEmpty() ? "floor" : poured ? "poured surface" : "packed deck")
            + " stands, at its highest under the leaf and its swing, above the floor in the opening"
            + " − "
            + Texts.of(evenly, "mm")
            + " of layers"
            + (facts.find("opens", door) == null
                ? "; which way it opens is not said, so it is taken to open into the room"
                : ""),
        ofGap);
    if (poured && evened.isPresent()) {
      double bare = doorway.climbUnderTheLeaf(Optional.empty());
      found.add(
          BESIDE_THE_POUR,
          door,
          gap - bare - evenly,
          "mm",
          Texts.of(gap, "mm")
              + " gap − "
              + Texts.of(bare, "mm")
              + " that the floor stands, at its highest under the leaf and its swing, above the floor"
              + " in the opening − "
              + Texts.of(evenly, "mm")
              + " of layers without the pour",
          ofGap);
    }
    TracedFacts ofStep = copy(basis, figures, facts);
    double beyond = ofStep.fact("floor beyond", door);
    double rise = here + evenly;
    step(door, rise, beyond, "rise in the opening", ofStep, found);
  }

  private static TracedFacts copy(TracedFacts basis, Figures figures, Facts facts) {
    TracedFacts copy = new TracedFacts(figures, facts);
    basis.uses().forEach(copy::use);
    return copy;
  }

  private static void unsurveyed(
      String door,
      Figures figures,
      Facts facts,
      boolean poured,
      Optional<StackLayer> falls,
      double evenly,
      MeasuredFacts found) {
    TracedFacts ofGap = new TracedFacts(figures, facts);
    double gap = ofGap.fact("gap under leaf", door);
    double most = ofGap.fact("rise most");
    found.add(
        "gap left",
        door,
        gap - most,
        "mm",
        Texts.of(gap, "mm") + " − " + Texts.of(most, "mm") + " rise at the most",
        ofGap);
    if (poured) {
      found.add(
          BESIDE_THE_POUR,
          door,
          gap - evenly,
          "mm",
          Texts.of(gap, "mm") + " − " + Texts.of(evenly, "mm") + " of layers without the pour",
          ofGap);
    }
    TracedFacts ofStep = new TracedFacts(figures, facts);
    double beyond = ofStep.fact("floor beyond", door);
    double rise = ofStep.fact("rise") + aboveMean(falls);
    step(
        door,
        rise,
        beyond,
        falls.isEmpty() ? "rise" : "rise where the falls stand highest",
        ofStep,
        found);
  }

  /** How much higher falls stand at the walls than on average, mm. */
  private static double aboveMean(Optional<StackLayer> falls) {
    return falls.map(one -> one.thickness().max() - one.thickness().mean()).orElse(0.0);
  }

  private static void step(
      String door,
      double rise,
      double beyond,
      String what,
      TracedFacts basis,
      MeasuredFacts found) {
    String worked =
        Texts.of(rise, "mm") + " " + what + " against " + Texts.of(beyond, "mm") + " beyond";
    found.add("step at the door", door, Math.abs(rise - beyond), "mm", worked, basis);
    found.add("height over the floor beyond", door, rise - beyond, "mm", worked, basis);
  }

  /** How much has to come off the leaf; nothing where it clears the floor as it is. */
  private static void trim(String door, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    if (!basis.hasFigure("door-clearance")) {
      return;
    }
    double left = basis.fact("gap left", door);
    double clearance = basis.figure("door-clearance");
    double air = basis.factIfHeld("ventilation gap", door);
    double needed = air > clearance ? air : clearance;
    if (left < needed) {
      found.add(
          "trim needed",
          door,
          needed - left,
          "mm",
          (air > clearance ? "gap for air" : "clearance")
              + " − gap left: "
              + Texts.of(needed, "")
              + " − "
              + Texts.of(left, "mm"),
          basis);
    }
  }
}
