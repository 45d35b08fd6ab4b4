package underfoot.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.RuleFiles;

/**
 * The rules of a rule base, in the order of passes, files and lines, with the vocabulary they are
 * written in.
 *
 * @param vocabulary the sentences they may use
 * @param rules the rules
 */
public record RuleSet(Vocabulary vocabulary, List<Rule> rules) {

  /** Copies the list. */
  public RuleSet {
    rules = List.copyOf(rules);
  }

  /**
   * Reads a rule base.
   *
   * @throws RuleFaults if it cannot be used, with all that is wrong by file and line
   */
  public static RuleSet read(RuleFiles files) throws RuleFaults {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    RuleSet read = read(files, faults);
    if (!faults.isEmpty()) {
      throw new RuleFaults(faults);
    }
    return read;
  }

  /** Reads what can be read of a rule base, and tells what is wrong with the rest. */
  public static RuleSet read(RuleFiles files, List<RuleFaults.Fault> faults) {
    Vocabulary vocabulary = Vocabulary.read(files, faults);
    List<Rule> rules = new ArrayList<>();
    for (Pass pass : Pass.values()) {
      for (String path : files.list(pass.folder(), ".dslr")) {
        rules.addAll(new RuleReader(files, vocabulary, pass, path, faults).read());
      }
    }
    for (String path : files.list("", ".dslr")) {
      faults.add(
          new RuleFaults.Fault(
              path, 0, "a rule file stands in the folder of its pass, such as understand/" + path));
    }
    Map<String, Rule> byId = new HashMap<>();
    List<Rule> kept = new ArrayList<>();
    for (Rule rule : rules) {
      Rule other = byId.putIfAbsent(rule.id(), rule);
      if (other == null || other.form() == rule.form()) {
        kept.add(rule);
      } else {
        faults.add(
            new RuleFaults.Fault(
                rule.file(),
                rule.line(),
                "the id "
                    + rule.id()
                    + " is taken by "
                    + other.file()
                    + ":"
                    + other.line()
                    + "; give this rule an id of its own"));
      }
    }
    return new RuleSet(vocabulary, kept); // of two with one id the first, so that all else is read
  }

  /** The rules as they stand in their files, those for each row of a table once. */
  public List<RuleForm> forms() {
    return rules.stream().map(Rule::form).distinct().toList();
  }

  /** The rules of one pass. */
  public List<Rule> of(Pass pass) {
    return rules.stream().filter(rule -> rule.pass() == pass).toList();
  }

  /** The same with other rules. */
  public RuleSet with(List<Rule> others) {
    return new RuleSet(vocabulary, others);
  }

  /** Sentences nobody says, and sentences that cannot be told apart, with what to do. */
  public List<RuleFaults.Fault> sentenceFaults() {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    Set<Sentence> said = new HashSet<>();
    for (Rule rule : rules) {
      rule.conditions().forEach(one -> said.add(one.sentence()));
      rule.consequences().forEach(one -> said.add(one.sentence()));
    }
    Map<String, Sentence> byShape = new HashMap<>();
    for (Sentence sentence : vocabulary.sentences()) {
      Sentence other =
          byShape.putIfAbsent(sentence.isCondition() + sentence.template().shape(), sentence);
      String what = "";
      if (other != null) {
        what =
            "the sentence '"
                + sentence.text()
                + "' is ambiguous: "
                + other.file()
                + ":"
                + other.line()
                + " says the same; word one of them otherwise";
      } else if (!said.contains(sentence)) {
        what = "no rule says '" + sentence.text() + "'; take the sentence out";
      }
      if (!what.isEmpty()) {
        faults.add(new RuleFaults.Fault(sentence.file(), sentence.line(), what));
      }
    }
    return faults;
  }
}
