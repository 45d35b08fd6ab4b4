package underfoot.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.JoistCuts;
import underfoot.plan.JoistCuts.Cut;
import underfoot.plan.JoistCuts.Zone;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;

/**
 * Half a joist from its side, from a support to the middle of its span, with its notches and holes
 * at their places and, in broken frames, where such cuts may lie. A cut that must be cleared is
 * crossed. The joist is drawn deeper than it is, so that small cuts can be seen.
 */
final class CutDrawing {
  private static final double WIDTH = 338;
  private static final double LEFT = 42;
  private static final double RIGHT = 12;
  private static final double TOP = 34;
  private static final double DEEP = 70;
  private static final double SUPPORT = 14;
  private static final double WRITING = 10;
  private static final double LINE = 13;
  private static final double APART = 15;
  private static final double LEAST = 3;
  private static final double TICKS_APART = 25;
  private static final int LETTERS = 57;

  private final JoistCuts joist;
  private final Phrases speech;
  private final double along;
  private final double down;

  private CutDrawing(JoistCuts joist, Phrases speech) {
    this.joist = joist;
    this.speech = speech;
    this.along = (WIDTH - LEFT - RIGHT) / (joist.spanMm() / 2);
    this.down = DEEP / joist.depthMm();
  }

  /** The drawings of several joists; where cuts may lie is told below the last. */
  static List<HtmlWriter> all(List<JoistCuts> joists, Phrases speech) {
    List<HtmlWriter> drawn = new ArrayList<>();
    for (JoistCuts joist : joists) {
      boolean last = drawn.size() == joists.size() - 1;
      drawn.add(new CutDrawing(joist, speech).draw("cuts-" + (drawn.size() + 1), last));
    }
    return drawn;
  }

  /** Each cut in words. */
  private static List<String> told(JoistCuts joist, Phrases speech) {
    List<String> said = new ArrayList<>();
    int number = 0;
    for (Cut cut : joist.cuts()) {
      String id = "cut-" + (cut.hole() ? "hole" : "notch");
      String what =
          speech.say(
              id,
              "number",
              Integer.toString(++number),
              "name",
              cut.name(),
              "size",
              Texts.whole(cut.sizeMm()),
              "from",
              Texts.whole(cut.fromSupportMm()));
      said.add(what + ' ' + speech.say(cut.gated() ? "cut-gated" : "cut-allowed"));
    }
    return said;
  }

  /** Where cuts may lie, in words. */
  private static List<String> allowed(JoistCuts joist, Phrases speech) {
    List<String> said = new ArrayList<>();
    for (Zone zone : joist.zones()) {
      said.add(
          speech.say(
              "zone-of-" + (zone.hole() ? "holes" : "notches"),
              "from",
              Texts.whole(zone.fromMm()),
              "to",
              Texts.whole(zone.toMm()),
              "most",
              Texts.whole(Math.floor(zone.mostMm()))));
    }
    if (joist.zones().isEmpty()) {
      said.add(speech.say("no-zones-hold"));
    }
    return said;
  }

  private double x(double mm) {
    return LEFT + Math.min(mm, joist.spanMm() / 2) * along;
  }

  private HtmlWriter draw(String id, boolean last) {
    List<String> told = told(joist, speech);
    List<String> lines = new ArrayList<>();
    if (last) {
      told.addAll(allowed(joist, speech));
    }
    told.forEach(one -> lines.addAll(Svg.lines(one, LETTERS, 3)));
    String title =
        joist.joist().isEmpty()
            ? speech.say("cuts-title")
            : speech.say("cuts-title-of", "joist", joist.joist());
    double foot = TOP + DEEP;
    double writing = foot + SUPPORT + 34;
    double height = writing + lines.size() * LINE + 4;
    Svg svg = new Svg(id, WIDTH, height, title, String.join(" ", told));
    svg.rect(LEFT, TOP, WIDTH - LEFT - RIGHT, DEEP, MaterialStyle.TIMBER);
    outline(svg, foot);
    joist.zones().forEach(zone -> zone(zone, svg));
    double beside = LEFT - APART;
    for (int i = 0; i < joist.cuts().size(); i++) {
      Cut cut = joist.cuts().get(i);
      double at = x(cut.fromSupportMm());
      beside = Math.min(Math.max(at, beside + APART), WIDTH - RIGHT);
      cut(cut, i + 1, at, beside, svg);
    }
    measures(svg, foot);
    svg.text(4, TOP - 20, title, WRITING, Anchor.START, Ink.INK, true, 0);
    double y = writing;
    for (String line : lines) {
      svg.text(4, y, line, WRITING, Anchor.START);
      y += LINE;
    }
    return svg.markup();
  }

  /** The joist, its support, and where it is cut off at the middle of the span. */
  private void outline(Svg svg, double foot) {
    double end = WIDTH - RIGHT;
    svg.stroke(Svg.path(end, TOP, LEFT - 8, TOP, LEFT - 8, foot, end, foot), Ink.INK, 1.2);
    svg.rect(LEFT - 8, TOP, 8, DEEP, MaterialStyle.TIMBER);
    svg.rect(LEFT - 26, foot, 26, SUPPORT, MaterialStyle.SOLID);
    svg.stroke(
        Svg.path(LEFT - 26, foot, LEFT, foot, LEFT, foot + SUPPORT, LEFT - 26, foot + SUPPORT)
            + "Z",
        Ink.INK,
        1);
    svg.stroke(
        Svg.path(end, TOP - 6, end - 3, TOP + DEEP / 2, end + 3, TOP + DEEP / 2 + 6, end, foot + 6),
        Ink.INK,
        1);
  }

  private void zone(Zone zone, Svg svg) {
    double left = x(zone.fromMm());
    double right = x(zone.toMm());
    double deep = zone.mostMm() * down;
    double top = zone.hole() ? TOP + (DEEP - deep) / 2 : TOP;
    svg.rect(left, top, right - left, deep, "#ffffff", "zone-of-cuts");
    svg.stroke(
        Svg.path(left, top, right, top, right, top + deep, left, top + deep) + "Z",
        Ink.POUR,
        1.2,
        "4 2");
  }

  private void cut(Cut cut, int number, double at, double label, Svg svg) {
    Ink ink = cut.gated() ? Ink.MARK : Ink.INK;
    double high = Math.max(LEAST, cut.sizeMm() * down);
    double wide = Math.max(LEAST, cut.sizeMm() * along);
    double middle = TOP + DEEP / 2;
    String path;
    if (cut.hole()) {
      path =
          String.format(
              Locale.ROOT,
              "M%.2f %.2fa%.2f %.2f 0 1 0 %.2f 0a%.2f %.2f 0 1 0 %.2f 0Z",
              at - wide / 2,
              middle,
              wide / 2,
              high / 2,
              wide,
              wide / 2,
              high / 2,
              -wide);
    } else {
      double half = Math.max(LEAST, wide / 2);
      path =
          Svg.path(at - half, TOP, at + half, TOP, at + half, TOP + high, at - half, TOP + high)
              + "Z";
      middle = TOP + high / 2;
    }
    svg.fill(path, Ink.PAPER);
    svg.stroke(path, ink, 1.6);
    if (cut.gated()) {
      double arm = Math.max(5, high / 2 + 2);
      svg.stroke(
          Svg.path(at - 6, middle - arm, at + 6, middle + arm)
              + Svg.path(at - 6, middle + arm, at + 6, middle - arm),
          ink,
          1.8);
    }
    svg.line(at, cut.hole() ? middle - high / 2 : TOP, label, TOP - 5, ink, 0.8);
    svg.text(label, TOP - 7, Integer.toString(number), WRITING, Anchor.MIDDLE, ink, true, 0);
  }

  /** Distances from the support below the joist, its depth beside it. */
  private void measures(Svg svg, double foot) {
    List<Double> places = new ArrayList<>(List.of(0.0, joist.spanMm() / 2));
    joist.zones().forEach(zone -> places.addAll(List.of(zone.fromMm(), zone.toMm())));
    places.sort(null);
    double last = Double.NEGATIVE_INFINITY;
    double line = foot + SUPPORT + 4;
    svg.line(LEFT, line, WIDTH - RIGHT, line, Ink.FAINT, 0.8);
    for (double mm : places) {
      double at = x(mm);
      svg.line(at, line - 3, at, line + 3, Ink.FAINT, 0.8);
      if (at - last >= TICKS_APART) {
        svg.text(at, line + 13, Texts.tenths(Math.rint(mm)), WRITING, Anchor.MIDDLE);
        last = at;
      }
    }
    svg.text(4, line + 13, "mm", WRITING, Anchor.START, Ink.FAINT);
    double beside = LEFT - 14;
    svg.line(beside, TOP, beside, foot, Ink.FAINT, 0.8);
    svg.line(beside - 3, TOP, beside + 3, TOP, Ink.FAINT, 0.8);
    String depth = Texts.tenths(Math.rint(joist.depthMm()));
    svg.text(beside - 4, TOP + DEEP / 2 + 3, depth, WRITING, Anchor.END);
  }
}
