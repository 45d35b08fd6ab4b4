package underfoot.report.html;

import java.util.StringJoiner;
import underfoot.measure.Texts;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.TileSetOut;
import underfoot.plan.setout.TileSetOut.Compared;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.WallCuts;
import underfoot.report.Sentences;

/** The set-out of the tiles: the plan, where to start, the cuts, what was compared. */
final class TilePart extends HtmlParts {
  private final RoomPlan room;
  private final SetOut.Tiles tiles;
  private final TileSetOut layout;

  TilePart(HtmlParts page, RoomPlan room, SetOut.Tiles tiles) {
    super(page);
    this.room = room;
    this.tiles = tiles;
    this.layout = tiles.layout();
  }

  void write() {
    out.open("div", "class", "kept").line();
    out.element("p", Sentences.tiles(tiles, speech));
    if (!tiles.patternWanted().isEmpty() && !tiles.patternWanted().equals(layout.kind().words())) {
      say(
          "p",
          "pattern-changed",
          "wanted",
          tiles.patternWanted(),
          "pattern",
          layout.kind().words());
    }
    if (tiles.fromDoor() && room.doors().isEmpty()) {
      out.element("p", speech.say("door-place-unknown"), "class", "note care");
    }
    String caption = speech.say("tile-plan-caption");
    Drawings.figure(new TileDrawing(room, tiles, speech).draw(), caption, out);
    out.end("div");
    say("h3", "heading-start");
    start();
    say("h3", "heading-count");
    count();
    cuts();
    options();
  }

  private void start() {
    out.open("ol");
    out.element("li", Sentences.startLines(layout, speech));
    say("li", "start-square");
    boolean turned = layout.kind().turnDegrees() != 0;
    say(
        "li",
        turned ? "start-tile-turned" : "start-tile",
        "direction",
        direction(),
        "length",
        Texts.mm(layout.length()));
    if (!layout.movement().isEmpty()) {
      say(
          "li",
          "start-movement",
          "count",
          Integer.toString(layout.movement().size()),
          "width",
          Texts.mm(layout.movement().get(0).width()));
    }
    say("li", "start-dry");
    say("li", "start-reveals");
    out.end("ol");
  }

  /** The wall that the tiles' length runs along, or the angle it makes with the first. */
  private String direction() {
    double want = layout.direction();
    for (int i = 0; i < room.corners().size(); i++) {
      double off = (room.wall(i).degrees() - want) / 180;
      if (Math.abs(off - Math.rint(off)) * 180 < 0.05) {
        return "W" + i;
      }
    }
    return speech.say("angle-to-first", "angle", Texts.of(Math.rint(want % 180), ""));
  }

  private void count() {
    Option chosen = tiles.layout().chosen();
    out.element("p", Sentences.count(tiles, speech));
    if (chosen.slivers() > 0) {
      out.element(
          "p",
          speech.say(
              "slivers-left",
              "count",
              Integer.toString(chosen.slivers()),
              "width",
              Texts.mm(tiles.sliverMm())),
          "class",
          "note care");
    }
  }

  private void cuts() {
    table.open("table-cuts", "col-wall", "col-wall-length", "col-cuts");
    for (WallCuts wall : layout.walls()) {
      out.open("tr");
      out.open("th", "scope", "row").text("W" + wall.wall());
      for (RoomPlan.Door door : room.doors()) {
        if (door.wall() == wall.wall()) {
          out.text(" ").open("span", "class", "faint").own(door.name()).close("span");
        }
      }
      out.close("th");
      table.number(Texts.metres(room.wall(wall.wall()).length()));
      out.element("td", sizes(wall));
      out.end("tr");
    }
    table.close();
  }

  private String sizes(WallCuts wall) {
    if (wall.sizes().isEmpty()) {
      return speech.say("whole-tiles");
    }
    if (wall.sizes().size() > 5) {
      return speech.say(
          "cuts-range",
          "least",
          Texts.whole(wall.least()),
          "most",
          Texts.whole(wall.most()),
          "count",
          Integer.toString(wall.sizes().stream().mapToInt(TileSetOut.Size::count).sum()));
    }
    StringJoiner sizes = new StringJoiner(", ");
    for (TileSetOut.Size size : wall.sizes()) {
      sizes.add(
          speech.say(
              "cut-size", "size", size.mm() + " mm", "count", Integer.toString(size.count())));
    }
    return sizes.toString();
  }

  private void options() {
    say("h3", "heading-options");
    say(
        "p",
        layout.every() ? "options-every" : "options-best",
        "tried",
        Long.toString(layout.tried()));
    table.open(
        "table-options",
        "col-option",
        "col-whole",
        "col-cut",
        "col-tiles",
        "col-narrow",
        "col-slivers",
        "col-least",
        "col-points");
    for (Compared one : layout.compared()) {
      Option option = one.option();
      out.open("tr", "class", one.chosen() ? "chosen" : "");
      out.open("th", "scope", "row");
      out.own(Sentences.start(option, speech));
      if (option.turned()) {
        out.text(" ").text(speech.say("option-turned"));
      }
      if (one.chosen()) {
        out.text(" ").element("span", speech.say("chosen"), "class", "tag");
      }
      out.close("th");
      number(option.whole());
      number(option.cut());
      number(option.tiles());
      number(option.narrow());
      number(option.slivers());
      table.number(Double.isInfinite(option.least()) ? "–" : Texts.whole(option.least()));
      table.number(Texts.tenths(option.points()));
      out.end("tr");
    }
    table.close();
    faint(
        "options-meaning",
        "share",
        Texts.of(tiles.leastSharePercent(), "%"),
        "sliver",
        Texts.mm(tiles.sliverMm()));
  }

  private void number(long number) {
    table.number(Long.toString(number));
  }
}
