package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import underfoot.scenario.RuleFiles;

/**
 * What stands above the verdict and what is done about it first, the gravest before the rest.
 *
 * @param rows in their order
 */
public record Headlines(List<Row> rows) {
  private static final String FILE = "headlines.yaml";

  /** What the answer can be headed by. */
  public static final List<String> KINDS =
      List.of("stop", "outside guidance", "gate", "settle", "find out", "remedy", "danger");

  /** Copies the list. */
  public Headlines {
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param name what it is about, in a few words
   * @param on the wordings by which it holds
   * @param facts the facts that are found out when it is dealt with
   * @param any the kind of which it takes what no row names; empty for none
   * @param say the sentence that heads the answer; empty if it only gives the order
   * @param now what is done about it first; empty for the title of what it is about
   */
  public record Row(
      String name, List<String> on, List<String> facts, String any, String say, String now) {
    /** Copies the lists. */
    public Row {
      on = List.copyOf(on);
      facts = List.copyOf(facts);
    }
  }

  static Headlines load(RuleFiles files, Wording wording) throws KnowledgeFault {
    List<Row> rows = new ArrayList<>();
    if (!files.list("", ".yaml").contains(FILE)) {
      return new Headlines(rows);
    }
    Set<String> ids = wording.ids();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      Row row =
          new Row(
              entry.name(),
              entry.named("on"),
              entry.named("facts"),
              entry.field("any"),
              entry.field("say"),
              entry.field("now"));
      for (String id : row.on()) {
        if (!ids.contains(id)) {
          throw wrong(entry, "hangs on '" + id + "', which is no wording");
        }
      }
      if (!row.any().isEmpty() && !KINDS.contains(row.any())) {
        throw wrong(entry, "is for any '" + row.any() + "'; write one of " + KINDS);
      }
      boolean always = row.on().isEmpty() && row.any().isEmpty();
      if (always && row.say().isEmpty()) {
        throw wrong(entry, "says nothing and gives no order; write on: […] or say: …");
      }
      rows.add(row);
    }
    return new Headlines(rows);
  }

  private static KnowledgeFault wrong(Entries.Entry entry, String what) {
    return new KnowledgeFault(FILE, entry.line(), "'" + entry.name() + "' " + what);
  }

  /**
   * How grave something is: the place of its row, the gravest 0.
   *
   * @param wording the wording it is told in, or the key of a fact
   * @param kind what it is, one of {@link #KINDS}
   */
  public int place(String wording, String kind) {
    int any = rows.size();
    for (int i = rows.size() - 1; i >= 0; i--) {
      Row row = rows.get(i);
      if (row.on().contains(wording)) {
        return i;
      }
      any = row.any().equals(kind) ? i : any;
    }
    return any;
  }
}
