package underfoot.measure;

import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;
import underfoot.working.CureTime;
import underfoot.working.DewPoint;
import underfoot.working.Evaporation;
import underfoot.working.EvaporationBands;
import underfoot.working.WoodMoisture;

/** What the air and the floor do to fresh adhesive and levelling compound. */
final class ClimateMeasure implements Measure {
  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    evaporation(new TracedFacts(figures, facts), found);
    dewPoint(figures, facts, found);
    curing(figures, facts, found);
    timber(figures, facts, found);
    return found.list();
  }

  private static void evaporation(TracedFacts basis, MeasuredFacts found) {
    Worked keys =
        Worked.with()
            .key("surface", basis.fact("floor temperature"))
            .key("air", basis.fact("air temperature"))
            .key("humidity", basis.fact("air humidity"))
            .key("wind", basis.fact("air speed"));
    EvaporationBands bands =
        new EvaporationBands(
            basis.figure("evaporation-band-1-from"),
            basis.figure("evaporation-band-2-from"),
            basis.figure("evaporation-band-3-from"));
    keys.run(new Evaporation(bands))
        .ifPresent(
            result -> {
              String how = Worked.how(result);
              found.add("evaporation rate", result.value("rate"), "kg/m2h", how, basis);
              found.add("evaporation band", result.value("band"), "", how, basis);
            });
  }

  private static void dewPoint(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    Worked.with()
        .key("temperature", basis.fact("air temperature"))
        .key("humidity", basis.fact("air humidity"))
        .run(new DewPoint())
        .ifPresent(
            result -> {
              double point = result.value("dew-point");
              Fact dew = found.add("dew point", point, "C", Worked.how(result), basis);
              TracedFacts ofMargin = new TracedFacts(figures, facts);
              double floor = ofMargin.fact("floor temperature");
              ofMargin.use(dew);
              found.add(
                  "dew margin",
                  floor - point,
                  "K",
                  "floor temperature − dew point: "
                      + Texts.of(floor, "C")
                      + " − "
                      + Texts.of(point, "C"),
                  ofMargin);
            });
  }

  private static void curing(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    boolean floorKnown = facts.find("floor temperature") != null;
    double temperature = basis.fact(floorKnown ? "floor temperature" : "air temperature");
    Fact working =
        found.add(
            "working temperature",
            temperature,
            "C",
            floorKnown
                ? "the floor's own temperature"
                : "the air's temperature, the floor's being unknown",
            basis);
    if (working == null) {
      return;
    }
    TracedFacts ofRate = new TracedFacts(figures, facts).use(working);
    Worked.with()
        .key("hours", 1)
        .key("reference", ofRate.figure("cure-reference-temperature"))
        .key("temperature", temperature)
        .run(new CureTime(ofRate.figure("cement-least-curing-temperature")))
        .ifPresent(
            result ->
                found.add("cure factor", result.value("rate"), "", Worked.how(result), ofRate));
  }

  /** What timber in the room's air comes to, and how far that is from what it holds now. */
  private static void timber(Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    Worked.with()
        .key("temperature", basis.fact("air temperature"))
        .key("humidity", basis.fact("air humidity"))
        .run(new WoodMoisture())
        .ifPresent(
            result -> {
              double rest = result.value("content");
              Fact settled = found.add("timber equilibrium", rest, "%", Worked.how(result), basis);
              TracedFacts ofChange = new TracedFacts(figures, facts).use(settled);
              double now = ofChange.fact("timber moisture");
              String how =
                  "reading against what this air brings it to: "
                      + Texts.of(now, "%")
                      + " and "
                      + Texts.of(rest, "%");
              found.add("timber drying to come", now - rest, "%", how, ofChange);
              found.add("timber swelling to come", rest - now, "%", how, ofChange);
            });
  }
}
