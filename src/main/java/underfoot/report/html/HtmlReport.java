package underfoot.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.ChangeNote;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.Consequences;
import underfoot.plan.Cost;
import underfoot.plan.FindOut;
import underfoot.plan.Justification;
import underfoot.plan.LevelPlan;
import underfoot.plan.Milestone;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.QuantityLine;
import underfoot.plan.RoomPlan;
import underfoot.plan.SetOut;
import underfoot.report.BuildUpLine;
import underfoot.report.CostText;
import underfoot.report.HtmlPage;
import underfoot.report.TimeText;

/**
 * The advice as one page that needs nothing else: no network, no script. The answer comes first;
 * each part opens to its rules, and each rule to the chain it rests on.
 */
public final class HtmlReport {
  /** Notes whose ids begin so belong to the list that is ticked on site. */
  private static final String CHECK = "check-";

  /** What a page is made for. */
  public enum Medium {
    /** A browser: light and dark, small and large, and paper from there. */
    SCREEN("page.css"),
    /** A renderer of paper pages: no folding parts, no colours by name. */
    PAPER("paper.css");

    private final String style;

    Medium(String style) {
      this.style = style;
    }
  }

  private final Advice advice;
  private final PageText speech;
  private final Medium medium;
  private final HtmlWriter out = new HtmlWriter();
  private final Chains chains;
  private final Map<String, String> contents = new LinkedHashMap<>();

  private HtmlReport(Advice advice, Phrases phrases, Medium medium) {
    this.advice = advice;
    this.speech = new PageText(phrases);
    this.medium = medium;
    this.chains = new Chains(out, speech);
  }

  /**
   * Makes the page.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @param medium what it is made for
   * @return well-formed XHTML in HTML's own form, UTF-8 when written out
   */
  public static String of(
      Advice advice, Phrases phrases, String version, String ruleBase, Medium medium) {
    return new HtmlReport(advice, phrases, medium).page(version, ruleBase);
  }

  /**
   * What the page says without its frame, for a page that shows it within its own.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @return markup to stand in a body, styled by {@code page.css} beside this class
   */
  public static String body(Advice advice, Phrases phrases, String version, String ruleBase) {
    HtmlReport report = new HtmlReport(advice, phrases, Medium.SCREEN);
    report.new HtmlBody().write(version, ruleBase);
    return report.out.toString();
  }

  private String page(String version, String ruleBase) {
    HtmlBody body = new HtmlBody();
    body.write(version, ruleBase);
    HtmlWriter page = new HtmlWriter();
    page.raw("<!DOCTYPE html>\n");
    page.open("html", "lang", "en-GB", "xmlns", "http://www.w3.org/1999/xhtml");
    page.open("head").line();
    page.empty("meta", "charset", "utf-8").line();
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", HtmlPage.POLICY).line();
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    page.empty("meta", "name", "color-scheme", "content", "light dark").line();
    page.element("title", advice.scenario() + " – " + speech.say("brand")).line();
    page.open("style").raw(style()).end("style");
    page.end("head");
    page.open("body").line();
    page.add(out);
    page.end("body").end("html");
    return page.toString();
  }

  private String style() {
    try (InputStream in = HtmlReport.class.getResourceAsStream(medium.style)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes the parts. */
  private final class HtmlBody {
    private final Consequences after = advice.consequences();
    private final Table table = new Table(out, speech);

    void write(String version, String ruleBase) {
      List<Runnable> parts = new ArrayList<>();
      plan(parts, "build-up", "heading-build-up", advice.builds(), this::section);
      plan(parts, "layers", "heading-layers", advice.builds(), this::layers);
      plan(
          parts,
          "changes",
          advice.builds() ? "heading-changes-limits" : "heading-changes",
          !after.changes().isEmpty(),
          this::changes);
      plan(parts, "first", "heading-first", !advice.remedies().isEmpty(), this::remedies);
      for (Severity severity : List.of(Severity.DANGER, Severity.CARE)) {
        plan(
            parts,
            severity.word(),
            "heading-" + severity.word(),
            advice.cautions().stream().anyMatch(one -> one.severity() == severity),
            () -> cautions(severity));
      }
      plan(parts, "doors", "heading-heights", advice.builds(), this::doors);
      boolean levels =
          after.levels().isPresent()
              || after.room().map(r -> r.readings().size() > 2).orElse(false);
      plan(parts, "levels", "heading-level-map", levels, this::levels);
      List<SetOut.Boards> boards = after.setOut().map(SetOut::boards).orElse(List.of());
      plan(parts, "boards", "heading-boards", !boards.isEmpty(), this::boards);
      plan(
          parts,
          "tiles",
          "heading-tiles",
          advice.builds() && after.setOut().isPresent(),
          this::tiles);
      plan(parts, "programme", "heading-programme", !after.programme().isEmpty(), this::programme);
      plan(
          parts, "materials", "heading-quantities", !after.quantities().isEmpty(), this::materials);
      plan(parts, "checklist", "heading-checklist", advice.builds(), this::checklist);
      plan(parts, "find-out", "heading-find-out", !advice.findOutFirst().isEmpty(), this::findOut);
      plan(
          parts,
          "assumptions",
          "heading-assumptions-box",
          !advice.assumptions().isEmpty(),
          this::assumptions);
      plan(
          parts,
          "note",
          "heading-note",
          advice.cautions().stream().anyMatch(one -> one.severity() == Severity.NOTE),
          () -> cautions(Severity.NOTE));
      plan(
          parts,
          "alternatives",
          advice.builds() ? "heading-alternatives" : "no-way-stands",
          !advice.alternatives().isEmpty(),
          this::alternatives);
      if (medium == Medium.SCREEN) {
        out.element("a", speech.say("skip"), "class", "skip", "href", "#answer").line();
      }
      out.open("header");
      out.element("p", speech.say("brand-line"), "class", "brand");
      out.open("h1").own(advice.scenario()).close("h1");
      out.end("header");
      out.open("main").line();
      answer();
      if (medium == Medium.SCREEN) {
        contents();
      }
      parts.forEach(Runnable::run);
      out.end("main");
      out.open("footer");
      out.element("p", speech.say("footer-limits"));
      out.element(
          "p", speech.say("footer-made", "version", version, "rules", ruleBase), "class", "faint");
      out.end("footer");
    }

    private void plan(
        List<Runnable> parts, String id, String heading, boolean wanted, Runnable part) {
      if (!wanted) {
        return;
      }
      String title = speech.say(heading);
      contents.put(id, title);
      parts.add(
          () -> {
            out.open("section", "id", id, "aria-labelledby", id + "-h", "class", "part");
            out.element("h2", title, "id", id + "-h").line();
            part.run();
            out.end("section");
          });
    }

    private void contents() {
      out.open("nav", "aria-label", speech.say("contents"));
      out.open("ul");
      contents.forEach(
          (id, title) -> out.open("li").element("a", title, "href", "#" + id).close("li"));
      out.close("ul").end("nav");
    }

    // --- the answer

    private void answer() {
      String verdict = advice.verdict().word();
      out.open(
          "section", "id", "answer", "aria-labelledby", "answer-h", "class", "answer " + verdict);
      out.element("h2", speech.say("verdict-" + verdict), "id", "answer-h");
      out.open("p", "class", "summary").own(advice.summary()).close("p");
      if (!advice.builds()) {
        out.element("p", speech.say("nothing-is-built"));
      }
      for (Verdict kind : List.of(Verdict.STOP, Verdict.OUTSIDE_GUIDANCE)) {
        List<HaltNote> stopFindings =
            advice.stopFindings().stream()
                .filter(stopFinding -> stopFinding.verdict() == kind)
                .toList();
        if (stopFindings.isEmpty()) {
          continue;
        }
        out.element("h3", speech.say(kind == Verdict.STOP ? "heading-stop" : "heading-outside"));
        for (HaltNote stopFinding : stopFindings) {
          out.open("div", "class", "note danger");
          out.element("h4", stopFinding.title());
          out.open("p").own(stopFinding.text()).close("p");
          chains.of(stopFinding.because());
          out.end("div");
        }
      }
      if (advice.builds()) {
        keyFigures();
      }
      out.end("section");
    }

    private void keyFigures() {
      out.open("dl", "class", "key");
      key("key-rise", Texts.mm(advice.heights().aboveOldFloor().mean()));
      key("key-mass", Texts.of(Math.round(advice.massKgPerM2()), "kg/m2"));
      advice.coverage().ifPresent(one -> key("key-contact", Texts.of(one.targetPercent(), "%")));
      after.schedule().milestones().stream()
          .filter(one -> one.hour() == after.schedule().inUseAfterHours())
          .findFirst()
          .ifPresent(one -> key("key-time", TimeText.when(speech.phrases(), one.on(), one.hour())));
      after
          .setOut()
          .flatMap(SetOut::tiles)
          .ifPresent(
              tiles ->
                  key(
                      "key-tiles",
                      speech.say("count-tiles", "count", Long.toString(tiles.toOrder()))));
      after.cost().ifPresent(cost -> key("key-cost", CostText.of(cost, speech.phrases())));
      out.end("dl");
    }

    private void key(String phrase, String value) {
      out.open("div");
      out.element("dt", speech.say(phrase)).element("dd", value);
      out.close("div");
    }

    // --- the build-up

    private void figure(HtmlWriter drawing, String caption) {
      out.open("figure");
      out.add(drawing);
      out.element("figcaption", caption);
      out.end("figure");
    }

    private void section() {
      figure(new SectionDrawing(advice, speech).draw(), speech.say("section-caption"));
      double above = advice.heights().aboveOldFloor().mean();
      if (Math.abs(above - advice.heights().rise().mean()) > 1e-6) {
        out.element("p", speech.say("levels-from-base", "above", Texts.mm(above)));
      }
    }

    private void layers() {
      if (medium == Medium.SCREEN) {
        out.element("p", speech.say("how-to-open"), "class", "faint screen-only");
      }
      out.open("ol", "class", "layers");
      for (int i = 0; i < advice.layers().size(); i++) {
        layer(advice.layers().get(i));
      }
      out.end("ol");
    }

    private void layer(Layer layer) {
      out.open("li");
      out.open("details", "class", "layer more").open("summary");
      out.open("span", "class", "swatch " + MaterialStyle.of(layer.family()).styled())
          .close("span");
      out.element("strong", layer.order() + " " + layer.name());
      out.text(" ");
      out.element("span", thickness(layer.thickness()), "class", "thick");
      out.close("summary");
      if (!layer.material().isEmpty() && !layer.material().equalsIgnoreCase(layer.name())) {
        out.element("p", Texts.capital(layer.material()) + ".", "class", "material");
      }
      Set<String> given = new LinkedHashSet<>();
      for (Justification one : layer.reasons()) {
        if (given.add(one.rule().id())) {
          out.open("p");
          out.element("em", speech.say("layer-why", "reason", one.rule().reason()) + ".");
          out.close("p");
        }
      }
      chains.of(layer.reasons());
      if (layer.spec().size() + layer.fixing().size() > 0) {
        out.open("ul", "class", "spec");
        for (Advice.Say say : layer.spec()) {
          out.open("li").open("p").own(say.text()).close("p");
          chains.of(say.because());
          out.end("li");
        }
        for (Advice.Say say : layer.fixing()) {
          out.open("li").open("p").own(speech.say("layer-fixing", "text", say.text())).close("p");
          chains.of(say.because());
          out.end("li");
        }
        out.end("ul");
      }
      out.close("details").end("li");
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

    // --- first things and cautions

    private void remedies() {
      out.open("ol", "class", "first");
      for (RemedyNote remedy : advice.remedies()) {
        out.open("li");
        out.open("h3");
        if (remedy.hold()) {
          out.element("span", speech.say("hold-point"), "class", "tag hold").text(" ");
        }
        out.own(remedy.title()).close("h3");
        out.open("p").own(remedy.text()).close("p");
        chains.of(remedy.because());
        out.end("li");
      }
      out.end("ol");
    }

    private void cautions(Severity severity) {
      for (CautionNote caution : advice.cautions()) {
        if (caution.severity() != severity || caution.id().startsWith(CHECK)) {
          continue;
        }
        // Dangers stand open; of the rest the title is told first.
        boolean folded = severity != Severity.DANGER;
        out.open(
            folded ? "details" : "div",
            "class",
            "note " + severity.word() + (folded ? " more" : ""));
        if (folded) {
          out.open("summary");
        }
        out.open("h3").own(caution.title()).close("h3");
        if (folded) {
          out.close("summary");
        }
        Map<String, String> parts = caution.parts();
        if (parts.containsKey("danger")) {
          out.open("dl");
          part(parts, "danger");
          part(parts, "whom");
          part(parts, "instead");
          out.end("dl");
        } else {
          out.open("p").own(caution.text()).close("p");
        }
        chains.of(caution.because());
        out.end(folded ? "details" : "div");
      }
    }

    private void part(Map<String, String> parts, String name) {
      if (parts.containsKey(name)) {
        out.element("dt", speech.say("caution-" + name));
        out.open("dd").own(parts.get(name)).close("dd");
      }
    }

    // --- levels

    private void levels() {
      Optional<LevelPlan> plan = after.levels();
      plan.ifPresent(
          one -> {
            out.element(
                "p",
                speech.say(
                    one.level() ? "levels-level" : "levels-flat",
                    "volume",
                    Texts.of(Math.ceil(one.volumeL()), "L")));
            chains.of(one.because());
          });
      after
          .room()
          .flatMap(room -> LevelDrawing.of(room, plan, speech))
          .ifPresent(drawing -> figure(drawing.draw(), speech.say(LevelDrawing.caption(plan))));
      if (plan.isPresent()) {
        markers(plan.get());
      }
    }

    private void markers(LevelPlan plan) {
      table.open(
          "table-markers", "col-number", "col-x", "col-y", "col-reading", "col-marker", "col-tick");
      int number = 0;
      for (LevelPlan.Marker marker : plan.markers()) {
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
      out.element(
          "p",
          speech.say(
              plan.level() ? "datum-level" : "datum-flat", "datum", Texts.mm(plan.datumMm())));
    }

    private void box(String label, boolean shown) {
      if (medium == Medium.PAPER) {
        out.open("span", "class", "box").close("span");
        if (shown) {
          out.text(" ").text(label);
        }
        return;
      }
      out.open("label").empty("input", "type", "checkbox");
      out.open("span", "class", shown ? "" : "hidden").own(label).close("span");
      out.close("label");
    }

    // --- boards and tiles

    private void boards() {
      RoomPlan room = after.room().orElseThrow();
      for (SetOut.Boards boards : after.setOut().orElseThrow().boards()) {
        new BoardPart(out, speech, room, boards).write();
        chains.of(boards.because());
      }
    }

    private void tiles() {
      SetOut setOut = after.setOut().orElseThrow();
      if (setOut.tiles().isEmpty()) {
        out.element("p", speech.say(setOut.whyNoTiles()));
        return;
      }
      new TilePart(out, speech, after.room().orElseThrow(), setOut.tiles().get()).write();
      chains.of(setOut.tiles().get().because());
    }

    // --- doors, programme, materials

    private void doors() {
      LayerThickness rise = advice.heights().aboveOldFloor();
      out.element(
          "p",
          speech.say(
              rise.min() == rise.max() ? "rise-even" : "rise",
              "mean",
              Texts.mm(rise.mean()),
              "least",
              Texts.mm(rise.min()),
              "most",
              Texts.mm(rise.max()),
              "mass",
              Texts.of(Math.round(advice.massKgPerM2()), "kg/m2")));
      if (advice.heights().doors().isEmpty()) {
        return;
      }
      out.open("ul");
      for (Door door : advice.heights().doors()) {
        double gap = door.gapLeftMm();
        String id =
            door.fits().isEmpty()
                ? "door-unknown"
                : gap < 0
                    ? "door-in-the-way"
                    : door.fits().get() ? "door-fits" : "door-does-not-fit";
        String words =
            speech.say(id, "door", Texts.capital(door.name()), "gap", Texts.mm(Math.abs(gap)));
        if (!Double.isNaN(door.stepMm())) {
          words += ' ' + speech.say("door-step", "step", Texts.mm(door.stepMm()));
        }
        out.open("li").own(words).end("li");
      }
      out.end("ul");
    }

    private void programme() {
      Optional<LocalDateTime> first = after.programme().get(0).begins();
      String from =
          first
              .map(start -> speech.say("programme-dated", "start", TimeText.day(start)))
              .orElseGet(() -> speech.say("programme-monday"));
      from += ' ' + speech.say("programme-marked");
      if (!advice.remedies().isEmpty()) {
        from += ' ' + speech.say(first.isPresent() ? "programme-by-then" : "programme-from");
      }
      out.element("p", from);
      figure(
          new ProgrammeDrawing(after.programme(), speech).draw(), speech.say("programme-caption"));
      out.open("ul", "class", "days");
      for (Milestone one : after.schedule().milestones()) {
        String when = TimeText.when(speech.phrases(), one.on(), one.hour());
        out.element(
            "li", speech.say("milestone-line", "what", Texts.capital(one.what()), "when", when));
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

    private void materials() {
      Map<String, Double> costs = new LinkedHashMap<>();
      List<Cost.Line> besides = new ArrayList<>();
      Optional<Cost> cost = after.cost();
      cost.ifPresent(all -> all.lines().forEach(line -> costs.put(line.item(), line.cost())));
      if (cost.isPresent()) {
        table.open("table-materials", "col-thing", "col-amount", "col-packs", "col-cost");
      } else {
        table.open("table-materials", "col-thing", "col-amount", "col-packs");
      }
      for (QuantityLine line : after.quantities()) {
        out.open("tr");
        out.open("th", "scope", "row");
        box(line.item(), true);
        chains.of(line.because());
        out.close("th");
        table.number(amount(line));
        table.number(line.packs() > 0 ? Integer.toString(line.packs()) : "–");
        if (cost.isPresent()) {
          Double sum = costs.remove(line.item());
          table.number(sum == null ? "–" : Texts.cents(sum));
        }
        out.end("tr");
      }
      cost.ifPresent(
          all -> {
            all.lines().stream()
                .filter(line -> costs.containsKey(line.item()))
                .forEach(besides::add);
            for (Cost.Line line : besides) {
              out.open("tr");
              out.element("th", line.item(), "scope", "row", "colspan", "3");
              table.number(Texts.cents(line.cost()));
              out.end("tr");
            }
            out.open("tr", "class", "total");
            out.element(
                "th",
                speech.say("total", "currency", CostText.unit(all, speech.phrases())),
                "scope",
                "row",
                "colspan",
                "3");
            out.open("td", "class", "n").element("strong", all.whole() ? Texts.cents(all.total()) : "–").close("td");
            out.end("tr");
          });
      table.close();
    }

    private static String amount(QuantityLine line) {
      boolean pieces = line.unit().startsWith("pieces");
      double amount = pieces ? Math.ceil(line.amount()) : Math.ceil(line.amount() * 10) / 10;
      return Texts.of(amount, line.unit());
    }

    // --- the checklist

    private void checklist() {
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
                    speech.say(
                        "coverage-target", "target", Texts.of(coverage.targetPercent(), "%")),
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

    // --- assumptions and other ways

    private void assumptions() {
      out.open("div", "class", "box-round");
      out.element("p", speech.say("assumptions-intro"));
      out.open("ul");
      for (Assumption one : advice.assumptions()) {
        out.open("li");
        out.open("p");
        out.open("strong")
            .own(speech.say("assumed", "fact", Texts.capital(one.called()), "value", one.assumed()))
            .close("strong");
        if (!one.look().isEmpty()) {
          String look = one.look();
          out.text(
              " "
                  + speech.say("find-out")
                  + " "
                  + (look.endsWith("?") || look.endsWith(".") ? look : look + "."));
        }
        out.close("p");
        if (one.wouldChange().isEmpty()) {
          out.element("p", speech.say("nothing-hangs-on-it"), "class", "faint");
        } else {
          out.element("p", speech.say("would-change"), "class", "faint");
          out.open("ul");
          for (String change : one.wouldChange()) {
            out.open("li").own(Texts.capital(change)).close("li");
          }
          out.close("ul");
        }
        chains.of(one.because());
        out.end("li");
      }
      out.close("ul").end("div");
    }

    private void changes() {
      out.open("ul", "class", "ways");
      for (ChangeNote change : after.changes()) {
        out.open("li");
        out.open("p")
            .own(speech.say("change-then", "change", change.text(), "way", change.way()))
            .close("p");
        out.open("p", "class", "faint")
            .own(BuildUpLine.numbers(change.numbers(), speech.phrases()))
            .close("p");
        out.end("li");
      }
      out.end("ul");
      out.element("p", speech.say("changes-proved"), "class", "faint");
    }

    private void findOut() {
      out.open("ol");
      for (FindOut one : advice.findOutFirst()) {
        out.open("li");
        out.open("p");
        out.open("strong").own(Texts.capital(one.called())).close("strong");
        out.own(". " + (one.look().isEmpty() ? one.ask() : one.look()));
        out.close("p");
        out.open("ul");
        for (String decision : one.decisions()) {
          out.open("li").own(Texts.capital(decision)).close("li");
        }
        out.close("ul");
        out.end("li");
      }
      out.end("ol");
    }

    private void alternatives() {
      out.open("ul", "class", "ways");
      for (Alternative one : advice.alternatives()) {
        String standing = one.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
        out.open("li");
        out.element("h3", speech.say("standing-" + standing, "way", one.title()));
        out.open("p").own(one.text()).close("p");
        for (ComparedBuildUp way : after.ways()) {
          if (way.id().equals(one.id())) {
            out.open("p", "class", "faint")
                .own(BuildUpLine.numbers(way, speech.phrases()))
                .close("p");
          }
        }
        chains.of(one.because());
        out.end("li");
      }
      out.end("ul");
    }
  }
}
