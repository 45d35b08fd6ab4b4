package underfoot.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;
import underfoot.working.Result;
import underfoot.working.StraightedgeGap;

/** How flat and how level the floor is, and how deep a levelling compound would come. */
final class LevelMeasure implements Measure {
  private final Surveys surveys;

  LevelMeasure(Surveys surveys) {
    this.surveys = surveys;
  }

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    Facts known = Facts.over(facts);
    Optional<LevelSurvey> survey = surveys.of(scenario);
    // Measures are asked for twice; what readings tell does not change in between.
    boolean near = true;
    if (survey.isPresent() && facts.find("level difference") == null) {
      double step = step(survey.get(), new TracedFacts(figures, facts), found);
      // Between readings wider apart than the straightedge nobody knows what it would find.
      near = step <= figures.get("straightedge-usual-length").number();
      if (near) {
        flatness(survey.get(), new TracedFacts(figures, facts), found);
      }
      levels(survey.get(), figures, facts, found);
    }
    if (survey.isEmpty() || !near) {
      TracedFacts stated = new TracedFacts(figures, facts);
      found.add("flatness gap", stated.fact("stated flatness gap"), "mm", "as stated", stated);
    }
    known.addAll(found.list());
    if (facts.find("pour mean") == null) {
      pours(survey, figures, known, found);
      known.addAll(found.list());
      packing(figures, known, found);
    }
    return found.list();
  }

  private static double step(LevelSurvey survey, TracedFacts basis, MeasuredFacts found) {
    double step = survey.widestStep();
    basis.word("readings");
    found.addAs(
        "step between readings",
        "",
        Texts.metres(step),
        step,
        "the widest step from reading to reading that is needed to reach them all",
        basis);
    return step;
  }

  private static void flatness(LevelSurvey survey, TracedFacts basis, MeasuredFacts found) {
    double edge = basis.figure("straightedge-usual-length");
    basis.word("readings");
    basis.wordIfHeld("outline");
    Flatness flatness = survey.flatness(edge);
    if (flatness.gap() == null) {
      return;
    }
    Flatness.Line gap = flatness.gap();
    found.add(
        "flatness gap",
        gap.values().gapMm(),
        "mm",
        how(gap, edge) + "; " + where(flatness, gap, gap.values().atMm()),
        basis);
    Flatness.Line hump = flatness.hump();
    found.add(
        "hump",
        hump.values().humpMm(),
        "mm",
        how(hump, edge) + "; " + where(flatness, hump, hump.values().humpAtMm()),
        basis);
  }

  private static String how(Flatness.Line line, double edge) {
    Optional<Result> result =
        Worked.with()
            .key("positions", line.positions())
            .key("heights", line.heights())
            .key("edge", edge)
            .run(new StraightedgeGap(edge));
    return result.map(Worked::how).orElse("upper convex hull of the profile under the edge");
  }

  private static String where(Flatness flatness, Flatness.Line line, double at) {
    return "the worst of "
        + flatness.linesTried()
        + (flatness.linesTried() == 1 ? " line" : " lines")
        + ", from "
        + place(line.from())
        + " to "
        + place(line.to())
        + ", at "
        + place(line.at(at));
  }

  private static String place(Coordinate place) {
    return place(place.x, place.y);
  }

  private static String place(double x, double y) {
    return String.format(Locale.ROOT, "(%.2f m, %.2f m)", x / 1000, y / 1000);
  }

  private static void levels(
      LevelSurvey survey, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    basis.word("readings");
    Reading highest = survey.highest();
    Reading lowest = survey.lowest();
    found.add(
        "level difference",
        highest.z() - lowest.z(),
        "mm",
        "highest − lowest reading: "
            + Texts.of(highest.z(), "mm")
            + " at "
            + place(highest.x(), highest.y())
            + " − "
            + Texts.of(lowest.z(), "mm")
            + " at "
            + place(lowest.x(), lowest.y()),
        basis);
    found.addAs(
        "highest point",
        "",
        Texts.of(highest.z(), "mm") + " at " + place(highest.x(), highest.y()),
        highest.z(),
        "the highest of the readings",
        basis);
    survey
        .plane()
        .ifPresent(
            plane ->
                found.add(
                    "tilt",
                    plane.tiltMmPerM(),
                    "mm/m",
                    "plane that fits the readings best: z = "
                        + Texts.of(plane.aMm(), "")
                        + " + ("
                        + Texts.of(plane.bMmPerM(), "")
                        + ")*x + ("
                        + Texts.of(plane.cMmPerM(), "")
                        + ")*y mm, x and y in m; tilt = sqrt(b^2 + c^2)",
                    basis));
  }

  private static void pours(
      Optional<LevelSurvey> survey, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double least = basis.figure("leveller-least-pour");
    boolean level = basis.wordIfHeld("levels wanted").equals("level");
    if (survey.isPresent() && survey.get().plane().isPresent()) {
      basis.word("levels wanted");
      basis.word("readings");
      basis.wordIfHeld("outline");
      if (basis.complete()) {
        survey.get().pour(level, least).ifPresent(pour -> ofReadings(pour, least, basis, found));
      }
      return;
    }
    double most = basis.fact("flatness gap");
    String what = "gap";
    if (level) {
      double out = basis.fact("level difference");
      what = "the greater of gap and level difference";
      most = Math.max(most, out);
    }
    String known = "no surface can be spanned without readings over the floor; ";
    found.add("pour least", least, "mm", known + "the least pour over the highest points", basis);
    found.add(
        "pour mean",
        least + most / 2,
        "mm",
        known
            + "least + half "
            + what
            + ": "
            + Texts.of(least, "")
            + " + "
            + Texts.of(most, "")
            + " / 2",
        basis);
    found.add(
        "pour most",
        least + most,
        "mm",
        known + "least + " + what + ": " + Texts.of(least, "") + " + " + Texts.of(most, ""),
        basis);
  }

  private static void ofReadings(Pour pour, double least, TracedFacts basis, MeasuredFacts found) {
    String surface =
        pour.surface().level()
            ? "level surface at "
                + Texts.of(pour.surface().datumMm(), "mm")
                + " = highest reading + "
                + Texts.of(least, "mm")
            : "surface parallel to the plane that fits best, "
                + Texts.of(least, "mm")
                + " over the reading highest above that plane";
    found.add("pour least", pour.leastMm(), "mm", surface + "; least depth", basis);
    found.add(
        "pour mean",
        pour.meanMm(),
        "mm",
        surface
            + "; volume / area of the triangles: "
            + Texts.of(pour.volumeL(), "L")
            + " / "
            + Texts.of(pour.areaM2(), "m2"),
        basis);
    found.add("pour most", pour.mostMm(), "mm", surface + "; greatest depth", basis);
  }

  /** How high a new deck is packed to lie level or flat: the pour without its least. */
  private static void packing(Figures figures, Facts facts, MeasuredFacts found) {
    for (String which : List.of("least", "mean", "most")) {
      TracedFacts basis = new TracedFacts(figures, facts);
      double least = basis.figure("leveller-least-pour");
      double pour = basis.fact("pour " + which);
      found.add(
          "packing " + which,
          Math.max(0, pour - least),
          "mm",
          "a pour of " + Texts.of(pour, "mm") + " less its least of " + Texts.of(least, "mm"),
          basis);
    }
  }
}
