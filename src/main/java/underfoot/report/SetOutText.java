package underfoot.report;

import java.util.StringJoiner;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;

/** The set-out in a few lines of text; the page with drawings has all of it. */
final class SetOutText {
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
    page.para(Sentences.tiles(tiles, phrases) + " " + TextReport.ids(tiles.because()));
    page.item(Sentences.startLines(out, phrases));
    TileSetOut.Option chosen = out.chosen();
    String least =
        Double.isInfinite(chosen.least())
            ? phrases.say("whole-tiles")
            : Texts.whole(chosen.least());
    page.item(
        phrases.say(
            "set-out-chosen",
            "start",
            Sentences.start(chosen, phrases),
            "slivers",
            Integer.toString(chosen.slivers()),
            "least",
            least));
    page.item(Sentences.count(tiles, phrases));
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
    page.item(phrases.say("cuts-at-walls", "walls", walls.toString()));
  }

  private void boards(SetOut.Boards boards) {
    BoardPlan plan = boards.plan();
    page.heading(phrases.say("heading-boards"));
    page.para(Sentences.boards(plan, phrases) + " " + TextReport.ids(boards.because()));
    page.item(Sentences.count(plan, phrases));
    if (!boards.deckKnown()) {
      page.item(phrases.say("deck-joints-unknown", "off", Texts.mm(plan.wantedOffDeck())));
    } else if (!boards.firstJointMeasured()) {
      page.item(phrases.say("first-joint-assumed"));
    }
  }
}
