package underfoot.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.FirstThings;
import underfoot.plan.SetOut;
import underfoot.report.CostText;
import underfoot.report.FirstText;
import underfoot.report.HtmlPage;
import underfoot.report.HtmlWriter;
import underfoot.report.MadeBy;
import underfoot.report.TimeText;

/**
 * The advice as one page that needs nothing else: no network, no script. The answer comes first;
 * each part opens to its rules, and each rule to the chain it rests on.
 */
public final class HtmlReport extends HtmlParts {
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

  private final Map<String, String> contents = new LinkedHashMap<>();
  private final List<Runnable> parts = new ArrayList<>();

  private HtmlReport(Advice advice, Phrases phrases, Medium medium) {
    super(advice, phrases, medium);
  }

  /**
   * Makes the page.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @param tool what made it
   * @param medium what it is made for
   * @return well-formed XHTML in HTML's own form, UTF-8 when written out
   */
  public static String of(Advice advice, Phrases phrases, MadeBy tool, Medium medium) {
    return new HtmlReport(advice, phrases, medium).page(tool);
  }

  /**
   * What the page says without its frame, for a page that shows it within its own.
   *
   * @param advice the advice
   * @param phrases the phrase book
   * @param tool what made it
   * @return markup to stand in a body, styled by {@code page.css} beside this class
   */
  public static String body(Advice advice, Phrases phrases, MadeBy tool) {
    HtmlReport report = new HtmlReport(advice, phrases, Medium.SCREEN);
    report.write(tool);
    return report.out.toString();
  }

  private String page(MadeBy tool) {
    write(tool);
    HtmlWriter page = new HtmlWriter().document();
    page.open("html", "lang", "en-GB", "xmlns", "http://www.w3.org/1999/xhtml");
    page.open("head").line();
    page.empty("meta", "charset", "utf-8").line();
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", HtmlPage.POLICY).line();
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    page.empty("meta", "name", "color-scheme", "content", "light dark").line();
    page.block("title", advice.scenario() + " – " + speech.say("brand"));
    page.open("style").style(HtmlReport.class, medium.style).end("style");
    page.end("head");
    page.open("body").line();
    page.add(out);
    page.end("body").end("html");
    return page.toString();
  }

  private void write(MadeBy tool) {
    BuildUpParts built = new BuildUpParts(this);
    WorkParts work = new WorkParts(this);
    ChoiceParts choices = new ChoiceParts(this);
    boolean builds = advice.builds();
    cautions(Severity.DANGER, built);
    plan("build-up", "heading-build-up", builds, built::section);
    plan("layers", "heading-layers", builds, built::layers);
    String changes = builds ? "heading-changes-limits" : "heading-changes";
    plan(
        "changes",
        changes,
        !after.changes().isEmpty() || after.changesNote().isPresent(),
        choices::changes);
    plan("first", "heading-first", !advice.remedies().isEmpty(), built::remedies);
    cautions(Severity.CARE, built);
    plan("doors", "heading-heights", builds, built::doors);
    boolean levels =
        after.levels().isPresent() || after.room().map(r -> r.readings().size() > 2).orElse(false);
    plan("levels", "heading-level-map", levels, work::levels);
    boolean boards = after.setOut().isPresent() && !after.setOut().get().boards().isEmpty();
    plan("boards", "heading-boards", boards, work::boards);
    plan("tiles", "heading-tiles", builds && after.setOut().isPresent(), work::tiles);
    plan("programme", "heading-programme", !after.programme().isEmpty(), work::programme);
    plan("materials", "heading-quantities", !after.quantities().isEmpty(), work::materials);
    plan("checklist", "heading-checklist", builds, work::checklist);
    plan("find-out", "heading-find-out", !advice.findOutFirst().isEmpty(), choices::findOut);
    boolean assumes = !advice.assumptions().isEmpty();
    plan("assumptions", "heading-assumptions-box", assumes, choices::assumptions);
    cautions(Severity.NOTE, built);
    String others = builds ? "heading-alternatives" : "no-way-stands";
    plan("alternatives", others, !advice.alternatives().isEmpty(), choices::alternatives);
    if (medium == Medium.SCREEN) {
      out.element("a", speech.say("skip"), "class", "skip", "href", "#answer").line();
    }
    if (!tool.notice().isEmpty()) {
      out.own("p", tool.notice(), "class", "notice");
    }
    out.open("header");
    out.element("p", speech.say("brand-line"), "class", "brand");
    out.own("h1", advice.scenario());
    out.end("header");
    out.open("main").line();
    answer();
    if (medium == Medium.SCREEN) {
      contents();
    }
    parts.forEach(Runnable::run);
    out.end("main");
    out.open("footer");
    say("p", "footer-limits");
    faint("footer-made", "version", tool.version(), "rules", tool.ruleBase());
    out.end("footer");
  }

  private void cautions(Severity severity, BuildUpParts built) {
    boolean any = advice.cautions().stream().anyMatch(one -> one.severity() == severity);
    String word = severity.word();
    plan(word, "heading-" + word, any, () -> built.cautions(severity));
  }

  private void plan(String id, String heading, boolean wanted, Runnable part) {
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
    out.own("h2", advice.first().headline(), "id", "answer-h", "class", "headline");
    out.element("p", speech.say("verdict-" + verdict), "class", "verdict");
    doNow();
    out.own("p", advice.summary(), "class", "summary");
    if (!advice.builds()) {
      say("p", "nothing-is-built");
    }
    for (Verdict kind : List.of(Verdict.STOP, Verdict.OUTSIDE_GUIDANCE)) {
      List<HaltNote> stopFindings =
          advice.stopFindings().stream()
              .filter(stopFinding -> stopFinding.verdict() == kind)
              .toList();
      if (stopFindings.isEmpty()) {
        continue;
      }
      say("h3", kind == Verdict.STOP ? "heading-stop" : "heading-outside");
      for (HaltNote stopFinding : stopFindings) {
        out.open("div", "class", "note danger");
        out.element("h4", stopFinding.title());
        out.own("p", stopFinding.text());
        chains.of(stopFinding.because());
        out.end("div");
      }
    }
    if (advice.builds()) {
      keyFigures();
    }
    out.end("section");
  }

  /** What is done now, what else must be cleared and what can hurt: all on the first screen. */
  private void doNow() {
    if (!advice.first().doNow().isEmpty()) {
      out.open("div", "class", "do-now");
      say("h3", "heading-do-now");
      out.open("ol");
      for (FirstThings.DoNow one : advice.first().doNow()) {
        out.own("li", one.text()).line();
      }
      out.close("ol").end("div");
    }
    String gates = FirstText.gates(advice);
    if (!gates.isEmpty()) {
      out.own("p", speech.say("also-gates", "titles", gates), "class", "gates");
    }
    String dangers = FirstText.dangers(advice);
    if (!dangers.isEmpty()) {
      out.own("p", speech.say("dangers-here", "titles", dangers), "class", "hurts");
    }
  }

  private void keyFigures() {
    out.open("dl", "class", "key");
    key("key-rise", Texts.whole(advice.heights().aboveOldFloor().mean()));
    key("key-mass", Texts.of(Math.round(advice.massKgPerM2()), "kg/m2"));
    advice.coverage().ifPresent(one -> key("key-contact", Texts.of(one.targetPercent(), "%")));
    after.schedule().milestones().stream()
        .filter(one -> one.hour() == after.schedule().inUseAfterHours())
        .findFirst()
        .ifPresent(one -> key("key-time", TimeText.when(speech, one.on(), one.hour())));
    after
        .setOut()
        .flatMap(SetOut::tiles)
        .ifPresent(
            tiles ->
                key(
                    "key-tiles",
                    speech.say("count-tiles", "count", Long.toString(tiles.toOrder()))));
    after.cost().ifPresent(cost -> key("key-cost", CostText.of(cost, speech)));
    out.end("dl");
  }

  private void key(String phrase, String value) {
    out.open("div");
    say("dt", phrase).element("dd", value);
    out.close("div");
  }
}
