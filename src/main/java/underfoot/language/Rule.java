package underfoot.language;

import java.util.List;
import underfoot.knowledge.RuleNote;

/**
 * A rule.
 *
 * @param note what it says of itself
 * @param pass the pass it belongs to
 * @param file the rule file
 * @param line the line of its name
 * @param conditions what it asks for, a sentence each
 * @param consequences what it concludes, a sentence each
 */
public record Rule(
    RuleNote note,
    Pass pass,
    String file,
    int line,
    List<Said> conditions,
    List<Said> consequences) {

  /** Copies the lists. */
  public Rule {
    conditions = List.copyOf(conditions);
    consequences = List.copyOf(consequences);
  }

  /** Its id. */
  public String id() {
    return note.id();
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
    return new Rule(note, pass, file, line, otherConditions, otherConsequences);
  }
}
