package underfoot.reasoning;

import java.util.Map;
import org.kie.api.definition.rule.Rule;
import underfoot.knowledge.RuleNote;

/** Reads what a rule says of itself. */
final class RuleNotes {
  private RuleNotes() {}

  static RuleNote of(Rule rule) {
    String name = rule.getName();
    int space = name.indexOf(' ');
    String id = space < 0 ? name : name.substring(0, space);
    String title = space < 0 ? "" : name.substring(space + 1);
    Map<String, Object> said = rule.getMetaData();
    return new RuleNote(id, title, text(said.get("reason")), text(said.get("source")));
  }

  private static String text(Object value) {
    if (value == null) {
      return "";
    }
    String text = value.toString().strip();
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    return quoted ? text.substring(1, text.length() - 1) : text;
  }
}
