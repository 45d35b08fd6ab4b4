package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
   * @param draw what of it is drawn: {@link #NOTCH} or {@link #SCREW}; empty for nothing
   * @param size how large that is: a figure or a fact
   */
  public record Row(List<String> forLayers, String say, String draw, String size) {}

  /** The notch of a trowel is drawn. */
  public static final String NOTCH = "notch";

  /** A screw is drawn. */
  public static final String SCREW = "screw";

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
      String draw = entry.field("draw");
      if (!draw.isEmpty() && !draw.equals(NOTCH) && !draw.equals(SCREW)) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + draw + "' cannot be drawn; write notch or screw");
      }
      rows.add(
          new Row(
              List.copyOf(entry.named("for")), entry.required("say"), draw, entry.field("size")));
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

  /** How large what is drawn of a layer is, mm, by what it is; nothing that is not known. */
  public Map<String, Double> drawn(String layer, Figures figures, Facts facts) {
    Map<String, Double> drawn = new TreeMap<>();
    for (Row row : rows) {
      if (row.draw().isEmpty() || !row.forLayers().contains(layer)) {
        continue;
      }
      String name = row.size().substring(1, row.size().length() - 1);
      double mm = row.size().startsWith("[") ? facts.number(name) : figures.get(name).number();
      if (!Double.isNaN(mm)) {
        drawn.put(row.draw(), mm);
      }
    }
    return drawn;
  }
}
