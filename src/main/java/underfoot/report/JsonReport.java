package underfoot.report;

import java.io.Writer;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import underfoot.buildup.LayerThickness;
import underfoot.knowledge.Figure;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.Ranking;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Advice.Say;
import underfoot.plan.ChangeNote;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.Cost;
import underfoot.plan.FindOut;
import underfoot.plan.Justification;
import underfoot.plan.LevelPlan;
import underfoot.plan.Premise;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.QuantityLine;
import underfoot.plan.Schedule;

/**
 * The advice as JSON, format {@code underfoot.advice/1}. Fields may be added to the format, but
 * none changes its meaning. Within the reasons of one decision a chain that comes again is told
 * once in full; where it comes again it stands without what it rests on and is marked {@code
 * "told":true}.
 */
public final class JsonReport {
  /** The name and version of the format. */
  public static final String FORMAT = "underfoot.advice/1";

  private static final JsonFactory JSON =
      JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  private final JsonGenerator json;
  private final Map<Object, Boolean> told = new IdentityHashMap<>();

  JsonReport(JsonGenerator json) {
    this.json = json;
  }

  /** A generator that writes indented JSON and leaves its writer open. */
  public static JsonGenerator generator(Writer out) {
    return JSON.createGenerator(
        new ObjectWriteContext.Base() {
          @Override
          public tools.jackson.core.PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter(" ", "\n");
            return new DefaultPrettyPrinter().withObjectIndenter(indenter);
          }

          @Override
          public boolean hasPrettyPrinter() {
            return true;
          }
        },
        out);
  }

  /**
   * Writes the advice.
   *
   * @param advice the advice
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @param out where it is written; left open
   */
  public static void write(Advice advice, String version, String ruleBase, Writer out) {
    try (JsonGenerator json = generator(out)) {
      new JsonReport(json).write(advice, Optional.empty(), version, ruleBase);
    }
  }

  /** A generator that writes JSON on one line and leaves its writer open. */
  static JsonGenerator onOneLine(Writer out) {
    return JSON.createGenerator(new ObjectWriteContext.Base() {}, out);
  }

  /** Writes the advice; with the file it is about where there are several. */
  void write(Advice advice, Optional<BatchLine.Origin> origin, String version, String ruleBase) {
    json.writeStartObject();
    json.writeStringProperty("format", FORMAT);
    origin.ifPresent(one -> one.write(json));
    json.writeName("tool");
    json.writeStartObject();
    json.writeStringProperty("version", version);
    json.writeStringProperty("ruleBase", ruleBase);
    json.writeEndObject();
    json.writeStringProperty("scenario", advice.scenario());
    json.writeStringProperty("practice", advice.practice());
    json.writeStringProperty("verdict", advice.verdict().word());
    json.writeStringProperty("summary", advice.summary());
    json.writeStringProperty("base", advice.base());
    json.writeStringProperty("buildUp", advice.way());
    array("halts", advice.stopFindings(), this::stopFinding);
    array("layers", advice.layers(), this::layer);
    json.writeName("coverage");
    if (advice.coverage().isPresent()) {
      json.writeStartObject();
      number("targetPercent", advice.coverage().get().targetPercent());
      says("check", advice.coverage().get().check());
      because(advice.coverage().get());
      json.writeEndObject();
    } else {
      json.writeNull();
    }
    array("remedies", advice.remedies(), this::remedy);
    array("cautions", advice.cautions(), this::caution);
    array("assumptions", advice.assumptions(), this::assumption);
    array("alternatives", advice.alternatives(), this::alternative);
    json.writeName("heights");
    json.writeStartObject();
    thickness("riseMm", advice.heights().rise());
    thickness("aboveOldFloorMm", advice.heights().aboveOldFloor());
    array("doors", advice.heights().doors(), this::door);
    json.writeEndObject();
    number("massKgPerM2", advice.massKgPerM2());
    array("quantities", advice.consequences().quantities(), this::quantity);
    array("programme", advice.consequences().programme(), this::step);
    schedule(advice.consequences().schedule());
    array("ways", advice.consequences().ways(), this::way);
    array("leastChanges", advice.consequences().changes(), this::change);
    json.writeName("cost");
    if (advice.consequences().cost().isPresent()) {
      cost(advice.consequences().cost().get());
    } else {
      json.writeNull();
    }
    if (advice.consequences().levels().isPresent()) {
      levels(advice.consequences().levels().get());
    }
    if (advice.consequences().setOut().isPresent()) {
      json.writeName("setOut");
      new SetOutJson(json, this::because).write(advice.consequences().setOut().get());
    }
    array("ranking", advice.ranking(), this::ranking);
    array("findOutFirst", advice.findOutFirst(), this::findOut);
    json.writeEndObject();
  }

  private void levels(LevelPlan plan) {
    json.writeName("levels");
    json.writeStartObject();
    json.writeName("level");
    json.writeBoolean(plan.level());
    number("datumMm", plan.datumMm());
    number("volumeL", plan.volumeL());
    array(
        "markers",
        plan.markers(),
        marker -> {
          json.writeStartObject();
          number("xMm", marker.xMm());
          number("yMm", marker.yMm());
          number("readingMm", marker.readingMm());
          number("heightMm", marker.heightMm());
          json.writeEndObject();
        });
    json.writeName("because");
    json.writeStartArray();
    plan.because().forEach(this::justification);
    json.writeEndArray();
    json.writeEndObject();
  }

  /** Writes one entry of a list. */
  interface Entry<T> {
    void write(T one);
  }

  <T> void array(String name, List<T> all, Entry<T> entry) {
    json.writeName(name);
    json.writeStartArray();
    for (T one : all) {
      entry.write(one);
    }
    json.writeEndArray();
  }

  private void stopFinding(HaltNote stopFinding) {
    json.writeStartObject();
    json.writeStringProperty("id", stopFinding.id());
    json.writeStringProperty("verdict", stopFinding.verdict().word());
    json.writeStringProperty("title", stopFinding.title());
    json.writeStringProperty("text", stopFinding.text());
    because(stopFinding);
    json.writeEndObject();
  }

  private void layer(Layer layer) {
    json.writeStartObject();
    json.writeStringProperty("id", layer.id());
    json.writeNumberProperty("order", layer.order());
    json.writeStringProperty("name", layer.name());
    json.writeStringProperty("material", layer.material());
    json.writeStringProperty("family", layer.family());
    thickness("thicknessMm", layer.thickness());
    number("levelMm", layer.level());
    array("spec", layer.spec(), say -> json.writeString(say.text()));
    json.writeStringProperty(
        "fixing", String.join(" ", layer.fixing().stream().map(Say::text).toList()));
    if (layer.coveragePercent().isPresent()) {
      number("coveragePercent", layer.coveragePercent().get());
    }
    because(layer);
    json.writeEndObject();
  }

  private void says(String name, List<Say> says) {
    array(name, says, say -> json.writeString(say.text()));
  }

  private void remedy(RemedyNote remedy) {
    json.writeStartObject();
    json.writeStringProperty("id", remedy.id());
    json.writeBooleanProperty("hold", remedy.hold());
    json.writeStringProperty("title", remedy.title());
    json.writeStringProperty("text", remedy.text());
    about(remedy.about());
    because(remedy);
    json.writeEndObject();
  }

  private void caution(CautionNote caution) {
    json.writeStartObject();
    json.writeStringProperty("id", caution.id());
    json.writeStringProperty("severity", caution.severity().word());
    json.writeStringProperty("title", caution.title());
    json.writeStringProperty("text", caution.text());
    caution
        .parts()
        .forEach(
            (name, part) -> {
              if (!name.equals("text")) {
                json.writeStringProperty(name, part);
              }
            });
    about(caution.about());
    because(caution);
    json.writeEndObject();
  }

  private void about(String about) {
    if (!about.isEmpty()) {
      json.writeStringProperty("about", about);
    }
  }

  private void assumption(Assumption one) {
    json.writeStartObject();
    json.writeStringProperty("fact", one.fact());
    json.writeStringProperty("assumed", one.assumed());
    json.writeStringProperty("findOut", one.look());
    array("wouldChange", one.wouldChange(), json::writeString);
    because(one);
    json.writeEndObject();
  }

  private void findOut(FindOut one) {
    json.writeStartObject();
    json.writeStringProperty("fact", one.fact());
    json.writeStringProperty("ask", one.ask());
    json.writeStringProperty("look", one.look());
    json.writeStringProperty("stage", one.pass());
    json.writeNumberProperty("rank", one.rank());
    array("decisions", one.decisions(), json::writeString);
    json.writeEndObject();
  }

  private void alternative(Alternative one) {
    json.writeStartObject();
    json.writeStringProperty("id", one.id());
    json.writeStringProperty("standing", one.standing().word());
    json.writeStringProperty(
        "kind", one.standing() == Advice.Standing.SUGGESTION ? "suggestion" : "build-up");
    json.writeStringProperty("title", one.title());
    json.writeStringProperty("text", one.text());
    because(one);
    json.writeEndObject();
  }

  void door(Door door) {
    json.writeStartObject();
    json.writeStringProperty("name", door.name());
    number("gapLeftMm", door.gapLeftMm());
    json.writeName("fits");
    if (door.fits().isPresent()) {
      json.writeBoolean(door.fits().get());
    } else {
      json.writeNull();
    }
    number("stepMm", door.stepMm());
    json.writeEndObject();
  }

  private void quantity(QuantityLine line) {
    json.writeStartObject();
    json.writeStringProperty("item", line.item());
    number("amount", line.amount());
    json.writeStringProperty("unit", line.unit());
    json.writeNumberProperty("packs", line.packs());
    because(line.because());
    json.writeEndObject();
  }

  private void step(ProgrammeStep step) {
    json.writeStartObject();
    json.writeStringProperty("id", step.id());
    json.writeStringProperty("step", step.step());
    number("startHour", step.startHour());
    number("hours", step.hours());
    number("endHour", step.endHour());
    json.writeStringProperty("kind", step.kind().word());
    step.begins().ifPresent(on -> json.writeStringProperty("begins", on.toString()));
    step.ends().ifPresent(on -> json.writeStringProperty("ends", on.toString()));
    json.writeBooleanProperty("critical", step.critical());
    because(step);
    json.writeEndObject();
  }

  private void schedule(Schedule schedule) {
    json.writeName("schedule");
    json.writeStartObject();
    number("workHours", schedule.workHours());
    number("inUseAfterHours", schedule.inUseAfterHours());
    array(
        "milestones",
        schedule.milestones(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("what", one.what());
          json.writeStringProperty("step", one.step());
          number("hour", one.hour());
          one.on().ifPresent(on -> json.writeStringProperty("on", on.toString()));
          json.writeEndObject();
        });
    json.writeEndObject();
  }

  private void change(ChangeNote change) {
    json.writeStartObject();
    json.writeStringProperty("text", change.text());
    texts("with", change.with());
    json.writeStringProperty("verdict", change.verdict().word());
    json.writeName("way");
    way(change.numbers());
    json.writeEndObject();
  }

  void way(ComparedBuildUp way) {
    json.writeStartObject();
    json.writeStringProperty("id", way.id());
    json.writeStringProperty("title", way.title());
    json.writeStringProperty("standing", way.standing().word());
    array(
        "layers",
        way.layers(),
        layer -> {
          json.writeStartObject();
          json.writeStringProperty("id", layer.id());
          json.writeStringProperty("name", layer.name());
          thickness("thicknessMm", layer.thickness());
          json.writeEndObject();
        });
    thickness("aboveOldFloorMm", way.aboveOldFloor());
    array("doors", way.doors(), this::door);
    number("massKgPerM2", way.massKgPerM2());
    number("joistRatio", way.joistRatio());
    number("deckRatio", way.deckRatio());
    json.writeName("cost");
    if (way.cost().isPresent()) {
      cost(way.cost().get());
    } else {
      json.writeNull();
    }
    number("workHours", way.workHours());
    number("inUseAfterHours", way.inUseAfterHours());
    way.inUse().ifPresent(on -> json.writeStringProperty("inUse", on.toString()));
    json.writeStringProperty("disturbance", way.disturbance());
    texts("first", way.first());
    texts("risks", way.risks());
    texts("against", way.against());
    texts("gains", way.gains());
    texts("givesUp", way.givesUp());
    texts("rules", way.because().stream().map(one -> one.rule().id()).toList());
    json.writeEndObject();
  }

  void texts(String name, List<String> texts) {
    json.writeName(name);
    json.writeStartArray();
    texts.forEach(json::writeString);
    json.writeEndArray();
  }

  private void cost(Cost cost) {
    json.writeStartObject();
    number("total", cost.total());
    number("contingency", cost.contingency());
    number("atLeast", cost.atLeast());
    texts("unpriced", cost.unpriced());
    json.writeStringProperty("currency", cost.currency());
    json.writeBooleanProperty("invented", cost.invented());
    array(
        "lines",
        cost.lines(),
        line -> {
          json.writeStartObject();
          json.writeStringProperty("item", line.item());
          number("cost", line.cost());
          json.writeEndObject();
        });
    json.writeEndObject();
  }

  private void ranking(Ranking one) {
    json.writeStartObject();
    json.writeStringProperty("id", one.id());
    json.writeNumberProperty("order", one.order());
    json.writeStringProperty("criterion", one.name());
    because(one);
    json.writeEndObject();
  }

  // --- justifications

  private void because(Decision decision) {
    because(decision.because());
  }

  void because(List<Justification> because) {
    told.clear();
    array("because", because, this::justification);
  }

  private void justification(Justification one) {
    boolean again = told.put(one, true) != null;
    json.writeStartObject();
    json.writeStringProperty("rule", one.rule().id());
    json.writeStringProperty("reason", one.rule().reason());
    json.writeStringProperty("source", one.source().title());
    json.writeStringProperty("sourceStatus", one.source().status());
    array("facts", one.facts(), this::premise);
    array("figures", one.figures(), this::figure);
    if (again && !one.restsOn().isEmpty()) {
      json.writeBooleanProperty("told", true);
      array("rests-on", List.<Justification>of(), this::justification);
    } else {
      array("rests-on", one.restsOn(), this::justification);
    }
    json.writeEndObject();
  }

  private void premise(Premise premise) {
    json.writeStartObject();
    json.writeStringProperty("fact", premise.fact());
    json.writeStringProperty("value", premise.value());
    json.writeStringProperty("from", premise.from().word());
    if (premise.line() > 0) {
      json.writeNumberProperty("line", premise.line());
    }
    if (!premise.how().isEmpty()) {
      json.writeStringProperty("how", premise.how());
    }
    if (!premise.uses().isEmpty() && told.put(premise, true) == null) {
      array("uses", premise.uses(), this::premise);
    }
    json.writeEndObject();
  }

  void figure(Figure figure) {
    json.writeStartObject();
    json.writeStringProperty("figure", figure.name());
    number("value", figure.value());
    json.writeStringProperty("unit", figure.unit());
    json.writeEndObject();
  }

  void thickness(String name, LayerThickness thickness) {
    json.writeName(name);
    json.writeStartObject();
    number("min", thickness.min());
    number("mean", thickness.mean());
    number("max", thickness.max());
    json.writeEndObject();
  }

  /** A number to six decimals, whole ones without a point; null if there is none. */
  void number(String name, double value) {
    json.writeName(name);
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      json.writeNull();
      return;
    }
    double rounded = Math.round(value * 1e6) / 1e6;
    if (rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15) {
      json.writeNumber((long) rounded);
    } else {
      json.writeNumber(rounded);
    }
  }
}
