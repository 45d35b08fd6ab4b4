package underfoot.language;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.TableRow;

/**
 * A rule as it stands in its file. One that is written {@code for each} row of a table holds for
 * every row, with what the row says in the place of names in braces. A line that names what a row
 * does not say is left out for that row, and one that names a list stands once for each of it.
 *
 * @param note what it says of itself; a row may give a reason and a source of its own
 * @param file the rule file
 * @param asks the question that its file answers; empty if it asks none
 * @param line the line of its name
 * @param table the table it is written for; empty for most rules
 * @param rows the rows of the table
 * @param conditions its lines after {@code when}
 * @param consequences its lines after {@code then}
 */
public record RuleForm(
    RuleNote note,
    String file,
    String asks,
    int line,
    String table,
    List<TableRow> rows,
    List<Line> conditions,
    List<Line> consequences) {

  /** Copies the lists. */
  public RuleForm {
    rows = List.copyOf(rows);
    conditions = List.copyOf(conditions);
    consequences = List.copyOf(consequences);
  }

  /**
   * A line and where it stands.
   *
   * @param text the line
   * @param number its number
   */
  public record Line(String text, int number) {}

  /** Whether it is written for each row of a table. */
  public boolean isForEach() {
    return !table.isEmpty();
  }

  /** Its conditions as they are written. */
  public List<String> when() {
    return conditions.stream().map(Line::text).toList();
  }

  /** Its conclusions as they are written. */
  public List<String> then() {
    return consequences.stream().map(Line::text).toList();
  }

  /** The rule itself, or what it is for each of its rows. */
  public List<RuleForm> each() {
    return isForEach() ? rows.stream().map(this::filled).toList() : List.of(this);
  }

  /** The names in braces, in their order. */
  Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    for (List<Line> lines : List.of(conditions, consequences)) {
      for (Line line : lines) {
        String text = line.text();
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', open + 1)) {
          int close = text.indexOf('}', open);
          names.add(text.substring(open + 1, close < 0 ? text.length() : close));
        }
      }
    }
    return names;
  }

  private RuleForm filled(TableRow row) {
    RuleNote own =
        new RuleNote(
            note.id(),
            note.title(),
            row.text("reason", note.reason()),
            row.text("source", note.source()),
            row.key());
    return new RuleForm(
        own,
        row.file(),
        asks,
        row.line(),
        "",
        List.of(),
        filled(conditions, row),
        filled(consequences, row));
  }

  private static List<Line> filled(List<Line> lines, TableRow row) {
    List<Line> filled = new ArrayList<>();
    for (Line line : lines) {
      filled(line.text(), row).forEach(text -> filled.add(new Line(text, row.line())));
    }
    return filled;
  }

  private static List<String> filled(String text, TableRow row) {
    int open = text.indexOf('{');
    int close = text.indexOf('}', open);
    if (open < 0 || close < 0) {
      return List.of(text);
    }
    List<String> all = new ArrayList<>();
    for (String one : row.says().getOrDefault(text.substring(open + 1, close), List.of())) {
      String lead = text.substring(0, open) + one;
      filled(text.substring(close + 1), row).forEach(rest -> all.add(lead + rest));
    }
    return all;
  }
}
