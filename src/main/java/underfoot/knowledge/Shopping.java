package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underfoot.scenario.RuleFiles;

/**
 * What is asked for in shops, grouped as they are laid out.
 *
 * @param shelves the groups in their order
 * @param rows the things
 */
public record Shopping(List<String> shelves, List<Row> rows) {
  private static final String FILE = "shopping.yaml";
  private static final List<String> BY = List.of("one", "doors", "tiles", "perimeter", "area");

  /** Copies the lists. */
  public Shopping {
    shelves = List.copyOf(shelves);
    rows = List.copyOf(rows);
  }

  /**
   * One thing.
   *
   * @param name what it is
   * @param shelf its group
   * @param material whether its amount is worked out among the materials
   * @param forLayers the layers it is bought for
   * @param on the dangers, remedies and notes it is bought for
   * @param unless what is said where it is not bought after all
   * @param by what its number goes with
   * @param rate the figure of how many for each of that; empty for one
   * @param pack the figure of how many are in a pack; empty for one
   * @param kind of what kind it is, to be filled in
   * @param size of what size, to be filled in
   */
  public record Row(
      String name,
      String shelf,
      boolean material,
      List<String> forLayers,
      List<String> on,
      List<String> unless,
      String by,
      String rate,
      String pack,
      String kind,
      String size) {
    /** Copies the lists. */
    public Row {
      forLayers = List.copyOf(forLayers);
      on = List.copyOf(on);
      unless = List.copyOf(unless);
    }
  }

  static Shopping load(
      RuleFiles files, Materials materials, Layers layers, Figures figures, Wording wording)
      throws KnowledgeFault {
    if (!files.list("", ".yaml").contains(FILE)) {
      return new Shopping(List.of(), List.of());
    }
    Set<String> items =
        materials.all().stream().map(MaterialItem::item).collect(Collectors.toSet());
    List<String> shelves = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      if (entry.name().equals("shelves")) {
        shelves.addAll(entry.named("list"));
        continue;
      }
      Row row =
          new Row(
              entry.name(),
              entry.required("shelf"),
              items.contains(entry.name()),
              entry.named("for"),
              entry.named("on"),
              entry.named("unless"),
              entry.fields().getOrDefault("by", "one"),
              entry.field("rate"),
              entry.field("pack"),
              entry.required("kind"),
              entry.field("size"));
      String wrong = wrong(row, shelves, layers, figures, wording);
      if (!wrong.isEmpty()) {
        throw new KnowledgeFault(FILE, entry.line(), "'" + entry.name() + "' " + wrong);
      }
      rows.add(row);
    }
    return new Shopping(shelves, rows);
  }

  private static String wrong(
      Row row, List<String> shelves, Layers layers, Figures figures, Wording wording) {
    if (!shelves.contains(row.shelf())) {
      return "lies on the shelf '" + row.shelf() + "', which shelves does not name";
    }
    for (String layer : row.forLayers()) {
      if (!layers.has(layer)) {
        return "is for '" + layer + "', no such layer";
      }
    }
    for (String id : Stream.concat(row.on().stream(), row.unless().stream()).toList()) {
      if (!wording.ids().contains(id)) {
        return "hangs on '" + id + "', which is no wording";
      }
    }
    for (String figure : List.of(row.rate(), row.pack())) {
      if (!figure.isEmpty() && !figures.has(figure)) {
        return "names '" + figure + "', no such figure";
      }
    }
    if (!BY.contains(row.by())) {
      return "goes by '" + row.by() + "'; write one of " + String.join(", ", BY);
    }
    boolean bought = row.material() || !row.forLayers().isEmpty() || !row.on().isEmpty();
    return bought ? "" : "is bought for nothing; write for: […] or on: […], or give it amounts";
  }

  /** The row of a thing; empty if there is none. */
  public Optional<Row> find(String name) {
    return rows.stream().filter(row -> row.name().equals(name)).findFirst();
  }
}
