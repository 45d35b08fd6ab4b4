package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import underfoot.scenario.RuleFiles;

/** The sentences that rules may use, read from the vocabulary files. */
final class Vocabulary {
  private static final Pattern ENTRY =
      Pattern.compile("\\[(condition|consequence)\\]\\[\\](.+?[^\\\\])=(.*)");
  private static final Pattern SLOT =
      Pattern.compile("\\{(\\w+)(?::((?:[^{}]|\\{\\d+(?:,\\d*)?\\})+))?\\}");

  private final List<Sentence> conditions = new ArrayList<>();
  private final List<Sentence> consequences = new ArrayList<>();

  /**
   * One sentence.
   *
   * @param file where it stands
   * @param line where it stands
   * @param said how it is written, slots in braces
   * @param pattern what it takes
   */
  record Sentence(String file, int line, String said, Pattern pattern) {}

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
        try {
          Sentence sentence =
              new Sentence(path, number, entry.group(2), Pattern.compile(regex(entry.group(2))));
          (entry.group(1).equals("condition") ? vocabulary.conditions : vocabulary.consequences)
              .add(sentence);
        } catch (PatternSyntaxException e) {
          faults.add(new RuleFaults.Fault(path, number, "the sentence's pattern is not closed"));
        }
      }
    }
    return vocabulary;
  }

  private static String regex(String said) {
    Matcher slots = SLOT.matcher(said);
    StringBuilder regex = new StringBuilder();
    int at = 0;
    while (slots.find()) {
      regex.append(said, at, slots.start());
      regex.append('(').append(slots.group(2) == null ? ".+?" : slots.group(2)).append(')');
      at = slots.end();
    }
    return regex.append(said.substring(at)).toString();
  }

  List<Sentence> conditions() {
    return List.copyOf(conditions);
  }

  List<Sentence> consequences() {
    return List.copyOf(consequences);
  }

  boolean knowsCondition(String line) {
    return conditions.stream().anyMatch(s -> s.pattern().matcher(line).matches());
  }

  boolean knowsConsequence(String line) {
    return consequences.stream().anyMatch(s -> s.pattern().matcher(line).matches());
  }

  String unknown(String id, String line, boolean condition) {
    String nearest = "";
    int least = Integer.MAX_VALUE;
    for (Sentence sentence : condition ? conditions : consequences) {
      int apart = underfoot.scenario.Nearest.distance(line, sentence.said());
      if (apart < least) {
        least = apart;
        nearest = sentence.said();
      }
    }
    return id + " says '" + line + "', which is no sentence of the vocabulary; nearest: " + nearest;
  }
}
