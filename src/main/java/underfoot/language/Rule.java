package underfoot.language;

import java.util.List;
import underfoot.knowledge.RuleNote;

/**
 * A rule.
 *
 * @param note what it says of itself
 * @param pass the pass it belongs to
 * @param file the rule file, or the table if it is a row's
 * @param line the line of its name, or of the row
 * @param conditions what it asks for, a sentence each
 * @param consequences what it concludes, a sentence each
 * @param form the rule as it stands in its file, one for all rows of a table
 */
public record Rule(
    RuleNote note,
    Pass pass,
    String file,
    int line,
    List<Said> conditions,
    List<Said> consequences,
    RuleForm form) {

  /** Copies the lists. */
  public Rule {
    conditions = List.copyOf(conditions);
    consequences = List.copyOf(consequences);
  }

  /** Its id, which rules for the rows of a table share. */
  public String id() {
    return note.id();
  }

  /** Its id, and its row if it is one of several. */
  public String key() {
    return note.key();
  }

  /** Its conditions as they are written. */
  public List<String> when() {
    return conditions.stream().map(Said::text).toList();
  }

  /** Its conclusions as they are written. */
  public List<String> then() {
    return consequences.stream().map(Said::text).toList();
  }

  /** All that its conditions ask for, in their order. */
  public List<Pattern> patterns() {
    return conditions.stream().flatMap(said -> said.patterns().stream()).toList();
  }

  /** All that it concludes. */
  public List<Effect> effects() {
    return consequences.stream().map(Said::effect).toList();
  }

  /** The same with other conditions and conclusions. */
  public Rule with(List<Said> otherConditions, List<Said> otherConsequences) {
    return new Rule(note, pass, file, line, otherConditions, otherConsequences, form);
  }

  /** The same, but for what it says of itself. */
  public Rule with(RuleNote other) {
    return new Rule(other, pass, file, line, conditions, consequences, form);
  }
}
