package underfoot.report;

import java.util.List;
import java.util.Locale;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;

/**
 * The layers as a small drawing in SVG, the tile on top. Heights are drawn so that thin layers can
 * still be seen, so not to scale; the figures beside them are true.
 */
public final class SectionSketch {
  private static final int WIDTH = 400;
  private static final int BAND = 64;
  private static final int LEAST = 22;
  private static final int EDGE = 8;
  private static final double PER_MM = 1.6;
  private static final int MOST = 70;

  private SectionSketch() {}

  /**
   * Draws the build-up of an advice.
   *
   * @param advice the advice
   * @return an SVG element, with a title and a description for those who do not see it; empty if
   *     nothing is to be built
   */
  public static String of(Advice advice) {
    List<Layer> layers = advice.layers();
    if (layers.isEmpty()) {
      return "";
    }
    StringBuilder bands = new StringBuilder();
    StringBuilder told = new StringBuilder("From the top: ");
    double y = EDGE;
    for (int i = layers.size() - 1; i >= 0; i--) {
      Layer layer = layers.get(i);
      double mean = layer.thickness().mean();
      double height = Math.min(MOST, Math.max(LEAST, mean * PER_MM));
      String label = layer.name() + (mean > 0 ? ", " + millimetres(mean) : "");
      band(bands, "layer " + kind(layer.family()), y, height, label);
      told.append(label).append("; ");
      y += height;
    }
    band(bands, "layer base", y, LEAST, advice.base());
    told.append("on ").append(advice.base()).append('.');
    double all = y + LEAST + EDGE;
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %.0f\" role=\"img\""
            + " aria-labelledby=\"section-title section-told\" class=\"section\">"
            + "<title id=\"section-title\">Section through the floor</title>"
            + "<desc id=\"section-told\">%s</desc>%s</svg>",
        WIDTH,
        all,
        escaped(told.toString()),
        bands);
  }

  private static void band(StringBuilder out, String kind, double y, double height, String label) {
    out.append(
        String.format(
            Locale.ROOT,
            "<rect class=\"%s\" x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\"/>"
                + "<text x=\"%d\" y=\"%.1f\">%s</text>",
            kind,
            EDGE,
            y,
            BAND,
            height,
            EDGE + BAND + EDGE,
            y + height / 2 + 4,
            escaped(label)));
  }

  private static String kind(String family) {
    return family.replaceAll("[^a-z]", "");
  }

  private static String millimetres(double mm) {
    double tenths = Math.round(mm * 10) / 10.0;
    return tenths == Math.rint(tenths)
        ? String.format(Locale.ROOT, "%.0f mm", tenths)
        : String.format(Locale.ROOT, "%.1f mm", tenths);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
