package underfoot.report.html;

import java.util.Set;
import java.util.TreeSet;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.setout.BoardPlan;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/** A board that is notched, by itself, with what is measured along two of its sides. */
final class PieceSketch {
  private static final double SIZE = 110;
  private static final double LEFT = 44;
  private static final double TOP = 12;
  private static final double RIGHT = 26;
  private static final double FOOT = 26;
  private static final double WRITING = 9.5;
  private static final double APART = 11;

  private PieceSketch() {}

  /** The piece as it lies in the plan: corners are measured from its lower left. */
  static HtmlWriter draw(BoardPlan.Piece piece, String id, Phrases speech) {
    double wide = piece.x2() - piece.x1();
    double high = piece.y2() - piece.y1();
    double scale = SIZE / Math.max(wide, high);
    String title = speech.say("piece-title", "mark", piece.mark());
    Svg svg = new Svg(id, LEFT + wide * scale + RIGHT, TOP + high * scale + FOOT, title, title);
    Set<Long> xs = new TreeSet<>();
    Set<Long> ys = new TreeSet<>();
    double foot = TOP + high * scale;
    StringBuilder path = new StringBuilder();
    piece
        .rings()
        .forEach(
            ring -> {
              double[] drawn = new double[ring.xy().length];
              for (int i = 0; i + 1 < drawn.length; i += 2) {
                double x = ring.xy()[i] - piece.x1();
                double y = ring.xy()[i + 1] - piece.y1();
                xs.add(Math.round(x));
                ys.add(Math.round(y));
                drawn[i] = LEFT + x * scale;
                drawn[i + 1] = foot - y * scale;
              }
              path.append(Svg.path(drawn)).append('Z');
            });
    svg.fill(path.toString(), "#cdd8dc", "board-cut");
    svg.stroke(path.toString(), Ink.INK, 1.2);
    double last = Double.NEGATIVE_INFINITY;
    for (long x : xs) {
      double at = LEFT + x * scale;
      double writing = Math.max(at, last + 2.2 * APART);
      last = writing;
      svg.line(at, foot + 2, at, foot + 7, Ink.FAINT, 0.8);
      svg.text(writing, foot + 17, Texts.tenths(x), WRITING, Anchor.MIDDLE);
    }
    last = Double.POSITIVE_INFINITY;
    for (long y : ys) {
      double at = foot - y * scale;
      double writing = Math.min(at + 3, last - APART);
      last = writing;
      svg.line(LEFT - 7, at, LEFT - 2, at, Ink.FAINT, 0.8);
      svg.text(LEFT - 10, writing, Texts.tenths(y), WRITING, Anchor.END);
    }
    svg.text(LEFT + wide * scale / 2, TOP + 14, piece.mark(), 11, Anchor.MIDDLE, Ink.INK, true, 0);
    return svg.markup();
  }
}
