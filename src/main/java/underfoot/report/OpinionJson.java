package underfoot.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Opinion;

/** What is said of a proposal as JSON, format {@code underfoot.check/1}; fields may be added. */
public final class OpinionJson {
  /** The name and version of the format. */
  public static final String FORMAT = "underfoot.check/1";

  private final JsonGenerator json;
  private final JsonReport parts;

  private OpinionJson(JsonGenerator json) {
    this.json = json;
    this.parts = new JsonReport(json);
  }

  /**
   * Writes it.
   *
   * @param opinion what is said of the proposal
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @param out where it is written; left open
   */
  public static void write(Opinion opinion, String version, String ruleBase, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      new OpinionJson(json).write(opinion, version, ruleBase);
    }
  }

  private void write(Opinion opinion, String version, String ruleBase) {
    json.writeStartObject();
    json.writeStringProperty("format", FORMAT);
    json.writeName("tool");
    json.writeStartObject();
    json.writeStringProperty("version", version);
    json.writeStringProperty("ruleBase", ruleBase);
    json.writeEndObject();
    json.writeStringProperty("scenario", opinion.scenario());
    json.writeStringProperty("proposal", opinion.proposal());
    json.writeNumberProperty("faults", opinion.faults());
    json.writeStringProperty("floorVerdict", opinion.verdict().word());
    json.writeStringProperty("buildUp", opinion.way());
    json.writeBooleanProperty("recommendedWay", opinion.isRecommended());
    parts.array("layers", opinion.layers(), this::layer);
    List<Opinion.Item> all = new ArrayList<>();
    opinion.layers().forEach(layer -> all.addAll(layer.items()));
    all.addAll(opinion.whole());
    parts.array("findings", all, this::item);
    parts.array("putRightFirst", opinion.remedies(), this::remedy);
    json.writeName("heights");
    if (opinion.heights().isPresent()) {
      json.writeStartObject();
      parts.thickness("riseMm", opinion.heights().get().rise());
      parts.thickness("aboveOldFloorMm", opinion.heights().get().aboveOldFloor());
      parts.array("doors", opinion.heights().get().doors(), parts::door);
      json.writeEndObject();
    } else {
      json.writeNull();
    }
    parts.number("massKgPerM2", opinion.massKgPerM2());
    parts.array(
        "stiffness",
        opinion.stiffness(),
        one -> {
          json.writeStartObject();
          json.writeStringProperty("measure", one.name());
          parts.number("value", one.value());
          json.writeEndObject();
        });
    json.writeEndObject();
  }

  private void layer(Opinion.Layer layer) {
    json.writeStartObject();
    json.writeNumberProperty("order", layer.order());
    json.writeStringProperty("layer", layer.label());
    json.writeStringProperty("kind", layer.kind());
    json.writeStringProperty("id", layer.part());
    json.writeStringProperty("asked", layer.asked());
    json.writeStringProperty("judgement", layer.judgement().word());
    parts.thickness("thicknessMm", layer.thickness());
    json.writeStringProperty("thicknessSaid", layer.said());
    json.writeEndObject();
  }

  private void item(Opinion.Item item) {
    json.writeStartObject();
    json.writeStringProperty("id", item.id());
    json.writeStringProperty("judgement", item.judgement().word());
    json.writeBooleanProperty("fault", item.judgement().isFault());
    json.writeStringProperty("layer", item.layer());
    json.writeStringProperty("text", item.text());
    json.writeStringProperty("consequence", item.consequence());
    json.writeStringProperty("remedy", item.remedy());
    parts.because(item.because());
    json.writeEndObject();
  }

  private void remedy(RemedyNote remedy) {
    json.writeStartObject();
    json.writeStringProperty("id", remedy.id());
    json.writeBooleanProperty("hold", remedy.hold());
    json.writeStringProperty("text", remedy.text());
    parts.because(remedy.because());
    json.writeEndObject();
  }
}
