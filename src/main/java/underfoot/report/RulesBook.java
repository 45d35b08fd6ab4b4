package underfoot.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Source;
import underfoot.language.Rule;

/** The whole rule base as one page of HTML, with an index by theme and one by source. */
public final class RulesBook {
  private static final Pattern WORD = Pattern.compile("[a-zA-Z0-9][a-zA-Z0-9-]*");
  private static final String EXCEPT = "except when ";

  private final List<Rule> rules;
  private final Knowledge knowledge;
  private final RulesReport report;
  private final RuleUses uses;
  private final Set<String> ids = new LinkedHashSet<>();
  private final Map<String, Set<String>> namedBy = new HashMap<>();
  private final Map<String, List<Rule>> byFigure = new LinkedHashMap<>();
  private final HtmlPage sheet;

  private RulesBook(List<Rule> rules, Knowledge knowledge, RuleUses uses) {
    this.rules = rules;
    this.knowledge = knowledge;
    this.report = new RulesReport(rules, knowledge);
    this.uses = uses;
    this.sheet = new HtmlPage("The rules");
    rules.forEach(rule -> ids.add(rule.note().id()));
    for (Rule rule : rules) {
      for (String sentence : sentences(rule)) {
        Matcher words = WORD.matcher(sentence);
        while (words.find()) {
          String word = words.group();
          if (ids.contains(word) && !word.equals(rule.note().id())) {
            namedBy.computeIfAbsent(word, id -> new TreeSet<>()).add(rule.note().id());
          }
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
   */
  public static String html(List<Rule> rules, Knowledge knowledge, RuleUses uses) {
    return new RulesBook(rules, knowledge, uses).write();
  }

  private static List<String> sentences(Rule rule) {
    List<String> all = new ArrayList<>(rule.when());
    all.addAll(rule.then());
    return all;
  }

  /** What a rule file asks, from its name: {@code 14-boards-over-timber} is boards over timber. */
  static String theme(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1).replace(".dslr", "");
    String words = name.replaceFirst("^[0-9]+-", "").replace('-', ' ');
    return words.isEmpty() ? file : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private Map<String, List<Rule>> byTheme() {
    Map<String, List<Rule>> themes = new LinkedHashMap<>();
    rules.forEach(
        rule -> themes.computeIfAbsent(theme(rule.file()), t -> new ArrayList<>()).add(rule));
    return themes;
  }

  private Map<String, List<Rule>> bySource() {
    Map<String, List<Rule>> sources = new LinkedHashMap<>();
    knowledge.sources().keySet().forEach(id -> sources.put(id, new ArrayList<>()));
    rules.forEach(
        rule -> sources.computeIfAbsent(rule.note().source(), id -> new ArrayList<>()).add(rule));
    return sources;
  }

  private String write() {
    sheet.element("h1", "The rules");
    sheet.element(
        "p",
        rules.size()
            + " rules, "
            + byFigure.size()
            + " figures they read, "
            + knowledge.sources().size()
            + " sources.");
    sheet
        .raw("<nav aria-label=\"Parts\"><p><a href=\"#by-theme\">By theme</a> · ")
        .raw("<a href=\"#by-source\">By source</a> · <a href=\"#rules\">Rules</a> · ")
        .raw("<a href=\"#figures\">Figures</a></p></nav>\n");
    index();
    sheet.raw("<h2 id=\"rules\" class=\"new-page\">Rules</h2>\n");
    byTheme()
        .forEach(
            (theme, all) -> {
              sheet.raw("<h2 id=\"" + anchor("theme-" + theme) + "\">").text(theme).raw("</h2>\n");
              all.forEach(this::rule);
            });
    figures();
    return sheet.html();
  }

  private void index() {
    sheet.raw("<h2 id=\"by-theme\">By theme</h2>\n<dl>\n");
    byTheme()
        .forEach(
            (theme, all) -> {
              sheet.raw("<dt><a href=\"#" + anchor("theme-" + theme) + "\">").text(theme);
              sheet.raw("</a></dt><dd>");
              links(all);
              sheet.raw("</dd>\n");
            });
    sheet.raw("</dl>\n<h2 id=\"by-source\">By source</h2>\n");
    bySource()
        .forEach(
            (id, all) -> {
              Source source = knowledge.sources().get(id);
              sheet.raw("<h3 id=\"" + anchor("source-" + id) + "\">");
              sheet.text(source == null ? id : source.title()).raw("</h3>\n");
              if (source != null) {
                sheet.element(
                    "p",
                    "soft",
                    source.status() + (source.note().isEmpty() ? "" : ". " + source.note()));
              }
              sheet.raw("<p>");
              if (all.isEmpty()) {
                sheet.text("No rule rests on it alone; figures do.");
              }
              links(all);
              sheet.raw("</p>\n");
            });
  }

  private void links(List<Rule> all) {
    boolean first = true;
    for (Rule rule : all) {
      sheet.raw(first ? "" : ", ");
      first = false;
      link(rule.note().id(), rule.note().title());
    }
  }

  private void link(String id, String title) {
    sheet.raw("<a href=\"#" + anchor(id) + "\" title=\"" + HtmlPage.escape(title) + "\">");
    sheet.text(id).raw("</a>");
  }

  private static String anchor(String id) {
    return id.replaceAll("[^A-Za-z0-9-]+", "-");
  }

  private void rule(Rule rule) {
    String id = rule.note().id();
    sheet.raw("<section class=\"rule\" id=\"" + anchor(id) + "\">\n<h3><span class=\"id\">");
    sheet.text(id).raw("</span> ").text(rule.note().title()).raw("</h3>\n<dl>\n");
    entry("when", rule.when().stream().filter(line -> !line.startsWith(EXCEPT)).toList());
    entry("then", rule.then());
    entry("except when", except(rule));
    entry("because", List.of(rule.note().reason()));
    source(rule);
    for (Figure figure : report.figures(rule)) {
      sheet.raw("<dt>figure</dt><dd><a href=\"#" + anchor("figure-" + figure.name()) + "\">");
      sheet.text(figure.name()).raw("</a> = ");
      sheet.text(figure.text() + ", " + figure.description() + " (" + figure.status() + ")");
      sheet.raw("</dd>\n");
    }
    for (String wording : report.wordings(rule)) {
      entry(
          "says",
          List.of(
              RulesReport.filled(
                  String.join(" ", knowledge.wording().get(wording).parts().values()), knowledge)));
    }
    Set<String> others = namedBy.getOrDefault(id, Set.of());
    if (!others.isEmpty()) {
      sheet.raw("<dt>named by</dt><dd>");
      boolean first = true;
      for (String other : others) {
        sheet.raw(first ? "" : ", ");
        first = false;
        link(other, "");
      }
      sheet.raw("</dd>\n");
    }
    if (uses.looked()) {
      entry("scenarios", List.of(or(uses.scenarios(id), "none of those looked at")));
      entry("lessons", List.of(or(uses.lessons(id), "none of those looked at")));
    }
    sheet.raw("</dl>\n</section>\n");
  }

  private static String or(List<String> all, String none) {
    return all.isEmpty() ? none : String.join("; ", all);
  }

  private List<String> except(Rule rule) {
    List<String> found = new ArrayList<>();
    for (String line : rule.when()) {
      if (line.startsWith(EXCEPT)) {
        found.add(line.substring(EXCEPT.length()));
      }
    }
    return found;
  }

  private void source(Rule rule) {
    Source source = knowledge.sources().get(rule.note().source());
    sheet.raw("<dt>source</dt><dd><a href=\"#" + anchor("source-" + rule.note().source()) + "\">");
    sheet.text(source == null ? rule.note().source() : source.title()).raw("</a>");
    sheet.text(source == null ? "" : " (" + source.status() + ")").raw("</dd>\n");
  }

  /** An entry of a rule's list; ids of other rules and names of figures in it are links. */
  private void entry(String name, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    sheet.raw("<dt>" + name + "</dt><dd>");
    boolean first = true;
    for (String line : lines) {
      sheet.raw(first ? "" : "<br>");
      first = false;
      int at = 0;
      Matcher words = WORD.matcher(line);
      while (words.find()) {
        String word = words.group();
        boolean figure = word.contains("-") && knowledge.figures().has(word);
        if (ids.contains(word) || figure) {
          sheet.text(line.substring(at, words.start()));
          sheet.raw("<a href=\"#" + anchor(figure ? "figure-" + word : word) + "\">");
          sheet.text(word).raw("</a>");
          at = words.end();
        }
      }
      sheet.text(line.substring(at));
    }
    sheet.raw("</dd>\n");
  }

  private void figures() {
    sheet.raw("<h2 id=\"figures\" class=\"new-page\">Figures</h2>\n");
    byFigure.forEach(
        (name, users) -> {
          Figure figure = knowledge.figures().get(name);
          Source source = knowledge.sources().get(figure.source());
          sheet.raw("<section class=\"rule\" id=\"" + anchor("figure-" + name) + "\">\n<h3>");
          sheet.text(name + " = " + figure.text()).raw("</h3>\n<p>");
          sheet.text(figure.description() + " (practice: " + figure.practice() + "). ");
          sheet.text(
              (source == null ? figure.source() : source.title()) + " (" + figure.status() + ").");
          sheet.raw("</p>\n");
          if (!figure.note().isEmpty()) {
            sheet.element("p", "soft", figure.note());
          }
          sheet.raw("<p>Read by ");
          links(users);
          sheet.raw("</p>\n</section>\n");
        });
  }
}
