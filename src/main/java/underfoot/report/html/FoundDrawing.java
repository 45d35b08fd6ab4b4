package underfoot.report.html;

import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.LayerFound;
import underfoot.report.FloorTold;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/**
 * The floor as it is today, cut through. What comes up is drawn with a broken outline and crossed
 * out; thick layers are cut short.
 */
final class FoundDrawing {
  private static final double WIDTH = 338;
  private static final double LEFT = 8;
  private static final double RIGHT = 110;
  private static final double LABELS = 126;
  private static final double TOP = 10;
  private static final double LEAST = 24;
  private static final double MOST = 54;
  private static final double PER_MM = 2;
  private static final double LINE = 12;
  private static final int LETTERS = 36;

  private FoundDrawing() {}

  static HtmlWriter draw(Advice advice, String id, Phrases speech) {
    List<LayerFound> found = advice.asFound();
    List<String> told = FloorTold.asFound(advice, speech);
    List<List<String>> words = told.stream().map(one -> Svg.lines(one, LETTERS, 3)).toList();
    String title = speech.say("found-title");
    double[] high = new double[found.size()];
    double needed = TOP;
    for (int i = 0; i < high.length; i++) {
      double thick = found.get(found.size() - 1 - i).thicknessMm();
      double drawn = Double.isNaN(thick) ? LEAST : Math.max(LEAST, Math.min(MOST, thick * PER_MM));
      high[i] = Math.max(words.get(i).size() * LINE + 4, drawn);
      needed += high[i];
    }
    Svg svg = new Svg(id, WIDTH, needed + TOP, title, String.join("; ", told));
    double y = TOP;
    for (int i = 0; i < high.length; i++) {
      LayerFound layer = found.get(found.size() - 1 - i);
      String outline = Svg.path(LEFT, y, RIGHT, y, RIGHT, y + high[i], LEFT, y + high[i]) + "Z";
      if (layer.stays()) {
        svg.rect(LEFT, y, RIGHT - LEFT, high[i], MaterialStyle.SOLID);
        svg.stroke(outline, Ink.INK, 1.2);
      } else {
        svg.stroke(outline, Ink.FAINT, 1, "5 3");
        svg.stroke(
            Svg.path(LEFT, y, RIGHT, y + high[i]) + Svg.path(LEFT, y + high[i], RIGHT, y),
            Ink.FAINT,
            1);
      }
      double at = y + high[i] / 2;
      svg.line(RIGHT, at, LABELS - 3, at, Ink.FAINT, 0.9);
      List<String> lines = words.get(i);
      double first = at - lines.size() * LINE / 2 + LINE - 3;
      for (int k = 0; k < lines.size(); k++) {
        svg.text(LABELS, first + k * LINE, lines.get(k), 10, Anchor.START);
      }
      y += high[i];
    }
    return svg.markup();
  }
}
