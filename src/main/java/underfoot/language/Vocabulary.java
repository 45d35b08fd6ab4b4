package underfoot.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.quantity.Nearest;
import underfoot.scenario.RuleFiles;

/**
 * The sentences that rules may use, read from the vocabulary files. A line of a rule is the
 * sentence that takes all of it and says most of it in its own words.
 */
public final class Vocabulary {
  private static final String CONDITION = "[condition][]";
  private static final String CONSEQUENCE = "[consequence][]";

  private final List<Sentence> sentences = new ArrayList<>();
  private final Map<String, List<Sentence>> conditions = new HashMap<>();
  private final Map<String, List<Sentence>> consequences = new HashMap<>();

  private Vocabulary() {}

  static Vocabulary read(RuleFiles files, List<RuleFaults.Fault> faults) {
    Vocabulary vocabulary = new Vocabulary();
    for (String path : files.list("vocabulary", ".dsl")) {
      int number = 0;
      for (String line : RuleLines.of(files, path, faults)) {
        number++;
        if (!line.isBlank() && !line.startsWith("#")) {
          try {
            vocabulary.add(sentence(path, number, line));
          } catch (IllegalArgumentException wrong) {
            faults.add(new RuleFaults.Fault(path, number, wrong.getMessage()));
          }
        }
      }
    }
    return vocabulary;
  }

  private static Sentence sentence(String path, int number, String line) {
    boolean condition = line.startsWith(CONDITION);
    int equals = line.indexOf('=');
    if ((!condition && !line.startsWith(CONSEQUENCE)) || equals < 0) {
      throw new IllegalArgumentException(
          "write [condition][]a sentence=… or [consequence][]a sentence=…");
    }
    String said = line.substring((condition ? CONDITION : CONSEQUENCE).length(), equals);
    String stands = line.substring(equals + 1);
    Template template = Template.of(said.strip());
    return condition
        ? new Sentence(path, number, template, MeaningReader.patterns(stands), null)
        : new Sentence(path, number, template, List.of(), MeaningReader.effect(stands));
  }

  private void add(Sentence sentence) {
    sentences.add(sentence);
    (sentence.isCondition() ? conditions : consequences)
        .computeIfAbsent(sentence.template().firstWord(), word -> new ArrayList<>())
        .add(sentence);
  }

  /** Every sentence, in the order of files and lines. */
  List<Sentence> sentences() {
    return List.copyOf(sentences);
  }

  /** How a line after {@code when} is taken; empty if it is no sentence. */
  public Optional<Said> condition(String line, int number) {
    return read(conditions, line, number);
  }

  /** How a line after {@code then} is taken; empty if it is no sentence. */
  public Optional<Said> consequence(String line, int number) {
    return read(consequences, line, number);
  }

  private static Optional<Said> read(Map<String, List<Sentence>> byWord, String line, int number) {
    int space = line.indexOf(' ');
    String word = space < 0 ? line : line.substring(0, space);
    Sentence meant = null;
    Map<String, String> slots = Map.of();
    for (String first : List.of(word, "")) {
      for (Sentence sentence : byWord.getOrDefault(first, List.of())) {
        if (meant == null || sentence.template().ownLength() > meant.template().ownLength()) {
          Optional<Map<String, String>> taken = sentence.template().match(line);
          if (taken.isPresent()) {
            meant = sentence;
            slots = taken.get();
          }
        }
      }
    }
    return meant == null ? Optional.empty() : Optional.of(Said.of(line, number, meant, slots));
  }

  /** What is told of a line that is no sentence. */
  String unknown(String id, String line, boolean condition) {
    String nearest = "";
    int least = Integer.MAX_VALUE;
    for (Sentence sentence : sentences) {
      int apart =
          sentence.isCondition() == condition
              ? Nearest.distance(line, sentence.text())
              : Integer.MAX_VALUE;
      if (apart < least) {
        least = apart;
        nearest = sentence.text();
      }
    }
    return id + " says '" + line + "', which is no sentence of the vocabulary; nearest: " + nearest;
  }
}
