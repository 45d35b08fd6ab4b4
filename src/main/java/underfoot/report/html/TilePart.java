package underfoot.report.html;

import java.util.StringJoiner;
import underfoot.measure.Texts;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.TileSetOut;
import underfoot.plan.setout.TileSetOut.Option;
import underfoot.plan.setout.TileSetOut.Reach;
import underfoot.plan.setout.TileSetOut.WallCuts;

/** The set-out of the tiles: the plan, where to start, the cuts, what was compared. */
final class TilePart {
  private final HtmlWriter out;
  private final PageText speech;
  private final Table table;
  private final RoomPlan room;
  private final SetOut.Tiles tiles;
  private final TileSetOut layout;

  TilePart(HtmlWriter out, PageText speech, RoomPlan room, SetOut.Tiles tiles) {
    this.out = out;
    this.speech = speech;
    this.table = new Table(out, speech);
    this.room = room;
    this.tiles = tiles;
    this.layout = tiles.layout();
  }

  void write() {
    out.element(
        "p",
        speech.say(
            "tiles-intro",
            "pattern",
            speech.say("pattern-" + layout.kind().words().replace(' ', '-')),
            "length",
            PageText.number(layout.length()),
            "width",
            Texts.mm(layout.width()),
            "joint",
            Texts.mm(layout.joint()),
            "gap",
            Texts.mm(layout.gap())));
    if (!tiles.patternWanted().isEmpty() && !tiles.patternWanted().equals(layout.kind().words())) {
      out.element(
          "p",
          speech.say(
              "pattern-changed",
              "wanted",
              tiles.patternWanted(),
              "pattern",
              layout.kind().words()));
    }
    if (tiles.fromDoor() && room.doors().isEmpty()) {
      out.element("p", speech.say("door-place-unknown"), "class", "note care");
    }
    out.open("figure");
    out.add(new TileDrawing(room, tiles, speech).draw());
    out.element("figcaption", speech.say("tile-plan-caption"));
    out.end("figure");
    out.element("h3", speech.say("heading-start"));
    start();
    out.element("h3", speech.say("heading-count"));
    count();
    cuts();
    options();
  }

  private void start() {
    out.open("ol");
    StringJoiner reaches = new StringJoiner("; ");
    for (Reach reach : layout.start().reaches()) {
      reaches.add(
          speech.say(
              "reach",
              "distance",
              PageText.whole(reach.distance()),
              "wall",
              reach.wall() < 0 ? speech.say("a-column") : "W" + reach.wall()));
    }
    out.element("li", speech.say("start-lines", "reaches", reaches.toString()));
    out.element("li", speech.say("start-square"));
    boolean turned = layout.kind().turnDegrees() != 0;
    out.element(
        "li",
        speech.say(
            turned ? "start-tile-turned" : "start-tile",
            "direction",
            direction(),
            "length",
            Texts.mm(layout.length())));
    if (!layout.movement().isEmpty()) {
      out.element(
          "li",
          speech.say(
              "start-movement",
              "count",
              Integer.toString(layout.movement().size()),
              "width",
              Texts.mm(layout.movement().get(0).width())));
    }
    out.element("li", speech.say("start-dry"));
    out.element("li", speech.say("start-reveals"));
    out.end("ol");
  }

  /** The wall that the tiles' length runs along, or the angle it makes with the first. */
  private String direction() {
    double want = layout.direction();
    for (int i = 0; i < room.corners().size(); i++) {
      double[] a = room.corners().get(i);
      double[] b = room.corners().get((i + 1) % room.corners().size());
      double angle = Math.toDegrees(Math.atan2(b[1] - a[1], b[0] - a[0]));
      double off = (angle - want) / 180;
      if (Math.abs(off - Math.rint(off)) * 180 < 0.05) {
        return "W" + i;
      }
    }
    return speech.say("angle-to-first", "angle", Texts.of(Math.rint(want % 180), ""));
  }

  private void count() {
    Option chosen = tiles.layout().chosen();
    out.element(
        "p",
        speech.say(
            "tiles-count",
            "whole",
            Long.toString(layout.whole()),
            "cut",
            Integer.toString(layout.cut()),
            "boxed",
            Integer.toString(layout.boxed()),
            "all",
            Long.toString(layout.tiles()),
            "breakage",
            Texts.of(tiles.breakagePercent(), "%"),
            "order",
            Long.toString(tiles.toOrder())));
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
      double[] a = room.corners().get(wall.wall());
      double[] b = room.corners().get((wall.wall() + 1) % room.corners().size());
      out.open("tr");
      out.open("th", "scope", "row").text("W" + wall.wall());
      for (RoomPlan.Door door : room.doors()) {
        if (door.wall() == wall.wall()) {
          out.text(" ").open("span", "class", "faint").own(door.name()).close("span");
        }
      }
      out.close("th");
      table.number(Texts.metres(Math.hypot(b[0] - a[0], b[1] - a[1])));
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
          PageText.whole(wall.least()),
          "most",
          PageText.whole(wall.most()),
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
    out.element("h3", speech.say("heading-options"));
    out.element(
        "p",
        speech.say(
            layout.every() ? "options-every" : "options-best",
            "tried",
            Long.toString(layout.tried())));
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
    boolean first = true;
    for (Option option : layout.options()) {
      out.open("tr", "class", first ? "chosen" : "");
      out.open("th", "scope", "row");
      out.own(
          speech.say(
              "option-" + option.way().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
              "door",
              option.door()));
      if (option.turned()) {
        out.text(" ").text(speech.say("option-turned"));
      }
      if (first) {
        out.text(" ").element("span", speech.say("chosen"), "class", "tag");
      }
      out.close("th");
      number(option.whole());
      number(option.cut());
      number(option.whole() + option.boxed());
      number(option.narrow());
      number(option.slivers());
      table.number(Double.isInfinite(option.least()) ? "–" : PageText.whole(option.least()));
      table.number(PageText.number(option.points()));
      out.end("tr");
      first = false;
    }
    table.close();
    out.element(
        "p",
        speech.say(
            "options-meaning",
            "share",
            Texts.of(tiles.leastSharePercent(), "%"),
            "sliver",
            Texts.mm(tiles.sliverMm())),
        "class",
        "faint");
  }

  private void number(long number) {
    table.number(Long.toString(number));
  }
}
