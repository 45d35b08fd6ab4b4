package underfoot.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import underfoot.knowledge.Disagreement;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Source;
import underfoot.language.RuleForm;
import underfoot.measure.Texts;

/**
 * The whole rule base as one page of HTML, with indexes by question, base, danger, word, source.
 */
public final class RulesBook {
  private static final String EXCEPT = "except when ";
  private static final String SEARCH = "book-search.js";

  private final List<RuleForm> rules;
  private final Knowledge knowledge;
  private final RulesReport report;
  private final RuleUses uses;
  private final BesideReport beside;
  private final Set<String> ids = new LinkedHashSet<>();
  private final Map<String, Map<String, String>> namedBy = new HashMap<>();
  private final Map<String, List<RuleForm>> byFigure = new LinkedHashMap<>();
  private final RulesIndex index;
  private final HtmlWriter out = HtmlPage.beginWith("The rules", SEARCH);

  private RulesBook(List<RuleForm> rules, Knowledge knowledge, RuleUses uses, BesideReport beside) {
    this.beside = beside;
    this.rules = rules;
    this.knowledge = knowledge;
    this.report = new RulesReport(rules, knowledge);
    this.index = new RulesIndex(rules, knowledge);
    this.uses = uses;
    knowledge.figures().all().forEach(one -> byFigure.put(one.name(), new ArrayList<>()));
    rules.forEach(rule -> ids.add(rule.note().id()));
    for (RuleForm rule : rules) {
      for (String word : RulesReport.words(rule)) {
        if (ids.contains(word) && !word.equals(rule.note().id())) {
          namedBy
              .computeIfAbsent(word, id -> new TreeMap<>())
              .put(rule.note().id(), rule.note().title());
        }
      }
      for (Figure figure : report.figures(rule)) {
        byFigure.computeIfAbsent(figure.name(), name -> new ArrayList<>()).add(rule);
      }
    }
  }

  /**
   * The book.
   *
   * @param rules every rule, in the order of files and lines
   * @param knowledge what they refer to
   * @param uses which scenarios use which rules
   * @param beside what may lie on what
   */
  public static String html(
      List<RuleForm> rules, Knowledge knowledge, RuleUses uses, BesideReport beside) {
    return new RulesBook(rules, knowledge, uses, beside).write();
  }

  private Map<String, List<RuleForm>> bySource() {
    Map<String, List<RuleForm>> sources = new LinkedHashMap<>();
    knowledge.sources().keySet().forEach(id -> sources.put(id, new ArrayList<>()));
    for (RuleForm rule : rules) {
      rule.each().stream()
          .map(one -> Source.key(one.note().source()))
          .distinct()
          .forEach(id -> sources.computeIfAbsent(id, any -> new ArrayList<>()).add(rule));
    }
    return sources;
  }

  private void promises() {
    out.block("h2", "What every advice keeps", "id", "promises");
    out.open("ul");
    knowledge.promises().forEach(one -> out.block("li", one.words() + "."));
    out.end("ul");
  }

  private String write() {
    out.block("h1", "The rules");
    out.block(
        "p",
        rules.size()
            + " rules, "
            + byFigure.size()
            + " figures, "
            + knowledge.sources().size()
            + " sources.");
    out.open("nav", "aria-label", "Parts").open("p");
    link("by-question", "By question").text(" · ");
    link("by-base", "By base").text(" · ");
    link("by-danger", "By danger").text(" · ");
    link("by-word", "By word").text(" · ");
    link("by-source", "By source").text(" · ");
    link("promises", "What every advice keeps").text(" · ");
    link("disagreements", "Where sources differ").text(" · ");
    link("beside", "What may lie on what").text(" · ");
    link("rules", "Rules").text(" · ");
    link("figures", "Figures").close("p").end("nav");
    search();
    out.block(
        "p",
        "A line opens with a touch. Printed, the book has the questions, the rules and where"
            + " sources differ. Where no script runs, the find command of the browser looks into"
            + " what is folded too; `rules --find WORD` finds the same in a terminal.",
        "class",
        "soft");
    folded("by-question", "By question", index.byQuestion());
    folded("by-base", "By base: rules that name it", index.byBase());
    folded("by-danger", "By danger", index.byDanger());
    words();
    sources();
    promises();
    disagreements();
    beside.draw(out);
    out.block("h2", "Rules", "id", "rules", "class", "new-page");
    int[] number = {0};
    index
        .byQuestion()
        .forEach(
            (question, all) -> {
              out.block("h2", question, "id", "question-" + ++number[0], "class", "question");
              out.open("div", "class", "of-question").line();
              all.forEach(this::rule);
              out.end("div");
            });
    figures();
    return HtmlPage.endWith(out, SEARCH);
  }

  /** The search, which the script shows when it can run. */
  private void search() {
    out.open("div", "id", "search", "role", "search", "class", "not-printed", "hidden", "hidden");
    out.line().element("label", "Find rules and figures by words", "for", "asked").text(" ");
    out.empty("input", "type", "search", "id", "asked", "autocomplete", "off").line();
    out.open("p", "id", "found-count", "role", "status", "class", "soft").end("p");
    out.open("ul", "id", "found", "class", "titles").end("ul").end("div");
  }

  private HtmlWriter link(String to, String words) {
    return out.element("a", words, "href", "#" + anchor(to));
  }

  /** An index whose entries open to the titles of their rules. */
  private void folded(String id, String heading, Map<String, Set<RuleForm>> index) {
    out.block("h2", heading, "id", id);
    index.forEach(
        (entry, all) -> {
          out.open("details").open("summary").text(entry);
          out.element("span", " " + all.size(), "class", "soft").end("summary");
          titled(all);
          out.end("details");
        });
  }

  /** The words of titles, letter by letter. */
  private void words() {
    Map<String, Map<String, Set<RuleForm>>> letters = new TreeMap<>();
    index
        .byWord()
        .forEach(
            (word, all) ->
                letters
                    .computeIfAbsent(RulesIndex.letter(word), letter -> new TreeMap<>())
                    .put(word, all));
    out.block("h2", "By word", "id", "by-word").open("div", "class", "not-printed").line();
    letters.forEach(
        (letter, words) -> {
          out.open("details").element("summary", letter).open("dl").line();
          words.forEach(
              (word, all) -> {
                out.element("dt", word).open("dd");
                links(titles(List.copyOf(all)));
                out.end("dd");
              });
          out.close("dl").end("details");
        });
    out.end("div");
  }

  /** Rules by their titles, each leading to its place. */
  private void titled(Collection<RuleForm> all) {
    out.open("ul", "class", "titles");
    for (RuleForm rule : all) {
      out.open("li");
      link(rule.note().id(), rule.note().title());
      out.text(" ").element("span", rule.note().id(), "class", "id").close("li");
    }
    out.end("ul");
  }

  private void sources() {
    out.block("h2", "By source", "id", "by-source").open("div", "class", "not-printed");
    out.open("ul").line();
    report.byStatus().forEach(line -> out.block("li", line));
    out.end("ul");
    bySource()
        .forEach(
            (id, all) -> {
              Source source = knowledge.sources().get(id);
              out.block("h3", source == null ? id : source.title(), "id", anchor("source-" + id));
              if (source != null) {
                String note = source.note().isEmpty() ? "" : ". " + source.note();
                out.block("p", source.status() + note, "class", "soft");
              }
              if (all.isEmpty()) {
                out.block("p", "No rule rests on it alone; figures do.");
                return;
              }
              out.open("details").element("summary", all.size() + " rules");
              titled(all);
              out.end("details");
            });
    out.end("div");
  }

  private static Map<String, String> titles(List<RuleForm> all) {
    Map<String, String> titles = new LinkedHashMap<>();
    all.forEach(rule -> titles.put(rule.note().id(), rule.note().title()));
    return titles;
  }

  /** Links to rules: their ids, and the titles that are shown of them. */
  private void links(Map<String, String> titles) {
    String before = "";
    for (Map.Entry<String, String> one : titles.entrySet()) {
      String to = "#" + anchor(one.getKey());
      String title = one.getValue().isEmpty() ? one.getKey() : one.getValue();
      out.text(before).element("a", title, "href", to, "title", one.getKey());
      before = "; ";
    }
  }

  private static String anchor(String id) {
    return id.replaceAll("[^A-Za-z0-9-]+", "-");
  }

  private void rule(RuleForm rule) {
    String id = rule.note().id();
    out.open("section", "class", "rule", "id", anchor(id)).line().open("h3");
    out.text(Texts.capital(rule.note().title()) + " ").element("span", id, "class", "id").end("h3");
    out.open("dl").line();
    entry("for each of", rule.isForEach() ? List.of(rule.table()) : List.of());
    entry("when", rule.when().stream().filter(line -> !line.startsWith(EXCEPT)).toList());
    entry("then", rule.then());
    entry(
        "except when",
        rule.when().stream()
            .filter(line -> line.startsWith(EXCEPT))
            .map(line -> line.substring(EXCEPT.length()))
            .toList());
    entry("because", List.of(rule.note().reason()));
    Source source = knowledge.source(rule.note().source());
    out.element("dt", "source").open("dd");
    link("source-" + source.id(), source.title()).text(" (" + source.status() + ")").end("dd");
    entry("row", report.rows(rule));
    for (Figure figure : report.figures(rule)) {
      out.element("dt", "figure").open("dd");
      link("figure-" + figure.name(), figure.name()).text(" = " + figure.text() + ", ");
      out.text(figure.description() + " (" + figure.status() + ")").end("dd");
    }
    for (String wording : report.wordings(rule)) {
      String says = String.join(" ", knowledge.wording().get(wording).parts().values());
      entry("says", List.of(RulesReport.filled(says, knowledge)));
    }
    if (namedBy.containsKey(id)) {
      out.element("dt", "named by").open("dd");
      links(namedBy.get(id));
      out.end("dd");
    }
    if (uses.looked()) {
      entry("scenarios", List.of(RulesReport.or(uses.scenarios(id))));
      entry("lessons", List.of(RulesReport.or(uses.lessons(id))));
    }
    out.end("dl").end("section");
  }

  /** An entry of a rule's list; ids of other rules and names of figures in it are links. */
  private void entry(String name, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    out.element("dt", name).open("dd");
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        out.open("br");
      }
      String line = lines.get(i);
      int at = 0;
      Matcher words = RulesReport.WORD.matcher(line);
      while (words.find()) {
        String word = words.group();
        boolean figure = word.contains("-") && knowledge.figures().has(word);
        if (ids.contains(word) || figure) {
          out.text(line.substring(at, words.start()));
          link(figure ? "figure-" + word : word, word);
          at = words.end();
        }
      }
      out.text(line.substring(at));
    }
    out.end("dd");
  }

  /** Where sources differ: who says what, which is used, and why. */
  private void disagreements() {
    out.block("h2", "Where sources differ", "id", "disagreements", "class", "new-page");
    for (Disagreement one : knowledge.disagreements()) {
      out.open("section", "class", "rule").line().block("h3", one.about()).open("dl").line();
      for (Disagreement.Voice voice : one.voices()) {
        Source source = knowledge.source(voice.source());
        out.open("dt");
        link("source-" + source.id(), source.title()).text(" (" + source.status() + ")");
        out.close("dt");
        out.element("dd", RulesReport.filled(voice.says(), knowledge)).line();
      }
      entry("used here", List.of(RulesReport.filled(one.used(), knowledge)));
      entry("because", List.of(one.because()));
      out.end("dl").end("section");
    }
  }

  private void figures() {
    out.block("h2", "Figures", "id", "figures", "class", "new-page");
    out.open("div", "class", "not-printed").line();
    byFigure.forEach(
        (name, users) -> {
          Figure figure = knowledge.figures().get(name);
          out.open("section", "class", "rule", "id", anchor("figure-" + name)).line();
          out.block("h3", name + " = " + figure.text());
          String what = figure.description() + " (practice: " + figure.practice() + "). ";
          out.block("p", what + report.source(figure) + ".");
          if (!figure.note().isEmpty()) {
            out.block("p", figure.note(), "class", "soft");
          }
          if (users.isEmpty()) {
            out.block("p", "Read by rows of kinds, or by formulas.");
          } else {
            out.open("p").text("Read by ");
            links(titles(users));
            out.end("p");
          }
          out.end("section");
        });
    out.end("div");
  }
}
