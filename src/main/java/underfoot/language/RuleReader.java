package underfoot.language;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.TableRow;
import underfoot.scenario.RuleFiles;

/**
 * Reads one rule file: comments, and rules of a name, a reason, a source, and sentences after
 * {@code when} and {@code then}.
 */
final class RuleReader {
  private static final String FOR_EACH = "for each ";
  private static final String ROW_OF = "row of ";

  private final RuleFiles files;
  private final Vocabulary vocabulary;
  private final Pass pass;
  private final String path;
  private final List<RuleFaults.Fault> faults;
  private final List<Rule> rules = new ArrayList<>();

  private int number;
  private String name;
  private int start;
  private String asks = "";
  private final Map<String, String> tags = new HashMap<>();
  private String table;
  private List<RuleForm.Line> when = new ArrayList<>();
  private List<RuleForm.Line> then = new ArrayList<>();
  private List<RuleForm.Line> into;

  RuleReader(
      RuleFiles files,
      Vocabulary vocabulary,
      Pass pass,
      String path,
      List<RuleFaults.Fault> faults) {
    this.files = files;
    this.vocabulary = vocabulary;
    this.pass = pass;
    this.path = path;
    this.faults = faults;
  }

  List<Rule> read() {
    for (String raw : RuleLines.of(files, path, faults)) {
      number++;
      String line = raw.strip();
      if (number == 1 && line.startsWith("//")) {
        asks = line.substring(2, Math.max(2, line.lastIndexOf('?') + 1)).strip();
      }
      if (!line.isEmpty() && !line.startsWith("//")) {
        read(line);
      }
    }
    if (name != null) {
      endless();
    }
    return rules;
  }

  private void read(String line) {
    if (name == null) {
      begin(line);
    } else if (line.equals("when")) {
      into = when;
    } else if (line.equals("then")) {
      into = then;
    } else if (line.equals("end")) {
      end();
    } else if (line.startsWith("rule ")) {
      endless();
      name = null;
      begin(line);
    } else if (into == null && line.startsWith(FOR_EACH)) {
      String named = line.substring(FOR_EACH.length()).strip();
      table = named.startsWith(ROW_OF) ? named.substring(ROW_OF.length()) : named;
    } else if (into == null) {
      tag(line);
    } else {
      sentence(line);
    }
  }

  private void begin(String line) {
    String quoted =
        line.startsWith("rule ") ? quoted(line.substring("rule ".length()).strip()) : null;
    if (quoted == null
        || quoted.indexOf(' ') < 0
        || !isId(quoted.substring(0, quoted.indexOf(' ')))) {
      wrong(
          number,
          "only rules of sentences may stand here, each beginning as rule \"DECK-03 what it decides\";"
              + " found: "
              + cut(line));
      return;
    }
    name = quoted;
    start = number;
    tags.clear();
    table = "";
    when = new ArrayList<>();
    then = new ArrayList<>();
    into = null;
  }

  private void tag(String line) {
    for (String tag : List.of("reason", "source")) {
      String lead = "@" + tag + "(";
      String text =
          line.startsWith(lead) && line.endsWith(")")
              ? quoted(line.substring(lead.length(), line.length() - 1))
              : null;
      if (text != null) {
        if (tags.put(tag, text) != null) {
          wrong(number, id() + " has two " + tag + "s; keep one");
        }
        return;
      }
    }
    wrong(
        number,
        "between a rule's name and when, only @reason(\"…\"), @source(\"…\") and for each … may"
            + " stand, found: "
            + cut(line));
  }

  private void sentence(String line) {
    into.add(new RuleForm.Line(line, number));
  }

  private void end() {
    int space = name.indexOf(' ');
    RuleNote note =
        new RuleNote(
            id(),
            name.substring(space + 1),
            tags.getOrDefault("reason", ""),
            tags.getOrDefault("source", ""));
    if (note.reason().isBlank()) {
      wrong(start, id() + " has no reason; write @reason(\"one plain sentence\")");
    }
    if (note.source().isBlank()) {
      wrong(start, id() + " has no source; write @source(\"an entry of sources.yaml\")");
    }
    if (then.isEmpty()) {
      wrong(start, id() + " concludes nothing; write a sentence after then");
    }
    RuleForm form = new RuleForm(note, path, asks, start, table, rows(), when, then);
    for (RuleForm each : form.each()) {
      if (form.isForEach() && each.consequences().isEmpty()) {
        faults.add(
            new RuleFaults.Fault(
                each.file(),
                each.line(),
                each.note().key()
                    + " has nothing to conclude; its row may say "
                    + String.join(", ", form.names())));
      } else {
        add(form, each);
      }
    }
    name = null;
  }

  /** Tells that a rule does not end, and what is wrong with its sentences besides. */
  private void endless() {
    wrong(start, id() + " has no end; write end on its last line");
    RuleNote note = new RuleNote(id(), "", "", "");
    for (RuleForm each : new RuleForm(note, path, asks, start, table, rows(), when, then).each()) {
      said(each, each.conditions(), true);
      said(each, each.consequences(), false);
    }
  }

  private List<TableRow> rows() {
    if (table.isEmpty()) {
      return List.of();
    }
    List<TableRow> rows = List.of();
    try {
      rows = TableRow.of(files, table);
      if (rows.isEmpty()) {
        wrong(start, id() + " is written for each of '" + table + "', and there is none");
      }
    } catch (KnowledgeFault | UncheckedIOException cannotBeRead) {
      wrong(start, id() + " is written for each of '" + table + "': " + cannotBeRead.getMessage());
    }
    return rows;
  }

  /** Adds a rule, read from its form or from a form that was filled. */
  private void add(RuleForm form, RuleForm filled) {
    Rule rule =
        new Rule(
            filled.note(),
            pass,
            filled.file(),
            filled.line(),
            said(filled, filled.conditions(), true),
            said(filled, filled.consequences(), false),
            form);
    leaning(rule);
    rules.add(rule);
  }

  private List<Said> said(RuleForm form, List<RuleForm.Line> lines, boolean condition) {
    List<Said> all = new ArrayList<>();
    for (RuleForm.Line line : lines) {
      String text = line.text();
      Optional<Said> said = Optional.empty();
      String wrong = "";
      if (text.chars().anyMatch(c -> "\"\\{}$".indexOf(c) >= 0)) {
        wrong = " has a quotation mark, a backslash, a brace or a $ in a sentence; leave it out";
      } else {
        said =
            condition
                ? vocabulary.condition(text, line.number())
                : vocabulary.consequence(text, line.number());
      }
      if (said.isPresent()) {
        all.add(said.get());
      } else {
        String what = wrong.isEmpty() ? vocabulary.unknown(id(), text, condition) : id() + wrong;
        faults.add(new RuleFaults.Fault(form.file(), line.number(), what));
      }
    }
    return all;
  }

  /** A sentence that leans on something needs an earlier one that names it. */
  private void leaning(Rule rule) {
    Set<String> named = new HashSet<>();
    for (Said said : rule.conditions()) {
      for (Pattern pattern : said.patterns()) {
        for (Constraint constraint : pattern.constraints()) {
          for (String variable : constraint.variables()) {
            if (!named.contains(variable)) {
              leansOnNothing(rule, said);
              named.add(variable);
            }
          }
        }
        if (!pattern.variable().isEmpty()) {
          named.add(pattern.variable());
        }
      }
    }
    for (Said said : rule.consequences()) {
      if (said.effect().leans() && !named.contains("thing")) {
        leansOnNothing(rule, said);
      }
    }
  }

  private void leansOnNothing(Rule rule, Said said) {
    faults.add(
        new RuleFaults.Fault(
            rule.file(),
            said.number(),
            id()
                + " says '"
                + said.text()
                + "', which leans on something that no line before it names; name it first, as in"
                + " There is a … named"));
  }

  private String id() {
    return name.substring(0, name.indexOf(' '));
  }

  private static boolean isId(String id) {
    return !id.isEmpty()
        && id.chars().allMatch(c -> (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-');
  }

  /** What stands between two quotation marks, if that is all and holds neither " nor \. */
  private static String quoted(String text) {
    if (text.length() < 2 || !text.startsWith("\"") || !text.endsWith("\"")) {
      return null;
    }
    String inside = text.substring(1, text.length() - 1);
    return inside.indexOf('"') < 0 && inside.indexOf('\\') < 0 ? inside.strip() : null;
  }

  private void wrong(int line, String what) {
    faults.add(new RuleFaults.Fault(path, line, what));
  }

  private static String cut(String line) {
    return line.length() > 60 ? line.substring(0, 60) + "…" : line;
  }
}
