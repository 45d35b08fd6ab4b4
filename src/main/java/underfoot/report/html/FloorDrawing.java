package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.lesson.Lesson;
import underfoot.measure.Texts;
import underfoot.plan.BaseBelow;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/**
 * A floor as it is found: the room from above, and what is there cut through. Nothing new is shown.
 */
public final class FloorDrawing {
  private static final double WIDTH = 360;
  private static final double LEFT = 20;
  private static final double RIGHT = 250;
  private static final double TOP = 26;
  private static final double DEEPEST = 120;
  private static final double LETTERS = 9;
  private static final double EDGE = 16;

  private final Lesson lesson;
  private final Phrases phrases;
  private final String id;

  /**
   * @param lesson whose floor
   * @param phrases what is written
   * @param id what tells it from other drawings of the page
   */
  public FloorDrawing(Lesson lesson, Phrases phrases, String id) {
    this.lesson = lesson;
    this.phrases = phrases;
    this.id = id;
  }

  /** The drawings. */
  public HtmlWriter draw() {
    HtmlWriter out = new HtmlWriter();
    out.open("div", "class", "drawings").line();
    lesson
        .room()
        .ifPresent(
            room -> {
              String title = phrases.say("lesson-plan-title");
              RoomDrawing plan = new RoomDrawing(room, id + "-plan", title, title, 0);
              plan.floor();
              plan.walls();
              out.add(plan.svg().markup());
            });
    if (!lesson.below().family().isEmpty()) {
      out.add(cut());
    }
    return out.end("div");
  }

  private HtmlWriter cut() {
    BaseBelow below = lesson.below();
    boolean joists = !Double.isNaN(below.joistDepthMm());
    double deck = Double.isNaN(below.thicknessMm()) ? 20 : below.thicknessMm();
    double deep = deck + (joists ? below.joistDepthMm() : 0);
    boolean spaced = joists && !Double.isNaN(below.joistCentresMm());
    double wide = spaced ? below.joistCentresMm() + below.joistBreadthMm() : 1;
    double scale = Math.min(1.2, Math.min(DEEPEST / deep, (RIGHT - LEFT - 2 * EDGE) / wide));
    double bottom = TOP + deep * scale;
    String title = phrases.say("lesson-cut-title", "base", below.name());
    Svg svg = new Svg(id + "-cut", WIDTH, bottom + 30, title, title);
    MaterialStyle look =
        below.family().equals("solid") ? MaterialStyle.SOLID : MaterialStyle.TIMBER;
    for (MaterialStyle one : MaterialStyle.values()) {
      one.defineHatch(svg);
    }
    if (joists) {
      double broad = below.joistBreadthMm() * scale;
      double step = spaced ? below.joistCentresMm() * scale : 0;
      double first = LEFT + EDGE;
      for (int i = 0; i < (spaced ? 2 : 1); i++) {
        box(svg, first + i * step, TOP + deck * scale, broad, below.joistDepthMm() * scale, look);
      }
      if (spaced) {
        double y = bottom + 12;
        double from = first + broad / 2;
        svg.line(from, y, from + step, y, Ink.FAINT, 1);
        svg.text(from + step / 2, y + 11, Texts.mm(below.joistCentresMm()), LETTERS, Anchor.MIDDLE);
      }
      svg.text(
          RIGHT + 8,
          TOP + (deck + below.joistDepthMm() / 2) * scale,
          phrases.say(
              "lesson-cut-joist",
              "breadth",
              Texts.tenths(below.joistBreadthMm()),
              "depth",
              Texts.mm(below.joistDepthMm())),
          LETTERS,
          Anchor.START);
    }
    box(svg, LEFT, TOP, RIGHT - LEFT, deck * scale, look);
    svg.text(LEFT, TOP - 8, below.name(), LETTERS + 1, Anchor.START, Ink.INK, true, 0);
    if (!Double.isNaN(below.thicknessMm())) {
      svg.text(
          RIGHT + 8,
          TOP + deck * scale / 2 + 3,
          Texts.mm(below.thicknessMm()),
          LETTERS,
          Anchor.START);
    }
    return svg.markup();
  }

  private static void box(Svg svg, double x, double y, double w, double h, MaterialStyle look) {
    svg.rect(x, y, w, h, look);
    svg.rect(x, y, w, h, "url(#" + look.hatch(svg.id()) + ")", "");
    svg.stroke(Svg.path(x, y, x + w, y, x + w, y + h, x, y + h) + "Z", Ink.INK, 0.8);
  }
}
