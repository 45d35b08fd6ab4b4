package underfoot.reasoning;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.RuleNote;
import underfoot.scenario.RuleFiles;

/**
 * A rule as it stands in its file.
 *
 * @param note what it says of itself
 * @param file the rule file
 * @param line the line of its name
 * @param rulePackage the package, which is the pass it belongs to
 * @param when its conditions, one sentence each
 * @param then its conclusions, one sentence each
 */
public record RuleText(
    RuleNote note,
    String file,
    int line,
    String rulePackage,
    List<String> when,
    List<String> then) {

  private static final Pattern NAME = Pattern.compile("rule\\s+\"(\\S+)\\s+(.+)\"\\s*");
  private static final Pattern TAG = Pattern.compile("@(reason|source)\\(\"(.*)\"\\)\\s*");
  private static final Pattern HEADER =
      Pattern.compile(
          "package underfoot\\.rules\\.[a-z]+|import underfoot\\.(knowledge|buildup)\\.\\*"
              + "|global underfoot\\.reasoning\\.Draft draft"
              + "|expander rules/vocabulary/[a-z0-9-]+\\.dsl");

  /** Copies the lists. */
  public RuleText {
    when = List.copyOf(when);
    then = List.copyOf(then);
  }

  /** Reads every rule of a rule base, in the order of files and lines. */
  public static List<RuleText> readAll(RuleFiles files) throws RuleFaults {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    List<RuleText> rules = new ArrayList<>();
    for (String path : files.list("", ".dslr")) {
      rules.addAll(read(path, text(files, path), faults));
    }
    if (!faults.isEmpty()) {
      throw new RuleFaults(faults);
    }
    return rules;
  }

  /** A file of the rule base as text. */
  static String text(RuleFiles files, String path) {
    return new String(files.read(path), StandardCharsets.UTF_8);
  }

  /** The package that a rule file names; empty if none. */
  static String packageOf(String text) {
    return text.lines()
        .map(String::strip)
        .filter(line -> line.startsWith("package "))
        .map(line -> line.substring("package ".length()).replace(";", "").strip())
        .findFirst()
        .orElse("");
  }

  /**
   * What keeps rule files from being used: lines that are no sentence of the vocabulary (so that no
   * code can hide in a rule file), ids that stand twice, rules without reason or source.
   */
  static List<RuleFaults.Fault> faults(RuleFiles files, List<String> paths) {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    Vocabulary vocabulary = Vocabulary.read(files, faults);
    Map<String, RuleText> byId = new HashMap<>();
    for (String path : paths) {
      for (RuleText rule : read(path, text(files, path), faults)) {
        check(rule, vocabulary, byId, faults);
      }
    }
    return faults;
  }

  private static void check(
      RuleText rule,
      Vocabulary vocabulary,
      Map<String, RuleText> byId,
      List<RuleFaults.Fault> faults) {
    String id = rule.note().id();
    RuleText other = byId.putIfAbsent(id, rule);
    if (other != null) {
      faults.add(
          rule.fault(
              "the id "
                  + id
                  + " is taken by "
                  + other.file()
                  + ":"
                  + other.line()
                  + "; give this rule an id of its own"));
    }
    if (rule.note().reason().isBlank()) {
      faults.add(rule.fault(id + " has no reason; write @reason(\"one plain sentence\")"));
    }
    if (rule.note().source().isBlank()) {
      faults.add(rule.fault(id + " has no source; write @source(\"an entry of sources.yaml\")"));
    }
    for (String sentence : rule.when()) {
      plain(rule, sentence, faults);
      if (vocabulary.condition(sentence).isEmpty()) {
        faults.add(rule.fault(vocabulary.unknown(id, sentence, true)));
      }
    }
    for (String sentence : rule.then()) {
      plain(rule, sentence, faults);
      if (vocabulary.consequence(sentence).isEmpty()) {
        faults.add(rule.fault(vocabulary.unknown(id, sentence, false)));
      }
    }
  }

  private static void plain(RuleText rule, String sentence, List<RuleFaults.Fault> faults) {
    if (sentence.indexOf('"') >= 0 || sentence.indexOf('\\') >= 0) {
      faults.add(
          rule.fault(
              rule.note().id()
                  + " has a quotation mark or a backslash in a sentence; leave it out"));
    }
  }

  private RuleFaults.Fault fault(String what) {
    return new RuleFaults.Fault(file, line, what);
  }

  private static List<RuleText> read(String path, String text, List<RuleFaults.Fault> faults) {
    List<RuleText> rules = new ArrayList<>();
    String rulePackage = packageOf(text);
    String id = null;
    String title = "";
    int start = 0;
    Map<String, String> tags = new HashMap<>();
    List<String> when = new ArrayList<>();
    List<String> then = new ArrayList<>();
    List<String> into = null;
    int number = 0;
    for (String raw : text.split("\n", -1)) {
      number++;
      String line = raw.strip();
      if (line.isEmpty() || line.startsWith("//")) {
        continue;
      }
      if (id == null) {
        Matcher name = NAME.matcher(line);
        if (name.matches()) {
          id = name.group(1);
          title = name.group(2);
          start = number;
          tags.clear();
          when = new ArrayList<>();
          then = new ArrayList<>();
          into = null;
        } else if (!HEADER.matcher(line).matches()) {
          faults.add(
              new RuleFaults.Fault(
                  path, number, "only rules of sentences may stand here, found: " + cut(line)));
        }
      } else if (line.equals("when")) {
        into = when;
      } else if (line.equals("then")) {
        into = then;
      } else if (line.equals("end")) {
        RuleNote note =
            new RuleNote(
                id, title, tags.getOrDefault("reason", ""), tags.getOrDefault("source", ""));
        rules.add(new RuleText(note, path, start, rulePackage, when, then));
        id = null;
      } else if (into != null) {
        into.add(line);
      } else {
        Matcher tag = TAG.matcher(line);
        if (tag.matches()) {
          tags.put(tag.group(1), tag.group(2));
        } else {
          faults.add(
              new RuleFaults.Fault(
                  path,
                  number,
                  "between a rule's name and when, only @reason and @source may stand"
                      + ", found: "
                      + cut(line)));
        }
      }
    }
    if (id != null) {
      faults.add(new RuleFaults.Fault(path, start, id + " has no end; write end on its last line"));
    }
    return rules;
  }

  private static String cut(String line) {
    return line.length() > 60 ? line.substring(0, 60) + "…" : line;
  }
}
