package underfoot.report.html;

import java.util.List;
import java.util.Locale;

/**
 * A drawing. Every shape has its colours as attributes, for paper, and a class by which a style
 * sheet may give it others, for dark screens. Units are those of the drawing; y runs down.
 */
final class Svg {
  /** How large it is drawn where no style sheet says, in px for each of its units. */
  private static final double ON_PAPER = 1.4;

  private final HtmlWriter out = new HtmlWriter();
  private final String id;

  /**
   * @param id what tells this drawing's names from those of others on the page
   * @param width its width
   * @param height its height
   * @param title what it shows, in a few words
   * @param description what it shows, for whoever cannot see it
   */
  Svg(String id, double width, double height, String title, String description) {
    this.id = id;
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + n(width) + " " + n(height),
        "width",
        n(width * ON_PAPER),
        "height",
        n(height * ON_PAPER),
        "class",
        "drawing",
        "role",
        "img",
        "aria-labelledby",
        id + "-t " + id + "-d",
        "font-family",
        "Underfoot, system-ui, sans-serif");
    out.element("title", title, "id", id + "-t");
    out.element("desc", description, "id", id + "-d");
    out.line();
  }

  /** What tells this drawing's names from those of others. */
  String id() {
    return id;
  }

  /** A number as drawings write it. */
  static String n(double number) {
    double rounded = Math.round(number * 100) / 100.0;
    return rounded == Math.rint(rounded)
        ? Long.toString((long) rounded)
        : String.format(Locale.ROOT, "%.2f", rounded);
  }

  /** Defines a hatch of lines and dots. */
  void hatch(String name, double width, double height, String lines, String dots) {
    out.open("defs");
    out.open(
        "pattern",
        "id",
        name,
        "width",
        n(width),
        "height",
        n(height),
        "patternUnits",
        "userSpaceOnUse");
    if (!lines.isEmpty()) {
      out.empty(
          "path",
          "d",
          lines,
          "fill",
          "none",
          "stroke",
          MaterialStyle.INK,
          "stroke-width",
          "0.7",
          "stroke-opacity",
          "0.55",
          "class",
          "hatch");
    }
    for (String dot : dots.isEmpty() ? new String[0] : dots.split(" ")) {
      String[] xy = dot.split(",");
      out.empty(
          "circle",
          "cx",
          xy[0],
          "cy",
          xy[1],
          "r",
          "0.8",
          "fill",
          MaterialStyle.INK,
          "fill-opacity",
          "0.6",
          "class",
          "hatch-dot");
    }
    out.close("pattern").close("defs").line();
  }

  /** Begins to draw within a shape only. */
  void clip(String name, String path) {
    out.open("defs").open("clipPath", "id", id + "-" + name);
    out.empty("path", "d", path);
    out.close("clipPath").close("defs");
    out.open("g", "clip-path", "url(#" + id + "-" + name + ")");
  }

  /** Ends drawing within a shape only. */
  void endClip() {
    out.close("g").line();
  }

  void rect(double x, double y, double w, double h, String fill, String styled) {
    out.empty(
            "rect", "x", n(x), "y", n(y), "width", n(w), "height", n(h), "fill", fill, "class",
            styled)
        .line();
  }

  /** A path that is filled. */
  void fill(String path, String fill, String styled) {
    if (!path.isEmpty()) {
      out.empty("path", "d", path, "fill", fill, "fill-rule", "evenodd", "class", styled).line();
    }
  }

  /** A path that is drawn along. */
  void stroke(String path, String colour, double width, String dashes, String styled) {
    if (!path.isEmpty()) {
      out.empty(
              "path",
              "d",
              path,
              "fill",
              "none",
              "stroke",
              colour,
              "stroke-width",
              n(width),
              "stroke-dasharray",
              dashes,
              "stroke-linejoin",
              "round",
              "class",
              styled)
          .line();
    }
  }

  void line(
      double x1, double y1, double x2, double y2, String colour, double width, String styled) {
    stroke(move(x1, y1) + lineTo(x2, y2), colour, width, "", styled);
  }

  void circle(double x, double y, double r, String fill, String styled) {
    out.empty("circle", "cx", n(x), "cy", n(y), "r", n(r), "fill", fill, "class", styled).line();
  }

  /** Where writing stands by its place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  void text(double x, double y, String words, double size, Anchor anchor) {
    text(x, y, words, size, anchor, MaterialStyle.INK, "t", false, 0);
  }

  void text(
      double x,
      double y,
      String words,
      double size,
      Anchor anchor,
      String colour,
      String styled,
      boolean bold,
      double turn) {
    out.open(
        "text",
        "x",
        n(x),
        "y",
        n(y),
        "font-size",
        n(size),
        "text-anchor",
        anchor.name().toLowerCase(Locale.ROOT),
        "fill",
        colour,
        "font-weight",
        bold ? "bold" : "",
        "transform",
        turn == 0 ? "" : "rotate(" + n(turn) + " " + n(x) + " " + n(y) + ")",
        "class",
        styled);
    out.text(words).close("text").line();
  }

  /** Writing with a bright edge, legible over anything. */
  void halo(double x, double y, String words, double size, Anchor anchor) {
    out.open(
        "text",
        "x",
        n(x),
        "y",
        n(y),
        "font-size",
        n(size),
        "text-anchor",
        anchor.name().toLowerCase(Locale.ROOT),
        "fill",
        MaterialStyle.PAPER,
        "stroke",
        MaterialStyle.PAPER,
        "stroke-width",
        "3",
        "stroke-linejoin",
        "round",
        "aria-hidden",
        "true",
        "class",
        "halo");
    out.text(words).close("text");
    text(x, y, words, size, anchor);
  }

  static String move(double x, double y) {
    return "M" + n(x) + " " + n(y);
  }

  static String lineTo(double x, double y) {
    return "L" + n(x) + " " + n(y);
  }

  /** Words cut to lines of about so many letters; a word longer than that is cut. */
  static List<String> lines(String words, int letters, int most) {
    List<String> lines = new java.util.ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.strip().split("\\s+")) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + rest.length() > letters) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.codePointCount(0, rest.length()) > letters) {
        int cut = rest.offsetByCodePoints(0, letters - 1);
        lines.add(rest.substring(0, cut) + "-");
        rest = rest.substring(cut);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    if (lines.size() > most) {
      List<String> kept = new java.util.ArrayList<>(lines.subList(0, most));
      String last = kept.get(most - 1);
      kept.set(most - 1, last.replaceAll(".$", "") + "…");
      return kept;
    }
    return lines;
  }

  /** Words of at most so many letters. */
  static String cut(String words, int letters) {
    return words.codePointCount(0, words.length()) <= letters
        ? words
        : words.substring(0, words.offsetByCodePoints(0, letters - 1)) + "…";
  }

  /** The drawing. */
  HtmlWriter markup() {
    return out.end("svg");
  }
}
