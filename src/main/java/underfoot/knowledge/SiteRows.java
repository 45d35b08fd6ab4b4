package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import underfoot.scenario.RuleFiles;

/**
 * What stands beside each layer on the sheet for the site.
 *
 * @param rows in their order
 */
public record SiteRows(List<Row> rows) {
  private static final String FILE = "site-sheet.yaml";

  /** Copies the list. */
  public SiteRows {
    rows = List.copyOf(rows);
  }

  /**
   * One thing to tell.
   *
   * @param forLayers beside which layers
   * @param say the words
   */
  public record Row(List<String> forLayers, String say) {}

  static SiteRows load(RuleFiles files, Layers layers) throws KnowledgeFault {
    List<Row> rows = new ArrayList<>();
    if (!files.list("", ".yaml").contains(FILE)) {
      return new SiteRows(rows);
    }
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      for (String layer : entry.named("for")) {
        if (!layers.has(layer)) {
          throw new KnowledgeFault(
              FILE, entry.line(), "'" + entry.name() + "' is for '" + layer + "', no such layer");
        }
      }
      rows.add(new Row(List.copyOf(entry.named("for")), entry.required("say")));
    }
    return new SiteRows(rows);
  }

  /** What stands beside a layer, figures and facts filled in. */
  public List<String> of(String layer, Figures figures, Facts facts) {
    return rows.stream()
        .filter(row -> row.forLayers().contains(layer))
        .map(row -> Wording.known(row.say(), figures, facts))
        .filter(said -> !said.isEmpty())
        .toList();
  }
}
