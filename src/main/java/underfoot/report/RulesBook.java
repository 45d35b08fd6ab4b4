package underfoot.report;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
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

/** The whole rule base as one page of HTML, with an index by theme and one by source. */
public final class RulesBook {
  private static final String EXCEPT = "except when ";

  private final List<RuleForm> rules;
  private final Knowledge knowledge;
  private final RulesReport report;
  private final RuleUses uses;
  private final BesideReport beside;
  private final Set<String> ids = new LinkedHashSet<>();
  private final Map<String, Map<String, String>> namedBy = new HashMap<>();
  private final Map<String, List<RuleForm>> byFigure = new LinkedHashMap<>();
  private final HtmlWriter out = HtmlPage.begin("The rules");

  private RulesBook(List<RuleForm> rules, Knowledge knowledge, RuleUses uses, BesideReport beside) {
    this.beside = beside;
    this.rules = rules;
    this.knowledge = knowledge;
    this.report = new RulesReport(rules, knowledge);
    this.uses = uses;
    knowledge.figures().all().forEach(one -> byFigure.put(one.name(), new ArrayList<>()));
    rules.forEach(rule -> ids.add(rule.note().id()));
    for (RuleForm rule : rules) {
      for (String word : RulesReport.words(rule)) {
        if (ids.contains(word) && !word.equals(rule.note().id())) {
          namedBy.computeIfAbsent(word, id -> new TreeMap<>()).put(rule.note().id(), "");
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

  /** What a rule file asks, from its name: {@code 14-boards-over-timber} is boards over timber. */
  static String theme(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1).replace(".dslr", "");
    String words = name.replaceFirst("^[0-9]+-", "").replace('-', ' ');
    return words.isEmpty() ? file : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private Map<String, List<RuleForm>> byTheme() {
    return rules.stream()
        .collect(groupingBy(rule -> theme(rule.file()), LinkedHashMap::new, toList()));
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
    link("by-theme", "By theme").text(" · ");
    link("by-source", "By source").text(" · ");
    link("promises", "What every advice keeps").text(" · ");
    link("disagreements", "Where sources differ").text(" · ");
    link("beside", "What may lie on what").text(" · ");
    link("rules", "Rules").text(" · ");
    link("figures", "Figures").close("p").end("nav");
    index();
    promises();
    disagreements();
    beside.draw(out);
    out.block("h2", "Rules", "id", "rules", "class", "new-page");
    byTheme()
        .forEach(
            (theme, all) -> {
              out.block("h2", theme, "id", anchor("theme-" + theme));
              all.forEach(this::rule);
            });
    figures();
    return HtmlPage.end(out);
  }

  private HtmlWriter link(String to, String words) {
    return out.element("a", words, "href", "#" + anchor(to));
  }

  private void index() {
    out.block("h2", "By theme", "id", "by-theme").open("dl").line();
    byTheme()
        .forEach(
            (theme, all) -> {
              out.open("dt");
              link("theme-" + theme, theme).close("dt").open("dd");
              links(titles(all));
              out.end("dd");
            });
    out.end("dl").block("h2", "By source", "id", "by-source").open("ul").line();
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
              out.open("p");
              if (all.isEmpty()) {
                out.text("No rule rests on it alone; figures do.");
              }
              links(titles(all));
              out.end("p");
            });
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
      out.text(before).element("a", one.getKey(), "href", to, "title", one.getValue());
      before = ", ";
    }
  }

  private static String anchor(String id) {
    return id.replaceAll("[^A-Za-z0-9-]+", "-");
  }

  private void rule(RuleForm rule) {
    String id = rule.note().id();
    out.open("section", "class", "rule", "id", anchor(id)).line().open("h3");
    out.element("span", id, "class", "id").text(" " + rule.note().title()).end("h3");
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
  }
}
