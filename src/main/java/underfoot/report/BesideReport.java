package underfoot.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.measure.Texts;
import underfoot.reasoning.Beside;
import underfoot.reasoning.Beside.Answer;
import underfoot.reasoning.Beside.Ruling;
import underfoot.reasoning.LayersBeside;
import underfoot.report.TextPage.Tone;

/**
 * What may lie on what: every two kinds of layer, as text, as JSON and as a table that is drawn.
 */
public final class BesideReport {
  /** How what a passport alone says is called begins; it goes without saying on its page. */
  private static final String PASSPORT = "passport ";

  private static final String FORMAT = "underfoot.beside/1";

  private final LayersBeside beside;
  private final Knowledge knowledge;

  /**
   * @param beside who is asked
   * @param knowledge where the sources stand
   */
  public BesideReport(LayersBeside beside, Knowledge knowledge) {
    this.beside = beside;
    this.knowledge = knowledge;
  }

  private record Answers(String format, List<String> kinds, List<Pair> pairs) {}

  private record Pair(String upper, String lower, String answer, List<Said> says) {}

  private record Said(
      String rule, String answer, String between, String reach, String reason, String source) {}

  /** Writes pairs as JSON; those that a list of kinds has a part in, or all if it is empty. */
  public void json(List<String> only, Writer to) {
    List<Pair> pairs = new ArrayList<>();
    for (Beside one : beside.all(only)) {
      List<Said> says = one.rulings().stream().map(this::said).toList();
      pairs.add(new Pair(one.upper(), one.lower(), words(one.answer()), says));
    }
    RecordWriter.write(new Answers(FORMAT, beside.kinds(), pairs), false, Map.of(), to);
  }

  private Said said(Ruling one) {
    return new Said(
        one.because().rule().key(),
        words(one.answer()),
        one.between(),
        one.answer() == Answer.ALLOWED ? "" : words(one.reach()),
        one.because().rule().reason(),
        knowledge.source(one.because().rule().source()).title());
  }

  private static String words(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Writes pairs as text: for each kind above, what it may lie on, by the rule that says so. */
  public void text(List<String> only, TextPage page) {
    Map<String, Map<String, List<String>>> byUpper = new LinkedHashMap<>();
    int pairs = 0;
    for (Beside one : beside.all(only)) {
      pairs++;
      byUpper
          .computeIfAbsent(one.upper(), any -> new LinkedHashMap<>())
          .computeIfAbsent(lead(one), any -> new ArrayList<>())
          .add(one.lower());
    }
    page.heading("What may lie on what");
    page.para(
        pairs
            + " pairs of kinds, each answered by the strictest rule that speaks of it. The rules"
            + " stand in rules/next; rules NEXT-20 prints one.");
    byUpper.forEach(
        (upper, answers) -> {
          page.heading(Texts.capital(beside.name(upper)) + " (" + upper + ")");
          if (only.contains(upper)) {
            passport(upper, page);
          }
          answers.keySet().stream().sorted().forEach(lead -> line(lead, answers.get(lead), page));
        });
  }

  /** What is said of a kind on its own: what it is for, what it bears and how it comes. */
  private void passport(String kind, TextPage page) {
    for (Kinds.Said said : beside.passport(kind)) {
      String value =
          said.sort() == Kinds.Sort.FIGURE
              ? knowledge.figures().get(said.value()).text()
              : said.value();
      String source = knowledge.source(said.source()).title();
      String called =
          said.called().startsWith(PASSPORT)
              ? said.called().substring(PASSPORT.length())
              : said.called();
      page.para("  ", "      ", called + ": " + value + " (" + source + ")", Tone.PLAIN);
    }
  }

  private static void line(String lead, List<String> lower, TextPage page) {
    String words = lead.substring(lead.indexOf(' ') + 1) + ": " + String.join(", ", lower);
    page.para("  ", "      ", words, Tone.PLAIN);
  }

  /** What is said of the two, after a number that sorts it: the mildest answers come first. */
  private static String lead(Beside one) {
    int order = one.answer().ordinal();
    if (one.rulings().isEmpty()) {
      return order + " nothing is said";
    }
    Ruling first = one.rulings().get(0);
    String answer =
        switch (one.answer()) {
          case ALLOWED -> "may lie on";
          case ONLY_WITH -> "only with " + first.between() + " between on";
          case NEVER -> "never on";
        };
    String rule = first.because().rule().key();
    return order + " " + answer + " (" + (one.answer() == Answer.ALLOWED ? "NEXT-01" : rule) + ")";
  }

  /**
   * What may lie on what, for the rule book: a table where there is room for one, and for each kind
   * what lies well under it, for narrow screens and to read.
   */
  void draw(HtmlWriter out) {
    List<Beside> all = beside.all(List.of());
    out.block("h2", "What may lie on what", "id", "beside", "class", "new-page");
    out.block(
        "p",
        "Each row is the layer above, each column the layer beneath. + may lie on it; = only with"
            + " something between; x never. Each cell leads to the rule that says so. Below, the"
            + " same in words.");
    table(all, out);
    Map<String, Map<String, List<Beside>>> byUpper = new LinkedHashMap<>();
    all.forEach(
        one ->
            byUpper
                .computeIfAbsent(one.upper(), any -> new TreeMap<>())
                .computeIfAbsent(lead(one), any -> new ArrayList<>())
                .add(one));
    out.open("div", "class", "not-printed").line();
    byUpper.forEach(
        (upper, answers) -> {
          out.open("details")
              .element("summary", Texts.capital(beside.name(upper)))
              .open("ul")
              .line();
          answers.forEach((lead, pairs) -> answer(lead, pairs, out));
          out.close("ul").end("details");
        });
    out.end("div");
  }

  private void answer(String lead, List<Beside> pairs, HtmlWriter out) {
    String words = lead.substring(lead.indexOf(' ') + 1);
    String rule =
        pairs.get(0).rulings().isEmpty() ? "" : pairs.get(0).rulings().get(0).because().rule().id();
    out.open("li");
    if (rule.isEmpty()) {
      out.text(words);
    } else {
      out.element("a", words, "href", "#" + rule);
    }
    out.text(
        ": " + String.join(", ", pairs.stream().map(one -> beside.name(one.lower())).toList()));
    out.end("li");
  }

  private void table(List<Beside> all, HtmlWriter out) {
    List<String> kinds = beside.kinds();
    out.open("div", "class", "grid", "role", "region", "tabindex", "0", "aria-label", "Pairs");
    out.open("table", "class", "beside").line().open("thead").open("tr").element("th", "above");
    for (String kind : kinds) {
      out.open("th", "scope", "col").element("span", beside.name(kind)).close("th");
    }
    out.close("tr").close("thead").open("tbody").line();
    for (int i = 0; i < all.size(); i++) {
      Beside one = all.get(i);
      if (i % kinds.size() == 0) {
        out.open("tr").element("th", beside.name(one.upper()), "scope", "row");
      }
      cell(one, out);
      if (i % kinds.size() == kinds.size() - 1) {
        out.close("tr").line();
      }
    }
    out.close("tbody").close("table").end("div");
  }

  private static void cell(Beside one, HtmlWriter out) {
    String sign =
        switch (one.answer()) {
          case ALLOWED -> "+";
          case ONLY_WITH -> "=";
          case NEVER -> "x";
        };
    String colour =
        switch (one.answer()) {
          case ALLOWED -> "may";
          case ONLY_WITH -> "with";
          case NEVER -> "not";
        };
    String rule = one.rulings().isEmpty() ? "" : one.rulings().get(0).because().rule().id();
    out.open("td", "class", colour);
    out.element("a", sign, "href", rule.isEmpty() ? "" : "#" + rule).close("td");
  }
}
