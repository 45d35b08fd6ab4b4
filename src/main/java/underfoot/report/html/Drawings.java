package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.Consequences;
import underfoot.report.HtmlWriter;

/** The drawings of an advice by themselves, for a page that draws while somebody answers. */
public final class Drawings {
  private Drawings() {}

  /**
   * The build-up cut through.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @return a figure with its caption; empty if nothing is built
   */
  public static String section(Advice advice, Phrases phrases) {
    return advice.builds()
        ? figure(new SectionDrawing(advice, phrases).draw(), phrases.say("section-caption"))
        : "";
  }

  /**
   * The floor's levels, or how deep the compound stands where one is poured.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @return a figure with its caption; empty if the room is not drawn or too few places of it were
   *     measured
   */
  public static String levels(Advice advice, Phrases phrases) {
    Consequences after = advice.consequences();
    return after
        .room()
        .flatMap(room -> LevelDrawing.of(room, after.levels(), phrases))
        .map(one -> figure(one.draw(), phrases.say(LevelDrawing.caption(after.levels()))))
        .orElse("");
  }

  private static String figure(HtmlWriter drawing, String caption) {
    HtmlWriter out = new HtmlWriter();
    figure(drawing, caption, out);
    return out.toString();
  }

  /** Writes a drawing with its caption. */
  static void figure(HtmlWriter drawing, String caption, HtmlWriter out) {
    out.open("figure").add(drawing).element("figcaption", caption).end("figure");
  }
}
