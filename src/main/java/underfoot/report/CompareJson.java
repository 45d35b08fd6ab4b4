package underfoot.report;

import java.io.Writer;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Say;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.FloorsCompared;
import underfoot.plan.Refusal;

/** Comparisons and refusals as JSON. */
public final class CompareJson {
  /** The format of two floors, or the ways for one, compared. */
  public static final String COMPARE = "underfoot.compare/1";

  /** The format of why a material is not what is recommended. */
  public static final String WHY_NOT = "underfoot.why-not/1";

  private final JsonGenerator json;
  private final JsonReport report;

  private CompareJson(JsonGenerator json) {
    this.json = json;
    this.report = new JsonReport(json);
  }

  /** Writes two floors compared. */
  public static void write(FloorsCompared compared, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      new CompareJson(json).floors(compared);
    }
  }

  /** Writes the ways for one floor, the recommended one first. */
  public static void write(Advice advice, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      new CompareJson(json).ways(advice);
    }
  }

  /** Writes why a material is not what is recommended. */
  public static void write(Refusal refusal, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      new CompareJson(json).refusal(refusal);
    }
  }

  private void floors(FloorsCompared compared) {
    json.writeStartObject();
    json.writeStringProperty("format", COMPARE);
    floor("a", compared.first());
    floor("b", compared.second());
    report.array(
        "facts",
        compared.facts(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("fact", one.fact());
          json.writeStringProperty("a", one.first());
          json.writeStringProperty("b", one.second());
          json.writeEndObject();
        });
    report.array(
        "decisions",
        compared.decisions(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("decision", one.what());
          report.texts("becauseOf", one.becauseOf());
          json.writeEndObject();
        });
    json.writeEndObject();
  }

  private void floor(String name, FloorsCompared.Floor floor) {
    json.writeName(name);
    json.writeStartObject();
    json.writeStringProperty("scenario", floor.scenario());
    json.writeStringProperty("verdict", floor.verdict().word());
    json.writeName("way");
    if (floor.way().isPresent()) {
      report.way(floor.way().get());
    } else {
      json.writeNull();
    }
    json.writeEndObject();
  }

  private void ways(Advice advice) {
    json.writeStartObject();
    json.writeStringProperty("format", COMPARE);
    json.writeStringProperty("scenario", advice.scenario());
    json.writeStringProperty("verdict", advice.verdict().word());
    List<ComparedBuildUp> ways = CompareReport.ranked(advice);
    report.array("ways", ways, report::way);
    json.writeEndObject();
  }

  private void refusal(Refusal refusal) {
    json.writeStartObject();
    json.writeStringProperty("format", WHY_NOT);
    json.writeStringProperty("scenario", refusal.scenario());
    json.writeStringProperty("material", refusal.asked());
    json.writeStringProperty("standing", refusal.standing());
    json.writeStringProperty("text", refusal.text());
    report.array("reasons", refusal.reasons(), this::reason);
    report.array(
        "failed",
        refusal.failed(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("fact", one.fact());
          json.writeStringProperty("value", one.value());
          json.writeStringProperty("from", one.assumed() ? "assumed" : "scenario");
          json.writeEndObject();
        });
    report.array(
        "smallestChanges",
        refusal.changes(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("text", one.text());
          report.texts("with", one.with());
          json.writeStringProperty("then", one.way());
          json.writeEndObject();
        });
    report.texts("askedForBy", refusal.askedFor());
    json.writeName("way");
    if (refusal.way().isPresent()) {
      report.way(refusal.way().get());
    } else {
      json.writeNull();
    }
    json.writeEndObject();
  }

  private void reason(Say say) {
    json.writeStartObject();
    json.writeStringProperty("text", say.text());
    report.because(say.because());
    json.writeEndObject();
  }
}
