package underfoot.report.html;

import java.util.List;
import underfoot.knowledge.Sketches.Shape;
import underfoot.knowledge.Sketches.Sketch;
import underfoot.report.HtmlWriter;

/** Draws a small drawing of the rule base. Colours come from the style sheet, by what is drawn. */
public final class SketchDrawing {
  private static final double HEAD = 4;

  private SketchDrawing() {}

  /** The drawing as SVG, with its title for whoever cannot see it. */
  public static String svg(Sketch sketch) {
    HtmlWriter out = new HtmlWriter();
    String view = "0 0 " + sketch.width() + ' ' + sketch.height();
    out.open(
        "svg", "viewBox", view, "class", "sketch", "role", "img", "aria-label", sketch.title());
    for (Shape shape : sketch.shapes()) {
      draw(shape, out);
    }
    return out.close("svg").toString();
  }

  private static void draw(Shape shape, HtmlWriter out) {
    List<Double> n = shape.numbers();
    String styled = "of-" + shape.of();
    switch (shape.form()) {
      case "box" -> {
        out.begin("rect", "class", styled, "x", Svg.n(n.get(0)), "y", Svg.n(n.get(1)));
        out.with("width", Svg.n(n.get(2)), "height", Svg.n(n.get(3))).finish();
      }
      case "dot" ->
          out.empty(
              "circle",
              "class",
              styled,
              "cx",
              Svg.n(n.get(0)),
              "cy",
              Svg.n(n.get(1)),
              "r",
              Svg.n(n.get(2)));
      case "words" -> {
        out.open("text", "class", styled, "x", Svg.n(n.get(0)), "y", Svg.n(n.get(1)));
        out.text(shape.words()).close("text");
      }
      case "arrow" -> arrow(n, styled, out);
      default -> {
        double[] xy = n.stream().mapToDouble(Double::doubleValue).toArray();
        out.empty("path", "class", styled + " along", "d", Svg.path(xy));
      }
    }
  }

  /** A line with a head at either end, for a measure. */
  private static void arrow(List<Double> n, String styled, HtmlWriter out) {
    double x1 = n.get(0);
    double y1 = n.get(1);
    double x2 = n.get(2);
    double y2 = n.get(3);
    double length = Math.max(1, Math.hypot(x2 - x1, y2 - y1));
    double ux = (x2 - x1) / length * HEAD;
    double uy = (y2 - y1) / length * HEAD;
    String path =
        Svg.path(x1 + ux - uy / 2, y1 + uy + ux / 2, x1, y1, x1 + ux + uy / 2, y1 + uy - ux / 2)
            + Svg.path(x1, y1, x2, y2)
            + Svg.path(
                x2 - ux - uy / 2, y2 - uy + ux / 2, x2, y2, x2 - ux + uy / 2, y2 - uy - ux / 2);
    out.empty("path", "class", styled + " along", "d", path);
  }
}
