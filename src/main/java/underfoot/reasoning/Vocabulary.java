package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import underfoot.scenario.Nearest;
import underfoot.scenario.RuleFiles;

/** The sentences that rules may use, read from the vocabulary files. */
final class Vocabulary {
  private static final Pattern ENTRY =
      Pattern.compile("\\[(condition|consequence)\\]\\[\\](.+?[^\\\\])=(.*)");
  private static final Pattern SLOT =
      Pattern.compile("\\{(\\w+)(?::((?:[^{}]|\\{\\d+(?:,\\d*)?\\})+))?\\}");

  // What a sentence may stand for: matching our own facts, and concluding through the draft.
  // Nothing
  // else is taken, so that a vocabulary from somebody else cannot run code.
  private static final String VALUE =
      "(?:\"[^\"\\\\]*\"|-?\\d+(?:\\.\\d+)?|From\\.[A-Z]+|\\$\\w+\\.\\w+(?: [+-] \\$\\w+\\.\\w+)*)";
  private static final String CONSTRAINT =
      "\\w+ (?:(?:==|!=|<=|>=|<|>|matches) "
          + VALUE
          + "|(?:not )?in \\( \"[^\"\\\\]*\"(?:, \"[^\"\\\\]*\")* \\))";
  private static final String ONE_PATTERN =
      "(?:not |exists )?(?:\\$\\w+ : )?(?:Fact|Unknown|Figure|Laid|Conclusion|Remedy|Caution|Finding)"
          + "\\( (?:"
          + CONSTRAINT
          + "(?:, "
          + CONSTRAINT
          + ")* )?\\)";
  private static final Pattern MAY_MATCH =
      Pattern.compile(ONE_PATTERN + "(?: " + ONE_PATTERN + ")*");
  private static final String ARGUMENT = "(?:\"[^\"\\\\]*\"|\\$thing\\.about\\(\\))";
  private static final Pattern MAY_CONCLUDE =
      Pattern.compile(
          "insertLogical\\( draft\\.[a-zA-Z]+\\( " + ARGUMENT + "(?:, " + ARGUMENT + ")* \\) \\);");

  private final Map<String, Optional<Said>> saidConditions = new ConcurrentHashMap<>();
  private final Map<String, Optional<Said>> saidConsequences = new ConcurrentHashMap<>();
  private final List<Sentence> conditions = new ArrayList<>();
  private final List<Sentence> consequences = new ArrayList<>();

  /**
   * One sentence.
   *
   * @param file where it stands
   * @param line where it stands
   * @param said how it is written, slots in braces
   * @param pattern what it takes
   * @param slots the names of its slots, in the order of the pattern's groups
   * @param stands what it stands for, slots in braces
   */
  record Sentence(
      String file, int line, String said, Pattern pattern, List<String> slots, String stands) {
    /** How many characters it says of its own; of two that take a line the longer is meant. */
    int words() {
      return SLOT.matcher(said).replaceAll("").length();
    }
  }

  /**
   * A line of a rule as the vocabulary takes it.
   *
   * @param sentence the first sentence that takes it
   * @param slots what stands in its slots
   */
  record Said(Sentence sentence, Map<String, String> slots) {
    /** What the line stands for. */
    String stands() {
      String filled = sentence.stands();
      for (Map.Entry<String, String> slot : slots.entrySet()) {
        filled = filled.replace("{" + slot.getKey() + "}", slot.getValue());
      }
      return filled;
    }
  }

  static Vocabulary read(RuleFiles files, List<RuleFaults.Fault> faults) {
    Vocabulary vocabulary = new Vocabulary();
    for (String path : files.list("vocabulary", ".dsl")) {
      int number = 0;
      for (String line : RuleText.text(files, path).split("\n", -1)) {
        number++;
        if (line.isBlank() || line.startsWith("#")) {
          continue;
        }
        Matcher entry = ENTRY.matcher(line);
        if (!entry.matches()) {
          faults.add(
              new RuleFaults.Fault(
                  path, number, "write [condition][]a sentence=… or [consequence][]a sentence=…"));
          continue;
        }
        boolean condition = entry.group(1).equals("condition");
        String stands = entry.group(3).strip();
        if (!(condition ? MAY_MATCH : MAY_CONCLUDE).matcher(stands).matches()) {
          faults.add(new RuleFaults.Fault(path, number, mayNot(condition, stands)));
          continue;
        }
        try {
          Sentence sentence =
              new Sentence(
                  path,
                  number,
                  entry.group(2),
                  Pattern.compile(regex(entry.group(2))),
                  slots(entry.group(2)),
                  stands);
          (condition ? vocabulary.conditions : vocabulary.consequences).add(sentence);
        } catch (PatternSyntaxException e) {
          faults.add(new RuleFaults.Fault(path, number, "the sentence's pattern is not closed"));
        }
      }
    }
    return vocabulary;
  }

  private static String mayNot(boolean condition, String stands) {
    String cut = stands.length() > 60 ? stands.substring(0, 60) + "…" : stands;
    return condition
        ? "a condition may only match facts and conclusions, as in Fact( name == \"deck\" ); found: "
            + cut
        : "a consequence may only conclude, as in insertLogical( draft.remedy( \"{wording}\", \"\" )"
            + " ); found: "
            + cut;
  }

  // Slots become named groups, so that a pattern may hold groups of its own.
  private static String regex(String said) {
    Matcher slots = SLOT.matcher(said);
    StringBuilder regex = new StringBuilder();
    int at = 0;
    while (slots.find()) {
      String takes = slots.group(2) == null ? ".+?" : slots.group(2);
      regex.append(said, at, slots.start());
      regex.append("(?<").append(slots.group(1)).append('>').append(takes).append(')');
      at = slots.end();
    }
    return regex.append(said.substring(at)).toString();
  }

  private static List<String> slots(String said) {
    List<String> names = new ArrayList<>();
    Matcher slots = SLOT.matcher(said);
    while (slots.find()) {
      names.add(slots.group(1));
    }
    return List.copyOf(names);
  }

  List<Sentence> conditions() {
    return List.copyOf(conditions);
  }

  List<Sentence> consequences() {
    return List.copyOf(consequences);
  }

  /** How a line after {@code when} is taken; empty if it is no sentence. */
  Optional<Said> condition(String line) {
    return saidConditions.computeIfAbsent(line, one -> read(conditions, one));
  }

  /** How a line after {@code then} is taken; empty if it is no sentence. */
  Optional<Said> consequence(String line) {
    return saidConsequences.computeIfAbsent(line, one -> read(consequences, one));
  }

  /**
   * Which earlier sentence would take a line, or part of it, before the one it is meant for; empty
   * if none. The engine takes the first sentence that is found anywhere in a line.
   */
  Optional<Sentence> thief(String line, boolean condition) {
    List<Sentence> sentences = condition ? conditions : consequences;
    Sentence meant = null;
    for (Sentence sentence : sentences) {
      boolean closer = meant == null || sentence.words() > meant.words();
      if (closer && sentence.pattern().matcher(line).matches()) {
        meant = sentence;
      }
    }
    for (Sentence sentence : sentences) {
      if (sentence == meant) {
        return Optional.empty();
      }
      if (sentence.pattern().matcher(line).find()) {
        return Optional.of(sentence);
      }
    }
    return Optional.empty();
  }

  private static Optional<Said> read(List<Sentence> sentences, String line) {
    for (Sentence sentence : sentences) {
      Matcher taken = sentence.pattern().matcher(line);
      if (taken.matches()) {
        Map<String, String> slots = new LinkedHashMap<>();
        for (String slot : sentence.slots()) {
          slots.put(slot, taken.group(slot));
        }
        return Optional.of(new Said(sentence, slots));
      }
    }
    return Optional.empty();
  }

  String unknown(String id, String line, boolean condition) {
    String nearest = "";
    int least = Integer.MAX_VALUE;
    for (Sentence sentence : condition ? conditions : consequences) {
      int apart = Nearest.distance(line, sentence.said());
      if (apart < least) {
        least = apart;
        nearest = sentence.said();
      }
    }
    return id + " says '" + line + "', which is no sentence of the vocabulary; nearest: " + nearest;
  }
}
