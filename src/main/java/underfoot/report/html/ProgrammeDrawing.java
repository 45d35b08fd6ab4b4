package underfoot.report.html;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Step;
import underfoot.measure.Texts;
import underfoot.plan.ProgrammeStep;
import underfoot.report.HtmlWriter;
import underfoot.report.TimeText;
import underfoot.report.html.Svg.Anchor;

/** The steps of the work against time: work in full, waits hatched. */
final class ProgrammeDrawing {
  private static final double WIDTH = 360;
  private static final double LEFT = 8;
  private static final double ROW = 27;
  private static final double TOP = 24;
  private static final double A_DAY = 24;
  private static final double PER_LETTER = 5.4;
  private static final double[] TICKS = {6, 12, 24, 48, 24 * 7, 24 * 14, 24 * 28, 24 * 56};

  private final List<ProgrammeStep> steps;
  private final Phrases speech;

  ProgrammeDrawing(List<ProgrammeStep> steps, Phrases speech) {
    this.steps = steps;
    this.speech = speech;
  }

  /** Whether a step is a wait, nobody working. */
  static boolean waits(ProgrammeStep step) {
    return step.kind() == Step.Kind.WAIT;
  }

  HtmlWriter draw() {
    double end = steps.stream().mapToDouble(ProgrammeStep::endHour).max().orElse(1);
    double scale = (WIDTH - 2 * LEFT - 6) / Math.max(1, end);
    double height = TOP + steps.size() * ROW + 8;
    Svg svg =
        new Svg(
            "programme",
            WIDTH,
            height,
            speech.say("programme-title"),
            speech.say("programme-described", "total", TimeText.hours(end)));
    svg.hatch("programme-wait", 6, 6, "M-1 1L1 -1M0 6L6 0M5 7L7 5", "");
    double tick = TICKS[TICKS.length - 1];
    for (int i = TICKS.length - 1; i >= 0; i--) {
      if (end / TICKS[i] <= 8) {
        tick = TICKS[i];
      }
    }
    for (double hour = 0; hour <= end + 1e-9; hour += tick) {
      double at = hour;
      double x = LEFT + at * scale;
      svg.line(x, TOP - 4, x, height - 6, Ink.GRID, 0.8);
      String words =
          tick < A_DAY
              ? Texts.tenths(at) + " h"
              : date(at)
                  .map(TimeText::dayAndMonth)
                  .orElseGet(() -> speech.say("day", "number", Texts.tenths(at / A_DAY)));
      if (x <= WIDTH - 30) { // a word further out would be cut off
        svg.text(x, TOP - 9, words, 8.5, Anchor.START);
      }
    }
    for (int i = 0; i < steps.size(); i++) {
      ProgrammeStep step = steps.get(i);
      double y = TOP + i * ROW;
      double x = LEFT + step.startHour() * scale;
      double w = Math.max(2.5, (step.endHour() - step.startHour()) * scale);
      boolean wait = waits(step);
      svg.rect(x, y + 13, w, 9, wait ? "#e8e2d3" : "#3f5f57", wait ? "bar-wait" : "bar-work");
      if (wait) {
        svg.rect(x, y + 13, w, 9, "url(#programme-wait)", "");
      }
      svg.stroke(Svg.path(x, y + 13) + "h" + Svg.n(w) + "v9h-" + Svg.n(w) + "Z", Ink.INK, 0.7);
      String words =
          (step.critical() ? "» " : "") + step.step() + ", " + TimeText.hours(step.hours());
      boolean right = x + Svg.cut(words, 62).length() * PER_LETTER > WIDTH - LEFT;
      svg.halo(
          right ? WIDTH - LEFT : Math.max(LEFT, x),
          y + 9.5,
          Svg.cut(words, 62),
          9.5,
          right ? Anchor.END : Anchor.START);
    }
    return svg.markup();
  }

  /** The date so many hours from the start of the work; empty without a start date. */
  private Optional<LocalDateTime> date(double hour) {
    return steps.get(0).begins().map(begin -> begin.plusHours(Math.round(hour)));
  }
}
