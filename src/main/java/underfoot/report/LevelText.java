package underfoot.report;

import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.LevelPlan;
import underfoot.report.TextPage.Tone;

/** How the levelling compound is set out, as plain text. */
final class LevelText {
  private static final int MARKERS_TOLD = 40;
  private static final String INDENT = "   ";

  private LevelText() {}

  /** The markers, from the shallowest to the deepest as they stand in the survey; the first few. */
  static void write(LevelPlan plan, Phrases phrases, TextPage page) {
    page.heading(phrases.say("heading-levels"));
    page.para(
        phrases.say(
                plan.level() ? "levels-level" : "levels-flat",
                "volume",
                Texts.of(Math.ceil(plan.volumeL()), "L"))
            + " "
            + TextReport.ids(plan.because()));
    int told = Math.min(plan.markers().size(), MARKERS_TOLD);
    for (LevelPlan.Marker marker : plan.markers().subList(0, told)) {
      page.para(
          " - ",
          INDENT,
          phrases.say(
              "marker",
              "x",
              Texts.metres(marker.xMm()),
              "y",
              Texts.metres(marker.yMm()),
              "height",
              Texts.of(Math.round(marker.heightMm() * 2) / 2.0, "mm")),
          Tone.PLAIN);
    }
    if (told < plan.markers().size()) {
      page.para(
          phrases.say("markers-more", "count", Integer.toString(plan.markers().size() - told)));
    }
  }
}
