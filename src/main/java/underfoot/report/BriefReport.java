package underfoot.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Severity;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Advice.Standing;
import underfoot.plan.FindOut;
import underfoot.plan.FirstThings.DoNow;
import underfoot.report.TextPage.Tone;

/**
 * The advice in its short and its normal form. Both say that they are shortened. What they leave
 * out are whole parts of texts, and whole texts; no text is cut, and of a danger both tell all that
 * can happen and all that is to be done.
 */
final class BriefReport {
  private static final int FOUND_OUT_IN_SHORT = 3;
  private static final int FOUND_OUT = 3;
  private static final int CHANGES_IN_SHORT = 1;
  private static final int CHANGES = 3;

  private static final String INDENT = "   ";

  private final Advice advice;
  private final Phrases phrases;
  private final TextPage page;
  private final boolean brief;

  private BriefReport(Advice advice, Phrases phrases, TextPage page, boolean brief) {
    this.advice = advice;
    this.phrases = phrases;
    this.page = page;
    this.brief = brief;
  }

  static void write(Advice advice, Phrases phrases, Detail detail, TextPage page, boolean findOut) {
    new BriefReport(advice, phrases, page, detail == Detail.SHORT).write(findOut);
  }

  private void write(boolean findOut) {
    TextReport.answer(advice, phrases, page);
    TextReport.stopFindings(
        advice,
        phrases,
        page,
        one -> TextReport.titled(one.title(), one.parts().must()) + ids(one));
    dangers();
    if (advice.builds()) {
      build();
    } else {
      page.blank();
      page.para(phrases.say("nothing-is-built"));
    }
    ChangesText.write(advice, phrases, page, brief ? CHANGES_IN_SHORT : CHANGES);
    remedies();
    if (findOut) {
      findOut(advice, phrases, page, brief ? FOUND_OUT_IN_SHORT : FOUND_OUT, brief);
    }
    if (!brief) {
      care();
      if (advice.builds()) {
        doors();
      }
      consequences();
      assumptions();
      alternatives();
    }
    page.blank();
    page.para("", "", phrases.say(brief ? "detail-short" : "detail-normal"), Tone.FAINT);
  }

  private String ids(Advice.Decision one) {
    return brief ? "" : " " + TextReport.ids(one.because());
  }

  private void build() {
    if (brief) {
      page.heading(phrases.say("short-layers"));
      for (Layer layer : advice.layers()) {
        page.para(TextPage.numbered(layer.order()), INDENT, shortLayer(layer), Tone.PLAIN);
      }
      FloorTold.write(advice, phrases, page);
      return;
    }
    page.heading(phrases.say("heading-build-up"));
    new TextSection(advice, phrases, page).draw(BriefReport::asSet);
    boolean headed = false;
    for (Layer layer : advice.layers()) {
      String said = ofThisFloor(layer);
      if (!said.isEmpty()) { // the others are told whole in the drawing
        if (!headed) {
          page.heading(phrases.say("heading-layers"));
          headed = true;
        }
        String why = layer.key().isEmpty() ? why(layer) : "";
        page.para(TextPage.numbered(layer.order()), INDENT, said + why, Tone.PLAIN);
      }
    }
    FloorTold.write(advice, phrases, page);
  }

  /** What is set, combed or cut by a layer, and the rule that lays it; empty for a plain coat. */
  private static String asSet(Layer layer) {
    return layer.key().isEmpty()
        ? ""
        : Texts.sentence(Texts.capital(String.join("; ", layer.key()))) + why(layer);
  }

  private static String why(Layer layer) {
    return " ‹" + layer.reasons().get(0).rule().id() + "›";
  }

  /** Why a layer is laid here, and what is said of it that is this floor's own. */
  private static String ofThisFloor(Layer layer) {
    StringJoiner said = new StringJoiner(" ");
    if (layer.ownReason()) {
      said.add(Texts.sentence(layer.reasons().get(0).rule().reason()));
    }
    Stream.concat(layer.spec().stream(), layer.fixing().stream())
        .filter(say -> !say.general())
        .forEach(say -> said.add(say.parts().must()));
    return said.toString();
  }

  private String shortLayer(Layer layer) {
    String name = layer.name();
    LayerThickness thickness = layer.thickness();
    if (thickness.max() == 0) {
      return name;
    }
    String thick =
        thickness.min() == thickness.max()
            ? Texts.mm(thickness.mean())
            : Texts.of(Math.round(thickness.min() * 10) / 10.0, "")
                + "–"
                + Texts.mm(thickness.max());
    return phrases.say("layer-in-short", "name", name, "thickness", thick);
  }

  private void remedies() {
    if (advice.remedies().isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-first"));
    int number = 0;
    for (RemedyNote remedy : advice.remedies()) {
      String title =
          remedy.hold() ? phrases.say("hold-point") + ": " + remedy.title() : remedy.title();
      String words =
          brief && !remedy.hold() ? title : Texts.sentence(title) + " " + remedy.parts().must();
      page.para(TextPage.numbered(++number), INDENT, words + ids(remedy), Tone.PLAIN);
    }
  }

  private void dangers() {
    boolean headed = false;
    String last = "";
    for (CautionNote caution : advice.cautions()) {
      if (caution.severity() != Severity.DANGER) {
        continue;
      }
      if (!headed) {
        page.heading(phrases.say(brief ? "short-dangers" : "heading-danger"));
        headed = true;
      }
      String ids = ids(caution);
      page.para(
          " ! ",
          INDENT,
          Texts.sentence(caution.title())
              + " "
              + caution.parts().must()
              + (ids.equals(last) ? "" : ids), // one rule brings most of them
          Tone.PLAIN);
      last = ids;
    }
  }

  private void care() {
    String care = care(advice, phrases);
    if (!care.isEmpty()) {
      page.blank();
      page.para(care);
    }
  }

  /** What care this floor asks for, by title, but for what holds on nearly every floor. */
  static String care(Advice advice, Phrases phrases) {
    List<String> titles = new ArrayList<>();
    Set<String> asked = asked(advice);
    for (CautionNote caution : advice.cautions()) {
      if (caution.severity() == Severity.CARE && !caution.general() && !restsOn(asked, caution)) {
        titles.add(Texts.lower(caution.title()));
      }
    }
    return titles.isEmpty() ? "" : phrases.say("also-care", "titles", String.join("; ", titles));
  }

  /** The facts that this form asks for. */
  private static Set<String> asked(Advice advice) {
    Set<String> asked =
        advice.first().doNow().stream()
            .map(DoNow::id)
            .collect(Collectors.toCollection(HashSet::new));
    advice.findOutFirst().stream()
        .filter(one -> one.rank() <= FOUND_OUT)
        .forEach(one -> asked.add(one.fact()));
    return asked;
  }

  /** Whether all of a caution is that something is not known for which this form asks. */
  private static boolean restsOn(Set<String> asked, CautionNote caution) {
    return caution.because().stream()
        .allMatch(
            why ->
                why.facts().stream()
                    .anyMatch(one -> one.isUnknown() && asked.contains(one.fact())));
  }

  /** What to find out first: the weightiest few, in the order of a survey. */
  static void findOut(Advice advice, Phrases phrases, TextPage page, int most, boolean brief) {
    Set<String> now = advice.first().doNow().stream().map(DoNow::id).collect(Collectors.toSet());
    boolean whole = most == Integer.MAX_VALUE;
    List<FindOut> told =
        advice.findOutFirst().stream()
            .filter(one -> whole || (one.rank() <= most && !now.contains(one.fact())))
            .toList();
    if (told.isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-find-out"));
    int number = 0;
    for (FindOut one : told) {
      String change =
          one.changes().stream()
              .findFirst()
              .map(farthest -> farthest.value() + ": " + farthest.clause(1))
              .orElseGet(() -> one.decisions().get(0));
      page.para(
          TextPage.numbered(++number),
          INDENT,
          phrases
              .say(
                  "find-out-one",
                  "question",
                  one.question(),
                  "look",
                  Texts.sentence(Texts.capital(one.look())),
                  "hangs",
                  whole ? phrases.say("find-out-hangs", "change", change) : "")
              .strip(),
          Tone.PLAIN);
    }
    int more = advice.findOutFirst().size() - told.size() - (whole ? 0 : told(advice, now));
    if (more > 0) {
      page.para(phrases.say("find-out-more", "count", Integer.toString(more)));
    }
  }

  private static int told(Advice advice, Set<String> now) {
    return (int) advice.findOutFirst().stream().filter(one -> now.contains(one.fact())).count();
  }

  private void doors() {
    if (advice.heights().doors().isEmpty()) {
      return;
    }
    page.heading(phrases.say("heading-heights"));
    advice.heights().doors().forEach(door -> page.item(Sentences.doorAndStep(door, phrases)));
  }

  private void consequences() {
    advice
        .consequences()
        .levels()
        .ifPresent(
            plan -> {
              page.heading(phrases.say("heading-levels"));
              page.para(
                  phrases.say("short-levels", "volume", Texts.of(Math.ceil(plan.volumeL()), "L")));
            });
    String buy = ShoppingText.brief(advice.consequences().shopping());
    if (!buy.isEmpty()) {
      page.heading(phrases.say("heading-quantities"));
      page.para(phrases.say("short-shopping", "things", buy));
    }
    advice
        .consequences()
        .cost()
        .ifPresent(
            cost -> page.para(phrases.say("cost-total", "total", CostText.of(cost, phrases))));
    ProgrammeText.days(advice, phrases, page);
  }

  private void assumptions() {
    List<String> facts = new ArrayList<>();
    for (Assumption one : advice.assumptions()) {
      if (!one.changes().isEmpty()) {
        facts.add(one.called() + ": " + one.assumed());
      }
    }
    int rest = advice.assumptions().size() - facts.size();
    page.blank();
    if (!facts.isEmpty()) {
      page.para(phrases.say("short-assumed", "facts", String.join("; ", facts)));
    }
    if (rest > 0) {
      page.para(phrases.say("short-assumed-rest", "count", Integer.toString(rest)));
    }
  }

  private void alternatives() {
    if (advice.alternatives().isEmpty()) {
      return;
    }
    page.heading(phrases.say(advice.builds() ? "heading-alternatives" : "no-way-stands"));
    if (!advice.builds()) { // what rules each out is where to start
      Map<Map.Entry<Standing, String>, StringJoiner> ways = new LinkedHashMap<>();
      for (Alternative one : advice.alternatives()) { // what rules several out is said once
        ways.computeIfAbsent(Map.entry(one.standing(), one.text()), none -> new StringJoiner("; "))
            .add(Texts.lower(one.title()));
      }
      ways.forEach(
          (why, titles) ->
              page.para(
                  " - ",
                  INDENT,
                  phrases.say(id(why.getKey()), "way", titles.toString()) + ". " + why.getValue(),
                  Tone.PLAIN));
      return;
    }
    for (Standing standing : Standing.values()) {
      List<String> ways =
          advice.alternatives().stream()
              .filter(one -> one.standing() == standing)
              .map(Alternative::title)
              .toList();
      if (!ways.isEmpty()) {
        String first = phrases.say(id(standing), "way", Texts.lower(ways.get(0)));
        String count = Integer.toString(ways.size() - 1);
        page.para(
            " - ",
            INDENT,
            Texts.sentence(
                ways.size() == 1 ? first : phrases.say("and-more", "first", first, "count", count)),
            Tone.PLAIN);
      }
    }
  }

  private static String id(Standing standing) {
    return "standing-" + standing.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
