package underfoot.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.RuleNote;
import underfoot.scenario.RuleFiles;

/**
 * Reads one rule file: comments, and rules of a name, a reason, a source, and sentences after
 * {@code when} and {@code then}.
 */
final class RuleReader {
  private final Vocabulary vocabulary;
  private final Pass pass;
  private final String path;
  private final List<RuleFaults.Fault> faults;
  private final List<Rule> rules = new ArrayList<>();

  private int number;
  private String name;
  private int start;
  private final Map<String, String> tags = new HashMap<>();
  private List<Said> when = new ArrayList<>();
  private List<Said> then = new ArrayList<>();
  private List<Said> into;
  private boolean concludes;

  RuleReader(Vocabulary vocabulary, Pass pass, String path, List<RuleFaults.Fault> faults) {
    this.vocabulary = vocabulary;
    this.pass = pass;
    this.path = path;
    this.faults = faults;
  }

  List<Rule> read(RuleFiles files) {
    for (String raw : RuleLines.of(files, path, faults)) {
      number++;
      String line = raw.strip();
      if (!line.isEmpty() && !line.startsWith("//")) {
        read(line);
      }
    }
    if (name != null) {
      wrong(start, id() + " has no end; write end on its last line");
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
      wrong(start, id() + " has no end; write end on its last line");
      name = null;
      begin(line);
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
    when = new ArrayList<>();
    then = new ArrayList<>();
    into = null;
    concludes = false;
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
        "between a rule's name and when, only @reason(\"…\") and @source(\"…\") may stand, found: "
            + cut(line));
  }

  private void sentence(String line) {
    boolean condition = into == when;
    concludes |= !condition;
    if (line.chars().anyMatch(c -> "\"\\{}$".indexOf(c) >= 0)) {
      wrong(
          number,
          id() + " has a quotation mark, a backslash, a brace or a $ in a sentence; leave it out");
      return;
    }
    (condition ? vocabulary.condition(line, number) : vocabulary.consequence(line, number))
        .ifPresentOrElse(into::add, () -> wrong(number, vocabulary.unknown(id(), line, condition)));
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
    if (!concludes) {
      wrong(start, id() + " concludes nothing; write a sentence after then");
    }
    leaning();
    rules.add(new Rule(note, pass, path, start, when, then));
    name = null;
  }

  /** A sentence that leans on something needs an earlier one that names it. */
  private void leaning() {
    Set<String> named = new HashSet<>();
    for (Said said : when) {
      for (Pattern pattern : said.patterns()) {
        for (Constraint constraint : pattern.constraints()) {
          for (String variable : constraint.variables()) {
            if (!named.contains(variable)) {
              leansOnNothing(said);
              named.add(variable);
            }
          }
        }
        if (!pattern.variable().isEmpty()) {
          named.add(pattern.variable());
        }
      }
    }
    for (Said said : then) {
      if (said.effect().leans() && !named.contains("thing")) {
        leansOnNothing(said);
      }
    }
  }

  private void leansOnNothing(Said said) {
    wrong(
        said.number(),
        id()
            + " says '"
            + said.text()
            + "', which leans on something that no line before it names; name it first, as in There"
            + " is a … named");
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
