package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.scenario.RuleFiles;

/** The boards that are laid over a deck, by layer. */
public final class Boards {
  private static final String FILE = "boards.yaml";
  private static final String ON_JOINTS = "on-joints";

  private final Map<String, Board> byLayer;

  private Boards(Map<String, Board> byLayer) {
    this.byLayer = byLayer;
  }

  /**
   * A board.
   *
   * @param length the figure for its length
   * @param width the figure for its width
   * @param joint the figure for the gap between two
   * @param onJoints whether the outer row of fixings sits on the joints and holds both boards
   */
  public record Board(Figure length, Figure width, Figure joint, boolean onJoints) {}

  static Boards load(RuleFiles files, Layers layers, Figures figures) throws KnowledgeFault {
    Map<String, Board> byLayer = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      if (!layers.has(entry.name())) {
        throw new KnowledgeFault(FILE, entry.line(), "'" + entry.name() + "' is no layer");
      }
      String row = entry.required("outer-row");
      if (!List.of("within", ON_JOINTS).contains(row)) {
        throw new KnowledgeFault(
            FILE,
            entry.line(),
            "the outer row of '" + entry.name() + "' is '" + row + "'; write within or on-joints");
      }
      byLayer.put(
          entry.name(),
          new Board(
              figure(entry, "length", figures),
              figure(entry, "width", figures),
              figure(entry, "joint", figures),
              row.equals(ON_JOINTS)));
    }
    return new Boards(byLayer);
  }

  private static Figure figure(Entries.Entry entry, String field, Figures figures)
      throws KnowledgeFault {
    String name = entry.required(field);
    if (!figures.has(name)) {
      throw new KnowledgeFault(
          FILE, entry.line(), "'" + entry.name() + "' names '" + name + "', no such figure");
    }
    return figures.get(name);
  }

  /** The boards of a layer; empty if it is not laid in boards. */
  public Optional<Board> find(String layer) {
    return Optional.ofNullable(byLayer.get(layer));
  }
}
