package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.LayerThickness;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;
import underfoot.plan.BaseBelow;
import underfoot.report.html.Svg.Anchor;

/** The build-up cut through, heights to scale, each layer labelled with a line that leads to it. */
final class SectionDrawing {
  private static final double WIDTH = 360;
  private static final double LEFT = 50;
  private static final double RIGHT = 172;
  private static final double LABELS = 194;
  private static final int LETTERS = 25;
  private static final double WANTED = 250;
  private static final double GROUND = 54;
  private static final double TOP = 26;
  private static final double LINE = 12;
  private static final double COAT = 2;

  private final Advice advice;
  private final PageText speech;
  private final double scale;
  private final double deck;
  private final double base;
  private Svg svg;

  SectionDrawing(Advice advice, PageText speech) {
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

    Label(List<String> lines, int bold, double wanted) {
      this.lines = lines;
      this.bold = bold;
      this.wanted = wanted;
    }

    double height() {
      return lines.size() * LINE + 5;
    }
  }

  HtmlWriter draw() {
    List<Label> labels = labels();
    double bottom = base + deck * scale + GROUND;
    double needed = labels.stream().mapToDouble(Label::height).sum();
    double height = Math.max(bottom + 14, needed + TOP + 8);
    svg =
        new Svg(
            "section",
            WIDTH,
            height,
            speech.say("section-title"),
            speech.say("section-described", "layers", described()));
    for (MaterialStyle look : MaterialStyle.values()) {
      look.defineHatch(svg, svg.id());
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
    levels();
    spread(labels, height);
    for (Label label : labels) {
      label(label);
    }
    bar(height);
    return svg.markup();
  }

  private String described() {
    StringBuilder words = new StringBuilder();
    for (Layer layer : advice.layers()) {
      words
          .append(words.isEmpty() ? "" : "; ")
          .append(layer.name())
          .append(", ")
          .append(thickness(layer.thickness()))
          .append(", ")
          .append(speech.say("top-at", "level", Texts.mm(layer.level())));
    }
    return words.toString();
  }

  private String thickness(LayerThickness thickness) {
    if (thickness.max() == 0) {
      return speech.say("a-coat");
    }
    if (thickness.min() == thickness.max()) {
      return Texts.mm(thickness.mean());
    }
    return PageText.number(thickness.min()) + "–" + Texts.mm(thickness.max());
  }

  private double y(double level) {
    return base - level * scale;
  }

  private void hatched(double x, double y, double w, double h, MaterialStyle look) {
    svg.rect(x, y, w, h, look.colour(), look.styled());
    svg.rect(x, y, w, h, "url(#" + look.hatch(svg.id()) + ")", "");
    svg.stroke(
        Svg.move(x, y)
            + Svg.lineTo(x + w, y)
            + Svg.lineTo(x + w, y + h)
            + Svg.lineTo(x, y + h)
            + "Z",
        MaterialStyle.INK,
        0.8,
        "",
        "s");
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
      svg.rect(
          middle - 2, top + 0.5, 4, high, MaterialStyle.BED.colour(), MaterialStyle.BED.styled());
    } else {
      hatched(LEFT, top, RIGHT - LEFT, high, look);
    }
  }

  /** A coat has no thickness to speak of: a thick broken line stands for it. */
  private void coat(Layer layer) {
    double at = y(layer.level()) - COAT / 2;
    svg.stroke(
        Svg.move(LEFT, at) + Svg.lineTo(RIGHT, at), MaterialStyle.PAPER, COAT + 1, "", "s-paper");
    svg.stroke(Svg.move(LEFT, at) + Svg.lineTo(RIGHT, at), MaterialStyle.INK, COAT, "6 2.5", "s");
  }

  private void ground(double bottom) {
    BaseBelow beneath = advice.consequences().beneath();
    boolean solid = beneath.family().equals("solid");
    double under = base + deck * scale;
    String tear = tear(bottom - 8);
    if (solid) {
      svg.clip("ground", Svg.move(LEFT, base) + Svg.lineTo(RIGHT, base) + tear + "Z");
      svg.rect(
          LEFT,
          base,
          RIGHT - LEFT,
          bottom - base,
          MaterialStyle.SOLID.colour(),
          MaterialStyle.SOLID.styled());
      svg.rect(
          LEFT,
          base,
          RIGHT - LEFT,
          bottom - base,
          "url(#" + MaterialStyle.SOLID.hatch(svg.id()) + ")",
          "");
      svg.endClip();
      svg.line(LEFT, base, RIGHT, base, MaterialStyle.INK, 1.6, "s");
    } else {
      if (deck > 0) {
        hatched(LEFT, base, RIGHT - LEFT, deck * scale, MaterialStyle.TIMBER);
        if (beneath.boards()) {
          double joint = LEFT + (RIGHT - LEFT) * 0.3;
          svg.line(joint, base, joint, under, MaterialStyle.INK, 1.2, "s");
        }
      }
      boolean joists = !Double.isNaN(beneath.joistDepthMm());
      if (joists) {
        double middle = (LEFT + RIGHT) / 2;
        double half = 22;
        svg.clip("joist", Svg.move(LEFT, under) + Svg.lineTo(RIGHT, under) + tear + "Z");
        svg.rect(
            middle - half,
            under,
            2 * half,
            bottom - under,
            MaterialStyle.TIMBER.colour(),
            MaterialStyle.TIMBER.styled());
        svg.endClip();
        svg.stroke(
            Svg.move(middle - half, under)
                + Svg.lineTo(middle - half, bottom - 10)
                + Svg.move(middle + half, under)
                + Svg.lineTo(middle + half, bottom - 10)
                + Svg.move(middle - half, under)
                + Svg.lineTo(middle + half, bottom - 12)
                + Svg.move(middle + half, under)
                + Svg.lineTo(middle - half, bottom - 12),
            MaterialStyle.INK,
            0.8,
            "",
            "s");
      }
      svg.line(LEFT, base, RIGHT, base, MaterialStyle.INK, 1.6, "s");
    }
    svg.stroke(tearAlone(bottom - 8), MaterialStyle.FAINT, 1, "", "s-faint");
  }

  /** The line along which a drawing is broken off. */
  private static String tearAlone(double y) {
    double middle = (LEFT + RIGHT) / 2;
    return Svg.move(RIGHT + 5, y)
        + Svg.lineTo(middle + 8, y)
        + Svg.lineTo(middle + 3, y - 7)
        + Svg.lineTo(middle - 3, y + 7)
        + Svg.lineTo(middle - 8, y)
        + Svg.lineTo(LEFT - 5, y);
  }

  private static String tear(double y) {
    return tearAlone(y).replace('M', 'L');
  }

  /** The level of every surface above the old floor, on the left. */
  private void levels() {
    double last = Double.POSITIVE_INFINITY;
    List<Double> told = new ArrayList<>();
    told.add(0.0);
    for (Layer layer : advice.layers()) {
      if (layer.thickness().max() > 0) {
        told.add(layer.level());
      }
    }
    svg.text(
        4,
        12,
        speech.say("level-column"),
        9.5,
        Anchor.START,
        MaterialStyle.FAINT,
        "t-faint",
        false,
        0);
    for (double level : told) {
      double at = y(level);
      double writing = Math.min(at + 3.5, last - 10.5);
      last = writing;
      svg.stroke(
          Svg.move(LEFT - 3, at)
              + Svg.lineTo(LEFT - 7, at)
              + Svg.lineTo(LEFT - 11, writing - 3.5)
              + Svg.lineTo(LEFT - 14, writing - 3.5),
          MaterialStyle.FAINT,
          0.8,
          "",
          "s-faint");
      svg.text(
          LEFT - 16, writing, (level > 0 ? "+" : "") + PageText.number(level), 9.5, Anchor.END);
    }
  }

  private List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    for (int i = advice.layers().size() - 1; i >= 0; i--) {
      Layer layer = advice.layers().get(i);
      List<String> lines =
          new ArrayList<>(Svg.lines(layer.order() + "  " + layer.name(), LETTERS, 3));
      int bold = lines.size();
      String rule =
          layer.because().isEmpty() ? "" : " ‹" + layer.because().get(0).rule().id() + "›";
      lines.add(
          thickness(layer.thickness())
              + " · "
              + speech.say(
                  "top-at", "level", (layer.level() > 0 ? "+" : "") + Texts.mm(layer.level())));
      lines.add(rule.strip());
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
      lines.add(Texts.mm(beneath.thicknessMm()) + " · " + speech.say("top-at", "level", "0 mm"));
    }
    if (!Double.isNaN(beneath.joistDepthMm())) {
      lines.addAll(
          Svg.lines(
              speech.say(
                  "joists-beneath",
                  "breadth",
                  PageText.number(beneath.joistBreadthMm()),
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

  private void label(Label label) {
    double at = label.top + LINE - 5;
    svg.stroke(
        Svg.move(RIGHT - 7, label.wanted)
            + Svg.lineTo(RIGHT + 5, label.wanted)
            + Svg.lineTo(LABELS - 8, at)
            + Svg.lineTo(LABELS - 3, at),
        MaterialStyle.FAINT,
        0.9,
        "",
        "s-faint");
    svg.circle(RIGHT - 7, label.wanted, 1.8, MaterialStyle.INK, "f");
    for (int i = 0; i < label.lines.size(); i++) {
      boolean bold = i < label.bold;
      svg.text(
          LABELS,
          label.top + LINE * (i + 1) - 2,
          label.lines.get(i),
          bold ? 10.5 : 9.5,
          Anchor.START,
          bold ? MaterialStyle.INK : MaterialStyle.FAINT,
          bold ? "t" : "t-faint",
          bold,
          0);
    }
  }

  /** A bar that shows how long 10 mm is. */
  private void bar(double height) {
    double length = 10 * scale;
    double x = 10;
    double y = Math.min(height - 6, base + deck * scale + GROUND + 8);
    svg.stroke(
        Svg.move(x, y - length)
            + Svg.lineTo(x, y)
            + Svg.move(x - 3, y - length)
            + Svg.lineTo(x + 3, y - length)
            + Svg.move(x - 3, y)
            + Svg.lineTo(x + 3, y),
        MaterialStyle.INK,
        1,
        "",
        "s");
    svg.text(x + 5, y - length / 2 + 3, "10 mm", 8.5, Anchor.START);
  }
}
