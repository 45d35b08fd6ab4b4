package underfoot.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.Source;
import underfoot.knowledge.Status;
import underfoot.knowledge.Wording;
import underfoot.language.RuleForm;
import underfoot.quantity.Nearest;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Named;

/** The rule base as pages that can be read aloud. */
public final class RulesReport {
  static final Pattern WORD = Pattern.compile("[a-zA-Z0-9][a-zA-Z0-9-]*");
  private static final Map<Class<?>, String> PROPERTIES =
      Map.of(
          RuleView.class,
          "rule/note/id rule/note/title rule/file rule/line rule/note/reason source"
              + " status=sourceStatus rule/when rule/then rule/table=forEach? rows?"
              + " figures/name=figures");
  private static final Pattern FIGURE = Pattern.compile("\\{([^}]+)\\}");

  private final List<RuleForm> rules;
  private final Knowledge knowledge;
  private final RuleUses uses;

  /**
   * @param rules every rule, in the order of files and lines
   * @param knowledge what they refer to
   */
  public RulesReport(List<RuleForm> rules, Knowledge knowledge) {
    this(rules, knowledge, new RuleUses());
  }

  /**
   * @param rules every rule, in the order of files and lines
   * @param knowledge what they refer to
   * @param uses which scenarios use them
   */
  public RulesReport(List<RuleForm> rules, Knowledge knowledge, RuleUses uses) {
    this.rules = List.copyOf(rules);
    this.knowledge = knowledge;
    this.uses = uses;
  }

  /** Writes one line for each rule, by the source it rests on. */
  public void bySource(TextPage page) {
    for (Source source : knowledge.sources().values()) {
      List<RuleForm> resting = rules.stream().filter(rule -> restsOn(rule, source.id())).toList();
      if (!resting.isEmpty()) {
        page.heading(source.title() + " (" + source.status() + ")");
        resting.forEach(rule -> line(rule, page));
      }
    }
    page.heading("How well the rules are known, each row of a table and cell of a kind counted");
    byStatus().forEach(line -> page.para("  ", "    ", line, Tone.PLAIN));
  }

  /** Whether a rule, or one of its rows, rests on a source. */
  private static boolean restsOn(RuleForm rule, String source) {
    return rule.each().stream().anyMatch(one -> Source.key(one.note().source()).equals(source));
  }

  /** How many rules are known how well, rows and cells counted; a sentence for each status. */
  List<String> byStatus() {
    Map<String, Long> counts =
        Stream.concat(
                rules.stream()
                    .flatMap(rule -> rule.each().stream())
                    .map(rule -> rule.note().source()),
                knowledge.kinds().citations().stream())
            .collect(
                Collectors.groupingBy(
                    citation -> knowledge.source(citation).status(), Collectors.counting()));
    List<String> lines = new ArrayList<>();
    long facts = 0;
    long named = 0;
    for (Status status : knowledge.statuses().values()) {
      long count = counts.getOrDefault(status.id(), 0L);
      lines.add(count + " " + status.id() + ": " + status.means());
      facts += status.fact() ? count : 0;
      named += status.fact() && status.document() ? count : 0;
    }
    lines.add(
        "Of %d rules that state a fact of the trade, %d name a document (%d %%)."
            .formatted(facts, named, facts == 0 ? 0 : 100 * named / facts));
    return lines;
  }

  /** A row in one paragraph: what it concludes, when and why, and by which source of its own. */
  private String row(RuleForm row, RuleForm of) {
    String when = row.when().isEmpty() ? "" : " when: " + String.join("; ", row.when()) + ".";
    String own = row.note().source().equals(of.note().source()) ? "" : ". Source: " + source(row);
    return String.join("; ", row.then()) + "." + when + " Because: " + row.note().reason() + own;
  }

  /** What a rule is for each of its rows; nothing if it is written for no table. */
  List<String> rows(RuleForm rule) {
    return rule.isForEach() ? rule.each().stream().map(one -> row(one, rule)).toList() : List.of();
  }

  private static void line(RuleForm rule, TextPage page) {
    String id = String.format(Locale.ROOT, "  %-10s ", rule.note().id());
    page.para(id, "             ", rule.note().title(), Tone.PLAIN);
  }

  /** Writes one line for each rule, by file. */
  public void index(TextPage page) {
    String file = "";
    for (RuleForm rule : rules) {
      if (!rule.file().equals(file)) {
        file = rule.file();
        page.heading(file);
      }
      line(rule, page);
    }
    page.blank();
    page.para(rules.size() + " rules. `rules ID` shows one of them, a figure, a layer or a text.");
  }

  /**
   * Writes the page of a rule, a figure, a kind of layer, a text or a source.
   *
   * @return whether there is anything of that id
   */
  public boolean page(String id, TextPage page) {
    int before = page.text().length();
    for (RuleForm rule : rules) {
      if (rule.note().id().equalsIgnoreCase(id)) {
        rule(rule, page);
      }
    }
    if (knowledge.figures().has(id)) {
      figure(knowledge.figures().get(id), page);
    }
    for (LayerKind kind : knowledge.layers().all()) {
      if (kind.id().equals(id)) {
        layer(kind, page);
      }
    }
    String wording = Named.of(id).name();
    if (knowledge.wording().ids().contains(wording)) {
      wording(wording, page);
    }
    Source source = knowledge.sources().get(id);
    if (source != null) {
      source(source, page);
    }
    return page.text().length() > before;
  }

  /** The ids most like one that is not there; at most three, the nearest first. */
  public List<String> nearest(String id) {
    Set<String> ids = new LinkedHashSet<>();
    rules.forEach(rule -> ids.add(rule.note().id()));
    knowledge.figures().all().forEach(figure -> ids.add(figure.name()));
    knowledge.layers().all().forEach(kind -> ids.add(kind.id()));
    ids.addAll(knowledge.wording().ids());
    ids.addAll(knowledge.sources().keySet());
    List<String> sorted = new ArrayList<>(ids);
    String written = (id.length() > 80 ? id.substring(0, 80) : id).toLowerCase(Locale.ROOT);
    sorted.sort(
        Comparator.comparingInt(one -> Nearest.distance(one.toLowerCase(Locale.ROOT), written)));
    return sorted.subList(0, Math.min(3, sorted.size()));
  }

  private static void entry(String name, String words, TextPage page) {
    page.para("  " + name, "          ", words, Tone.PLAIN);
  }

  private void rule(RuleForm rule, TextPage page) {
    page.heading(rule.note().id() + " " + rule.note().title());
    page.faint(rule.file() + ":" + rule.line());
    if (rule.isForEach()) {
      entry("for each of ", rule.table() + ", " + rule.rows().size() + " in all", page);
    }
    sentences("  when ", rule.when().isEmpty() ? List.of("") : rule.when(), page);
    sentences("  then ", rule.then(), page);
    entry("because ", rule.note().reason(), page);
    entry("source: ", source(rule), page);
    rows(rule).forEach(row -> entry("row:    ", row, page));
    for (Figure figure : figures(rule)) {
      String words = figure.name() + " = " + figure.text() + ", " + figure.description();
      entry("figure: ", words + "; " + source(figure), page);
    }
    for (String id : wordings(rule)) {
      for (String text : knowledge.wording().get(id).parts().values()) {
        entry("says:   ", filled(text, knowledge), page);
      }
    }
    String id = rule.note().id();
    List<String> others = namedBy(id);
    if (!others.isEmpty()) {
      entry("named by: ", String.join(", ", others), page);
    }
    if (uses.looked()) {
      entry("scenarios: ", or(uses.scenarios(id)), page);
      entry("lessons: ", or(uses.lessons(id)), page);
    }
  }

  private static void sentences(String lead, List<String> sentences, TextPage page) {
    String first = lead;
    for (String sentence : sentences) {
      page.para(first, "         ", sentence, Tone.PLAIN);
      first = "       ";
    }
  }

  static String or(List<String> all) {
    return all.isEmpty() ? "none of those looked at" : String.join("; ", all);
  }

  /** A text with its figures filled in; facts stay in brackets. */
  static String filled(String text, Knowledge knowledge) {
    return FIGURE
        .matcher(text.strip())
        .replaceAll(
            named ->
                Matcher.quoteReplacement(
                    knowledge.figures().has(named.group(1))
                        ? knowledge.figures().get(named.group(1)).text()
                        : named.group()));
  }

  /** The source of a figure, and how well it is known. */
  String source(Figure figure) {
    return knowledge.source(figure.source()).title() + " (" + figure.status() + ")";
  }

  /** The source of a rule, and how well it is known. */
  String source(RuleForm rule) {
    Source source = knowledge.source(rule.note().source());
    return source.title() + " (" + source.status() + ")";
  }

  /** The figures a rule reads, those in the texts it gives included. */
  List<Figure> figures(RuleForm rule) {
    Set<Figure> found = new LinkedHashSet<>();
    for (String word : words(rule)) {
      if (knowledge.figures().has(word)) {
        found.add(knowledge.figures().get(word));
      }
    }
    for (String id : wordings(rule)) {
      for (String text : knowledge.wording().get(id).parts().values()) {
        Matcher named = FIGURE.matcher(text);
        while (named.find()) {
          if (knowledge.figures().has(named.group(1))) {
            found.add(knowledge.figures().get(named.group(1)));
          }
        }
      }
    }
    return List.copyOf(found);
  }

  List<String> wordings(RuleForm rule) {
    Set<String> known = knowledge.wording().ids();
    return rule.each().stream()
        .flatMap(one -> one.then().stream())
        .flatMap(sentence -> WORD.matcher(sentence).results())
        .map(MatchResult::group)
        .filter(word -> word.contains("-") && known.contains(word))
        .distinct()
        .toList();
  }

  /** Lists the rules in which all the words are found. */
  public void found(List<String> words, TextPage page) {
    List<RuleForm> found = new RulesIndex(rules, knowledge).with(words, this::wordings);
    for (RuleForm rule : found) {
      page.para("  ", "      ", rule.note().id() + " " + rule.note().title(), TextPage.Tone.PLAIN);
    }
    page.blank();
    page.para(found.size() + " rules; `rules ID` prints one.");
  }

  /** The words of a rule's sentences. */
  static Set<String> words(RuleForm rule) {
    return rule.each().stream()
        .flatMap(one -> Stream.concat(one.when().stream(), one.then().stream()))
        .flatMap(sentence -> WORD.matcher(sentence).results())
        .map(MatchResult::group)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The rules whose sentences name an id. */
  private List<String> namedBy(String id) {
    return ids(rule -> !rule.note().id().equals(id) && words(rule).contains(id));
  }

  private List<String> ids(Predicate<RuleForm> which) {
    return rules.stream().filter(which).map(rule -> rule.note().id()).toList();
  }

  private void figure(Figure figure, TextPage page) {
    page.heading("Figure " + figure.name() + " = " + figure.text());
    page.para(
        "  ", "  ", figure.description() + " (practice: " + figure.practice() + ")", Tone.PLAIN);
    entry("source: ", source(figure), page);
    if (!figure.note().isEmpty()) {
      entry("note:   ", figure.note(), page);
    }
    used(ids(rule -> figures(rule).contains(figure)), page);
  }

  private static void used(List<String> users, TextPage page) {
    if (!users.isEmpty()) {
      entry("used by: ", String.join(", ", users), page);
    }
  }

  private void layer(LayerKind kind, TextPage page) {
    page.heading("Layer " + kind.id() + ": " + kind.name());
    page.para("  ", "  ", kind.material() + "; thickness: " + kind.thickness(), Tone.PLAIN);
    used(namedBy(kind.id()), page);
  }

  private void wording(String id, TextPage page) {
    Wording.Text text = knowledge.wording().get(id);
    page.heading("Text " + id + (text.title().isEmpty() ? "" : ": " + text.title()));
    text.parts()
        .forEach(
            (part, words) ->
                page.para(
                    "  ", "  ", part.equals("text") ? words : part + ": " + words, Tone.PLAIN));
    used(namedBy(id), page);
  }

  private void source(Source source, TextPage page) {
    page.heading("Source " + source.id());
    page.para("  ", "  ", source.title() + " (" + source.status() + ")", Tone.PLAIN);
    if (!source.note().isEmpty()) {
      entry("note:   ", source.note(), page);
    }
    used(ids(rule -> restsOn(rule, source.id())), page);
  }

  /**
   * Writes rules as JSON.
   *
   * @param id the rule to write; empty for all
   * @param out where they are written; left open
   * @return how many were written
   */
  public int json(String id, Writer out) {
    List<RuleView> written =
        rules.stream()
            .filter(rule -> id.isEmpty() || rule.note().id().equalsIgnoreCase(id))
            .map(this::view)
            .toList();
    RecordWriter.write(Map.of("rules", written), true, PROPERTIES, out);
    return written.size();
  }

  private record RuleView(
      RuleForm rule, String source, String status, List<String> rows, List<Figure> figures) {}

  private RuleView view(RuleForm rule) {
    Source source = knowledge.source(rule.note().source());
    return new RuleView(rule, source.title(), source.status(), rows(rule), figures(rule));
  }
}
