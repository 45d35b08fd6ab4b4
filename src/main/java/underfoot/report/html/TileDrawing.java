package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.plan.setout.TileSetOut;
import underfoot.plan.setout.TileSetOut.Piece;
import underfoot.plan.setout.TileSetOut.Reach;
import underfoot.plan.setout.TileSetOut.Strip;
import underfoot.plan.setout.TileSetOut.WallCuts;
import underfoot.report.html.Svg.Anchor;

/** The tiles in the room, with the lines to start from and the cuts at every wall. */
final class TileDrawing {
  private static final double LETTERS_WIDE = 22;
  private static final double LETTERS_HIGH = 10;

  private final List<double[]> written = new ArrayList<>();
  private final RoomPlan room;
  private final SetOut.Tiles tiles;
  private final PageText speech;

  TileDrawing(RoomPlan room, SetOut.Tiles tiles, PageText speech) {
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
    MaterialStyle.BED.defineHatch(svg, svg.id());
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
    svg.stroke(whole.toString() + cut, MaterialStyle.FAINT, thin, "", "s-faint");
    for (Strip strip : out.movement()) {
      svg.line(
          plan.x(strip.x1()),
          plan.y(strip.y1()),
          plan.x(strip.x2()),
          plan.y(strip.y2()),
          MaterialStyle.POUR,
          2.2,
          "s-pour");
    }
    plan.walls();
    start(plan, svg, out);
    double off = Math.max(out.gap(), 11 / plan.scale());
    for (WallCuts wall : out.walls()) {
      if (!wall.sizes().isEmpty() && length(wall.wall()) * plan.scale() > 24) {
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

  private double length(int wall) {
    double[] a = room.corners().get(wall);
    double[] b = room.corners().get((wall + 1) % room.corners().size());
    return Math.hypot(b[0] - a[0], b[1] - a[1]);
  }

  private void start(RoomDrawing plan, Svg svg, TileSetOut out) {
    String first = plan.path(List.of(out.start().first()));
    svg.fill(first, "#f3c9bd", "tile-first");
    svg.stroke(first, MaterialStyle.MARK, 1.6, "", "s-mark");
    double sx = plan.x(out.start().x());
    double sy = plan.y(out.start().y());
    for (Reach reach : out.start().reaches()) {
      svg.stroke(
          Svg.move(sx, sy) + Svg.lineTo(plan.x(reach.x()), plan.y(reach.y())),
          MaterialStyle.MARK,
          1.5,
          "6 3",
          "s-mark");
    }
    for (Reach reach : out.start().reaches()) {
      double mx = (sx + plan.x(reach.x())) / 2;
      double my = (sy + plan.y(reach.y())) / 2;
      boolean roomy = Math.hypot(sx - plan.x(reach.x()), sy - plan.y(reach.y())) > LETTERS_WIDE;
      if (roomy && free(mx, my + 3)) {
        svg.halo(mx, my + 3, Long.toString(Math.round(reach.distance())), 9, Anchor.MIDDLE);
      }
    }
    svg.circle(sx, sy, 4, MaterialStyle.MARK, "f-mark");
    svg.halo(sx + 7, sy - 6, speech.say("start-mark"), 10, Anchor.START);
  }
}
