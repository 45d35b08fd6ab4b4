package underfoot.report.html;

import java.util.List;
import java.util.Optional;
import underfoot.measure.Texts;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Justification;
import underfoot.plan.LevelPlan;
import underfoot.plan.Milestone;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.report.Sentences;
import underfoot.report.TimeText;

/**
 * The parts of the page about the work: levels, boards, tiles, programme, materials, what to tick.
 */
final class WorkParts extends HtmlParts {
  /** More than a person sets out by; the rest are in the JSON. */
  private static final int MARKERS_TOLD = 400;

  WorkParts(HtmlParts page) {
    super(page);
  }

  void levels() {
    Optional<LevelPlan> plan = after.levels();
    plan.ifPresent(
        one -> {
          say(
              "p",
              one.level() ? "levels-level" : "levels-flat",
              "volume",
              Texts.of(Math.ceil(one.volumeL()), "L"));
          chains.of(one.because());
        });
    after
        .room()
        .flatMap(room -> LevelDrawing.of(room, plan, speech))
        .ifPresent(
            drawing ->
                Drawings.figure(drawing.draw(), speech.say(LevelDrawing.caption(plan)), out));
    if (plan.isPresent()) {
      markers(plan.get());
    }
  }

  private void markers(LevelPlan plan) {
    table.open(
        "table-markers", "col-number", "col-x", "col-y", "col-reading", "col-marker", "col-tick");
    int number = 0;
    int told = Math.min(plan.markers().size(), MARKERS_TOLD);
    for (LevelPlan.Marker marker : plan.markers().subList(0, told)) {
      number++;
      out.open("tr");
      out.element("th", Integer.toString(number), "scope", "row");
      table.number(Texts.metres(marker.xMm()));
      table.number(Texts.metres(marker.yMm()));
      table.number(Texts.mm(marker.readingMm()));
      out.open("td", "class", "n")
          .element("strong", Texts.of(Math.round(marker.heightMm() * 2) / 2.0, "mm"))
          .close("td");
      out.open("td");
      box(speech.say("marker-tick", "number", Integer.toString(number)), false);
      out.close("td").end("tr");
    }
    table.close();
    if (told < plan.markers().size()) {
      say("p", "markers-more", "count", Integer.toString(plan.markers().size() - told));
    }
    say("p", plan.level() ? "datum-level" : "datum-flat", "datum", Texts.mm(plan.datumMm()));
  }

  void boards() {
    RoomPlan room = after.room().orElseThrow();
    for (SetOut.Boards boards : after.setOut().orElseThrow().boards()) {
      new BoardPart(this, room, boards).write();
      chains.of(boards.because());
    }
  }

  void tiles() {
    SetOut setOut = after.setOut().orElseThrow();
    if (setOut.tiles().isEmpty()) {
      say("p", setOut.whyNoTiles());
      return;
    }
    new TilePart(this, after.room().orElseThrow(), setOut.tiles().get()).write();
    chains.of(setOut.tiles().get().because());
  }

  void programme() {
    out.element(
        "p",
        Sentences.programme(
            after.programme().get(0), !advice.remedies().isEmpty(), "programme-marked", speech));
    Sentences.undated(advice, speech).ifPresent(text -> out.element("p", text));
    Drawings.figure(
        new ProgrammeDrawing(after.programme(), speech).draw(),
        speech.say("programme-caption"),
        out);
    out.open("ul", "class", "days");
    for (Milestone one : after.schedule().milestones()) {
      String when = TimeText.when(speech, one.on(), one.hour());
      say("li", "milestone-line", "what", Texts.capital(one.what()), "when", when);
    }
    out.end("ul");
    table.open("table-programme", "col-step", "col-begins", "col-takes");
    for (ProgrammeStep step : after.programme()) {
      out.open("tr", "class", ProgrammeDrawing.waits(step) ? "wait" : "");
      out.open("th", "scope", "row").text((step.critical() ? "» " : "") + step.step());
      chains.of(step.because());
      out.close("th");
      table.number(
          step.begins().map(TimeText::moment).orElseGet(() -> TimeText.hours(step.startHour())));
      table.number(TimeText.hours(step.hours()));
      out.end("tr");
    }
    table.close();
  }

  void materials() {
    new ShoppingPart(this).write();
  }

  void checklist() {
    out.open("ul", "class", "checks");
    for (RemedyNote remedy : advice.remedies()) {
      check(
          (remedy.hold() ? speech.say("hold-point") + ": " : "") + remedy.title(),
          remedy.because());
    }
    for (CautionNote caution : advice.cautions()) {
      if (caution.id().startsWith(CHECK)) {
        check(caution.text(), caution.because());
      }
    }
    advice
        .coverage()
        .ifPresent(
            coverage -> {
              check(
                  speech.say("coverage-target", "target", Texts.of(coverage.targetPercent(), "%")),
                  coverage.because());
              coverage.check().forEach(say -> check(say.text(), say.because()));
            });
    out.end("ul");
  }

  private void check(String words, List<Justification> because) {
    out.open("li");
    box(words, true);
    chains.of(because);
    out.end("li");
  }
}
