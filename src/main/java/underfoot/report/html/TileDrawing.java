package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.TileSetOut;
import underfoot.plan.setout.TileSetOut.Piece;
import underfoot.plan.setout.TileSetOut.Reach;
import underfoot.plan.setout.TileSetOut.Strip;
import underfoot.plan.setout.TileSetOut.WallCuts;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/** The tiles in the room, with the lines to start from and the cuts at every wall. */
final class TileDrawing {
  private static final double LETTERS_WIDE = 22;
  private static final double LETTERS_HIGH = 10;

  private final List<double[]> written = new ArrayList<>();
  private final RoomPlan room;
  private final SetOut.Tiles tiles;
  private final Phrases speech;

  TileDrawing(RoomPlan room, SetOut.Tiles tiles, Phrases speech) {
    this.room = room;
    this.tiles = tiles;
    this.speech = speech;
  }

  HtmlWriter draw() {
    TileSetOut out = tiles.layout();
    RoomDrawing plan =
        new RoomDrawing(
            room,
            "tiles",
            speech.say("tile-plan-title"),
            speech.say(
                "tile-plan-described",
                "whole",
                Long.toString(out.whole()),
                "cut",
                Integer.toString(out.cut())),
            8);
    Svg svg = plan.svg();
    MaterialStyle.BED.defineHatch(svg);
    svg.fill(plan.outline(), MaterialStyle.BED.colour(), MaterialStyle.BED.styled());
    StringBuilder whole = new StringBuilder();
    StringBuilder cut = new StringBuilder();
    List<Piece> pieces = out.pieces();
    for (Piece piece : pieces) {
      (piece.whole() ? whole : cut).append(plan.path(piece.rings()));
    }
    svg.fill(whole.toString(), "#fbf9f3", "tile-whole");
    svg.fill(cut.toString(), "#d9cdb4", "tile-cut");
    double thin = pieces.size() > 600 ? 0.3 : 0.6;
    svg.stroke(whole.toString() + cut, Ink.FAINT, thin);
    for (Strip strip : out.movement()) {
      plan.line(strip.x1(), strip.y1(), strip.x2(), strip.y2(), Ink.POUR, 2.2);
    }
    plan.walls();
    start(plan, svg, out);
    double off = Math.max(out.gap(), 11 / plan.scale());
    for (WallCuts wall : out.walls()) {
      if (!wall.sizes().isEmpty() && room.wall(wall.wall()).length() * plan.scale() > 24) {
        double[] at = plan.inside(wall.wall(), off);
        double x = plan.x(at[0]);
        double y = plan.y(at[1]) + 3;
        if (free(x, y)) {
          svg.halo(x, y, Long.toString(wall.sizes().get(0).mm()), 8.5, Anchor.MIDDLE);
        }
      }
    }
    return svg.markup();
  }

  /** Whether a number may be written at a place; the text beside the drawing has them all. */
  private boolean free(double x, double y) {
    for (double[] other : written) {
      if (Math.abs(other[0] - x) < LETTERS_WIDE && Math.abs(other[1] - y) < LETTERS_HIGH) {
        return false;
      }
    }
    written.add(new double[] {x, y});
    return true;
  }

  private void start(RoomDrawing plan, Svg svg, TileSetOut out) {
    String first = plan.path(List.of(out.start().first()));
    svg.fill(first, "#f3c9bd", "tile-first");
    svg.stroke(first, Ink.MARK, 1.6);
    double sx = plan.x(out.start().x());
    double sy = plan.y(out.start().y());
    for (Reach reach : out.start().reaches()) {
      svg.stroke(Svg.path(sx, sy, plan.x(reach.x()), plan.y(reach.y())), Ink.MARK, 1.5, "6 3");
    }
    for (Reach reach : out.start().reaches()) {
      double mx = (sx + plan.x(reach.x())) / 2;
      double my = (sy + plan.y(reach.y())) / 2;
      boolean roomy = Math.hypot(sx - plan.x(reach.x()), sy - plan.y(reach.y())) > LETTERS_WIDE;
      if (roomy && free(mx, my + 3)) {
        svg.halo(mx, my + 3, Long.toString(Math.round(reach.distance())), 9, Anchor.MIDDLE);
      }
    }
    svg.circle(sx, sy, 4, Ink.MARK);
    svg.halo(sx + 7, sy - 6, speech.say("start-mark"), 10, Anchor.START);
  }
}
