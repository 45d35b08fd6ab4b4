package underfoot.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The kinds of layer a build-up may have, by id. */
public final class Layers {
  private final Map<String, LayerKind> byId;
  private final LayerOrder order;

  private Layers(Map<String, LayerKind> byId, LayerOrder order) {
    this.byId = byId;
    this.order = order;
  }

  static Layers of(List<Entries.Entry> entries) throws KnowledgeFault {
    List<Entries.Entry> rows =
        entries.stream().filter(entry -> !entry.lists().containsKey("list")).toList();
    List<String> families =
        entries.stream()
            .filter(entry -> entry.name().equals(LayerOrder.FAMILIES))
            .flatMap(entry -> entry.named("list").stream())
            .toList();
    LayerOrder order = new LayerOrder(rows, families);
    Map<String, LayerKind> byId = new LinkedHashMap<>();
    for (Entries.Entry row : rows) {
      byId.put(
          row.name(),
          new LayerKind(
              row.name(),
              row.required("name"),
              row.required("material"),
              row.required("family"),
              order.sorted().indexOf(row.name()),
              row.required("thickness"),
              row.field("mass"),
              row.field("conductivity"),
              row.field("modulus"),
              row.field("sunk").equals("yes"),
              row.named("acts"),
              row.field("done in"),
              row.field("waits in")));
    }
    return new Layers(byId, order);
  }

  /**
   * One kind of layer.
   *
   * @throws MissingKnowledge if there is none of that id
   */
  public LayerKind get(String id) {
    LayerKind kind = byId.get(id);
    if (kind == null) {
      throw new MissingKnowledge("layer", id);
    }
    return kind;
  }

  /** Whether there is a kind of that id. */
  public boolean has(String id) {
    return byId.containsKey(id);
  }

  /** All kinds. */
  public Collection<LayerKind> all() {
    return byId.values();
  }

  /**
   * Layers whose order nothing tells, each with file, line and how to mend it.
   *
   * @param laid the kinds that rules lay, so that any two of them may lie in one build-up
   * @throws KnowledgeFault if a row names what there is not
   */
  public List<KnowledgeFault> untold(Set<String> laid) throws KnowledgeFault {
    return order.untold(laid);
  }
}
