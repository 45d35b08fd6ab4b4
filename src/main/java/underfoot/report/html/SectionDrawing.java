package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.SiteRows;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;
import underfoot.plan.BaseBelow;
import underfoot.report.HtmlWriter;
import underfoot.report.Sentences;
import underfoot.report.html.Svg.Anchor;

/** The build-up cut through, heights to scale, each layer labelled with a line that leads to it. */
final class SectionDrawing {
  private static final double WIDTH = 338;
  private static final double LEFT = 44;
  private static final double RIGHT = 140;
  private static final double LABELS = 178;
  private static final double CHANNEL = 30;
  private static final double BEND = 4;
  private static final int LETTERS = 25;
  private static final double WANTED = 250;
  private static final double GROUND = 54;
  private static final double TOP = 26;
  private static final double LINE = 12;
  private static final double COAT = 2;

  private final String id;
  private final Advice advice;
  private final Phrases speech;
  private final double scale;
  private final double deck;
  private final double base;
  private Svg svg;

  SectionDrawing(Advice advice, Phrases speech) {
    this(advice, speech, "section");
  }

  /** The section of a part of a room, under an id of its own on the page. */
  SectionDrawing(Advice advice, Phrases speech, String id) {
    this.id = id;
    this.advice = advice;
    this.speech = speech;
    BaseBelow beneath = advice.consequences().beneath();
    boolean timber = !beneath.family().equals("solid");
    this.deck =
        timber && !beneath.taken() && !Double.isNaN(beneath.thicknessMm())
            ? beneath.thicknessMm()
            : 0;
    double rise = Math.max(1, rise());
    this.scale = Math.max(1.5, Math.min(9, WANTED / (rise + deck)));
    this.base = TOP + rise * scale;
  }

  private double rise() {
    return advice.layers().isEmpty() ? 0 : advice.layers().get(advice.layers().size() - 1).level();
  }

  /** A label: what it says, and where its line leads. */
  private static final class Label {
    private final List<String> lines;
    private final double wanted;
    private final int bold;
    private double top;
    private double bend;

    Label(List<String> lines, int bold, double wanted) {
      this.lines = lines;
      this.bold = bold;
      this.wanted = wanted;
    }

    double height() {
      return lines.size() * LINE + 5;
    }

    /** Where its line meets its first line of words. */
    double foot() {
      return top + LINE - 5;
    }
  }

  HtmlWriter draw() {
    List<Label> labels = labels();
    double bottom = base + deck * scale + GROUND;
    double needed = labels.stream().mapToDouble(Label::height).sum();
    double height = Math.max(bottom + 14, needed + TOP + 8);
    svg =
        new Svg(
            id,
            WIDTH,
            height,
            speech.say("section-title"),
            speech.say("section-described", "layers", described()));
    for (MaterialStyle look : MaterialStyle.values()) {
      look.defineHatch(svg);
    }
    ground(bottom);
    for (Layer layer : advice.layers()) {
      if (layer.thickness().max() > 0) {
        layer(layer);
      }
    }
    for (Layer layer : advice.layers()) {
      if (layer.thickness().max() == 0) {
        coat(layer);
      }
    }
    screw();
    levels();
    spread(labels, height);
    bend(labels);
    for (Label label : labels) {
      label(label);
    }
    bar(height);
    return svg.markup();
  }

  private String described() {
    StringJoiner words = new StringJoiner("; ");
    for (Layer layer : advice.layers()) {
      String top = speech.say("top-at", "level", Texts.whole(ofOld(layer.level())));
      words.add(layer.name() + ", " + Sentences.thickness(layer.thickness(), speech) + ", " + top);
    }
    return words.toString();
  }

  /** Against the old floor, as all levels are told; the layers may lie lower than that. */
  private double ofOld(double level) {
    return advice.heights().ofBase() + level;
  }

  private double y(double level) {
    return base - level * scale;
  }

  private void hatched(double x, double y, double w, double h, MaterialStyle look) {
    svg.rect(x, y, w, h, look);
    svg.rect(x, y, w, h, "url(#" + look.hatch(svg.id()) + ")", "");
    svg.stroke(Svg.path(x, y, x + w, y, x + w, y + h, x, y + h) + "Z", Ink.INK, 0.8);
  }

  private void layer(Layer layer) {
    double top = y(layer.level());
    double bottom = y(layer.level() - layer.thickness().mean());
    MaterialStyle look = MaterialStyle.of(layer.family());
    double high = bottom - top;
    if (layer.family().equals("tile")) {
      double middle = LEFT + (RIGHT - LEFT) * 0.62;
      hatched(LEFT, top, middle - LEFT - 2, high, look);
      hatched(middle + 2, top, RIGHT - middle - 2, high, look);
      svg.rect(middle - 2, top + 0.5, 4, high, MaterialStyle.BED);
    } else {
      hatched(LEFT, top, RIGHT - LEFT, high, look);
    }
  }

  /** A coat has no thickness to speak of: a thick broken line stands for it. */
  private void coat(Layer layer) {
    double at = y(layer.level()) - COAT / 2;
    svg.stroke(Svg.path(LEFT, at, RIGHT, at), Ink.PAPER, COAT + 1);
    svg.stroke(Svg.path(LEFT, at, RIGHT, at), Ink.INK, COAT, "6 2.5");
  }

  private void ground(double bottom) {
    BaseBelow beneath = advice.consequences().beneath();
    boolean solid = beneath.family().equals("solid");
    double under = base + deck * scale;
    String tear = tear(bottom - 8);
    String torn = tear.replace('M', 'L') + "Z";
    if (solid) {
      svg.clip("ground", Svg.path(LEFT, base, RIGHT, base) + torn);
      MaterialStyle look = MaterialStyle.SOLID;
      svg.rect(LEFT, base, RIGHT - LEFT, bottom - base, look);
      String hatch = "url(#" + look.hatch(svg.id()) + ")";
      svg.rect(LEFT, base, RIGHT - LEFT, bottom - base, hatch, "");
      svg.endClip();
    } else {
      if (deck > 0) {
        hatched(LEFT, base, RIGHT - LEFT, deck * scale, MaterialStyle.TIMBER);
        if (beneath.boards()) {
          double joint = LEFT + (RIGHT - LEFT) * 0.3;
          svg.line(joint, base, joint, under, Ink.INK, 1.2);
        }
      }
      if (!Double.isNaN(beneath.joistDepthMm())) {
        double left = (LEFT + RIGHT) / 2 - 22;
        double right = left + 44;
        svg.clip("joist", Svg.path(LEFT, under, RIGHT, under) + torn);
        svg.rect(left, under, 44, bottom - under, MaterialStyle.TIMBER);
        svg.endClip();
        svg.stroke(
            Svg.path(left, under, left, bottom - 10)
                + Svg.path(right, under, right, bottom - 10)
                + Svg.path(left, under, right, bottom - 12)
                + Svg.path(right, under, left, bottom - 12),
            Ink.INK,
            0.8);
      }
    }
    svg.line(LEFT, base, RIGHT, base, Ink.INK, 1.6);
    svg.stroke(tear, Ink.FAINT, 1);
  }

  /** The line along which a drawing is broken off. */
  private static String tear(double y) {
    double m = (LEFT + RIGHT) / 2;
    return Svg.path(RIGHT + 5, y, m + 8, y, m + 3, y - 7, m - 3, y + 7, m - 8, y, LEFT - 5, y);
  }

  /** The level of every surface above the old floor, on the left. */
  private void levels() {
    double last = Double.POSITIVE_INFINITY;
    List<Double> levels = new ArrayList<>();
    levels.add(0.0);
    advice.layers().stream()
        .filter(layer -> layer.thickness().max() > 0)
        .forEach(layer -> levels.add(layer.level()));
    svg.text(4, 12, speech.say("level-column"), 9.5, Anchor.START, Ink.FAINT);
    for (double level : levels) {
      double at = y(level);
      double writing = Math.min(at + 3.5, last - 10.5);
      last = writing;
      svg.stroke(
          Svg.path(LEFT - 3, at, LEFT - 7, at, LEFT - 11, writing - 3.5, LEFT - 14, writing - 3.5),
          Ink.FAINT,
          0.8);
      double told = Math.rint(ofOld(level)) + 0.0; // never minus nothing
      String words = (told > 0 ? "+" : "") + Texts.tenths(told);
      svg.text(LEFT - 16, writing, words, 9.5, Anchor.END);
    }
  }

  private List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    for (int i = advice.layers().size() - 1; i >= 0; i--) {
      Layer layer = advice.layers().get(i);
      List<String> lines =
          new ArrayList<>(Svg.lines(layer.order() + "  " + layer.name(), LETTERS, 3));
      int bold = lines.size();
      lines.add(Sentences.thickness(layer.thickness(), speech));
      double top = y(layer.level());
      double bottom = y(layer.level() - layer.thickness().mean());
      double at = layer.thickness().max() == 0 ? bottom - COAT / 2 : (top + bottom) / 2;
      labels.add(new Label(lines, bold, at));
    }
    BaseBelow beneath = advice.consequences().beneath();
    List<String> lines =
        new ArrayList<>(Svg.lines(speech.say("old-floor", "base", advice.base()), LETTERS, 3));
    int bold = lines.size();
    if (!Double.isNaN(beneath.thicknessMm()) && !beneath.taken()) {
      lines.add(Texts.mm(beneath.thicknessMm()));
    }
    if (!Double.isNaN(beneath.joistDepthMm())) {
      lines.addAll(
          Svg.lines(
              speech.say(
                  "joists-beneath",
                  "breadth",
                  Texts.tenths(beneath.joistBreadthMm()),
                  "depth",
                  Texts.mm(beneath.joistDepthMm()),
                  "centres",
                  Texts.mm(beneath.joistCentresMm())),
              LETTERS + 3,
              3));
    }
    labels.add(new Label(lines, bold, base + (deck > 0 ? deck * scale / 2 : 12)));
    return labels;
  }

  /** Moves labels apart, as little as can be. */
  private static void spread(List<Label> labels, double height) {
    double next = 6;
    for (Label label : labels) {
      label.top = Math.max(next, label.wanted - label.height() / 2);
      next = label.top + label.height();
    }
    double limit = height - 4;
    for (int i = labels.size() - 1; i >= 0; i--) {
      Label label = labels.get(i);
      label.top = Math.min(label.top, limit - label.height());
      limit = label.top;
    }
  }

  /**
   * Gives each line its own place to turn at, so that none crosses another: of lines that lead down
   * the lower turns first, of lines that lead up the upper.
   */
  private static void bend(List<Label> labels) {
    double step = Math.min(BEND, CHANNEL / Math.max(1, labels.size()));
    double far = LABELS - 8;
    double next = far;
    for (Label label : labels) {
      boolean down = label.foot() > label.wanted;
      label.bend = down ? next : far;
      next = down ? next - step : far;
    }
    next = far;
    for (int i = labels.size() - 1; i >= 0; i--) {
      Label label = labels.get(i);
      boolean up = label.foot() < label.wanted;
      label.bend = up ? next : label.bend;
      next = up ? next - step : far;
    }
  }

  /** A screw, as long as it is, from the top of what it holds into the deck, clear of the joist. */
  private void screw() {
    for (Layer layer : advice.layers()) {
      Double length = layer.drawn().get(SiteRows.SCREW);
      if (length == null || deck == 0) {
        continue;
      }
      double x = LEFT + (RIGHT - LEFT) * 0.8;
      double top = y(layer.level());
      double tip = top + length * scale;
      double head = Math.min(4, length * scale / 5);
      String shank =
          Svg.path(x - 5, top, x + 5, top, x + 1.6, top + head, x + 1.6, tip - 4, x, tip)
              + Svg.path(x - 1.6, tip - 4, x - 1.6, top + head).replace('M', 'L')
              + "Z";
      svg.fill(shank, Ink.PAPER);
      svg.stroke(shank, Ink.INK, 1);
      StringBuilder thread = new StringBuilder();
      for (double at = top + head + 3; at < tip - 4; at += 4) {
        thread.append(Svg.path(x - 3, at + 1.2, x + 3, at - 1.2));
      }
      svg.stroke(thread.toString(), Ink.INK, 0.9);
    }
  }

  private void label(Label label) {
    double at = label.foot();
    svg.stroke(
        Svg.path(RIGHT - 7, label.wanted, label.bend, label.wanted, label.bend, at, LABELS - 3, at),
        Ink.FAINT,
        0.9);
    svg.circle(RIGHT - 7, label.wanted, 1.8, Ink.INK);
    for (int i = 0; i < label.lines.size(); i++) {
      boolean bold = i < label.bold;
      Ink ink = bold ? Ink.INK : Ink.FAINT;
      double foot = label.top + LINE * (i + 1) - 2;
      svg.text(LABELS, foot, label.lines.get(i), bold ? 10.5 : 9.5, Anchor.START, ink, bold, 0);
    }
  }

  /** A bar that shows how long 10 mm is. */
  private void bar(double height) {
    double length = 10 * scale;
    double x = 10;
    double y = Math.min(height - 6, base + deck * scale + GROUND + 8);
    String ends = Svg.path(x - 3, y - length, x + 3, y - length) + Svg.path(x - 3, y, x + 3, y);
    svg.stroke(Svg.path(x, y - length, x, y) + ends, Ink.INK, 1);
    svg.text(x + 5, y - length / 2 + 3, "10 mm", 8.5, Anchor.START);
  }
}
