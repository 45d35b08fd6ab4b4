package underfoot.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/**
 * A row of a table of the knowledge base, such as a step with the time it takes.
 *
 * @param name the name of the entry it is or belongs to
 * @param key the name with hyphens for spaces, and a number if an entry has several rows
 * @param file where it stands
 * @param line where it stands
 * @param says what is said under each of its names; a single text is a list of one
 */
public record TableRow(
    String name, String key, String file, int line, Map<String, List<String>> says) {
  private static final String OF = " of ";

  /**
   * The rows of a table.
   *
   * @param files the rule base
   * @param table the file, such as {@code tables/checks.yaml}; or a part of its entries, such as
   *     {@code times of tables/steps.yaml}, whose rows say besides what their entry says
   * @throws KnowledgeFault if there is no such file or it cannot be read as a list of entries
   */
  public static List<TableRow> of(RuleFiles files, String table) throws KnowledgeFault {
    int of = table.indexOf(OF);
    String part = of < 0 ? "" : table.substring(0, of);
    String file = of < 0 ? table : table.substring(of + OF.length());
    List<TableRow> rows = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, file)) {
      List<Entries.Entry> parts =
          of < 0 ? List.of(entry) : entry.rows().getOrDefault(part, List.of());
      String key = entry.name().replace(' ', '-');
      for (Entries.Entry one : parts) {
        Map<String, List<String>> says = new LinkedHashMap<>();
        says.put("name", List.of(entry.name()));
        put(entry, says);
        put(one, says);
        String number = parts.size() == 1 ? "" : "/" + (parts.indexOf(one) + 1);
        rows.add(new TableRow(entry.name(), key + number, file, one.line(), says));
      }
    }
    return rows;
  }

  private static void put(Entries.Entry entry, Map<String, List<String>> says) {
    entry.fields().forEach((field, text) -> says.put(field, List.of(text)));
    says.putAll(entry.lists());
  }

  /** The only text said under a name; the other given if nothing is. */
  public String text(String field, String otherwise) {
    return says.containsKey(field) ? String.join(", ", says.get(field)) : otherwise;
  }
}
