package underfoot.report.html;

import java.util.Locale;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/**
 * The edge of a notched trowel, teeth as wide as the notches between them. On paper it is as large
 * as the trowel, so that a trowel can be held against it; a bar of its own size shows whether it
 * was printed so.
 */
final class TrowelDrawing {
  private static final double WIDTH = 84;
  private static final double BLADE = 9;
  private static final double FOOT = 9;
  private static final double WRITING = 3;

  /** How long the bar is that shows whether it was printed at full size, mm. */
  static final double BAR = 50;

  private TrowelDrawing() {}

  /** The drawing of a square notch, in mm of the paper. */
  static HtmlWriter draw(double notch, String id, Phrases speech) {
    double edge = BLADE + notch;
    Svg svg =
        Svg.trueSize(
            id,
            WIDTH,
            edge + FOOT,
            speech.say("trowel-title", "notch", Texts.whole(notch)),
            speech.say("trowel-described", "notch", Texts.whole(notch), "bar", Texts.whole(BAR)));
    StringBuilder blade = new StringBuilder(Svg.path(1, 1, 1, edge));
    boolean tooth = true;
    double end = 1;
    for (double x = 1; x + notch <= WIDTH - 1; x += notch) {
      double y = tooth ? edge : BLADE;
      blade.append(step(x, y)).append(step(x + notch, y));
      tooth = !tooth;
      end = x + notch;
    }
    blade
        .append(step(end, BLADE))
        .append(step(WIDTH - 1, BLADE))
        .append(step(WIDTH - 1, 1))
        .append('Z');
    svg.fill(blade.toString(), MaterialStyle.BED.colour(), MaterialStyle.BED.styled());
    svg.stroke(blade.toString(), Ink.INK, 0.4);
    svg.text(4, BLADE - 2.5, Texts.whole(notch), WRITING, Anchor.START, Ink.INK, true, 0);
    double foot = edge + 4;
    svg.line(1, foot, 1 + BAR, foot, Ink.INK, 0.4);
    svg.line(1, foot - 1, 1, foot + 1, Ink.INK, 0.4);
    svg.line(1 + BAR, foot - 1, 1 + BAR, foot + 1, Ink.INK, 0.4);
    svg.text(BAR + 3, foot + 1, Texts.whole(BAR), WRITING, Anchor.START);
    return svg.markup();
  }

  private static String step(double x, double y) {
    return String.format(Locale.ROOT, "L%.2f %.2f", x, y);
  }
}
