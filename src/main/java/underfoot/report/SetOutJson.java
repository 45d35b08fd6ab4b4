package underfoot.report;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import underfoot.plan.Justification;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;

/**
 * The set-out as JSON: where to start, the cuts at every wall, the ways of starting compared, the
 * boards. Every tile by itself would be long and says nothing that these do not.
 */
final class SetOutJson {
  private final JsonGenerator json;
  private final Consumer<List<Justification>> because;

  SetOutJson(JsonGenerator json, Consumer<List<Justification>> because) {
    this.json = json;
    this.because = because;
  }

  void write(SetOut setOut) {
    json.writeStartObject();
    json.writeName("tiles");
    if (setOut.tiles().isPresent()) {
      tiles(setOut.tiles().get());
    } else {
      json.writeNull();
      json.writeStringProperty("whyNoTiles", setOut.whyNoTiles());
    }
    json.writeName("boards");
    json.writeStartArray();
    setOut.boards().forEach(this::boards);
    json.writeEndArray();
    json.writeEndObject();
  }

  private void tiles(SetOut.Tiles tiles) {
    TileSetOut out = tiles.layout();
    json.writeStartObject();
    json.writeStringProperty("pattern", out.kind().words());
    number("lengthMm", out.length());
    number("widthMm", out.width());
    number("jointMm", out.joint());
    number("edgeGapMm", out.gap());
    number("directionDegrees", out.direction());
    json.writeNumberProperty("whole", out.whole());
    json.writeNumberProperty("cut", out.cut());
    json.writeNumberProperty("tiles", out.tiles());
    number("breakagePercent", tiles.breakagePercent());
    json.writeNumberProperty("toOrder", tiles.toOrder());
    json.writeName("start");
    json.writeStartObject();
    number("xMm", out.start().x());
    number("yMm", out.start().y());
    json.writeName("toWalls");
    json.writeStartArray();
    for (TileSetOut.Reach reach : out.start().reaches()) {
      json.writeStartObject();
      json.writeNumberProperty("wall", reach.wall());
      number("mm", reach.distance());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeName("walls");
    json.writeStartArray();
    for (TileSetOut.WallCuts wall : out.walls()) {
      json.writeStartObject();
      json.writeNumberProperty("wall", wall.wall());
      json.writeName("cuts");
      json.writeStartArray();
      for (TileSetOut.Size size : wall.sizes()) {
        json.writeStartObject();
        json.writeNumberProperty("mm", size.mm());
        json.writeNumberProperty("pieces", size.count());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeName("movementJoints");
    json.writeStartArray();
    for (TileSetOut.Strip strip : out.movement()) {
      json.writeStartObject();
      number("x1Mm", strip.x1());
      number("y1Mm", strip.y1());
      number("x2Mm", strip.x2());
      number("y2Mm", strip.y2());
      number("widthMm", strip.width());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeName("compared");
    json.writeStartArray();
    boolean chosen = true;
    for (TileSetOut.Option option : out.options()) {
      option(option, chosen);
      chosen = false;
    }
    json.writeEndArray();
    json.writeNumberProperty("startsTried", out.tried());
    json.writeBooleanProperty("noneBetter", out.every());
    because.accept(tiles.because());
    json.writeEndObject();
  }

  private void option(TileSetOut.Option option, boolean chosen) {
    json.writeStartObject();
    json.writeStringProperty(
        "start", option.way().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    if (!option.door().isEmpty()) {
      json.writeStringProperty("door", option.door());
    }
    json.writeBooleanProperty("chosen", chosen);
    json.writeBooleanProperty("lengthAcrossRoom", option.turned());
    json.writeNumberProperty("whole", option.whole());
    json.writeNumberProperty("cut", option.cut());
    json.writeNumberProperty("tiles", option.whole() + option.boxed());
    json.writeNumberProperty("narrow", option.narrow());
    json.writeNumberProperty("slivers", option.slivers());
    number("leastCutMm", option.least());
    json.writeNumberProperty("offCentre", option.offCentre());
    number("points", option.points());
    json.writeEndObject();
  }

  private void boards(SetOut.Boards boards) {
    BoardPlan plan = boards.plan();
    json.writeStartObject();
    json.writeStringProperty("layer", boards.layer());
    number("lengthMm", plan.length());
    number("widthMm", plan.width());
    number("jointMm", plan.joint());
    number("wallGapMm", plan.gap());
    json.writeStringProperty("along", plan.alongX() ? "x" : "y");
    json.writeNumberProperty("boards", plan.boards());
    json.writeNumberProperty("screws", plan.screws().size());
    json.writeBooleanProperty("deckJointsKnown", boards.deckKnown());
    json.writeBooleanProperty("firstJointMeasured", boards.firstJointMeasured());
    number("offDeckJointsMm", plan.offDeck());
    number("staggerMm", plan.stagger());
    json.writeNumberProperty("jointsInDoorways", plan.atDoors());
    json.writeName("cutList");
    json.writeStartArray();
    for (BoardPlan.Cut cut : plan.cuts()) {
      json.writeStartObject();
      json.writeStringProperty("mark", cut.mark());
      number("lengthMm", cut.length());
      number("widthMm", cut.width());
      json.writeNumberProperty("pieces", cut.count());
      json.writeBooleanProperty("notched", cut.notched());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeName("pieces");
    json.writeStartArray();
    for (BoardPlan.Piece piece : plan.pieces()) {
      json.writeStartObject();
      json.writeNumberProperty("row", piece.row());
      json.writeStringProperty("mark", piece.mark());
      number("x1Mm", piece.x1());
      number("y1Mm", piece.y1());
      number("x2Mm", piece.x2());
      number("y2Mm", piece.y2());
      json.writeEndObject();
    }
    json.writeEndArray();
    because.accept(boards.because());
    json.writeEndObject();
  }

  /** A number to a hundredth, whole ones without a point; null if there is none. */
  private void number(String name, double value) {
    json.writeName(name);
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      json.writeNull();
      return;
    }
    double rounded = Math.round(value * 100) / 100.0;
    if (rounded == Math.rint(rounded)) {
      json.writeNumber((long) rounded);
    } else {
      json.writeNumber(rounded);
    }
  }
}
