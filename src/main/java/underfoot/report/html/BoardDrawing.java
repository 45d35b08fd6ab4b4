package underfoot.report.html;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import underfoot.knowledge.Phrases;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/** The boards in the room, over the joints of the deck, with their marks and screws. */
final class BoardDrawing {
  private final RoomPlan room;
  private final SetOut.Boards boards;
  private final Phrases speech;

  BoardDrawing(RoomPlan room, SetOut.Boards boards, Phrases speech) {
    this.room = room;
    this.boards = boards;
    this.speech = speech;
  }

  HtmlWriter draw() {
    BoardPlan plan = boards.plan();
    RoomDrawing drawing =
        new RoomDrawing(
            room,
            "boards-" + boards.layer(),
            speech.say("board-plan-title"),
            speech.say(
                "board-plan-described",
                "boards",
                Integer.toString(plan.boards()),
                "pieces",
                Integer.toString(plan.pieces().size()),
                "screws",
                Integer.toString(plan.screws().size())),
            8);
    Svg svg = drawing.svg();
    drawing.floor();
    StringBuilder all = new StringBuilder();
    StringBuilder cut = new StringBuilder();
    for (BoardPlan.Piece piece : plan.pieces()) {
      String path = drawing.path(piece.rings());
      all.append(path);
      if (!whole(piece)) {
        cut.append(path);
      }
    }
    svg.fill(all.toString(), "#eef2f3", "board-whole");
    svg.fill(cut.toString(), "#cdd8dc", "board-cut");
    StringBuilder joints = new StringBuilder();
    for (double[] line : plan.deckJoints()) {
      joints.append(
          Svg.path(drawing.x(line[0]), drawing.y(line[1]), drawing.x(line[2]), drawing.y(line[3])));
    }
    svg.stroke(joints.toString(), Ink.DECK, 0.9, "2 3");
    svg.stroke(all.toString(), Ink.INK, 1.3);
    if (plan.screws().size() <= 4000) {
      StringBuilder dots = new StringBuilder();
      for (double[] screw : plan.screws()) {
        double x = drawing.x(screw[0]);
        double y = drawing.y(screw[1]);
        dots.append(Svg.path(x - 0.9, y, x, y - 0.9, x + 0.9, y, x, y + 0.9)).append('Z');
      }
      svg.fill(dots.toString(), Ink.FAINT);
    }
    for (BoardPlan.Piece piece : plan.pieces()) {
      double[] at = within(piece);
      svg.halo(drawing.x(at[0]), drawing.y(at[1]) + 4, piece.mark(), 11, Anchor.MIDDLE);
    }
    drawing.walls();
    return svg.markup();
  }

  /** A place well within a piece. */
  private static double[] within(BoardPlan.Piece piece) {
    if (!piece.notched()) {
      return new double[] {(piece.x1() + piece.x2()) / 2, (piece.y1() + piece.y2()) / 2};
    }
    double[] xy = piece.rings().get(0).xy();
    Coordinate[] c = new Coordinate[xy.length / 2 + 1];
    for (int i = 0; i < c.length; i++) {
      c[i] = new Coordinate(xy[2 * i % xy.length], xy[(2 * i + 1) % xy.length]);
    }
    Coordinate at = new GeometryFactory().createPolygon(c).getInteriorPoint().getCoordinate();
    return new double[] {at.x, at.y};
  }

  private boolean whole(BoardPlan.Piece piece) {
    return boards.plan().cuts().stream()
        .anyMatch(cut -> cut.whole() && cut.mark().equals(piece.mark()));
  }
}
