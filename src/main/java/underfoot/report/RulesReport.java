package underfoot.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JsonGenerator;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.Source;
import underfoot.knowledge.Wording;
import underfoot.language.Rule;
import underfoot.quantity.Nearest;
import underfoot.report.TextPage.Tone;

/** The rule base as pages that can be read aloud. */
public final class RulesReport {
  private static final Pattern WORD = Pattern.compile("[a-zA-Z0-9][a-zA-Z0-9-]*");
  private static final Pattern FIGURE = Pattern.compile("\\{([^}]+)\\}");

  private final List<Rule> rules;
  private final Knowledge knowledge;
  private final RuleUses uses;

  /**
   * @param rules every rule, in the order of files and lines
   * @param knowledge what they refer to
   */
  public RulesReport(List<Rule> rules, Knowledge knowledge) {
    this(rules, knowledge, new RuleUses());
  }

  /**
   * @param rules every rule, in the order of files and lines
   * @param knowledge what they refer to
   * @param uses which scenarios use them
   */
  public RulesReport(List<Rule> rules, Knowledge knowledge, RuleUses uses) {
    this.rules = List.copyOf(rules);
    this.knowledge = knowledge;
    this.uses = uses;
  }

  /** Writes one line for each rule, by the source it rests on. */
  public void bySource(TextPage page) {
    for (Source source : knowledge.sources().values()) {
      List<Rule> resting =
          rules.stream().filter(rule -> rule.note().source().equals(source.id())).toList();
      if (!resting.isEmpty()) {
        page.heading(source.title() + " (" + source.status() + ")");
        resting.forEach(rule -> line(rule, page));
      }
    }
  }

  private static void line(Rule rule, TextPage page) {
    String id = String.format(Locale.ROOT, "  %-10s ", rule.note().id());
    page.para(id, "             ", rule.note().title(), Tone.PLAIN);
  }

  /** Writes one line for each rule, by file. */
  public void index(TextPage page) {
    String file = "";
    for (Rule rule : rules) {
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
    for (Rule rule : rules) {
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
    String wording = id.contains(" @") ? id.substring(0, id.indexOf(" @")) : id;
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

  private void rule(Rule rule, TextPage page) {
    page.heading(rule.note().id() + " " + rule.note().title());
    page.para("", "", rule.file() + ":" + rule.line(), Tone.FAINT);
    page.para("  when ", "         ", rule.when().isEmpty() ? "" : rule.when().get(0), Tone.PLAIN);
    for (String sentence :
        rule.when().subList(Math.min(1, rule.when().size()), rule.when().size())) {
      page.para("       ", "         ", sentence, Tone.PLAIN);
    }
    String lead = "  then ";
    for (String sentence : rule.then()) {
      page.para(lead, "         ", sentence, Tone.PLAIN);
      lead = "       ";
    }
    page.para("  because ", "          ", rule.note().reason(), Tone.PLAIN);
    Source source = knowledge.sources().get(rule.note().source());
    String cited =
        source == null ? rule.note().source() : source.title() + " (" + source.status() + ")";
    page.para("  source: ", "          ", cited, Tone.PLAIN);
    for (Figure figure : figures(rule)) {
      page.para("  figure: ", "          ", line(figure), Tone.PLAIN);
    }
    for (String id : wordings(rule)) {
      knowledge
          .wording()
          .get(id)
          .parts()
          .forEach(
              (part, text) ->
                  page.para("  says:   ", "          ", filled(text, knowledge), Tone.PLAIN));
    }
    List<String> others = namedBy(rule.note().id());
    if (!others.isEmpty()) {
      page.para("  named by: ", "          ", String.join(", ", others), Tone.PLAIN);
    }
    if (uses.looked()) {
      String id = rule.note().id();
      page.para("  scenarios: ", "          ", or(uses.scenarios(id)), Tone.PLAIN);
      page.para("  lessons: ", "          ", or(uses.lessons(id)), Tone.PLAIN);
    }
  }

  private static String or(List<String> all) {
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

  private String line(Figure figure) {
    Source source = knowledge.sources().get(figure.source());
    return figure.name()
        + " = "
        + figure.text()
        + ", "
        + figure.description()
        + "; "
        + (source == null ? figure.source() : source.title())
        + " ("
        + figure.status()
        + ")";
  }

  /** The figures a rule reads, those in the texts it gives included. */
  List<Figure> figures(Rule rule) {
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

  List<String> wordings(Rule rule) {
    List<String> found = new ArrayList<>();
    for (String sentence : rule.then()) {
      Matcher words = WORD.matcher(sentence);
      while (words.find()) {
        String word = words.group();
        if (word.contains("-")
            && knowledge.wording().ids().contains(word)
            && !found.contains(word)) {
          found.add(word);
        }
      }
    }
    return found;
  }

  private static Collection<String> words(Rule rule) {
    Set<String> all = new LinkedHashSet<>();
    for (List<String> part : List.of(rule.when(), rule.then())) {
      for (String sentence : part) {
        Matcher words = WORD.matcher(sentence);
        while (words.find()) {
          all.add(words.group());
        }
      }
    }
    return all;
  }

  /** The rules whose sentences name an id. */
  private List<String> namedBy(String id) {
    List<String> found = new ArrayList<>();
    for (Rule rule : rules) {
      if (!rule.note().id().equals(id) && words(rule).contains(id)) {
        found.add(rule.note().id());
      }
    }
    return found;
  }

  private void figure(Figure figure, TextPage page) {
    page.heading("Figure " + figure.name() + " = " + figure.text());
    page.para(
        "  ", "  ", figure.description() + " (practice: " + figure.practice() + ")", Tone.PLAIN);
    Source source = knowledge.sources().get(figure.source());
    page.para(
        "  source: ",
        "          ",
        (source == null ? figure.source() : source.title()) + " (" + figure.status() + ")",
        Tone.PLAIN);
    if (!figure.note().isEmpty()) {
      page.para("  note:   ", "          ", figure.note(), Tone.PLAIN);
    }
    List<String> users =
        rules.stream()
            .filter(rule -> figures(rule).contains(figure))
            .map(rule -> rule.note().id())
            .toList();
    used(users, page);
  }

  private static void used(List<String> users, TextPage page) {
    if (!users.isEmpty()) {
      page.para("  used by: ", "          ", String.join(", ", users), Tone.PLAIN);
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
      page.para("  note:   ", "          ", source.note(), Tone.PLAIN);
    }
    used(
        rules.stream()
            .filter(rule -> rule.note().source().equals(source.id()))
            .map(rule -> rule.note().id())
            .toList(),
        page);
  }

  /**
   * Writes rules as JSON.
   *
   * @param id the rule to write; empty for all
   * @param out where they are written; left open
   * @return how many were written
   */
  public int json(String id, Writer out) {
    int written = 0;
    try (JsonGenerator json = JsonReport.generator(out)) {
      json.writeStartObject();
      json.writeName("rules");
      json.writeStartArray();
      for (Rule rule : rules) {
        if (id.isEmpty() || rule.note().id().equalsIgnoreCase(id)) {
          json(rule, json);
          written++;
        }
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return written;
  }

  private void json(Rule rule, JsonGenerator json) {
    Source source = knowledge.sources().get(rule.note().source());
    json.writeStartObject();
    json.writeStringProperty("id", rule.note().id());
    json.writeStringProperty("title", rule.note().title());
    json.writeStringProperty("file", rule.file());
    json.writeNumberProperty("line", rule.line());
    json.writeStringProperty("reason", rule.note().reason());
    json.writeStringProperty("source", source == null ? rule.note().source() : source.title());
    json.writeStringProperty("sourceStatus", source == null ? "" : source.status());
    list("when", rule.when(), json);
    list("then", rule.then(), json);
    list("figures", figures(rule).stream().map(Figure::name).toList(), json);
    json.writeEndObject();
  }

  private static void list(String name, List<String> texts, JsonGenerator json) {
    json.writeName(name);
    json.writeStartArray();
    texts.forEach(json::writeString);
    json.writeEndArray();
  }
}
