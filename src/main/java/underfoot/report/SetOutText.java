package underfoot.report;

import java.util.Locale;
import java.util.StringJoiner;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;
import underfoot.report.TextPage.Tone;

/** The set-out in a few lines of text; the page with drawings has all of it. */
final class SetOutText {
  private static final String BULLET = " - ";
  private static final String INDENT = "   ";
  private static final int SIZES_TOLD = 3;

  private final Phrases phrases;
  private final TextPage page;

  SetOutText(Phrases phrases, TextPage page) {
    this.phrases = phrases;
    this.page = page;
  }

  void write(SetOut setOut) {
    setOut.tiles().ifPresent(this::tiles);
    if (setOut.tiles().isEmpty() && !setOut.whyNoTiles().isEmpty()) {
      page.heading(phrases.say("heading-tiles"));
      page.para(phrases.say(setOut.whyNoTiles()));
    }
    setOut.boards().forEach(this::boards);
  }

  private void tiles(SetOut.Tiles tiles) {
    TileSetOut out = tiles.layout();
    page.heading(phrases.say("heading-tiles"));
    page.para(
        phrases.say(
                "tiles-intro",
                "pattern",
                phrases.say("pattern-" + out.kind().words().replace(' ', '-')),
                "length",
                Texts.of(out.length(), ""),
                "width",
                Texts.mm(out.width()),
                "joint",
                Texts.mm(out.joint()),
                "gap",
                Texts.mm(out.gap()))
            + " "
            + TextReport.ids(tiles.because()));
    StringJoiner reaches = new StringJoiner("; ");
    for (TileSetOut.Reach reach : out.start().reaches()) {
      reaches.add(
          phrases.say(
              "reach",
              "distance",
              Texts.of(Math.rint(reach.distance()), "mm"),
              "wall",
              reach.wall() < 0 ? phrases.say("a-column") : "W" + reach.wall()));
    }
    item(phrases.say("start-lines", "reaches", reaches.toString()));
    TileSetOut.Option chosen = out.chosen();
    item(
        phrases.say(
            "set-out-chosen",
            "start",
            phrases.say(
                "option-" + chosen.way().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                "door",
                chosen.door()),
            "slivers",
            Integer.toString(chosen.slivers()),
            "least",
            Double.isInfinite(chosen.least())
                ? phrases.say("whole-tiles")
                : Texts.of(Math.rint(chosen.least()), "mm")));
    item(
        phrases.say(
            "tiles-count",
            "whole",
            Long.toString(out.whole()),
            "cut",
            Integer.toString(out.cut()),
            "boxed",
            Integer.toString(out.boxed()),
            "all",
            Long.toString(out.tiles()),
            "breakage",
            Texts.of(tiles.breakagePercent(), "%"),
            "order",
            Long.toString(tiles.toOrder())));
    StringJoiner walls = new StringJoiner("; ");
    for (TileSetOut.WallCuts wall : out.walls()) {
      StringJoiner sizes = new StringJoiner(", ");
      wall.sizes().stream().limit(SIZES_TOLD).forEach(size -> sizes.add(size.mm() + " mm"));
      walls.add(
          "W"
              + wall.wall()
              + " "
              + (wall.sizes().isEmpty() ? phrases.say("whole-tiles") : sizes.toString()));
    }
    item(phrases.say("cuts-at-walls", "walls", walls.toString()));
  }

  private void boards(SetOut.Boards boards) {
    BoardPlan plan = boards.plan();
    page.heading(phrases.say("heading-boards"));
    page.para(
        phrases.say(
                "boards-intro",
                "length",
                Texts.of(plan.length(), ""),
                "width",
                Texts.mm(plan.width()),
                "axis",
                plan.alongX() ? "x" : "y",
                "joint",
                plan.joint() > 0
                    ? phrases.say("board-joint", "joint", Texts.mm(plan.joint()))
                    : phrases.say("board-butted"),
                "gap",
                Texts.mm(plan.gap()))
            + " "
            + TextReport.ids(boards.because()));
    item(
        phrases.say(
            "boards-count",
            "boards",
            Integer.toString(plan.boards()),
            "pieces",
            Integer.toString(plan.pieces().size())));
    if (!boards.deckKnown()) {
      item(phrases.say("deck-joints-unknown", "off", Texts.mm(plan.wantedOffDeck())));
    } else if (!boards.firstJointMeasured()) {
      item(phrases.say("first-joint-assumed"));
    }
  }

  private void item(String words) {
    page.para(BULLET, INDENT, words, Tone.PLAIN);
  }
}
