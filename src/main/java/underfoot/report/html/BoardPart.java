package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeMap;
import underfoot.measure.Texts;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.report.Sentences;

/** The plan of the boards: the drawing, rows, cut list and screws. */
final class BoardPart extends HtmlParts {
  private final RoomPlan room;
  private final SetOut.Boards boards;
  private final BoardPlan plan;

  BoardPart(HtmlParts page, RoomPlan room, SetOut.Boards boards) {
    super(page);
    this.room = room;
    this.boards = boards;
    this.plan = boards.plan();
  }

  void write() {
    out.open("div", "class", "kept").line();
    out.element("h3", boards.name());
    out.element("p", Sentences.boards(plan, speech));
    String caption = speech.say("board-plan-caption");
    Drawings.figure(new BoardDrawing(room, boards, speech).draw(), caption, out);
    out.end("div");
    out.open("ul");
    deck();
    if (!Double.isInfinite(plan.stagger())) {
      say(
          "li",
          plan.stagger() >= plan.wantedStagger() - 0.5 ? "stagger-kept" : "stagger-short",
          "stagger",
          Texts.whole(plan.stagger()),
          "wanted",
          Texts.whole(plan.wantedStagger()));
    }
    if (!room.doors().isEmpty()) {
      out.element(
          "li",
          plan.atDoors() == 0
              ? speech.say("no-joint-at-door")
              : speech.say("joints-at-door", "count", Integer.toString(plan.atDoors())));
    }
    say(
        "li",
        "screws-counted",
        "count",
        Integer.toString(plan.screws().size()),
        "spacing",
        Texts.mm(boards.spacingMm()));
    out.end("ul");
    cutList();
    rows();
  }

  private void deck() {
    if (!boards.deckKnown()) {
      say("li", "deck-joints-unknown", "off", Texts.mm(plan.wantedOffDeck()));
      return;
    }
    if (!boards.firstJointMeasured()) {
      out.element("li", speech.say("first-joint-assumed"), "class", "note care");
    }
    if (!Double.isInfinite(plan.offDeck())) {
      say(
          "li",
          plan.offDeck() >= plan.wantedOffDeck() - 0.5 ? "off-deck-kept" : "off-deck-short",
          "off",
          Texts.whole(plan.offDeck()),
          "wanted",
          Texts.whole(plan.wantedOffDeck()));
    }
  }

  private void cutList() {
    out.element("p", Sentences.count(plan, speech));
    table.open("table-boards", "col-mark", "col-length", "col-width", "col-count", "col-note");
    for (BoardPlan.Cut cut : plan.cuts()) {
      out.open("tr");
      out.element("th", cut.mark(), "scope", "row");
      table.number(Texts.whole(cut.length()));
      table.number(Texts.whole(cut.width()));
      table.number(Integer.toString(cut.count()));
      out.element(
          "td",
          cut.whole() ? speech.say("whole-board") : cut.notched() ? speech.say("notched") : "");
      out.end("tr");
    }
    table.close();
    sketches();
  }

  /** Each notched piece by itself, with what is measured along its sides. */
  private void sketches() {
    int number = 0;
    for (BoardPlan.Cut cut : plan.cuts()) {
      Optional<BoardPlan.Piece> piece =
          plan.pieces().stream().filter(one -> one.mark().equals(cut.mark())).findFirst();
      if (cut.whole() || !cut.notched() || piece.isEmpty()) {
        continue;
      }
      if (number++ == 0) {
        out.open("div", "class", "sketches");
      }
      String id = "piece-" + boards.name().replaceAll("[^A-Za-z0-9]+", "-") + "-" + cut.mark();
      Drawings.figure(
          PieceSketch.draw(piece.get(), id, speech),
          speech.say("piece-title", "mark", cut.mark()),
          out);
    }
    if (number > 0) {
      out.end("div");
      faint("pieces-caption");
    }
  }

  private void rows() {
    TreeMap<Integer, List<BoardPlan.Piece>> byRow = new TreeMap<>();
    for (BoardPlan.Piece piece : plan.pieces()) {
      byRow.computeIfAbsent(piece.row(), row -> new ArrayList<>()).add(piece);
    }
    int along = plan.alongX() ? 0 : 1;
    double origin = room.corners().stream().mapToDouble(c -> c[along]).min().orElse(0);
    double across = room.corners().stream().mapToDouble(c -> c[1 - along]).min().orElse(0);
    say("p", plan.alongX() ? "rows-along-x" : "rows-along-y");
    out.open("ol");
    for (List<BoardPlan.Piece> row : byRow.values()) {
      StringJoiner words = new StringJoiner(", ");
      for (BoardPlan.Piece piece : row) {
        double from = (plan.alongX() ? piece.x1() : piece.y1()) - origin;
        double to = (plan.alongX() ? piece.x2() : piece.y2()) - origin;
        words.add(
            speech.say(
                "row-piece",
                "mark",
                piece.mark(),
                "from",
                Long.toString(Math.round(from)),
                "to",
                Texts.whole(to)));
      }
      double least =
          row.stream().mapToDouble(p -> plan.alongX() ? p.y1() : p.x1()).min().orElse(0) - across;
      double high =
          row.stream().mapToDouble(p -> plan.alongX() ? p.y2() : p.x2()).max().orElse(0) - across;
      say(
          "li",
          "row",
          "from",
          Long.toString(Math.round(least)),
          "to",
          Texts.whole(high),
          "pieces",
          words.toString());
    }
    out.end("ol");
  }
}
