package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underfoot.report.HtmlWriter;

/**
 * A drawing. Every shape has its colours as attributes, for paper, and a class by which a style
 * sheet may give it others, for dark screens. Units are those of the drawing; y runs down.
 */
final class Svg {
  /** How large it is drawn where no style sheet says, in px for each of its units. */
  private static final double ON_PAPER = 1.4;

  private static final double PER_MM = 96 / 25.4;

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
    this(id, width, height, title, description, ON_PAPER, "drawing");
  }

  private Svg(
      String id,
      double width,
      double height,
      String title,
      String description,
      double times,
      String styled) {
    this.id = id;
    String view = "0 0 " + n(width) + " " + n(height);
    out.begin("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", view);
    out.with("width", n(width * times), "height", n(height * times), "class", styled);
    out.with("role", "img", "aria-labelledby", id + "-t " + id + "-d");
    out.with("font-family", "Underfoot, system-ui, sans-serif").content();
    out.element("title", title, "id", id + "-t");
    out.element("desc", description, "id", id + "-d");
    out.line();
  }

  /** A drawing in millimetres, as large as the thing itself. */
  static Svg trueSize(String id, double width, double height, String title, String description) {
    return new Svg(id, width, height, title, description, PER_MM, "drawing true-size");
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
    String ink = Ink.INK.colour();
    out.open("defs").begin("pattern", "id", name, "width", n(width), "height", n(height));
    out.with("patternUnits", "userSpaceOnUse").content();
    if (!lines.isEmpty()) {
      out.begin("path", "d", lines, "fill", "none", "stroke", ink, "stroke-width", "0.7");
      out.with("stroke-opacity", "0.55", "class", "hatch").finish();
    }
    for (String dot : dots.isEmpty() ? new String[0] : dots.split(" ")) {
      String[] xy = dot.split(",");
      out.begin("circle", "cx", xy[0], "cy", xy[1], "r", "0.8", "fill", ink);
      out.with("fill-opacity", "0.6", "class", "hatch-dot").finish();
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
    out.begin("rect", "x", n(x), "y", n(y), "width", n(w), "height", n(h), "fill", fill);
    out.with("class", styled).finish().line();
  }

  /** A rectangle of a material. */
  void rect(double x, double y, double w, double h, MaterialStyle look) {
    rect(x, y, w, h, look.colour(), look.styled());
  }

  /** A path that is filled. */
  void fill(String path, String fill, String styled) {
    if (!path.isEmpty()) {
      out.empty("path", "d", path, "fill", fill, "fill-rule", "evenodd", "class", styled).line();
    }
  }

  /** A path that is filled. */
  void fill(String path, Ink ink) {
    fill(path, ink.colour(), ink.styled("f"));
  }

  /** A path that is drawn along. */
  void stroke(String path, Ink ink, double width) {
    stroke(path, ink, width, "");
  }

  /** A path that is drawn along in dashes. */
  void stroke(String path, Ink ink, double width, String dashes) {
    if (!path.isEmpty()) {
      out.begin("path", "d", path, "fill", "none", "stroke", ink.colour());
      out.with("stroke-width", n(width), "stroke-dasharray", dashes);
      out.with("stroke-linejoin", "round", "class", ink.styled("s")).finish().line();
    }
  }

  void line(double x1, double y1, double x2, double y2, Ink ink, double width) {
    stroke(path(x1, y1, x2, y2), ink, width);
  }

  void circle(double x, double y, double r, Ink ink) {
    String fill = ink.colour();
    String styled = ink.styled("f");
    out.empty("circle", "cx", n(x), "cy", n(y), "r", n(r), "fill", fill, "class", styled).line();
  }

  /** Where writing stands by its place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  void text(double x, double y, String words, double size, Anchor anchor) {
    text(x, y, words, size, anchor, Ink.INK);
  }

  void text(double x, double y, String words, double size, Anchor anchor, Ink ink) {
    text(x, y, words, size, anchor, ink, false, 0);
  }

  void text(
      double x,
      double y,
      String words,
      double size,
      Anchor anchor,
      Ink ink,
      boolean bold,
      double turn) {
    at(x, y, size, anchor, ink);
    String turned = turn == 0 ? "" : "rotate(" + n(turn) + " " + n(x) + " " + n(y) + ")";
    out.with("font-weight", bold ? "bold" : "", "transform", turned, "class", ink.styled("t"));
    out.content().text(words).close("text").line();
  }

  private void at(double x, double y, double size, Anchor anchor, Ink ink) {
    String by = anchor.name().toLowerCase(Locale.ROOT);
    out.begin("text", "x", n(x), "y", n(y), "font-size", n(size), "text-anchor", by);
    out.with("fill", ink.colour());
  }

  /** Writing with a bright edge, legible over anything. */
  void halo(double x, double y, String words, double size, Anchor anchor) {
    at(x, y, size, anchor, Ink.PAPER);
    out.with("stroke", Ink.PAPER.colour(), "stroke-width", "3", "stroke-linejoin", "round");
    out.with("aria-hidden", "true", "class", "halo").content().text(words).close("text");
    text(x, y, words, size, anchor);
  }

  /** The path through points, x and y by turns. */
  static String path(double... xy) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i + 1 < xy.length; i += 2) {
      path.append(i == 0 ? 'M' : 'L').append(n(xy[i])).append(' ').append(n(xy[i + 1]));
    }
    return path.toString();
  }

  /** Words cut to lines of about so many letters; a word longer than that is cut. */
  static List<String> lines(String words, int letters, int most) {
    List<String> lines = new ArrayList<>();
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
      List<String> kept = new ArrayList<>(lines.subList(0, most));
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
