package underfoot.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.BayLimits;
import underfoot.working.MovementBays;
import underfoot.working.Result;

/** The room's area, perimeter and runs, and the bays that movement joints cut it into. */
final class RoomMeasure implements Measure {
  private final Surveys surveys;

  RoomMeasure(Surveys surveys) {
    this.surveys = surveys;
  }

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    Optional<RoomShape> shape = RoomShape.of(scenario);
    if (shape.isPresent()) {
      ofShape(shape.get(), zones(scenario), new TracedFacts(figures, facts), found);
    } else {
      ofStated(figures, facts, found);
    }
    Facts known = Facts.over(facts).addAll(found.list());
    bays(scenario, shape, figures, known, found);
    return found.list();
  }

  /** The area of the parts of a room where the floor is otherwise, m2. */
  private static double zones(Scenario scenario) {
    return scenario.zones().stream()
        .mapToDouble(zone -> RoomShape.of(zone.floor()).map(RoomShape::areaM2).orElse(0.0))
        .sum();
  }

  private static void ofShape(
      RoomShape shape, double zones, TracedFacts basis, MeasuredFacts found) {
    String corners = basis.word("outline");
    double area = shape.areaM2() - zones;
    found.add(
        "area",
        area,
        "m2",
        "area of the outline, "
            + corners
            + (zones > 0 ? ", less the parts that are otherwise" : ""),
        basis);
    if (zones > 0) {
      found.add("area of the zones", zones, "m2", "areas of the parts that are otherwise", basis);
    }
    double perimeter = shape.perimeterMm();
    found.addAs(
        "perimeter",
        "",
        Texts.metres(perimeter),
        perimeter,
        "length of all walls of the outline",
        basis);
    String sides =
        "the smallest rectangle about the outline is "
            + Texts.metres(shape.longestRunMm())
            + " by "
            + Texts.metres(shape.shortestRunMm());
    found.addAs(
        "longest run", "", Texts.metres(shape.longestRunMm()), shape.longestRunMm(), sides, basis);
    found.addAs(
        "shortest run",
        "",
        Texts.metres(shape.shortestRunMm()),
        shape.shortestRunMm(),
        sides,
        basis);
  }

  private static void ofStated(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts ofArea = new TracedFacts(figures, facts);
    double area = ofArea.fact("stated area");
    found.add("area", area, "m2", "as stated", ofArea);
    TracedFacts ofRun = new TracedFacts(figures, facts);
    double run = ofRun.fact("stated longest side");
    found.addAs("longest run", "", Texts.metres(run), run, "as stated", ofRun);
    TracedFacts ofBoth = new TracedFacts(figures, facts);
    double other = ofBoth.fact("stated area") * 1e6 / ofBoth.fact("stated longest side");
    String how =
        "area / longest side, as for a rectangle: "
            + Texts.of(area, "m2")
            + " / "
            + Texts.metres(run);
    found.addAs("shortest run", "", Texts.metres(other), other, how, ofBoth);
  }

  private void bays(
      Scenario scenario,
      Optional<RoomShape> shape,
      Figures figures,
      Facts facts,
      MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double length = basis.fact("longest run");
    double width = basis.fact("shortest run");
    String heated = basis.word("heated");
    if (!basis.complete()) {
      return;
    }
    boolean warm = heated.equals("yes");
    BayLimits limits =
        warm
            ? new BayLimits(
                basis.figure("bay-heated-longest-side") / 1000,
                OptionalDouble.of(basis.figure("bay-heated-largest-area")))
            : new BayLimits(
                basis.figure("bay-unheated-longest-side") / 1000, OptionalDouble.empty());
    Optional<Result> result =
        Worked.with()
            .key("length", length)
            .key("width", width)
            .key("heated", warm ? "yes" : "no")
            .run(new MovementBays(limits, limits));
    if (result.isEmpty()) {
      return;
    }
    long along = (long) result.get().value("along");
    long across = (long) result.get().value("across");
    String how = Worked.how(result.get());
    long bays = along * across;
    if (shape.isPresent() && bays > 1) {
      long held = surveys.baysWithFloor(scenario.outline(), shape.get(), along, across);
      if (held < bays) {
        how += "; " + held + " of these " + bays + " bays hold floor";
        bays = held;
      }
    }
    found.add("bays", bays, "", how, basis);
    double bay = Math.max(length / along, width / across);
    found.addAs("bay length", "", Texts.metres(bay), bay, how, basis);
  }
}
