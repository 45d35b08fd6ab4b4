package underfoot.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.buildup.Severity;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.SetOut;

/**
 * What a fitter takes to the site: enough to build from, on one page. Gates and dangers are whole.
 *
 * @param before what stops the work or must be cleared, whole
 * @param dangers what can hurt, whole
 * @param first what else is put right first, whole
 * @param firstTitles the same by title
 * @param layers each layer from the base up
 * @param measures contact, heights at doors, where tiles begin
 * @param days the work by days, and the days that are waited for
 * @param checks what is checked on site
 */
public record SiteSheet(
    List<String> before,
    List<String> dangers,
    List<String> first,
    List<String> firstTitles,
    List<LayerLine> layers,
    List<String> measures,
    List<String> days,
    List<String> checks) {
  private static final String CHECK = "check-";
  private static final double HOURS_A_DAY = 24;

  /**
   * One layer.
   *
   * @param number its place from the base
   * @param name what it is called
   * @param thickness how thick it comes out
   * @param key classes, notch, screws, joint, contact
   */
  public record LayerLine(int number, String name, String thickness, String key) {}

  /** Copies the lists. */
  public SiteSheet {
    before = List.copyOf(before);
    dangers = List.copyOf(dangers);
    first = List.copyOf(first);
    firstTitles = List.copyOf(firstTitles);
    layers = List.copyOf(layers);
    measures = List.copyOf(measures);
    days = List.copyOf(days);
    checks = List.copyOf(checks);
  }

  /** The sheet of an advice. */
  public static SiteSheet of(Advice advice, Phrases phrases) {
    List<String> before = new ArrayList<>();
    for (HaltNote one : advice.stopFindings()) {
      before.add(TextReport.titled(one.title(), one.parts().must()));
    }
    List<String> first = new ArrayList<>();
    List<String> firstTitles = new ArrayList<>();
    for (RemedyNote one : advice.remedies()) {
      if (one.hold()) {
        before.add(Texts.sentence(one.title()) + " " + one.parts().must());
      } else {
        first.add(Texts.sentence(one.title()) + " " + one.parts().must());
        firstTitles.add(Texts.sentence(one.title()));
      }
    }
    List<String> dangers = new ArrayList<>();
    List<String> checks = new ArrayList<>();
    for (CautionNote one : advice.cautions()) {
      if (one.severity() == Severity.DANGER) {
        dangers.add(Texts.sentence(one.title()) + " " + one.parts().must());
      } else if (one.id().startsWith(CHECK) && advice.builds()) {
        checks.add(one.parts().must());
      }
    }
    return new SiteSheet(
        before,
        dangers,
        first,
        firstTitles,
        advice.layers().stream().map(one -> line(one, phrases)).toList(),
        advice.builds() ? measures(advice, phrases) : List.of(),
        days(advice, phrases),
        checks);
  }

  /** A layer of which nothing is set, cut or combed is told by what it is made of. */
  private static LayerLine line(Layer layer, Phrases phrases) {
    String key = key(layer, phrases);
    return new LayerLine(
        layer.order(),
        layer.name(),
        Sentences.thickness(layer.thickness(), phrases),
        key.isEmpty() ? layer.material() : key);
  }

  /** What is set, cut or combed by a layer, its contact too; empty if there is nothing to tell. */
  static String key(Layer layer, Phrases phrases) {
    List<String> key = new ArrayList<>(layer.key());
    layer
        .coveragePercent()
        .ifPresent(
            percent -> key.add(phrases.say("sheet-contact", "percent", Texts.of(percent, "%"))));
    return String.join("; ", key);
  }

  private static List<String> measures(Advice advice, Phrases phrases) {
    List<String> said = new ArrayList<>();
    advice
        .coverage()
        .ifPresent(
            one -> {
              String target = Texts.of(one.targetPercent(), "%");
              String check = one.check().get(0).parts().must();
              said.add(phrases.say("coverage-target", "target", target) + " " + check);
            });
    said.add(Sentences.rise(advice.heights(), advice.massKgPerM2(), phrases));
    advice.heights().doors().forEach(door -> said.add(Sentences.doorAndStep(door, phrases)));
    Optional<SetOut> setOut = advice.consequences().setOut();
    setOut.ifPresent(
        all -> all.boards().forEach(one -> said.add(Sentences.boards(one.plan(), phrases))));
    setOut
        .flatMap(SetOut::tiles)
        .ifPresent(tiles -> said.add(Sentences.startLines(tiles.layout(), phrases)));
    String care = BriefReport.care(advice, phrases);
    if (!care.isEmpty()) {
      said.add(care);
    }
    return said;
  }

  /**
   * The steps that begin on each day, and after how long or when the room is walked on and used.
   */
  private static List<String> days(Advice advice, Phrases phrases) {
    Map<String, List<String>> steps = new LinkedHashMap<>();
    for (ProgrammeStep step : advice.consequences().programme()) {
      String day =
          step.begins()
              .map(TimeText::day)
              .orElseGet(
                  () ->
                      phrases.say(
                          "sheet-day",
                          "day",
                          Integer.toString((int) (step.startHour() / HOURS_A_DAY) + 1)));
      steps
          .computeIfAbsent(day, none -> new ArrayList<>())
          .add(Texts.lower(step.step()) + " (" + TimeText.hours(step.hours()) + ")");
    }
    List<String> said = new ArrayList<>();
    steps.forEach((day, all) -> said.add(day + ": " + String.join("; ", all) + "."));
    String waited = ProgrammeText.milestones(advice, phrases, "milestone-line");
    if (!waited.isEmpty()) {
      said.add(waited);
    }
    return said;
  }

  /** Writes the sheet as text. */
  static void write(Advice advice, Phrases phrases, TextPage page) {
    SiteSheet sheet = of(advice, phrases);
    TextReport.answer(advice, phrases, page);
    list("sheet-before", sheet.before(), phrases, page);
    list("heading-danger", sheet.dangers(), phrases, page);
    list("heading-first", sheet.first(), phrases, page);
    if (advice.builds()) {
      page.heading(phrases.say("heading-build-up"));
      new TextSection(advice, phrases, page).draw();
      page.heading(phrases.say("sheet-layers"));
      for (LayerLine line : sheet.layers()) {
        String key = line.key().isEmpty() ? "" : ": " + line.key();
        page.para(
            TextPage.numbered(line.number()),
            "   ",
            Texts.sentence(line.name() + ", " + line.thickness() + key),
            TextPage.Tone.PLAIN);
      }
    } else {
      page.blank();
      page.para(phrases.say("nothing-is-built"));
    }
    list("sheet-measures", sheet.measures(), phrases, page);
    list("heading-programme", sheet.days(), phrases, page);
    list("heading-checklist", sheet.checks(), phrases, page);
  }

  private static void list(String heading, List<String> lines, Phrases phrases, TextPage page) {
    if (!lines.isEmpty()) {
      page.heading(phrases.say(heading));
      lines.forEach(page::item);
    }
  }
}
