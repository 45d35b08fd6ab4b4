package underfoot.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.Cost;
import underfoot.plan.FloorsCompared;

/** Two floors, or the ways for one floor, on one page. */
public final class CompareReport {
  private CompareReport() {}

  /** Two floors: what differs, what is decided otherwise and why, and both side by side. */
  public static void write(FloorsCompared compared, Phrases phrases, TextPage page) {
    page.bold(compared.first().scenario() + " / " + compared.second().scenario());
    page.heading(phrases.say("heading-differs"));
    if (compared.facts().isEmpty()) {
      page.para(phrases.say("nothing-differs"));
    }
    for (FloorsCompared.Differing one : compared.facts()) {
      page.item(
          one.fact()
              + ": "
              + orNothing(one.first(), phrases)
              + " / "
              + orNothing(one.second(), phrases));
    }
    page.heading(phrases.say("heading-decided"));
    if (compared.decisions().isEmpty()) {
      page.para(phrases.say("nothing-decided"));
    }
    if (!compared.every()) {
      page.para(phrases.say("not-each-tried"));
    }
    for (FloorsCompared.Decided one : compared.decisions()) {
      page.item(
          phrases.say(
              because(one, compared.every()),
              "what",
              Texts.capital(one.what()),
              "facts",
              String.join(", ", one.becauseOf())));
    }
    page.heading(phrases.say("heading-side-by-side"));
    new SideBySide(phrases, page)
        .write(List.of(column(compared.first(), phrases), column(compared.second(), phrases)));
  }

  private static String because(FloorsCompared.Decided one, boolean every) {
    if (!one.becauseOf().isEmpty()) {
      return "decided-because";
    }
    return every ? "decided-together" : "decided-untried";
  }

  private static SideBySide.Column column(FloorsCompared.Floor floor, Phrases phrases) {
    return new SideBySide.Column(FloorsCompared.verdict(floor, phrases), floor.way().orElse(null));
  }

  /** The ways for one floor: the recommended one, then the others by what they cost. */
  public static void write(Advice advice, Phrases phrases, TextPage page) {
    page.bold(advice.scenario());
    page.para(phrases.say("verdict-" + advice.verdict().word()));
    page.heading(phrases.say("ways-on-one-page"));
    List<SideBySide.Column> columns = new ArrayList<>();
    for (ComparedBuildUp way : ranked(advice)) {
      columns.add(new SideBySide.Column(SideBySide.standing(phrases, way.standing()), way));
    }
    new SideBySide(phrases, page).write(columns);
    page.blank();
    page.faint(phrases.say("ask-why"));
  }

  /** The recommended way first, then the others, the cheapest first where every cost is whole. */
  static List<ComparedBuildUp> ranked(Advice advice) {
    List<ComparedBuildUp> ways = new ArrayList<>(advice.consequences().ways());
    if (ways.stream().allMatch(way -> way.cost().filter(Cost::whole).isPresent())) {
      ways.sort(
          Comparator.comparing(
                  (ComparedBuildUp way) -> way.standing() != Advice.Standing.RECOMMENDED)
              .thenComparingDouble(way -> way.cost().orElseThrow().total()));
    }
    return ways;
  }

  private static String orNothing(String text, Phrases phrases) {
    return text.isEmpty() ? phrases.say("nothing") : text;
  }
}
