package underfoot.cli;

import java.util.List;
import java.util.Locale;
import underfoot.knowledge.Sketches.Sketch;
import underfoot.report.html.SketchDrawing;
import underfoot.talk.Asked;
import underfoot.talk.Conversation;

/** A question as the page is sent it, its drawings as markup. */
record PageQuestion(
    String id,
    String part,
    String ask,
    String how,
    String means,
    String look,
    String drawing,
    String kind,
    String plan,
    boolean mayBeUnknown,
    String said,
    String guess,
    List<Choice> choices) {
  record Choice(String value, String looks, String drawing) {}

  static PageQuestion of(Asked asked, Conversation conversation) {
    return new PageQuestion(
        asked.place().id(),
        asked.part(),
        asked.ask(),
        asked.how(),
        asked.means(),
        asked.look(),
        drawing(asked.drawing(), conversation),
        asked.place().fact().kind().name().toLowerCase(Locale.ROOT),
        conversation.interview().book().help(asked.place().fact()).text("plan"),
        asked.mayBeUnknown(),
        asked.said(),
        asked.guess(),
        asked.choices().stream()
            .map(one -> new Choice(one.value(), one.looks(), drawing(one.drawing(), conversation)))
            .toList());
  }

  private static String drawing(String name, Conversation conversation) {
    Sketch sketch = conversation.interview().book().sketches().all().get(name);
    return sketch == null ? "" : SketchDrawing.svg(sketch);
  }
}
