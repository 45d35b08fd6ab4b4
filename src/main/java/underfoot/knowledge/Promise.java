package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import underfoot.scenario.RuleFiles;

/**
 * Something that every advice keeps, and that the finished advice is read against.
 *
 * @param id its name
 * @param words the promise in words
 * @param rows what it needs of names, such as the wishes a client may have
 */
public record Promise(String id, String words, List<TableRow> rows) {
  private static final String FILE = "promises.yaml";

  /** The parts of the file that hold rows. */
  private static final List<String> PARTS = List.of("wishes", "not while", "met by");

  /** Copies the list. */
  public Promise {
    rows = List.copyOf(rows);
  }

  static List<Promise> load(RuleFiles files) throws KnowledgeFault {
    List<Promise> all = new ArrayList<>();
    if (!files.list("", ".yaml").contains(FILE)) {
      return all; // a rule base of one's own may be smaller
    }
    List<TableRow> rows = new ArrayList<>();
    for (String part : PARTS) {
      rows.addAll(TableRow.of(files, part + " of " + FILE));
    }
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      List<TableRow> own = rows.stream().filter(row -> row.name().equals(entry.name())).toList();
      all.add(new Promise(entry.name(), entry.required("promise"), own));
    }
    return all;
  }
}
