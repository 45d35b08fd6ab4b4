package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/** What there is to buy for the layers of a build-up. */
public final class Materials {
  private static final String FILE = "quantities.yaml";

  private static final List<String> COUNTED = List.of("", "tiles", "boards", "screws");

  private final List<MaterialItem> items;

  private Materials(List<MaterialItem> items) {
    this.items = List.copyOf(items);
  }

  static Materials load(RuleFiles files, Layers layers, Figures figures) throws KnowledgeFault {
    List<MaterialItem> items = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      List<String> forLayers = entry.lists().get("for");
      if (forLayers == null || forLayers.isEmpty()) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' is for no layer; write for: [a-layer]");
      }
      for (String layer : forLayers) {
        if (!layers.has(layer)) {
          throw new KnowledgeFault(
              FILE, entry.line(), "'" + entry.name() + "' is for '" + layer + "', no such layer");
        }
      }
      for (String figure : List.of(entry.field("rate"), entry.field("waste"))) {
        if (!figure.isEmpty() && !figure.startsWith("the ") && !figures.has(figure)) {
          throw new KnowledgeFault(
              FILE, entry.line(), "'" + entry.name() + "' names '" + figure + "', no such figure");
        }
      }
      items.add(
          new MaterialItem(
              entry.name(),
              forLayers,
              by(entry),
              entry.required("unit"),
              entry.field("rate"),
              entry.field("waste"),
              counted(entry),
              besides(entry, figures),
              entry.field("only if"),
              entry.field("not if"),
              entry.field("floor"),
              entry.lists().getOrDefault("less", List.of()),
              entry.field("sold").equals("as one")));
    }
    return new Materials(items);
  }

  private static Map<String, String> besides(Entries.Entry entry, Figures figures)
      throws KnowledgeFault {
    List<Entries.Entry> rows = entry.rows().getOrDefault("besides", List.of());
    Map<String, String> besides = rows.isEmpty() ? Map.of() : rows.get(0).fields();
    for (String figure : besides.values()) {
      if (!figures.has(figure)) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' names '" + figure + "', no such figure");
      }
    }
    return besides;
  }

  private static String counted(Entries.Entry entry) throws KnowledgeFault {
    String counted = entry.field("counted");
    if (!COUNTED.contains(counted)) {
      throw new KnowledgeFault(
          FILE,
          entry.line(),
          "'" + entry.name() + "' is counted by '" + counted + "'; write tiles, boards or screws");
    }
    return counted;
  }

  private static MaterialItem.By by(Entries.Entry entry) throws KnowledgeFault {
    try {
      return MaterialItem.By.valueOf(entry.required("by").toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new KnowledgeFault(
          FILE,
          entry.line(),
          "'"
              + entry.name()
              + "' goes by '"
              + entry.field("by")
              + "'; write by: area, depth, bed, perimeter, joints or floor");
    }
  }

  /** All items in the order of the file. */
  public List<MaterialItem> all() {
    return items;
  }
}
